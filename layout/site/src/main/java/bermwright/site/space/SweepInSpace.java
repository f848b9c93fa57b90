// SPDX-License-Identifier: Apache-2.0
package bermwright.site.space;

import bermwright.foundation.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a falling hull comes near to: the least distance over all its tilts and all its swings.
 *
 * <p>Tilts are looked at in steps of four degrees, which carry the far end of a hull of 43 m by 3 m, less than its
 * width; about the nearest the steps are halved until they are a hundredth of a degree.
 */
public final class SweepInSpace {
    private static final double TILT_STEP = Math.toRadians(4);
    private static final int HALVINGS = 9;
    private static final int AROUND = 9;
    /** Bulge between neighbouring tilts of those looked at, of a hull of 100 m (m). */
    private static final double SLACK = 0.9;
    private final FallingHull falling;
    private Convex around;

    /**
     * A falling hull.
     *
     * @param falling the hull
     */
    public SweepInSpace(FallingHull falling) {
        this.falling = falling;
    }

    /**
     * Where something moving comes nearest.
     *
     * @param apart how far apart and where
     * @param tilt  at which tilt (rad)
     * @param swing at which swing to the left (rad)
     */
    public record Nearest(Apart apart, double tilt, double swing) {
    }

    /** Something that moves with tilt and swing. */
    @FunctionalInterface
    public interface Moving {
        /**
         * Where it is.
         *
         * @param tilt  tilt (rad)
         * @param swing swing to the left (rad)
         * @return the body
         */
        Convex at(double tilt, double swing);
    }

    /**
     * Where the hull comes nearest to a body.
     *
     * @param body  what stands there
     * @param reach farther off than this is not looked at (m)
     * @return the nearest; where they touch, at the first tilt at which they do; empty beyond the reach
     */
    public Optional<Nearest> nearest(Convex body, double reach) {
        if (body.middle().minus(falling.pivot()).norm() - body.reach() - falling.reach() > reach
                || Apart.of(around(), body, reach + SLACK).distance() > reach + SLACK) {
            return Optional.empty();
        }
        return nearest(falling::body, body, new Range(0, falling.restTilt(), falling.wander()), reach);
    }

    /**
     * Where a line of the hull comes nearest to a body.
     *
     * @param rig   the gear of the hull
     * @param line  one of its lines
     * @param body  what stands there
     * @param swing how far the hull swings to either side (rad)
     * @param reach farther off than this is not looked at (m)
     * @return the nearest; empty beyond the reach
     */
    public static Optional<Nearest> nearest(RigInSpace rig, LinePath line, Convex body, double swing, double reach) {
        Convex fan = rig.fan(line);
        if (fan.middle().minus(body.middle()).norm() - fan.reach() - body.reach() > reach + SLACK
                || Apart.of(fan, body, reach + SLACK).distance() > reach + SLACK) {
            return Optional.empty();
        }
        return nearest(line::sheet, body, line.isMoving() ? new Range(line.from(), line.to(), swing)
                : new Range(line.to(), line.to(), 0), reach);
    }

    /** The convex body around the hull at all its tilts, but for the bulge between those looked at. */
    private Convex around() {
        if (around == null) {
            List<Convex> bodies = new ArrayList<>();
            for (int i = 0; i <= AROUND; i++) {
                double tilt = falling.restTilt() * i / AROUND;
                bodies.add(falling.body(tilt, -falling.wander()));
                bodies.add(falling.body(tilt, 0));
                bodies.add(falling.body(tilt, falling.wander()));
            }
            around = new Joined(bodies, falling.pivot(), falling.reach());
        }
        return around;
    }

    /** The convex body around others. */
    private record Joined(List<Convex> bodies, Vec3 middle, double reach) implements Convex {
        @Override
        public Vec3 farthest(Vec3 direction) {
            Vec3 best = middle;
            for (Convex body : bodies) {
                Vec3 point = body.farthest(direction);
                best = point.dot(direction) > best.dot(direction) ? point : best;
            }
            return best;
        }
    }

    /**
     * Tilts and swings to look at.
     *
     * @param from   first tilt (rad)
     * @param to     last tilt (rad)
     * @param wander swing to either side (rad)
     */
    private record Range(double from, double to, double wander) {
    }

    /**
     * Where two falling hulls come nearest.
     *
     * @param first     the nearest place of the one, its tilt and swing
     * @param otherTilt tilt of the other (rad)
     * @param otherSwing swing of the other to the left (rad)
     */
    public record BothFalling(Nearest first, double otherTilt, double otherSwing) {
    }

    /**
     * Where two falling hulls come nearest, each at whichever tilt and swing.
     *
     * @param one   one
     * @param other the other
     * @param reach farther off than this is not looked at (m)
     * @return the nearest; where they touch, at the first tilts at which they do; empty beyond the reach
     */
    public static Optional<BothFalling> nearest(FallingHull one, FallingHull other, double reach) {
        SweepInSpace swept = new SweepInSpace(one);
        Convex all = new SweepInSpace(other).around();
        if (one.pivot().minus(other.pivot()).norm() - one.reach() - other.reach() > reach
                || Apart.of(swept.around(), all, reach + 2 * SLACK).distance() > reach + 2 * SLACK) {
            return Optional.empty();
        }
        double[] swings = other.wander() > 0 ? new double[] {0, -other.wander(), other.wander()} : new double[] {0};
        int steps = (int) Math.ceil(other.restTilt() / TILT_STEP);
        double half = other.reach() * TILT_STEP / 2;
        BothFalling best = null;
        for (int i = 0; i <= steps; i++) {
            for (double swing : swings) {
                double tilt = other.restTilt() * i / steps;
                double least = best == null ? reach + half : best.first.apart.distance();
                Optional<Nearest> near = least > 0 ? swept.nearest(other.body(tilt, swing), least) : Optional.empty();
                if (near.isPresent() && (best == null || near.get().apart.distance() < least)) {
                    best = new BothFalling(near.get(), tilt, swing);
                }
            }
        }
        best = best == null ? null : finer(swept, other, best);
        return best == null || best.first.apart.distance() > reach ? Optional.empty() : Optional.of(best);
    }

    private static BothFalling finer(SweepInSpace swept, FallingHull other, BothFalling from) {
        BothFalling best = from;
        double step = TILT_STEP / 2;
        for (int i = 0; i < HALVINGS && best.first.apart.distance() > 0; i++, step /= 2) {
            for (int side = -1; side <= 1; side += 2) {
                double tilt = Math.max(0, Math.min(other.restTilt(), best.otherTilt + side * step));
                Optional<Nearest> near = swept.nearest(other.body(tilt, best.otherSwing), best.first.apart.distance());
                if (near.isPresent() && near.get().apart.distance() < best.first.apart.distance()) {
                    best = new BothFalling(near.get(), tilt, best.otherSwing);
                }
            }
        }
        return best;
    }

    private static Optional<Nearest> nearest(Moving moving, Convex body, Range range, double reach) {
        int steps = (int) Math.ceil((range.to - range.from) / TILT_STEP);
        double[] swings = range.wander > 0 ? new double[] {0, -range.wander, range.wander} : new double[] {0};
        Nearest best = null;
        for (int i = 0; i <= steps; i++) {
            double tilt = steps == 0 ? range.from : range.from + (range.to - range.from) * i / steps;
            for (double swing : swings) {
                Convex there = moving.at(tilt, swing);
                double atLeast = there.middle().minus(body.middle()).norm() - there.reach() - body.reach();
                double worth = (best == null ? reach : Math.min(reach, best.apart.distance())) + step(range, there);
                if (atLeast > worth) {
                    continue;
                }
                Apart apart = Apart.of(there, body, worth);
                if (best == null || apart.distance() < best.apart.distance()) {
                    best = new Nearest(apart, tilt, swing);
                }
            }
        }
        best = best == null ? null : finer(moving, body, range, best);
        return best == null || best.apart.distance() > reach ? Optional.empty() : Optional.of(best);
    }

    /** How much nearer something may come between two tilts looked at. */
    private static double step(Range range, Convex there) {
        return range.to > range.from || range.wander > 0 ? there.reach() * TILT_STEP : 0;
    }

    private static Nearest finer(Moving moving, Convex body, Range range, Nearest from) {
        Nearest best = from;
        double tilt = Math.min(TILT_STEP, range.to - range.from) / 2;
        double swing = range.wander / 2;
        for (int i = 0; i < HALVINGS && best.apart.distance() > 0; i++, tilt /= 2, swing /= 2) {
            for (int k = 0; k < 4; k++) {
                double t = best.tilt + (k == 0 ? tilt : k == 1 ? -tilt : 0);
                double s = best.swing + (k == 2 ? swing : k == 3 ? -swing : 0);
                double within = Math.max(range.from, Math.min(range.to, t));
                double side = Math.max(-range.wander, Math.min(range.wander, s));
                Apart apart = Apart.of(moving.at(within, side), body, best.apart.distance());
                if (apart.distance() < best.apart.distance()) {
                    best = new Nearest(apart, within, side);
                }
            }
        }
        return best;
    }

    /**
     * A body shifted level.
     *
     * @param body the body
     * @param by   the shift
     * @return the shifted body
     */
    public static Convex shifted(Convex body, Vec3 by) {
        return new Convex() {
            @Override
            public Vec3 farthest(Vec3 direction) {
                return body.farthest(direction).plus(by);
            }

            @Override
            public Vec3 middle() {
                return body.middle().plus(by);
            }

            @Override
            public double reach() {
                return body.reach();
            }
        };
    }
}
