// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.shielding.spectrum.CosmicSpectrum;
import bermwright.shielding.transport.BackwardField;
import bermwright.shielding.transport.Beam;
import bermwright.shielding.transport.EnergyGrid;
import bermwright.shielding.transport.Field;
import bermwright.shielding.transport.Penetration;
import bermwright.shielding.transport.Stopping;

/**
 * Effective dose of a person in a field of particles from all sides.
 *
 * <p>Protons and neutrons count by published coefficients; helium and heavier ions, with all that they make in the
 * body, by the quality factor of 1990 in each {@link Tissue} behind the water that stands for the body around it,
 * weighted; pions with weight 2, muons, electrons and gammas 1.
 */
final class BodyDose {
    private static final double PION_WEIGHT = 2;
    /** Share of the other particles' dose below which ions are not carried into the body (1). */
    private static final double NEGLIGIBLE = 5e-4;
    private static final int PION = 29;
    private static final int MADE_PROTON = 30;
    private static final int MUON = 31;

    private final PointDose point;
    private final EnergyGrid grid;
    private final double[] protonCoefficient;
    private final double[] neutronCoefficient;

    /** Made ready for the fields of a shield, whose water it marches through: not for two threads at once. */
    BodyDose(Penetration penetration) {
        point = new PointDose(penetration);
        grid = penetration.grid();
        int n = grid.size();
        protonCoefficient = new double[n];
        neutronCoefficient = new double[n];
        for (int i = 0; i < n; i++) {
            double energy = Math.min(grid.energyMeV(i), Stopping.GREATEST_MEV);
            protonCoefficient[i] = FluenceCoefficients.proton(energy);
            neutronCoefficient[i] = FluenceCoefficients.neutron(energy);
        }
    }

    /** Effective dose (Sv, a second's for cosmic rays): straight from all sides, slow neutrons under a dome. */
    Particles effective(Field field) {
        return effective(field.onGround(), field.slow());
    }

    /** Effective dose (Sv, a second's for cosmic rays) in the middle of a sphere in free space. */
    Particles inSphere(Field field) {
        return effective(field.inSpace(), field.sphere());
    }

    /** What a single particle counts in the effective dose, for walks back from a person. */
    BackwardField.Counts counts() {
        double[][] fast = new double[4][grid.size()];
        fast[0] = neutronCoefficient.clone();
        fast[1] = protonCoefficient.clone();
        for (int i = 0; i < grid.size(); i++) {
            fast[2][i] = PION_WEIGHT * point.pionDose(i);
            fast[3][i] = point.muonDose(i);
        }
        double[] slow = new double[Field.groups()];
        for (int g = 0; g < slow.length; g++) {
            slow[g] = FluenceCoefficients.neutron(Field.groupMeV(g));
        }
        return new BackwardField.Counts(fast, point.energyDose(), slow);
    }

    /** Effective dose (Sv, a second's for cosmic rays), slow neutrons by group. */
    private Particles effective(Beam beam, double[] slow) {
        double neutrons = fold(beam, 0, neutronCoefficient);
        double protons = fold(beam, 1, protonCoefficient) + fold(beam, MADE_PROTON, protonCoefficient);
        return new Particles(neutrons, slow(slow), protons, ions(beam, 2, 2, neutrons + protons),
                ions(beam, 3, CosmicSpectrum.GREATEST_CHARGE, neutrons + protons),
                PION_WEIGHT * point.pions(beam) + point.muons(beam), point.gammas(beam));
    }

    /**
     * Effective doses by direction under a level cover (Sv, a second's for cosmic rays): of what goes straight, of what
     * comes up, and for each direction down of what reactions made, as if from all sides, with its share in what comes
     * up (1).
     *
     * @param whole the dose of the field, which holds that of ions
     */
    double[] directions(Field field, Particles whole) {
        double[] numbers = new double[2 + 2 * Field.directions()];
        numbers[0] = whole.helium() + whole.heavy() + fold(field.beam(), 1, protonCoefficient);
        numbers[1] = made(field.level().up());
        for (int m = 0; m < Field.directions(); m++) {
            numbers[2 + 2 * m] = made(field.level().made().get(m));
            numbers[3 + 2 * m] = field.level().strength().get(m);
        }
        return numbers;
    }

    /**
     * What a beam counts (1/m2 and Sv): fluence of neutrons above 20 MeV, protons above 100, pions and muons above 20,
     * then effective dose of fast neutrons, protons, helium, pions and muons, electrons and gammas.
     */
    double[] counted(Beam beam) {
        double[] least = {20, 100, 20, 20};
        int[][] species = {{0}, {1, MADE_PROTON}, {PION}, {MUON}};
        double[] counted = new double[9];
        for (int k = 0; k < least.length; k++) {
            for (int s : species[k]) {
                for (int i = 0; i < grid.size(); i++) {
                    counted[k] += grid.energyMeV(i) < least[k] ? 0 : beam.fluence(s, i) * grid.widthMeV(i);
                }
            }
        }
        counted[4] = fold(beam, 0, neutronCoefficient);
        counted[5] = fold(beam, 1, protonCoefficient) + fold(beam, MADE_PROTON, protonCoefficient);
        counted[6] = ions(beam, 2, 2, 0);
        counted[7] = PION_WEIGHT * point.pions(beam) + point.muons(beam);
        counted[8] = point.gammas(beam);
        return counted;
    }

    /** Effective dose of what reactions made (Sv). */
    private double made(Beam beam) {
        return fold(beam, 0, neutronCoefficient) + fold(beam, MADE_PROTON, protonCoefficient)
                + PION_WEIGHT * point.pions(beam) + point.muons(beam) + point.gammas(beam);
    }

    /**
     * Effective dose equivalent of ions of some charges and of what they make in the body (Sv): at the skin where that
     * is next to nothing beside all other particles.
     */
    private double ions(Beam beam, int least, int greatest, double others) {
        Beam ions = beam.ions(least, greatest);
        if (ions.isEmpty()) {
            return 0;
        }
        double atSkin = point.at(ions).equivalent();
        return atSkin < NEGLIGIBLE * others ? atSkin : point.mean(ions).equivalent();
    }

    /** Effective dose of slow neutrons by group (Sv). */
    static double slow(double[] groups) {
        double sum = 0;
        for (int g = 0; g < groups.length; g++) {
            sum += groups[g] * FluenceCoefficients.neutron(Field.groupMeV(g));
        }
        return sum;
    }

    private double fold(Beam beam, int species, double[] weight) {
        double sum = 0;
        for (int i = 0; i < grid.size(); i++) {
            sum += beam.fluence(species, i) * grid.widthMeV(i) * weight[i];
        }
        return sum;
    }
}
