// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

/** A beam of particles of one kind about one energy, for comparing with coefficients by energy. */
public final class NarrowBeam {
    /** Standard deviation of the logarithm of energy; wide beside a fine grid's steps, so that marching keeps it. */
    private static final double WIDTH = 0.2;

    private NarrowBeam() {
    }

    /** Particles of a charge, their energies (MeV per nucleon) spread by a fifth about the one given. */
    public static Beam of(EnergyGrid grid, int charge, double energyMeV) {
        Beam beam = Beam.made(new int[] {0}, new double[1][grid.size()], 0);
        for (int i = 0; i < grid.size(); i++) {
            double off = Math.log(grid.energyMeV(i) / energyMeV) / WIDTH;
            beam.of(charge)[i] = Math.exp(-off * off / 2) / grid.energyMeV(i);
        }
        return beam;
    }
}
