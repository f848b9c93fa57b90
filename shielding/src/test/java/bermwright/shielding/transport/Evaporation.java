// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import java.util.List;
import java.util.SplittableRandom;

/**
 * Evaporation of an excited nucleus: neutron, proton, deuteron, triton, helium-3 and alpha by the statistical model.
 *
 * @see "Weisskopf (1937), Phys. Rev. 52, 295; Dostrovsky, Fraenkel and Friedlander (1959), Phys. Rev. 116, 683 (inverse
 *     cross sections); level density A/8 per MeV, common practice; from memory"
 */
final class Evaporation {
    /** One emitted particle: mass and charge number and kinetic energy (MeV). */
    record Emission(int mass, int charge, double energy) {
    }

    private static final int[][] EJECTILES = {{1, 0, 2}, {1, 1, 2}, {2, 1, 3}, {3, 1, 2}, {3, 2, 2}, {4, 2, 1}};
    private static final int POINTS = 32;
    private static final double LEVELS = 8;
    private static final int LEAST_MASS = 5;

    private Evaporation() {
    }

    /** Emits until nothing more can leave, adds the emissions to the list and answers what is left for gammas (MeV). */
    static double cool(Residue residue, SplittableRandom random, List<Emission> emissions) {
        int a = residue.mass();
        int z = residue.charge();
        double excitation = residue.excitation();
        double[][] spectra = new double[EJECTILES.length][POINTS];
        while (a > LEAST_MASS && excitation > 0) {
            double total = 0;
            double[] widths = new double[EJECTILES.length];
            double[] free = new double[EJECTILES.length];
            for (int j = 0; j < EJECTILES.length; j++) {
                free[j] = fill(a, z, excitation, j, spectra[j]);
                for (double value : spectra[j]) {
                    widths[j] += value;
                }
                total += widths[j];
            }
            if (!(total > 0)) {
                return excitation;
            }
            double draw = random.nextDouble() * total;
            int j = 0;
            while (j < EJECTILES.length - 1 && draw >= widths[j]) {
                draw -= widths[j++];
            }
            int k = 0;
            while (k < POINTS - 1 && draw >= spectra[j][k]) {
                draw -= spectra[j][k++];
            }
            int[] e = EJECTILES[j];
            double barrier = barrier(a, z, e);
            double energy = barrier + free[j] * (k + random.nextDouble()) / POINTS;
            emissions.add(new Emission(e[0], e[1], energy));
            excitation -= energy + separation(a, z, e);
            a -= e[0];
            z -= e[1];
        }
        return excitation;
    }

    private static double separation(int a, int z, int[] e) {
        return Nuclide.restEnergy(a - e[0], z - e[1]) + Nuclide.restEnergy(e[0], e[1]) - Nuclide.restEnergy(a, z);
    }

    private static double barrier(int a, int z, int[] e) {
        if (e[1] == 0) {
            return 0;
        }
        double full = 1.44 * e[1] * (z - e[1]) / (1.5 * (Math.cbrt(a - e[0]) + (e[0] == 1 ? 0 : 0.8)));
        return full * (e[1] == 1 ? 0.7 : 0.83);
    }

    /** Fills the spectrum of one ejectile and answers the energy there is above its barrier (MeV). */
    private static double fill(int a, int z, double excitation, int j, double[] spectrum) {
        int[] e = EJECTILES[j];
        java.util.Arrays.fill(spectrum, 0);
        int left = a - e[0];
        int leftCharge = z - e[1];
        if (leftCharge < 0 || leftCharge > left || left < 1) {
            return 0;
        }
        double barrier = barrier(a, z, e);
        double free = excitation - separation(a, z, e) - barrier;
        if (free <= 0) {
            return 0;
        }
        double level = left / LEVELS;
        double third = Math.cbrt(left);
        double alpha = 0.76 + 2.2 / third;
        double beta = e[1] == 0 ? (2.12 / (third * third) - 0.05) / alpha : 0;
        double weight = e[2] * e[0] * third * third * (e[1] == 0 ? alpha : 1) * free / POINTS;
        double top = 2 * Math.sqrt(a / LEVELS * excitation);
        for (int k = 0; k < POINTS; k++) {
            double over = free * (k + 0.5) / POINTS;
            spectrum[k] = weight * (over + beta) * Math.exp(2 * Math.sqrt(level * (free - over)) - top);
        }
        return free;
    }
}
