// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.shielding.material.Element;
import bermwright.shielding.material.Material;
import bermwright.shielding.material.Table;

/**
 * How often protons and neutrons react with the nuclei of a material, from the evaluated table; elements between its
 * columns are interpolated in A^(2/3).
 *
 * <p>Valid from 10 MeV to 100 GeV; below and above, the outermost value holds. Scatter of evaluations about 5 %.
 *
 * @see "Barashenkov and Polanski (1994), JINR E2-94-417"
 */
public final class NucleonReactions {
    private static final double[] WEIGHTS = {12.011, 15.999, 22.990, 26.982, 32.06, 40.078, 47.867, 55.845};
    private static final LogTable[] NEUTRONS = columns("nonelastic-neutrons.csv");
    private static final LogTable[] PROTONS = columns("nonelastic-protons.csv");
    private static final double[] TOTAL_WEIGHTS = {12.011, 15.999, 26.982, 40.078, 55.845};
    private static final LogTable[] TOTAL = columns("total-neutrons.csv");
    private static final double[][] LIGHT = Table.numbers(NucleonReactions.class, "nonelastic-light-targets.csv");
    private static final double GREATEST_LIGHT_WEIGHT = 5;
    /** Avogadro's number times 1 mb in cm2. */
    private static final double PER_GCM2 = 6.02214e-4;
    private static final double MB_IN_FM2 = 0.1;
    private static final double HBARC_MEV_FM = 197.327;
    private static final double NUCLEON_MEV = 938.92;

    private NucleonReactions() {
    }

    /**
     * Nonelastic cross section of a nucleon on an element.
     *
     * @param neutron   whether the nucleon is a neutron
     * @param element   the target
     * @param energyMeV kinetic energy (MeV), positive
     * @return cross section (mb), zero or more
     */
    public static double crossSectionMb(boolean neutron, Element element, double energyMeV) {
        double weight = element.atomicWeight();
        if (weight < GREATEST_LIGHT_WEIGHT) {
            return light(element.charge() == 1 ? 1 : 2, energyMeV);
        }
        return between(WEIGHTS, neutron ? NEUTRONS : PROTONS, weight, energyMeV);
    }

    private static double between(double[] weights, LogTable[] tables, double weight, double energyMeV) {
        int last = weights.length - 1;
        if (weight <= weights[0] || weight >= weights[last]) {
            int end = weight <= weights[0] ? 0 : last;
            return tables[end].at(energyMeV) * Math.pow(weight / weights[end], 2.0 / 3);
        }
        int i = 0;
        while (weights[i + 1] < weight) {
            i++;
        }
        double low = Math.pow(weights[i], 2.0 / 3);
        double share = (Math.pow(weight, 2.0 / 3) - low) / (Math.pow(weights[i + 1], 2.0 / 3) - low);
        return tables[i].at(energyMeV) * (1 - share) + tables[i + 1].at(energyMeV) * share;
    }

    /**
     * Elastic cross section of a nucleon of 20 MeV or more on a nucleus, that of neutrons for both: total less
     * nonelastic. Energy is hardly lost, but direction is.
     *
     * @param element   the target, heavier than helium; of lighter ones none
     * @param energyMeV kinetic energy (MeV), 20 or more
     * @return cross section (mb), zero or more
     */
    static double elasticMb(Element element, double energyMeV) {
        double weight = element.atomicWeight();
        return weight < GREATEST_LIGHT_WEIGHT ? 0 : Math.max(0, between(TOTAL_WEIGHTS, TOTAL, weight, energyMeV)
                - crossSectionMb(true, element, energyMeV));
    }

    /**
     * Mean cosine of elastic scattering: diffraction by a black disk as wide as the nonelastic cross section, which
     * falls as exp(-R2 q2/4) with the momentum transfer.
     *
     * @param element   the target, heavier than helium
     * @param energyMeV kinetic energy (MeV), 20 or more
     * @return mean cosine (1), 0 to 1
     */
    static double elasticCosine(Element element, double energyMeV) {
        double squareFm = crossSectionMb(true, element, energyMeV) * MB_IN_FM2 / Math.PI;
        double wave = Math.sqrt(energyMeV * (energyMeV + 2 * NUCLEON_MEV)) / HBARC_MEV_FM;
        double steepness = squareFm / 2 * wave * wave;
        return 1 / Math.tanh(steepness) - 1 / steepness;
    }

    /**
     * Nonelastic reactions per areal density in a material.
     *
     * @param neutron   whether the nucleon is a neutron
     * @param material  the material
     * @param energyMeV kinetic energy (MeV), positive
     * @return reactions per areal density (1 per g/cm2), positive; the inverse is the mean free path
     */
    public static double perGCm2(boolean neutron, Material material, double energyMeV) {
        double sum = 0;
        for (Material.Part part : material.parts()) {
            sum += part.moles() * PER_GCM2 * crossSectionMb(neutron, part.element(), energyMeV);
        }
        return sum;
    }

    private static double light(int column, double energyMeV) {
        if (energyMeV <= LIGHT[0][0]) {
            return LIGHT[0][column];
        }
        for (int i = 1; i < LIGHT.length; i++) {
            if (energyMeV <= LIGHT[i][0]) {
                double share = Math.log(energyMeV / LIGHT[i - 1][0]) / Math.log(LIGHT[i][0] / LIGHT[i - 1][0]);
                return LIGHT[i - 1][column] + share * (LIGHT[i][column] - LIGHT[i - 1][column]);
            }
        }
        return LIGHT[LIGHT.length - 1][column];
    }

    private static LogTable[] columns(String name) {
        double[][] rows = Table.numbers(NucleonReactions.class, name);
        double[] energies = column(rows, 0);
        LogTable[] tables = new LogTable[rows[0].length - 1];
        for (int i = 0; i < tables.length; i++) {
            tables[i] = new LogTable(energies, column(rows, i + 1), LogTable.Ends.FLAT);
        }
        return tables;
    }

    private static double[] column(double[][] rows, int index) {
        return java.util.Arrays.stream(rows).mapToDouble(row -> row[index]).toArray();
    }
}
