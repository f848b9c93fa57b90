// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

/**
 * Muons that charged pions decay into before they react: evenly over the energies that the decay in flight can reach.
 *
 * <p>They slow down like any charged particle and decay in flight, which matters in air. Capture, the electrons of
 * their decay and energy loss by radiation are left out, the last of which matters above 100 GeV, where they are few;
 * so are muons of kaons, which would add about a tenth.
 *
 * @see "Gaisser (1990), Cosmic Rays and Particle Physics, ch. 4: decay of pions in flight"
 */
final class Muons {
    static final double MUON_MEV = 105.658;
    private static final double PION_MEV = 139.57;
    /** Energy and momentum of the muon in the frame of its pion (MeV). */
    private static final double OWN_ENERGY = (PION_MEV * PION_MEV + MUON_MEV * MUON_MEV) / (2 * PION_MEV);
    private static final double OWN_MOMENTUM = (PION_MEV * PION_MEV - MUON_MEV * MUON_MEV) / (2 * PION_MEV);
    private static final double PION_DECAY_CM = 780.4;
    private static final double MUON_DECAY_CM = 65_864;

    private final EnergyGrid grid;
    private final double[][] made;

    Muons(EnergyGrid grid, double density) {
        this.grid = grid;
        made = new double[grid.size()][];
        for (int k = 0; k < made.length; k++) {
            made[k] = madeBy(grid.energyMeV(k), density);
        }
    }

    /** Decays of a pion (1 per g/cm2) in matter of a density (kg/m3). */
    static double decays(double energyMeV, double density) {
        double momentum = Math.sqrt(energyMeV * (energyMeV + 2 * PION_MEV)) / PION_MEV;
        return 1 / (momentum * PION_DECAY_CM * density / 1000);
    }

    /** Decays of a muon (1 per g/cm2) in matter of a density (kg/m3). */
    static double ownDecays(double energyMeV, double density) {
        double momentum = Math.sqrt(energyMeV * (energyMeV + 2 * MUON_MEV)) / MUON_MEV;
        return 1 / (momentum * MUON_DECAY_CM * density / 1000);
    }

    private double[] madeBy(double energyMeV, double density) {
        double gamma = energyMeV / PION_MEV + 1;
        double speed = Math.sqrt(1 - 1 / (gamma * gamma));
        double low = Math.max(0, gamma * (OWN_ENERGY - speed * OWN_MOMENTUM) - MUON_MEV);
        double high = gamma * (OWN_ENERGY + speed * OWN_MOMENTUM) - MUON_MEV;
        double[] perMeV = new double[grid.size()];
        double rate = decays(energyMeV, density);
        for (int i = 0; i < perMeV.length; i++) {
            double from = Math.max(low, i == 0 ? 0 : grid.upperMeV(i - 1));
            double to = Math.min(high, grid.upperMeV(i));
            perMeV[i] = to > from ? rate * (to - from) / (high - low) / grid.widthMeV(i) : 0;
        }
        return perMeV;
    }

    /** Muons of one energy that a pion of another makes (1/MeV per g/cm2). */
    double made(int pion, int muon) {
        return made[pion][muon];
    }

    /** Muons made by energy (1/MeV and m2 per g/cm2). */
    double[] source(double[] pions) {
        double[] sum = new double[grid.size()];
        for (int k = 0; k < sum.length; k++) {
            double number = pions[k] * grid.widthMeV(k);
            for (int i = 0; number > 0 && i < sum.length; i++) {
                sum[i] += number * made[k][i];
            }
        }
        return sum;
    }
}
