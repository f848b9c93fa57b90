// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.foundation.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/**
 * Cheapest ways from one place to all others over drivable ground, to sixteen neighbours.
 *
 * <p>The cost of a round trip over a stretch of length L (m) with a rise or fall h (m) is L + h / (2 c), in metres of
 * level way: a machine of constant power that drives at v on level ground with a resistance c times its weight climbs
 * a slope s at v c / (c + sin s) and comes down it at v.
 */
final class HaulWays {
    /**
     * Resistance to rolling as a share of the weight (1): middle of the range from firm to soft ground, from memory.
     */
    static final double ROLLING_RESISTANCE = 0.15;
    private static final int[][] STEPS = {{0, 1}, {1, 0}, {0, -1}, {-1, 0}, {1, 1}, {1, -1}, {-1, 1}, {-1, -1},
        {1, 2}, {2, 1}, {1, -2}, {2, -1}, {-1, 2}, {-2, 1}, {-1, -2}, {-2, -1}};
    private static final int STRAIGHT = 8;

    private final HaulGround ground;
    private final double[] cost;
    private final int[] before;
    private final int start;
    private final boolean[] done;
    private final double[] lengths;
    private final CostHeap heap;

    private HaulWays(HaulGround ground, int start) {
        this.ground = ground;
        this.start = start;
        this.done = new boolean[ground.rows() * ground.columns()];
        this.lengths = Arrays.stream(STEPS).mapToDouble(s -> Math.hypot(s[0], s[1]) * ground.trueStep()).toArray();
        this.heap = new CostHeap(done.length / 4 + 16);
        this.cost = new double[ground.rows() * ground.columns()];
        this.before = new int[cost.length];
        Arrays.fill(cost, Double.POSITIVE_INFINITY);
        Arrays.fill(before, -1);
    }

    static HaulWays from(HaulGround ground, int start) {
        return from(ground, Map.of(start, 0.0));
    }

    /**
     * Ways from the cheapest of several places.
     *
     * @param ground the ground
     * @param starts lattice points, at least one, and what each costs to begin with (m of level way)
     */
    static HaulWays from(HaulGround ground, Map<Integer, Double> starts) {
        HaulWays ways = lazily(ground, starts);
        ways.spread(-1);
        return ways;
    }

    /**
     * The same, found no farther than is asked for by {@link #reach}; for one thread.
     *
     * @param ground the ground
     * @param starts lattice points, at least one, and what each costs to begin with (m of level way)
     */
    static HaulWays lazily(HaulGround ground, Map<Integer, Double> starts) {
        HaulWays ways = new HaulWays(ground, starts.keySet().iterator().next());
        starts.forEach((start, cost) -> {
            if (!ground.isClosed(start)) {
                ways.cost[start] = cost;
                ways.heap.add(cost, start);
            }
        });
        return ways;
    }

    /** Finds the cheapest way to a place, and to all cheaper ones. */
    HaulWays reach(int to) {
        spread(to);
        return this;
    }

    private void spread(int target) {
        int columns = ground.columns();
        while (!heap.isEmpty() && (target < 0 || !done[target])) {
            int at = heap.takeNode();
            if (done[at]) {
                continue;
            }
            done[at] = true;
            int row = at / columns;
            int column = at % columns;
            for (int k = 0; k < STEPS.length; k++) {
                int r = row + STEPS[k][0];
                int c = column + STEPS[k][1];
                if (r < 0 || c < 0 || r >= ground.rows() || c >= columns) {
                    continue;
                }
                int to = r * columns + c;
                if (done[to] || ground.isClosed(to) || !isFree(row, column, k)) {
                    continue;
                }
                double sum = cost[at] + ground.cost(lengths[k], ground.height(to) - ground.height(at));
                if (sum < cost[to]) {
                    cost[to] = sum;
                    before[to] = at;
                    heap.add(sum, to);
                }
            }
        }
    }

    /** Whether the lattice points a slanting step passes between are open. */
    private boolean isFree(int row, int column, int k) {
        if (k < 4) {
            return true;
        }
        int dr = STEPS[k][0];
        int dc = STEPS[k][1];
        int columns = ground.columns();
        if (k < STRAIGHT) {
            return !ground.isClosed((row + dr) * columns + column) && !ground.isClosed(row * columns + column + dc);
        }
        int hr = Integer.signum(dr);
        int hc = Integer.signum(dc);
        int diagonal = (row + hr) * columns + column + hc;
        int straight = Math.abs(dr) == 2 ? (row + hr) * columns + column : row * columns + column + hc;
        return !ground.isClosed(diagonal) && !ground.isClosed(straight);
    }

    boolean isReached(int to) {
        return Double.isFinite(cost[to]);
    }

    /** Cost of the cheapest way (m of level way), infinite where there is none. */
    double costTo(int to) {
        return cost[to];
    }

    /** The cheapest way, both ends included. */
    List<Integer> wayTo(int to) {
        List<Integer> way = new ArrayList<>();
        for (int at = to; at >= 0; at = before[at]) {
            way.add(at);
        }
        Collections.reverse(way);
        return way;
    }

    /** The reached lattice point nearest to a place: where the way is blocked. */
    int nearestReached(Point place) {
        int best = start;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < cost.length; i++) {
            if (isReached(i) && ground.place(i).distance(place) < least) {
                least = ground.place(i).distance(place);
                best = i;
            }
        }
        return best;
    }
}
