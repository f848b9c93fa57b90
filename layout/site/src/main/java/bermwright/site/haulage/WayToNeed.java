// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.plan.Machine;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A way from a place of digging to a place of placing and what one load on it takes.
 *
 * @param distance length one way (m)
 * @param levelled length of level way that takes as long, there and back, halved (m)
 * @param up       rise on the way out (m)
 * @param down     fall on the way out (m)
 * @param way      places on the way
 * @param blocked  where the way is blocked; empty where there is one
 */
record WayToNeed(double distance, double levelled, double up, double down, List<Point> way, Optional<Point> blocked) {
    /** Own mass of a machine as a share of its load (1), where only the load is known; common practice, no source. */
    static final double OWN_MASS_SHARE = 1;

    /**
     * Where soil is brought.
     *
     * @param outline where it meets the ground; the machine drives around to it
     * @param middle  where it goes from there, straight
     */
    record Goal(Ring outline, Point middle) {
    }

    /** Seconds of one machine for one load. */
    double cycle(Machine machine) {
        return machine.fillTime() + machine.dumpTime() + 2 * levelled / machine.speed();
    }

    /** Energy for driving with one load out and back empty (J). */
    double energy(Machine machine, double gravity) {
        double own = OWN_MASS_SHARE * machine.load();
        double full = own + machine.load();
        return gravity * ((own + full) * HaulWays.ROLLING_RESISTANCE * distance + full * up + own * down);
    }

    /** The straight way, where nothing is known of the ground. */
    static WayToNeed straight(Point from, Point to, TrueMetres metres) {
        double length = metres.distance(from, to);
        return new WayToNeed(length, length, 0, 0, List.of(from, to), Optional.empty());
    }

    /** No way, since nothing can be driven on where the soil is dug. */
    static WayToNeed none(Point blocked) {
        return new WayToNeed(Double.NaN, Double.POSITIVE_INFINITY, 0, 0, List.of(), Optional.of(blocked));
    }

    /** The cheapest way over the ground to the middle of a need: around obstacles to its edge, then straight in. */
    static WayToNeed over(HaulGround ground, HaulWays ways, Ring digging, Goal goal) {
        Point from = digging.centre();
        Point to = goal.middle;
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int at : ground.openAround(goal.outline)) {
            double sum = ways.costTo(at) + ground.distance(at, to);
            if (sum < least) {
                least = sum;
                best = at;
            }
        }
        if (best < 0 || Double.isInfinite(least)) {
            return none(ground.place(ways.nearestReached(to)));
        }
        List<Point> way = new ArrayList<>();
        way.add(from);
        PulledWay pulled = PulledWay.of(ground, ways, ways.wayTo(best));
        double ends = ground.distance(pulled.nodes().get(0), from) + ground.distance(best, to);
        pulled.nodes().forEach(n -> way.add(ground.place(n)));
        way.add(to);
        return new WayToNeed(pulled.length() + ends, pulled.levelled() + ends, pulled.up(), pulled.down(),
                straightened(way), Optional.empty());
    }

    /** The same way without places in the middle of straight stretches. */
    static List<Point> straightened(List<Point> way) {
        List<Point> kept = new ArrayList<>();
        for (Point p : way) {
            int n = kept.size();
            if (n >= 2 && Math.abs(cross(kept.get(n - 2), kept.get(n - 1), p)) < 1e-6) {
                kept.set(n - 1, p);
            } else if (n == 0 || kept.get(n - 1).distance(p) > 1e-9) {
                kept.add(p);
            }
        }
        return kept;
    }

    private static double cross(Point a, Point b, Point c) {
        return (b.east() - a.east()) * (c.north() - b.north()) - (b.north() - a.north()) * (c.east() - b.east());
    }
}
