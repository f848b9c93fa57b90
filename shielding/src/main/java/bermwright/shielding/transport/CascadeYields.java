// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.shielding.material.Element;
import bermwright.shielding.material.Table;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What one nonelastic reaction of a nucleon or charged pion with a nucleus makes, from a table that an intranuclear
 * cascade with evaporation filled; above its last energy the slow products stay as they are and the fast ones keep
 * their share of the projectile's energy (limiting fragmentation and scaling).
 */
final class CascadeYields {
    /** Fast products are followed from here on, slower neutrons diffuse (MeV). */
    static final double FAST_FROM_MEV = 20;
    /** Energy that stands for a stopped negative pion, its rest energy (MeV). */
    static final double STOPPED_MEV = 140;
    /** Edges of the groups of slow neutrons in the table (MeV). */
    static final double[] SLOW_EDGES = {0.01, 0.1, 0.3, 0.6, 1, 1.5, 2.5, 3.5, 5, 7, 10, 14, 20};
    private static final String[] KINDS = {"n forward", "n backward", "p forward", "p backward", "pi forward",
        "pi backward"};
    private static final int BINS = 48;
    private static final int COSINES = 12;
    private static final int ENERGIES = 7;
    private static final Map<String, CascadeYields> ALL = read();

    private final double[] energies;
    private final Row[] rows;

    /** Fast products, in the order of the table. */
    enum Fast {
        /** Neutrons into the half space ahead. */
        NEUTRON_AHEAD,
        /** Neutrons into the half space behind. */
        NEUTRON_BACK,
        /** Protons ahead. */
        PROTON_AHEAD,
        /** Protons back. */
        PROTON_BACK,
        /** Charged pions ahead. */
        PION_AHEAD,
        /** Charged pions back. */
        PION_BACK
    }

    /** Projectiles. */
    enum Projectile {
        /** Neutron. */
        NEUTRON("n"),
        /** Proton. */
        PROTON("p"),
        /** Charged pion, the mean of both charges. */
        PION("pi+", "pi-"),
        /** Negative pion that came to rest; its bins are those of a projectile of {@link #STOPPED_MEV}. */
        STOPPED("stopped pi-");

        private final List<String> names;

        Projectile(String... names) {
            this.names = List.of(names);
        }
    }

    /**
     * Yields at one energy.
     *
     * @param fast         by product, sums from the top of the bins down: particles above each bin edge
     * @param cosine       by product, mean cosine of equal parts of the bins
     * @param slow         neutrons by group
     * @param energy       MeV in neutral pions, slow protons, evaporated protons, hydrogen-2 and -3, helium, recoil,
     *                     gammas of the nucleus
     * @param slowPions    charged pions too slow to be followed, and the negative ones among them
     * @param crossSection reaction cross section of the cascade (mb)
     */
    record Row(double[][] fast, double[][] cosine, double[] slow, double[] energy, double[] slowPions,
            double crossSection) {
        /** A row to add to. */
        static Row nothing() {
            return new Row(new double[KINDS.length][BINS + 1], new double[KINDS.length][COSINES],
                    new double[SLOW_EDGES.length - 1], new double[ENERGIES], new double[2], 0);
        }

        /** Adds another row; until {@link #averaged} cosines are sums over particles. */
        private void add(Row other, double factor) {
            for (int k = 0; k < fast.length; k++) {
                add(fast[k], other.fast[k], factor);
                for (int c = 0; c < COSINES; c++) {
                    cosine[k][c] += factor * other.cosine[k][c] * other.count(k, c);
                }
            }
            add(slow, other.slow, factor);
            add(energy, other.energy, factor);
            add(slowPions, other.slowPions, factor);
        }

        private static void add(double[] sum, double[] other, double factor) {
            for (int i = 0; i < sum.length; i++) {
                sum[i] += factor * other[i];
            }
        }

        private double count(int kind, int part) {
            int each = BINS / COSINES;
            return fast[kind][part * each] - fast[kind][(part + 1) * each];
        }

        /** The same with mean cosines. */
        Row averaged() {
            double[][] mean = new double[KINDS.length][COSINES];
            for (int k = 0; k < mean.length; k++) {
                for (int c = 0; c < COSINES; c++) {
                    double count = count(k, c);
                    mean[k][c] = count > 0 ? cosine[k][c] / count : k % 2 == 0 ? 1 : -1;
                }
            }
            return new Row(fast, mean, slow, energy, slowPions, crossSection);
        }
    }

    private CascadeYields(double[] energies, Row[] rows) {
        this.energies = energies;
        this.rows = rows;
    }

    static CascadeYields of(Projectile projectile, Element target) {
        return ALL.get(projectile.name() + nearestTarget(target));
    }

    /** Last energy of the table (MeV). */
    double greatestMeV() {
        return energies[energies.length - 1];
    }

    /** Adds what a reaction at an energy (MeV) makes, times a factor; mean cosines by how many there are. */
    void addTo(Row sum, double projectileMeV, double factor) {
        int i = interval(projectileMeV);
        double w = weight(i, projectileMeV);
        sum.add(rows[i], factor * (1 - w));
        sum.add(rows[i + 1], factor * w);
    }

    /** Reaction cross section of the cascade (mb). */
    double crossSectionMb(double projectileMeV) {
        int i = interval(projectileMeV);
        double w = weight(i, projectileMeV);
        return (1 - w) * rows[i].crossSection + w * rows[i + 1].crossSection;
    }

    private int interval(double projectileMeV) {
        int i = 0;
        while (i < energies.length - 2 && energies[i + 1] < projectileMeV) {
            i++;
        }
        return i;
    }

    private double weight(int i, double projectileMeV) {
        double w = Math.log(projectileMeV / energies[i]) / Math.log(energies[i + 1] / energies[i]);
        return Math.max(0, Math.min(1, w));
    }

    /**
     * Place among the bins, 0 to 1, of a share of the way from 20 MeV to the projectile's energy in the logarithm: bins
     * grow narrow towards the projectile's own energy, near which elastic collisions leave nucleons.
     */
    static double place(double share) {
        double rest = Math.cbrt(Math.max(0, 1 - share));
        return 1 - rest * rest;
    }

    private static int nearestTarget(Element element) {
        int charge = element.charge();
        int[] charges = {6, 7, 8, 12, 13, 14, 20, 26};
        int[] greatest = {6, 7, 10, 12, 13, 16, 21, 99};
        for (int i = 0; i < greatest.length; i++) {
            if (charge <= greatest[i]) {
                return charges[i];
            }
        }
        throw new IllegalStateException("no target for charge " + charge);
    }

    private static Map<String, CascadeYields> read() {
        Map<String, Map<Double, Map<String, double[]>>> table = new HashMap<>();
        for (String[] row : Table.rows(CascadeYields.class, "cascade-yields.csv", ",")) {
            double[] values = java.util.Arrays.stream(row[5].split(" ")).mapToDouble(Double::parseDouble).toArray();
            table.computeIfAbsent(row[0] + row[2], k -> new HashMap<>())
                    .computeIfAbsent(Double.valueOf(row[3]), k -> new HashMap<>()).put(row[4], values);
        }
        Map<String, CascadeYields> all = new HashMap<>();
        for (Projectile projectile : Projectile.values()) {
            for (int charge : new int[] {6, 7, 8, 12, 13, 14, 20, 26}) {
                List<Map<Double, Map<String, double[]>>> cases = new ArrayList<>();
                projectile.names.forEach(name -> cases.add(table.get(name + charge)));
                all.put(projectile.name() + charge, mean(cases));
            }
        }
        return all;
    }

    private static CascadeYields mean(List<Map<Double, Map<String, double[]>>> cases) {
        double[] energies = cases.get(0).keySet().stream().mapToDouble(Double::doubleValue).sorted().toArray();
        Row[] rows = new Row[energies.length];
        for (int i = 0; i < energies.length; i++) {
            double[][] fast = new double[KINDS.length][];
            for (int k = 0; k < KINDS.length; k++) {
                fast[k] = sums(mean(cases, energies[i], KINDS[k]));
            }
            double[][] cosine = new double[KINDS.length][];
            for (int k = 0; k < cosine.length; k++) {
                cosine[k] = mean(cases, energies[i], KINDS[k] + " cosine");
            }
            rows[i] = new Row(fast, cosine, mean(cases, energies[i], "slow"), mean(cases, energies[i], "energy"),
                    mean(cases, energies[i], "slow pions"), mean(cases, energies[i], "cross section mb")[0]);
        }
        if (energies.length == 1) {
            return new CascadeYields(new double[] {energies[0], energies[0] + 1}, new Row[] {rows[0], rows[0]});
        }
        return new CascadeYields(energies, rows);
    }

    private static double[] mean(List<Map<Double, Map<String, double[]>>> cases, double energy, String kind) {
        double[] mean = null;
        for (Map<Double, Map<String, double[]>> one : cases) {
            double[] values = one.get(energy).get(kind);
            mean = mean == null ? new double[values.length] : mean;
            for (int k = 0; k < values.length; k++) {
                mean[k] += values[k] / cases.size();
            }
        }
        return mean;
    }

    private static double[] sums(double[] bins) {
        double[] sums = new double[bins.length + 1];
        for (int k = bins.length - 1; k >= 0; k--) {
            sums[k] = sums[k + 1] + bins[k];
        }
        return sums;
    }
}
