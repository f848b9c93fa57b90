// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.shielding.spectrum.CosmicSpectrum;
import bermwright.shielding.transport.Beam;
import bermwright.shielding.transport.EnergyGrid;
import bermwright.shielding.transport.Field;
import bermwright.shielding.transport.Penetration;
import bermwright.shielding.transport.Stopping;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * Dose of a person in a field of particles from all sides.
 *
 * <p>Effective dose: protons and neutrons by published coefficients; helium and heavier ions by the quality factor of
 * 1990 in each {@link Tissue} behind the water that stands for the body around it, weighted; pions with weight 2,
 * muons, electrons and gammas 1.
 */
final class BodyDose {
    /** From MeV/g times 1/m2 per (g/cm2) to Gy. */
    private static final double GRAY = 1.602177e-10 * 1e-4;
    private static final double KEV_UM = 0.1;
    private static final double PION_WEIGHT = 2;
    private static final double PROTON_MEV = 938.272;
    private static final double PION_MEV = 139.57;
    private static final double MUON_MEV = 105.658;
    private static final int PION = 29;
    private static final int MADE_PROTON = 30;
    private static final int MUON = 31;

    private final Penetration penetration;
    private final EnergyGrid grid;
    private final double showerLength;
    private final double[] protonCoefficient;
    private final double[] neutronCoefficient;
    private final double[] pionLoss;
    private final double[] muonLoss;
    private final double[][] ionLoss;
    private final double[][] ionQuality;

    /** Made ready for the fields of a shield, whose water it marches through: not for two threads at once. */
    BodyDose(Penetration penetration) {
        this.penetration = penetration;
        grid = penetration.grid();
        Stopping water = penetration.water();
        showerLength = penetration.showerLengthGCm2();
        int n = grid.size();
        protonCoefficient = new double[n];
        neutronCoefficient = new double[n];
        pionLoss = new double[n];
        muonLoss = new double[n];
        ionLoss = new double[CosmicSpectrum.GREATEST_CHARGE + 1][n];
        ionQuality = new double[CosmicSpectrum.GREATEST_CHARGE + 1][n];
        for (int i = 0; i < n; i++) {
            double energy = Math.min(grid.energyMeV(i), Stopping.GREATEST_MEV);
            protonCoefficient[i] = FluenceCoefficients.proton(energy);
            neutronCoefficient[i] = FluenceCoefficients.neutron(energy);
            pionLoss[i] = loss(water, energy / PION_MEV);
            muonLoss[i] = loss(water, energy / MUON_MEV);
            double proton = water.protonMeVPerGCm2(energy);
            for (int z = 1; z < ionLoss.length; z++) {
                double charge = Stopping.effectiveCharge(z, energy);
                ionLoss[z][i] = proton * charge * charge;
                ionQuality[z][i] = Quality.factor(ionLoss[z][i] * KEV_UM);
            }
        }
    }

    /** Effective dose (Sv, a second's for cosmic rays): straight from all sides, slow neutrons under a dome. */
    Particles effective(Field field) {
        return effective(field, field.slow());
    }

    /** Effective dose (Sv, a second's for cosmic rays) in the middle of a sphere in free space. */
    Particles inSphere(Field field) {
        return effective(field, field.sphere());
    }

    /** Effective dose (Sv, a second's for cosmic rays), slow neutrons by group. */
    Particles effective(Field field, double[] slow) {
        Beam beam = field.beam();
        double helium = 0;
        double heavy = 0;
        for (Map.Entry<Tissue, Beam> reached : Tissue.reached(penetration, beam, true).entrySet()) {
            double weight = reached.getKey().weight();
            helium += weight * equivalent(reached.getValue(), 2);
            for (int z = 3; z <= CosmicSpectrum.GREATEST_CHARGE; z++) {
                heavy += weight * equivalent(reached.getValue(), z);
            }
        }
        return new Particles(fold(beam, 0, neutronCoefficient), slow(slow),
                fold(beam, 1, protonCoefficient) + fold(beam, MADE_PROTON, protonCoefficient),
                helium, heavy, PION_WEIGHT * pions(beam) + muons(beam), gammas(beam));
    }

    /** Effective dose of slow neutrons by group (Sv). */
    static double slow(double[] groups) {
        double sum = 0;
        for (int g = 0; g < groups.length; g++) {
            sum += groups[g] * FluenceCoefficients.neutron(Field.groupMeV(g));
        }
        return sum;
    }

    /** Dose equivalent of 1990 at a point in water, by ions of one charge (Sv). */
    double equivalent(Beam beam, int charge) {
        return equivalent(beam, charge, charge);
    }

    /** Dose equivalent of 1990 at a point in water, by protons that reactions made (Sv). */
    double equivalentMade(Beam beam) {
        return equivalent(beam, MADE_PROTON, 1);
    }

    private double equivalent(Beam beam, int species, int charge) {
        double sum = 0;
        for (int i = 0; i < grid.size(); i++) {
            sum += beam.fluence(species, i) * grid.widthMeV(i) * ionLoss[charge][i] * ionQuality[charge][i];
        }
        return sum * GRAY;
    }

    /** Absorbed dose at a point in water, by ions of one charge (Gy). */
    double absorbed(Beam beam, int charge) {
        return GRAY * fold(beam, charge, ionLoss[charge]);
    }

    /** Absorbed dose at a point in water, by protons that reactions made (Gy). */
    double absorbedMade(Beam beam) {
        return GRAY * fold(beam, MADE_PROTON, ionLoss[1]);
    }

    /** Absorbed dose of charged pions (Gy). */
    double pions(Beam beam) {
        return GRAY * fold(beam, PION, pionLoss);
    }

    /** Absorbed dose of muons (Gy). */
    double muons(Beam beam) {
        return GRAY * fold(beam, MUON, muonLoss);
    }

    /** Effective dose of nucleons that open ground sends back (Sv). */
    double back(Beam beam) {
        return fold(beam, 0, neutronCoefficient) + fold(beam, MADE_PROTON, protonCoefficient);
    }

    /** Effective dose of fast neutrons times a weight by energy (Sv). */
    double fastNeutrons(Beam beam, DoubleUnaryOperator weight) {
        double sum = 0;
        for (int i = 0; i < grid.size(); i++) {
            sum += beam.fluence(0, i) * grid.widthMeV(i) * neutronCoefficient[i]
                    * weight.applyAsDouble(grid.energyMeV(i));
        }
        return sum;
    }

    /** Loss of a particle of charge one whose energy is this many of its masses. */
    private static double loss(Stopping water, double masses) {
        return water.protonMeVPerGCm2(Math.min(Stopping.GREATEST_MEV, masses * PROTON_MEV));
    }

    /** Absorbed dose of electrons and gammas (Gy). */
    double gammas(Beam beam) {
        return beam.electromagnetic() / showerLength * GRAY;
    }

    private double fold(Beam beam, int species, double[] weight) {
        double sum = 0;
        for (int i = 0; i < grid.size(); i++) {
            sum += beam.fluence(species, i) * grid.widthMeV(i) * weight[i];
        }
        return sum;
    }
}
