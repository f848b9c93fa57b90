// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.shielding.spectrum.CosmicSpectrum;
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
    private static final int MADE_PROTON = 30;

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

    /** Effective dose (Sv, a second's for cosmic rays), slow neutrons by group. */
    private Particles effective(Beam beam, double[] slow) {
        return new Particles(fold(beam, 0, neutronCoefficient), slow(slow),
                fold(beam, 1, protonCoefficient) + fold(beam, MADE_PROTON, protonCoefficient),
                ions(beam, 2, 2), ions(beam, 3, CosmicSpectrum.GREATEST_CHARGE),
                PION_WEIGHT * point.pions(beam) + point.muons(beam), point.gammas(beam));
    }

    /** Effective dose equivalent of ions of some charges and of what they make in the body (Sv). */
    private double ions(Beam beam, int least, int greatest) {
        Beam ions = beam.ions(least, greatest);
        return ions.isEmpty() ? 0 : point.mean(ions).equivalent();
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
