// SPDX-License-Identifier: Apache-2.0
package bermwright.regolith;

import bermwright.foundation.Require;
import java.util.Arrays;
import java.util.List;

/**
 * A quantity by depth below the natural ground: straight lines between the points given, the first value above the
 * first point and the last below the last.
 */
final class DepthProfile {
    private final double[] depths;
    private final double[] values;
    private final double[] integrals;

    private DepthProfile(double[] depths, double[] values) {
        this.depths = depths;
        this.values = values;
        integrals = new double[depths.length];
        integrals[0] = depths[0] * values[0];
        for (int i = 1; i < depths.length; i++) {
            integrals[i] = integrals[i - 1] + (depths[i] - depths[i - 1]) * (values[i] + values[i - 1]) / 2;
        }
    }

    /**
     * A profile through points.
     *
     * @param quantity what it is, in words, for messages
     * @param depths   depths (m), zero or more, growing, at least one
     * @param values   as many values
     */
    static DepthProfile through(String quantity, List<Double> depths, List<Double> values) {
        Require.that(!depths.isEmpty(), "%s by depth has no points; at least 1 is needed.", quantity);
        for (int i = 0; i < depths.size(); i++) {
            Require.notNegative("depth of " + quantity, depths.get(i), "m");
            Require.that(i == 0 || depths.get(i) > depths.get(i - 1), "depths of %s do not grow: %s m after %s m",
                    quantity, depths.get(i), i == 0 ? "" : depths.get(i - 1));
        }
        return new DepthProfile(depths.stream().mapToDouble(d -> d).toArray(),
                values.stream().mapToDouble(v -> v).toArray());
    }

    boolean isConstant() {
        return depths.length == 1;
    }

    double greatest() {
        return Arrays.stream(values).max().orElseThrow();
    }

    double at(double depth) {
        int below = below(depth);
        return below == 0 ? values[0] : below == depths.length ? values[below - 1] : between(below, depth);
    }

    /** From the surface to a depth; negative above the surface, at the first value. */
    double integral(double depth) {
        int below = below(depth);
        if (below == 0) {
            return depth * values[0];
        }
        double beside = below == depths.length ? values[below - 1] : between(below, depth);
        return integrals[below - 1] + (depth - depths[below - 1]) * (values[below - 1] + beside) / 2;
    }

    double mean(double top, double bottom) {
        return bottom - top < 1e-9 ? at(top) : (integral(bottom) - integral(top)) / (bottom - top);
    }

    private double between(int below, double depth) {
        double share = (depth - depths[below - 1]) / (depths[below] - depths[below - 1]);
        return values[below - 1] + share * (values[below] - values[below - 1]);
    }

    /** Number of the first point at or below a depth; the count of points where there is none. */
    private int below(double depth) {
        int found = Arrays.binarySearch(depths, depth);
        return found >= 0 ? found : -found - 1;
    }
}
