// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.shielding.spectrum.CosmicSpectrum;
import bermwright.shielding.transport.Beam;
import bermwright.shielding.transport.EnergyGrid;
import bermwright.shielding.transport.Penetration;
import bermwright.shielding.transport.Stopping;
import java.util.stream.IntStream;

/**
 * Dose of a beam in water, slow neutrons aside: charged particles give their energy where they are, reactions leave
 * theirs on the spot with the quality of what they send out; pions, muons, electrons and gammas count once.
 *
 * <p>It marches through the water of a shield's body, so it is not for two threads at once.
 *
 * @see "NCRP Report 132 (2000), table 6.4, relative effectiveness: protons 1.5, heavier ions 2.5; from memory"
 */
final class PointDose {
    static final double PROTON_EFFECTIVENESS = 1.5;
    private static final double ION_EFFECTIVENESS = 2.5;
    /** From MeV/g times 1/m2 per (g/cm2) to Gy. */
    private static final double GRAY = 1.602177e-10 * 1e-4;
    private static final double KEV_UM = 0.1;
    private static final double PROTON_MEV = 938.272;
    private static final double PION_MEV = 139.57;
    private static final double MUON_MEV = 105.658;
    private static final int PION = 29;
    private static final int MADE_PROTON = 30;
    private static final int MUON = 31;
    /** Kinds of what reactions leave: charge, mass number and mean energy (MeV), from the cascade's own table. */
    private static final double[][] LEFT = {{1, 1, 9}, {1, 1, 4.5}, {1, 2.3, 5}, {2, 4, 7}, {7, 14, 2}};

    /** Depths at which the whole body is looked at (g/cm2); all depths of the table give 1 % less. */
    private static final double[] BODY_GCM2 = {0.01, 0.3, 1.5, 4, 8, 13, 21, 33};
    private static final double[] BODY_SHARES = Tissue.bodyShares(BODY_GCM2);

    private final Penetration penetration;
    private final EnergyGrid grid;
    private final double[] pionLoss;
    private final double[] muonLoss;
    private final double[][] ionLoss;
    private final double[][] ionQuality;
    private final double[] leftQuality = new double[LEFT.length];

    PointDose(Penetration penetration) {
        this.penetration = penetration;
        grid = penetration.grid();
        Stopping water = penetration.water();
        int n = grid.size();
        pionLoss = new double[n];
        muonLoss = new double[n];
        ionLoss = new double[CosmicSpectrum.GREATEST_CHARGE + 1][n];
        ionQuality = new double[CosmicSpectrum.GREATEST_CHARGE + 1][n];
        for (int i = 0; i < n; i++) {
            double energy = Math.min(grid.energyMeV(i), Stopping.GREATEST_MEV);
            pionLoss[i] = loss(water, energy / PION_MEV);
            muonLoss[i] = loss(water, energy / MUON_MEV);
            double proton = water.protonMeVPerGCm2(energy);
            for (int z = 1; z < ionLoss.length; z++) {
                double charge = Stopping.effectiveCharge(z, energy);
                ionLoss[z][i] = proton * charge * charge;
                ionQuality[z][i] = Quality.factor(ionLoss[z][i] * KEV_UM);
            }
        }
        for (int i = 0; i < LEFT.length; i++) {
            leftQuality[i] = Quality.mean(water, (int) LEFT[i][0], LEFT[i][1], LEFT[i][2]);
        }
    }

    /** Dose where a beam is. */
    OrganDose at(Beam beam) {
        double light = gammas(beam) + pions(beam) + muons(beam);
        OrganDose sum = new OrganDose(light, light, light).plus(charged(beam, 1, 1))
                .plus(charged(beam, MADE_PROTON, 1));
        for (int z = 2; z <= CosmicSpectrum.GREATEST_CHARGE; z++) {
            sum = sum.plus(charged(beam, z, z));
        }
        double[] left = penetration.leftByReactions(beam);
        for (int i = 0; i < left.length; i++) {
            sum = sum.plus(weighted(left[i] * GRAY, left[i] * GRAY * leftQuality[i], (int) LEFT[i][0]));
        }
        return sum;
    }

    /** Dose of ions of one charge where a beam is, without what their reactions leave. */
    OrganDose ions(Beam beam, int charge) {
        return charged(beam, charge, charge);
    }

    /** Dose where a beam gets to behind a depth of water (g/cm2). */
    OrganDose behind(Beam atSkin, double depthGCm2) {
        return at(penetration.inBody(atSkin, depthGCm2));
    }

    /** Dose of a tissue of a body that a beam gets into, over all depths at which it lies. */
    OrganDose in(Beam atSkin, Tissue tissue) {
        return spread(atSkin, IntStream.range(0, Tissue.depths()).mapToDouble(Tissue::depthGCm2).toArray(),
                IntStream.range(0, Tissue.depths()).mapToDouble(tissue::share).toArray());
    }

    /** Tissue-weighted dose of a body that a beam gets into: its dose equivalent is the effective dose equivalent. */
    OrganDose mean(Beam atSkin) {
        return spread(atSkin, BODY_GCM2, BODY_SHARES);
    }

    private OrganDose spread(Beam atSkin, double[] depths, double[] shares) {
        OrganDose sum = new OrganDose(0, 0, 0);
        Beam beam = atSkin;
        double depth = 0;
        for (int node = 0; node < depths.length; node++) {
            beam = penetration.inBody(beam, depths[node] - depth);
            depth = depths[node];
            sum = sum.plus(at(beam).times(shares[node]));
        }
        return sum;
    }

    /** Absorbed dose of protons that reactions made (Gy). */
    double madeProtons(Beam beam) {
        return charged(beam, MADE_PROTON, 1).absorbed();
    }

    /** Absorbed dose of charged pions (Gy). */
    double pions(Beam beam) {
        return GRAY * fold(beam, PION, pionLoss);
    }

    /** Absorbed dose of muons (Gy). */
    double muons(Beam beam) {
        return GRAY * fold(beam, MUON, muonLoss);
    }

    /** Absorbed dose of electrons and gammas (Gy). */
    double gammas(Beam beam) {
        return beam.electromagnetic() * energyDose();
    }

    /** Absorbed dose of one charged pion to the square metre at an energy of the grid (Gy m2). */
    double pionDose(int i) {
        return GRAY * pionLoss[i];
    }

    /** Absorbed dose of one muon to the square metre at an energy of the grid (Gy m2). */
    double muonDose(int i) {
        return GRAY * muonLoss[i];
    }

    /** Absorbed dose of the energy of electrons and gammas (Gy m2 per MeV). */
    double energyDose() {
        return GRAY / penetration.showerLengthGCm2();
    }

    private OrganDose charged(Beam beam, int species, int charge) {
        double absorbed = 0;
        double equivalent = 0;
        for (int i = 0; i < grid.size(); i++) {
            double dose = beam.fluence(species, i) * grid.widthMeV(i) * ionLoss[charge][i];
            absorbed += dose;
            equivalent += dose * ionQuality[charge][i];
        }
        return weighted(absorbed * GRAY, equivalent * GRAY, charge);
    }

    private static OrganDose weighted(double absorbed, double equivalent, int charge) {
        return new OrganDose(absorbed, equivalent, absorbed * (charge > 1 ? ION_EFFECTIVENESS : PROTON_EFFECTIVENESS));
    }

    private double fold(Beam beam, int species, double[] weight) {
        double sum = 0;
        for (int i = 0; i < grid.size(); i++) {
            sum += beam.fluence(species, i) * grid.widthMeV(i) * weight[i];
        }
        return sum;
    }

    /** Loss of a particle of charge one whose energy is this many of its masses. */
    private static double loss(Stopping water, double masses) {
        return water.protonMeVPerGCm2(Math.min(Stopping.GREATEST_MEV, masses * PROTON_MEV));
    }
}
