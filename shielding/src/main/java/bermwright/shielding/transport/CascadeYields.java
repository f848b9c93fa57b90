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
    /** Edges of the groups of slow neutrons in the table (MeV). */
    static final double[] SLOW_EDGES = {0.01, 0.1, 0.3, 0.6, 1, 1.5, 2.5, 3.5, 5, 7, 10, 14, 20};
    private static final double SLOW_PRODUCTS_UP_TO_MEV = 500;
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
        PION_AHEAD
    }

    /** Projectiles. */
    enum Projectile {
        /** Neutron. */
        NEUTRON("n"),
        /** Proton. */
        PROTON("p"),
        /** Charged pion, the mean of both charges. */
        PION("pi+", "pi-");

        private final List<String> names;

        Projectile(String... names) {
            this.names = List.of(names);
        }
    }

    /**
     * Yields at one energy.
     *
     * @param fast         by product, sums from the top of the bins down: particles above each bin edge
     * @param cosine       by product ahead (neutrons, protons, pions), mean cosine of equal parts of the bins
     * @param slow         neutrons by group
     * @param energy       MeV in neutral pions, slow protons, evaporated protons, hydrogen-2 and -3, helium, recoil
     * @param crossSection reaction cross section of the cascade (mb)
     */
    private record Row(double[][] fast, double[][] cosine, double[] slow, double[] energy, double crossSection) {
    }

    private CascadeYields(double[] energies, Row[] rows) {
        this.energies = energies;
        this.rows = rows;
    }

    static CascadeYields of(Projectile projectile, Element target) {
        return ALL.get(projectile.name() + nearestTarget(target));
    }

    /** Fast products above an energy, for a projectile energy (MeV). */
    double above(Fast product, double projectileMeV, double energyMeV) {
        if (projectileMeV <= FAST_FROM_MEV || energyMeV >= projectileMeV) {
            return 0;
        }
        double greatest = energies[energies.length - 1];
        if (projectileMeV <= greatest) {
            int i = interval(projectileMeV);
            double u = Math.log(Math.max(1, energyMeV / FAST_FROM_MEV)) / Math.log(projectileMeV / FAST_FROM_MEV);
            double w = weight(i, projectileMeV);
            return (1 - w) * sum(rows[i].fast[product.ordinal()], u)
                    + w * sum(rows[i + 1].fast[product.ordinal()], u);
        }
        double[] sums = rows[rows.length - 1].fast[product.ordinal()];
        double top = Math.log(greatest / FAST_FROM_MEV);
        double join = Math.log(SLOW_PRODUCTS_UP_TO_MEV / FAST_FROM_MEV) / top;
        double scaledJoin = SLOW_PRODUCTS_UP_TO_MEV * projectileMeV / greatest;
        if (energyMeV >= scaledJoin) {
            return sum(sums, Math.log(energyMeV * greatest / projectileMeV / FAST_FROM_MEV) / top);
        }
        double width = 0.5 / (sums.length - 1);
        double perLog = (sum(sums, join - width) - sum(sums, join + width)) / (2 * width * top);
        double gap = perLog * Math.log(scaledJoin / Math.max(energyMeV, SLOW_PRODUCTS_UP_TO_MEV));
        double u = Math.log(Math.max(1, Math.min(energyMeV, SLOW_PRODUCTS_UP_TO_MEV) / FAST_FROM_MEV)) / top;
        return sum(sums, u) + gap;
    }

    /** Mean cosine of fast products ahead (0 neutrons, 1 protons, 2 pions) at an energy. */
    double cosine(int product, double projectileMeV, double energyMeV) {
        if (projectileMeV <= FAST_FROM_MEV) {
            return 1;
        }
        int i = interval(projectileMeV);
        double w = weight(i, projectileMeV);
        double u = Math.log(Math.max(1, energyMeV / FAST_FROM_MEV)) / Math.log(projectileMeV / FAST_FROM_MEV);
        double[] low = rows[i].cosine[product];
        int bin = Math.min(low.length - 1, (int) (place(u) * low.length));
        return (1 - w) * low[bin] + w * rows[i + 1].cosine[product][bin];
    }

    /** Slow neutrons made, by group. */
    double[] slow(double projectileMeV) {
        return between(projectileMeV, true);
    }

    /** Energies (MeV) in neutral pions, slow protons, evaporated protons, hydrogen-2 and -3, helium, recoil. */
    double[] energy(double projectileMeV) {
        double[] energy = between(projectileMeV, false);
        energy[0] *= Math.max(1, projectileMeV / energies[energies.length - 1]);
        return energy;
    }

    /** Reaction cross section of the cascade (mb). */
    double crossSectionMb(double projectileMeV) {
        int i = interval(projectileMeV);
        double w = weight(i, projectileMeV);
        return (1 - w) * rows[i].crossSection + w * rows[i + 1].crossSection;
    }

    private double[] between(double projectileMeV, boolean slow) {
        int i = interval(projectileMeV);
        double w = weight(i, projectileMeV);
        double[] low = slow ? rows[i].slow : rows[i].energy;
        double[] high = slow ? rows[i + 1].slow : rows[i + 1].energy;
        double[] mixed = new double[low.length];
        for (int k = 0; k < mixed.length; k++) {
            mixed[k] = (1 - w) * low[k] + w * high[k];
        }
        return mixed;
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

    private static double sum(double[] sums, double u) {
        double place = place(Math.max(0, u)) * (sums.length - 1);
        int k = (int) place;
        return k >= sums.length - 1 ? 0 : sums[k] + (place - k) * (sums[k + 1] - sums[k]);
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
        String[] kinds = {"n forward", "n backward", "p forward", "p backward", "pi forward"};
        for (int i = 0; i < energies.length; i++) {
            double[][] fast = new double[kinds.length][];
            for (int k = 0; k < kinds.length; k++) {
                fast[k] = sums(mean(cases, energies[i], kinds[k]));
            }
            double[][] cosine = new double[3][];
            for (int k = 0; k < cosine.length; k++) {
                cosine[k] = mean(cases, energies[i], kinds[2 * k] + " cosine");
            }
            rows[i] = new Row(fast, cosine, mean(cases, energies[i], "slow"), mean(cases, energies[i], "energy"),
                    mean(cases, energies[i], "cross section mb")[0]);
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
