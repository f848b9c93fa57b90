// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.shielding.material.Table;
import bermwright.shielding.transport.LogTable;

/**
 * Effective dose per fluence for people in an isotropic field of protons or neutrons; the body's own shielding and
 * what is made inside it are part of the figures.
 *
 * <p>Published from 1 meV (neutrons) and 10 MeV (protons) to 10 GeV; beyond the ends the last power law is kept, below
 * 10 MeV protons are taken in proportion to their energy.
 *
 * @see "ICRP Publication 116 (2010), Annex A, isotropic irradiation"
 */
public final class FluenceCoefficients {
    /** From pSv cm2 to Sv m2. */
    private static final double SV_M2 = 1e-16;
    private static final double[][] PROTON_ROWS = Table.numbers(FluenceCoefficients.class, "icrp-116-protons.csv");
    private static final LogTable PROTONS = table(PROTON_ROWS);
    private static final LogTable NEUTRONS =
            table(Table.numbers(FluenceCoefficients.class, "icrp-116-neutrons.csv"));

    private static final LogTable AMBIENT =
            table(Table.numbers(FluenceCoefficients.class, "icrp-74-ambient.csv"));

    private FluenceCoefficients() {
    }

    /**
     * Effective dose per fluence of protons.
     *
     * @param energyMeV kinetic energy (MeV), positive
     * @return effective dose per fluence (Sv m2), positive
     */
    public static double proton(double energyMeV) {
        double first = PROTON_ROWS[0][0];
        return energyMeV < first ? PROTON_ROWS[0][1] * energyMeV / first * SV_M2 : PROTONS.at(energyMeV) * SV_M2;
    }

    /**
     * Effective dose per fluence of neutrons.
     *
     * @param energyMeV kinetic energy (MeV), positive
     * @return effective dose per fluence (Sv m2), positive
     */
    public static double neutron(double energyMeV) {
        return NEUTRONS.at(energyMeV) * SV_M2;
    }

    /**
     * Ambient dose equivalent H*(10) per fluence of neutrons up to 201 MeV, the quantity of survey instruments.
     *
     * @param energyMeV kinetic energy (MeV), positive
     * @return ambient dose equivalent per fluence (Sv m2), positive
     * @see "ICRP Publication 74 (1996), table A.42; from memory"
     */
    static double ambient(double energyMeV) {
        return AMBIENT.at(energyMeV) * SV_M2;
    }

    private static LogTable table(double[][] rows) {
        return new LogTable(java.util.Arrays.stream(rows).mapToDouble(r -> r[0]).toArray(),
                java.util.Arrays.stream(rows).mapToDouble(r -> r[1]).toArray(), LogTable.Ends.CONTINUED);
    }
}
