// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.foundation.Require;
import bermwright.shielding.material.Material;

/**
 * Stopping power and range of protons and heavier ions in a material.
 *
 * <p>Above 8 MeV per nucleon Bethe's formula with density and shell terms; from 1 to 8 MeV the shell term runs
 * evenly in the logarithm of energy into the one that the low-energy fit implies at 1 MeV; below 1 MeV the fit.
 * Heavier ions scale by the square of their effective charge. Valid from 0.01 MeV to 100 GeV per nucleon; within
 * 1 % of handbook tables for protons above 30 MeV, 2 % above 1 MeV, 4 % for ions above 30 MeV per nucleon.
 *
 * @see "ICRU Report 49 (1993), Stopping powers and ranges for protons and alpha particles, section 2"
 */
public final class Stopping {
    /** Least energy (MeV per nucleon). */
    public static final double LEAST_MEV = 0.01;
    /** Greatest energy (MeV per nucleon). */
    public static final double GREATEST_MEV = 1e5;

    private static final double BETHE_CONSTANT = 0.307075;
    private static final double ELECTRON_MEV = 0.51099895;
    private static final double PROTON_MEV = 938.272;
    private static final double FINE_STRUCTURE_INVERSE = 137.036;
    private static final double SHELL_FORMULA_FROM_MEV = 8;
    private static final double FIT_UP_TO_MEV = 1;
    private static final int POINTS_IN_DECADE = 100;

    private final DensityTerm density;
    private final SlowProtonFit fit;
    private final double electrons;
    private final double excitationEV;
    private final double shellAtFit;
    private final LogTable range;
    private final LogTable energy;

    private Stopping(Material material) {
        electrons = material.electrons();
        excitationEV = material.excitationEV();
        density = DensityTerm.of(material);
        fit = new SlowProtonFit(material);
        shellAtFit = betheNumber(FIT_UP_TO_MEV) - fit.stopping(FIT_UP_TO_MEV) / factor(FIT_UP_TO_MEV);
        int points = (int) Math.round(Math.log10(GREATEST_MEV / LEAST_MEV)) * POINTS_IN_DECADE + 1;
        double[] energies = new double[points];
        double[] ranges = new double[points];
        double step = Math.log(GREATEST_MEV / LEAST_MEV) / (points - 1);
        for (int i = 0; i < points; i++) {
            energies[i] = LEAST_MEV * Math.exp(i * step);
            ranges[i] = i == 0 ? 2 * LEAST_MEV / protonMeVPerGCm2(LEAST_MEV)
                    : ranges[i - 1] + lengthBetween(energies[i - 1], step);
        }
        range = new LogTable(energies, ranges, LogTable.Ends.CONTINUED);
        energy = new LogTable(ranges, energies, LogTable.Ends.CONTINUED);
    }

    /**
     * Stopping in a material.
     *
     * @param material the material
     * @return its stopping powers and ranges
     */
    public static Stopping in(Material material) {
        return new Stopping(material);
    }

    /**
     * Mass stopping power of a proton.
     *
     * @param energyMeV kinetic energy (MeV), 0.01 to 1e5
     * @return energy lost per areal density (MeV per g/cm2), positive
     * @throws IllegalArgumentException if the energy is outside its range
     */
    public double protonMeVPerGCm2(double energyMeV) {
        Require.within("energy", energyMeV, LEAST_MEV, GREATEST_MEV * 1.0001, "MeV");
        if (energyMeV < FIT_UP_TO_MEV) {
            return fit.stopping(energyMeV);
        }
        return factor(energyMeV) * (betheNumber(energyMeV) - shell(energyMeV));
    }

    /**
     * Mass stopping power of an ion.
     *
     * @param charge    nuclear charge Z (1), 1 to 28
     * @param energyMeV kinetic energy per nucleon (MeV), 0.01 to 1e5
     * @return energy lost per areal density by the whole ion (MeV per g/cm2), positive
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public double ionMeVPerGCm2(int charge, double energyMeV) {
        double effective = effectiveCharge(charge, energyMeV);
        return protonMeVPerGCm2(energyMeV) * effective * effective;
    }

    /**
     * Range of a proton, slowing down continuously.
     *
     * @param energyMeV kinetic energy (MeV), 0.01 to 1e5
     * @return range (g/cm2), positive
     */
    public double protonRangeGCm2(double energyMeV) {
        return range.at(energyMeV);
    }

    /**
     * Energy of a proton with a range.
     *
     * @param rangeGCm2 range (g/cm2), positive
     * @return kinetic energy (MeV), positive
     */
    public double protonEnergyMeV(double rangeGCm2) {
        return energy.at(rangeGCm2);
    }

    /**
     * Charge of an ion that has picked up electrons, beside the same for a proton.
     *
     * @param charge    nuclear charge Z (1), 1 to 28
     * @param energyMeV kinetic energy per nucleon (MeV), positive
     * @return effective charge (1), above 0 and at most Z
     * @see "Pierce and Blann (1968), Phys. Rev. 173, 390"
     */
    public static double effectiveCharge(int charge, double energyMeV) {
        if (charge == 1) {
            return 1;
        }
        double speed = Math.sqrt(betaSquare(energyMeV)) * FINE_STRUCTURE_INVERSE;
        double ion = charge * -Math.expm1(-0.95 * speed * Math.pow(charge, -2.0 / 3));
        return ion / -Math.expm1(-0.95 * speed);
    }

    /**
     * Square of the speed over that of light.
     *
     * @param energyMeV kinetic energy per nucleon (MeV), positive
     * @return beta squared (1), 0 to 1
     */
    public static double betaSquare(double energyMeV) {
        double gamma = 1 + energyMeV / PROTON_MEV;
        return 1 - 1 / (gamma * gamma);
    }

    private double factor(double energyMeV) {
        return BETHE_CONSTANT * electrons / betaSquare(energyMeV);
    }

    /** Bethe's number with the density term and without the shell term. */
    private double betheNumber(double energyMeV) {
        double gamma = 1 + energyMeV / PROTON_MEV;
        double beta2 = betaSquare(energyMeV);
        double electronTwice = 2 * ELECTRON_MEV * beta2 * gamma * gamma;
        double ratio = ELECTRON_MEV / PROTON_MEV;
        double greatestTransfer = electronTwice / (1 + 2 * gamma * ratio + ratio * ratio);
        double excitation = excitationEV * 1e-6;
        return 0.5 * Math.log(electronTwice * greatestTransfer / (excitation * excitation)) - beta2
                - 0.5 * density.at(Math.sqrt(beta2) * gamma);
    }

    /** Shell correction over charge, C/Z. */
    private double shell(double energyMeV) {
        if (energyMeV >= SHELL_FORMULA_FROM_MEV) {
            return shellFormula(energyMeV);
        }
        double share = Math.log(energyMeV / FIT_UP_TO_MEV) / Math.log(SHELL_FORMULA_FROM_MEV / FIT_UP_TO_MEV);
        return shellAtFit + share * (shellFormula(SHELL_FORMULA_FROM_MEV) - shellAtFit);
    }

    /** Barkas and Berger (1964), NASA SP-3013, equation for the shell correction; over the mean charge. */
    private double shellFormula(double energyMeV) {
        double gamma = 1 + energyMeV / PROTON_MEV;
        double eta2 = 1 / (betaSquare(energyMeV) * gamma * gamma);
        double i2 = excitationEV * excitationEV * 1e-6;
        double i3 = i2 * excitationEV * 1e-3;
        double c = eta2 * ((0.422377 + eta2 * (0.0304043 - eta2 * 0.00038106)) * i2
                + (3.850190 + eta2 * (-0.1667989 + eta2 * 0.00157955)) * i3);
        return c / fit.meanCharge();
    }

    private double lengthBetween(double from, double step) {
        double sum = from / protonMeVPerGCm2(from);
        sum += 4 * from * Math.exp(step / 2) / protonMeVPerGCm2(from * Math.exp(step / 2));
        double to = Math.min(from * Math.exp(step), GREATEST_MEV);
        return (sum + to / protonMeVPerGCm2(to)) * step / 6;
    }
}
