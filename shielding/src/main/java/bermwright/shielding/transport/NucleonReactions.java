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
    private static final double[][] LIGHT = Table.numbers(NucleonReactions.class, "nonelastic-light-targets.csv");
    private static final double GREATEST_LIGHT_WEIGHT = 5;
    /** Avogadro's number times 1 mb in cm2. */
    private static final double PER_GCM2 = 6.02214e-4;

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
        LogTable[] tables = neutron ? NEUTRONS : PROTONS;
        int last = WEIGHTS.length - 1;
        if (weight <= WEIGHTS[0] || weight >= WEIGHTS[last]) {
            int end = weight <= WEIGHTS[0] ? 0 : last;
            return tables[end].at(energyMeV) * Math.pow(weight / WEIGHTS[end], 2.0 / 3);
        }
        int i = 0;
        while (WEIGHTS[i + 1] < weight) {
            i++;
        }
        double low = Math.pow(WEIGHTS[i], 2.0 / 3);
        double share = (Math.pow(weight, 2.0 / 3) - low) / (Math.pow(WEIGHTS[i + 1], 2.0 / 3) - low);
        return tables[i].at(energyMeV) * (1 - share) + tables[i + 1].at(energyMeV) * share;
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
        LogTable[] tables = new LogTable[WEIGHTS.length];
        for (int i = 0; i < tables.length; i++) {
            tables[i] = new LogTable(energies, column(rows, i + 1), LogTable.Ends.FLAT);
        }
        return tables;
    }

    private static double[] column(double[][] rows, int index) {
        return java.util.Arrays.stream(rows).mapToDouble(row -> row[index]).toArray();
    }
}
