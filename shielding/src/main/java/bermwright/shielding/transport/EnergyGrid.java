// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.foundation.Require;

/**
 * Energies per nucleon on which spectra are carried, even in the logarithm from 1 MeV to 1 TeV; each stands for a bin
 * of width energy times step.
 */
public final class EnergyGrid {
    /** Least energy (MeV per nucleon). */
    public static final double LEAST_MEV = 1;
    private static final int DECADES = 6;

    private final double[] energies;
    private final double step;

    /**
     * A grid.
     *
     * @param pointsInDecade points in a factor ten of energy, 8 to 200
     */
    public EnergyGrid(int pointsInDecade) {
        Require.within("points in a decade", pointsInDecade, 8, 200, "1");
        energies = new double[DECADES * pointsInDecade + 1];
        step = Math.log(10) / pointsInDecade;
        for (int i = 0; i < energies.length; i++) {
            energies[i] = LEAST_MEV * Math.exp(i * step);
        }
    }

    /**
     * Number of energies.
     *
     * @return the number
     */
    public int size() {
        return energies.length;
    }

    /**
     * An energy of the grid.
     *
     * @param i index, from 0
     * @return kinetic energy per nucleon (MeV)
     */
    public double energyMeV(int i) {
        return energies[i];
    }

    /**
     * Width of the bin around an energy.
     *
     * @param i index, from 0
     * @return width (MeV per nucleon)
     */
    public double widthMeV(int i) {
        return energies[i] * step;
    }

    /**
     * Upper edge of the bin around an energy.
     *
     * @param i index, from 0
     * @return energy (MeV per nucleon)
     */
    public double upperMeV(int i) {
        return energies[i] * Math.exp(step / 2);
    }

    /**
     * Step of the logarithm.
     *
     * @return step (1)
     */
    public double step() {
        return step;
    }
}
