// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.Require;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Heights along a way that are nowhere steeper than a limit and lie as near the ground as can be: the sum of the
 * distances to the ground is the least over all such heights, to half a height step at each station.
 *
 * <p>By dynamic programming over stations and height steps; a height step is a whole part of the rise allowed between
 * stations, at most 5 cm.
 *
 * @see "Bellman (1957), Dynamic Programming"
 */
final class GradedProfile {
    private static final double GREATEST_STEP = 0.05;
    private static final int MOST_STATES = 40_000_000;

    private GradedProfile() {
    }

    /**
     * What the heights must keep to.
     *
     * @param spacing distance between stations (m), positive
     * @param grade   greatest rise per metre (1), positive
     * @param start   height wanted at the start (m), if any
     * @param end     height wanted at the end (m), if any
     */
    record Limits(double spacing, double grade, OptionalDouble start, OptionalDouble end) {
    }

    /** The heights; absent where start and end lie too far apart in height for the way between. */
    static Optional<double[]> leastMoved(double[] ground, Limits limits) {
        double rise = limits.spacing * limits.grade;
        Require.positive("rise between stations", rise, "m");
        int window = (int) Math.max(1, Math.ceil(rise / GREATEST_STEP));
        double step = rise / window;
        double low = Arrays.stream(ground).min().orElseThrow();
        double high = Arrays.stream(ground).max().orElseThrow();
        low = Math.min(low, Math.min(limits.start.orElse(low), limits.end.orElse(low)));
        high = Math.max(high, Math.max(limits.start.orElse(high), limits.end.orElse(high)));
        int levels = (int) Math.ceil((high - low) / step) + 1;
        Require.that((double) levels * ground.length < MOST_STATES,
                "a way of %s stations with %s height steps is too much; make the grade steeper or the way shorter.",
                ground.length, levels);
        double[] cost = new double[levels];
        int[][] from = new int[ground.length][];
        for (int i = 0; i < ground.length; i++) {
            OptionalDouble wanted = i == 0 ? limits.start : i == ground.length - 1 ? limits.end
                    : OptionalDouble.empty();
            from[i] = i == 0 ? new int[0] : slidingLeast(cost, window);
            double[] next = new double[levels];
            for (int level = 0; level < levels; level++) {
                double z = low + level * step;
                boolean allowed = wanted.isEmpty() || Math.abs(z - wanted.getAsDouble()) <= step / 2 * 1.000001;
                double before = i == 0 ? 0 : cost[from[i][level]];
                next[level] = allowed ? before + Math.abs(z - ground[i]) : Double.POSITIVE_INFINITY;
            }
            cost = next;
        }
        return traced(cost, from, low, step);
    }

    private static Optional<double[]> traced(double[] cost, int[][] from, double low, double step) {
        int level = 0;
        for (int i = 1; i < cost.length; i++) {
            level = cost[i] < cost[level] ? i : level;
        }
        if (Double.isInfinite(cost[level])) {
            return Optional.empty();
        }
        double[] heights = new double[from.length];
        for (int i = from.length - 1; i >= 0; i--) {
            heights[i] = low + level * step;
            level = i > 0 ? from[i][level] : level;
        }
        return Optional.of(heights);
    }

    /** For each level the cheapest level within a window of it, by a queue of falling candidates. */
    private static int[] slidingLeast(double[] cost, int window) {
        int n = cost.length;
        int[] least = new int[n];
        int[] queue = new int[n];
        int head = 0;
        int tail = 0;
        int added = 0;
        for (int level = 0; level < n; level++) {
            while (added < n && added <= level + window) {
                while (tail > head && cost[queue[tail - 1]] > cost[added]) {
                    tail--;
                }
                queue[tail++] = added++;
            }
            while (queue[head] < level - window) {
                head++;
            }
            least[level] = queue[head];
        }
        return least;
    }
}
