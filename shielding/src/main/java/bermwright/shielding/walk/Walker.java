// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.walk;

import bermwright.shielding.raycast.ScenePath;
import bermwright.shielding.transport.BackwardField;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.SplittableRandom;

/**
 * One walk after the other back from a station; for one thread.
 *
 * <p>A walk that comes where the fast method has more particles, on its way up, is worth more and is split into several
 * lighter ones; one that goes where there are fewer ends, but for some that stand for all. Neither changes the mean.
 */
final class Walker {
    private static final double KG_M2 = 10;
    /** Beyond this nothing comes in straight (kg/m2). */
    private static final double FULL = 19_000;
    /** Worth over that at the start below which a walk ends but for some, and above which it is split (1). */
    private static final double POOR = 0.3;
    private static final double RICH = 2;
    private static final int MOST_PARTS = 20;
    private static final int MOST_STARTS = 200;
    /** Starts that are tried beforehand, to know what they are worth. */
    private static final int STARTS = 400;
    private static final int MOST_STEPS = 20_000_000;
    /** How much further than it flies a slow neutron looks, since skins may count for more than they weigh (1). */
    private static final double SPARE = 3;

    private final BackwardField field;
    private final ScenePath.Place start;
    /** What lies straight over the station (g/cm2). */
    private final double over;
    /** What a walk is worth in the mean when it starts, by which it is split and ended. */
    private final double worth;
    private final ScenePath path;
    private final ScenePath overhead;
    private final double[] way = new double[3];
    private final Deque<Branch> branches = new ArrayDeque<>();
    private SplittableRandom random;
    private boolean slow;
    /** What the last start was worth. */
    private double wealth;
    private double counted;
    private int steps;

    /** A parent that was drawn, about to turn off its child's way. */
    private record Branch(ScenePath.Place place, Drawn drawn, double weight, double[] way) {
    }

    /** What was drawn: material and child, the entry, and the parent. */
    private record Drawn(int material, int child, int entry, int parent) {
    }

    Walker(StationWalk.At at) {
        field = at.source().field();
        start = ScenePath.Place.of(at.point());
        path = new ScenePath(at.scene(), at.source().skin());
        overhead = new ScenePath(at.scene(), at.source().skin());
        over = over(start);
        random = new SplittableRandom(STARTS);
        double sum = 0;
        for (int k = 0; k < STARTS; k++) {
            begin();
            sum += wealth;
        }
        worth = field.startWeight() * sum / STARTS;
    }

    /** Whether the last walk started with a slow neutron. */
    boolean startedSlow() {
        return slow;
    }

    /** The dose that one walk counts (Sv, a second's for cosmic rays). */
    double walk(SplittableRandom chances) {
        random = chances;
        counted = 0;
        steps = 0;
        int state = begin();
        slow = field.isSlow(state);
        double ratio = field.startWeight() * wealth / worth;
        double survives = Math.min(1, ratio / POOR);
        int parts = ratio > RICH ? (int) Math.min(MOST_STARTS, Math.ceil(ratio / RICH)) : 1;
        for (int k = 0; k < parts && random.nextDouble() < survives; k++) {
            path.at(start);
            double depth = depth();
            look(state, depth);
            fly(state, field.startWeight() / survives / parts, depth);
        }
        while (!branches.isEmpty()) {
            Branch branch = branches.pop();
            System.arraycopy(branch.way, 0, way, 0, way.length);
            follow(branch.place, branch.drawn, branch.weight);
        }
        return counted;
    }

    /** Draws a particle and a way at the station, and what that start is worth. */
    private int begin() {
        int state = field.start(random.nextDouble());
        way[0] = 0;
        way[1] = 0;
        way[2] = 1;
        turn(0);
        double least = over;
        if (!field.isSlow(state)) {
            path.at(start);
            path.go(way[0], way[1], way[2], FULL);
            least = Math.min(over, path.toSky() / KG_M2);
        }
        wealth = field.wealth(state, least);
        return state;
    }

    /** Turns a parent off its child's way, counts what came in straight, and goes on with it. */
    private void follow(ScenePath.Place place, Drawn drawn, double weight) {
        turn(field.turn(drawn.material, drawn.child, drawn.entry));
        path.at(place);
        double depth = depth();
        look(drawn.parent, depth);
        counted += weight * field.came(drawn.material, drawn.child, drawn.entry, path.toSky() / KG_M2);
        fly(drawn.parent, weight, depth);
    }

    /** Flies along the way that was looked along until what flies is turned off it, leaves the scene or ends. */
    private void fly(int first, double startWeight, double startDepth) {
        int state = first;
        double weight = startWeight;
        double depth = startDepth;
        int stretch = 0;
        double share = 0;
        while (true) {
            while (stretch < path.count()) {
                double here = field.lost(path.material(stretch), state) * path.arealDensity(stretch) / KG_M2;
                if (depth < here * (1 - share)) {
                    share += depth / here;
                    break;
                }
                depth -= here * (1 - share);
                stretch++;
                share = 0;
            }
            if (stretch >= path.count() || !field.hasParents(path.material(stretch), state)) {
                return;
            }
            if (++steps > MOST_STEPS) {
                throw new IllegalStateException("a walk did not end within " + MOST_STEPS + " steps; state " + state
                        + ", weight " + weight);
            }
            int material = path.material(stretch);
            double beyond = path.toSky(stretch, share) / KG_M2;
            counted += weight * field.letGo(material, state, beyond);
            int entry = field.draw(material, state, random.nextDouble());
            weight *= field.factor(material, state);
            Drawn drawn = new Drawn(material, state, entry, field.parent(material, state, entry));
            if (field.turn(material, state, entry) < Double.POSITIVE_INFINITY) {
                split(path.place(stretch, share), drawn, weight, beyond);
                return;
            }
            counted += weight * field.came(material, state, entry, beyond);
            state = drawn.parent;
            depth = depth();
        }
    }

    /** Leaves as many branches as a parent is worth. */
    private void split(ScenePath.Place place, Drawn drawn, double weight, double beyond) {
        double ratio = weight * field.wealth(drawn.parent, Math.min(beyond, over(place))) / worth;
        if (ratio < POOR) {
            double survives = ratio / POOR;
            if (random.nextDouble() < survives) {
                branches.push(new Branch(place, drawn, weight / survives, way.clone()));
            }
            return;
        }
        // Slow neutrons scatter hundreds of times near where they are; their parents are split.
        boolean isSplit = ratio > RICH && !field.isSlow(drawn.parent);
        int parts = isSplit ? (int) Math.min(MOST_PARTS, Math.ceil(ratio / RICH)) : 1;
        for (int k = 0; k < parts; k++) {
            branches.push(new Branch(place, drawn, weight / parts, way.clone()));
        }
    }

    private double over(ScenePath.Place place) {
        overhead.at(place);
        overhead.go(0, 0, 1, FULL);
        return Math.min(FULL, overhead.toSky()) / KG_M2;
    }

    private double depth() {
        return -Math.log(1 - random.nextDouble());
    }

    /** Slow neutrons come from no sky, so their way is looked at only as far as they fly. */
    private void look(int state, double depth) {
        double until = field.isSlow(state) ? Math.min(FULL, SPARE * KG_M2 * depth / field.leastLost(state)) : FULL;
        path.go(way[0], way[1], way[2], until);
    }

    /** Turns the way by an angle whose cosine c is spread as exp(a c), evenly around it. */
    private void turn(double a) {
        double chance = random.nextDouble();
        double size = Math.abs(a);
        double c = size < 1e-6 ? 2 * chance - 1
                : 1 + Math.log(chance + (1 - chance) * Math.exp(-2 * size)) / size;
        c = Math.max(-1, a < 0 ? -c : c);
        double s = Math.sqrt(Math.max(0, 1 - c * c));
        double around = 2 * Math.PI * random.nextDouble();
        double x = way[0];
        double y = way[1];
        double z = way[2];
        double flat = Math.sqrt(x * x + y * y);
        double cos = s * Math.cos(around);
        double sin = s * Math.sin(around);
        if (flat < 1e-9) {
            way[0] = cos;
            way[1] = sin;
            way[2] = z < 0 ? -c : c;
        } else {
            way[0] = c * x + (cos * x * z - sin * y) / flat;
            way[1] = c * y + (cos * y * z + sin * x) / flat;
            way[2] = c * z - cos * flat;
        }
        double norm = Math.sqrt(way[0] * way[0] + way[1] * way[1] + way[2] * way[2]);
        for (int k = 0; k < way.length; k++) {
            way[k] /= norm;
        }
    }
}
