// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.spectrum;

import bermwright.foundation.Require;
import bermwright.shielding.material.Table;

/**
 * Galactic cosmic rays from hydrogen to nickel outside the Earth's field, by one modulation parameter W:
 * flux = C beta^alpha R^-gamma [R/(R+R0)]^Delta, with R0 = 0.37 + 3e-4 W^1.45 GV and Delta = 0.02 W + 4.7.
 *
 * <p>Valid from 10 MeV per nucleon, W 0 (deepest solar minimum) to 200 (strong maximum); scatter 10 to 20 %.
 *
 * @param modulationW modulation W (1), -20 to 200
 * @see "Matthiae, Berger, Mrigakshi and Reitz (2013), Adv. Space Res. 51, 329-338"
 */
public record CosmicSpectrum(double modulationW) {
    /** Least modulation, below every solar minimum seen. */
    public static final double LEAST_W = -20;
    /** Greatest modulation. */
    public static final double GREATEST_W = 200;
    /** Greatest charge, nickel. */
    public static final int GREATEST_CHARGE = 28;

    private static final double[][] SPECIES =
            Table.numbers(CosmicSpectrum.class, "single-parameter-2013.csv");
    private static final double PROTON_GEV = 0.938;
    private static final double NUCLEON_GEV = 0.939;

    /** Refuses a modulation outside the model. */
    public CosmicSpectrum {
        Require.within("modulation W", modulationW, LEAST_W, GREATEST_W, "1");
    }

    /**
     * Mean mass number of a species.
     *
     * @param charge charge Z (1), 1 to 28
     * @return mass number A (1), positive
     */
    public static double massNumber(int charge) {
        return species(charge)[1];
    }

    /**
     * Rigidity R0 of the modulation.
     *
     * @return rigidity (GV), positive
     */
    public double modulationGV() {
        return 0.37 + Math.signum(modulationW) * 3e-4 * Math.pow(Math.abs(modulationW), 1.45);
    }

    /**
     * Flux of a species.
     *
     * @param charge    charge Z (1), 1 to 28
     * @param energyMeV kinetic energy per nucleon (MeV), positive
     * @return flux per solid angle and energy per nucleon (1/(m2 s sr MeV)), positive
     */
    public double flux(int charge, double energyMeV) {
        Require.positive("energy", energyMeV, "MeV");
        double[] row = species(charge);
        double m = charge == 1 ? PROTON_GEV : NUCLEON_GEV;
        double t = energyMeV / 1000;
        double momentum = Math.sqrt(t * (t + 2 * m));
        double rigidity = row[1] / charge * momentum;
        double beta = momentum / (t + m);
        double perGV = row[2] * Math.pow(beta, row[4]) * Math.pow(rigidity, -row[3])
                * Math.pow(rigidity / (rigidity + modulationGV()), 0.02 * modulationW + 4.7);
        return perGV * row[1] / charge * 1e-3 / beta;
    }

    /**
     * Rigidity of a species at an energy.
     *
     * @param charge    charge Z (1), 1 to 28
     * @param energyMeV kinetic energy per nucleon (MeV), positive
     * @return rigidity (GV), positive
     */
    public static double rigidityGV(int charge, double energyMeV) {
        double m = charge == 1 ? PROTON_GEV : NUCLEON_GEV;
        double t = energyMeV / 1000;
        return massNumber(charge) / charge * Math.sqrt(t * (t + 2 * m));
    }

    private static double[] species(int charge) {
        Require.within("charge", charge, 1, GREATEST_CHARGE, "1");
        return SPECIES[charge - 1];
    }
}
