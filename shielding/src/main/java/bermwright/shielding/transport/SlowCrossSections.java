// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.shielding.material.Element;
import bermwright.shielding.material.Material;
import bermwright.shielding.material.Table;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Groups of slow neutrons in a material: transport and removal, and into which group a collision sends a neutron.
 *
 * <p>Elastic collisions spread evenly over the energies they can reach, narrowed by the mean cosine in the centre of
 * mass; inelastic ones leave an evaporation spectrum of temperature sqrt(8 E/A); loss to charged particles
 * ends a neutron.
 */
final class SlowCrossSections implements SlowNeutrons.Groups {
    /** Edges of the groups (MeV), the lowest one down to thermal energies. */
    static final double[] EDGES = edges();
    static final int GROUPS = EDGES.length - 1;
    private static final Map<String, double[][]> DATA = read();
    private static final double PER_GCM2 = 0.602214;
    private static final int POINTS = 12;
    private static final String KINDS = "ena";

    private final double[] transport = new double[GROUPS];
    private final double[] removal = new double[GROUPS];
    private final double[] total = new double[GROUPS];
    private final double[][] transfer = new double[GROUPS][GROUPS];
    private final double[][] ahead = new double[GROUPS][GROUPS];

    SlowCrossSections(Material material) {
        for (Material.Part part : material.parts()) {
            double[][] data = DATA.get(nearest(part.element()));
            for (int g = 0; g < GROUPS; g++) {
                double atoms = part.moles() * PER_GCM2;
                addElement(part, data[0][g] * atoms, data[1][g] * atoms, g);
                transport[g] += data[2][g] * atoms;
                removal[g] += data[2][g] * atoms;
                total[g] += (data[0][g] + data[1][g] + data[2][g]) * atoms;
            }
        }
        // Capture of thermal neutrons, about 0.2 b a nucleus; over the lethargy of the lowest group a tenth of it.
        removal[0] += 0.02 * PER_GCM2 / material.meanAtomicWeight();
    }

    @Override
    public int count() {
        return GROUPS;
    }

    @Override
    public double diffusion(int group) {
        return 1 / (3 * transport[group]);
    }

    @Override
    public double removal(int group) {
        return removal[group];
    }

    @Override
    public double transfer(int from, int to) {
        return transfer[from][to];
    }

    /** All collisions, and captures (1 per g/cm2). */
    double total(int group) {
        return total[group];
    }

    /** Mean cosine of the collisions that bring a neutron from one group into another or leave it in its own. */
    double cosine(int from, int to) {
        double number = from == to ? total[from] - removal[from] : transfer[from][to];
        return number <= 0 ? 0 : Math.min(1, ahead[from][to] / number);
    }

    private void addElement(Material.Part part, double elastic, double inelastic, int group) {
        double mass = part.element().atomicWeight();
        double middle = Math.sqrt(EDGES[group] * EDGES[group + 1]);
        double cosine = mass < 2 ? 0 : 0.55 * middle / (middle + 4);
        double forward = Math.min(0.7, 2 / (3 * mass) + cosine);
        transport[group] += elastic * (1 - forward) + inelastic;
        double bottom = (mass - 1) / (mass + 1);
        double loss = (1 - bottom * bottom) * (1 - cosine);
        for (int p = 0; p < POINTS; p++) {
            double energy = EDGES[group] * Math.pow(EDGES[group + 1] / EDGES[group], (p + 0.5) / POINTS);
            for (int to = 0; to <= group; to++) {
                double low = to == 0 ? 0 : EDGES[to];
                double share = overlap(energy * (1 - loss), energy, low, EDGES[to + 1]) * elastic;
                ahead[group][to] += share * forward / POINTS;
                share += evaporated(energy, mass, low, EDGES[to + 1]) * inelastic;
                if (to < group) {
                    transfer[group][to] += share / POINTS;
                    removal[group] += share / POINTS;
                }
            }
        }
    }

    private static double overlap(double from, double to, double low, double high) {
        double width = Math.min(to, high) - Math.max(from, low);
        return width <= 0 ? 0 : width / Math.max(1e-12, to - from);
    }

    /** Share of an evaporation spectrum E exp(-E/T), cut off at the energy, between two energies. */
    private static double evaporated(double energy, double mass, double low, double high) {
        double t = Math.sqrt(8 * energy / mass);
        double all = moment(energy / t);
        return all <= 0 ? 0 : Math.max(0, moment(Math.min(high, energy) / t) - moment(Math.min(low, energy) / t)) / all;
    }

    private static double moment(double x) {
        return 1 - (1 + x) * Math.exp(-x);
    }

    private static String nearest(Element element) {
        String best = "H";
        int distance = Integer.MAX_VALUE;
        for (String symbol : DATA.keySet()) {
            int d = Math.abs(Element.of(symbol).charge() - element.charge());
            if (d < distance && !(symbol.equals("H") && element.charge() > 1)) {
                distance = d;
                best = symbol;
            }
        }
        return best;
    }

    private static Map<String, double[][]> read() {
        Map<String, double[][]> data = new LinkedHashMap<>();
        for (String[] row : Table.rows(SlowCrossSections.class, "slow-neutrons.csv", ",")) {
            double[] values = java.util.Arrays.stream(row).skip(2).mapToDouble(Double::parseDouble).toArray();
            data.computeIfAbsent(row[0], k -> new double[KINDS.length()][GROUPS])[KINDS.indexOf(row[1])] = values;
        }
        return data;
    }

    private static double[] edges() {
        double[] edges = new double[CascadeYields.SLOW_EDGES.length + 1];
        edges[0] = 1e-7;
        System.arraycopy(CascadeYields.SLOW_EDGES, 0, edges, 1, CascadeYields.SLOW_EDGES.length);
        return edges;
    }
}
