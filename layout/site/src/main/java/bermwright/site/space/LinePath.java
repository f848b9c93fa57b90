// SPDX-License-Identifier: Apache-2.0
package bermwright.site.space;

import bermwright.foundation.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A line, stay or pull-over line in space at every tilt: a parabola between its ends.
 *
 * @param part   what people call it
 * @param kind   what it does
 * @param moving the end that moves with the hull, else the upper end
 * @param fixed  the other end
 * @param from   tilt from which it is rigged (rad)
 * @param to     tilt to which it is rigged (rad)
 * @param sag    its greatest sag under the chord as a share of the chord, by tilt (1)
 */
public record LinePath(String part, Kind kind, End moving, End fixed, double from, double to,
        DoubleUnaryOperator sag) {
    private static final int PIECES = 24;
    private static final double FAN_STEP = Math.toRadians(10);

    /** What a line does. */
    public enum Kind {
        /** From a lug of the hull to the pole head, or to the winch where there is no pole. */
        LOWERING,
        /** From the pole head to the winch. */
        WINCH,
        /** From the pole head back to its anchor. */
        STAY,
        /** From the hull to the anchor ahead. */
        PULL_OVER
    }

    /** An end of a line. */
    public interface End {
        /**
         * Where it is.
         *
         * @param tilt  tilt of the hull (rad)
         * @param swing how far the hull has swung to the left (rad)
         * @return the place
         */
        Vec3 at(double tilt, double swing);

        /**
         * Whether it is made fast at the ground.
         *
         * @return true for winches and anchors
         */
        default boolean isGrounded() {
            return false;
        }
    }

    /**
     * An end at the ground.
     *
     * @param place where
     */
    public record AtGround(Vec3 place) implements End {
        @Override
        public Vec3 at(double tilt, double swing) {
            return place;
        }

        @Override
        public boolean isGrounded() {
            return true;
        }
    }

    /**
     * An end at the head of a pole.
     *
     * @param place where
     */
    public record AtHead(Vec3 place) implements End {
        @Override
        public Vec3 at(double tilt, double swing) {
            return place;
        }
    }

    /**
     * An end at a lug of the hull.
     *
     * @param hull the hull on its way down
     * @param lug  the lug
     */
    public record AtLug(FallingHull hull, FallingHull.BodyPoint lug) implements End {
        @Override
        public Vec3 at(double tilt, double swing) {
            return hull.place(lug, tilt, swing);
        }
    }

    /**
     * Whether the line moves with the hull.
     *
     * @return true where one end is a lug
     */
    public boolean isMoving() {
        return moving instanceof AtLug;
    }

    /**
     * A point of the line.
     *
     * @param share how far from the moving end to the fixed one (1), 0 to 1
     * @param tilt  tilt of the hull (rad)
     * @param swing how far the hull has swung to the left (rad)
     * @return the place, under the chord by the sag there
     */
    public Vec3 point(double share, double tilt, double swing) {
        Vec3 a = moving.at(tilt, swing);
        Vec3 chord = fixed.at(tilt, swing).minus(a);
        double drop = 4 * share * (1 - share) * sag.applyAsDouble(tilt) * chord.norm();
        return a.plus(chord.times(share)).minus(Vec3.UP.times(drop));
    }

    /**
     * Length of the chord.
     *
     * @param tilt  tilt of the hull (rad)
     * @param swing how far the hull has swung to the left (rad)
     * @return length (m)
     */
    public double chord(double tilt, double swing) {
        return fixed.at(tilt, swing).minus(moving.at(tilt, swing)).norm();
    }

    /**
     * The line and its chord: it hangs somewhere between the two.
     *
     * @param tilt  tilt of the hull (rad)
     * @param swing how far the hull has swung to the left (rad)
     * @return the upright sheet between them
     */
    public Convex sheet(double tilt, double swing) {
        List<Vec3> corners = new ArrayList<>();
        for (int i = 0; i <= PIECES; i++) {
            corners.add(point((double) i / PIECES, tilt, swing));
        }
        return new Corners(corners);
    }

    /**
     * The convex body around the line at all its tilts, but for the bulge between those looked at.
     *
     * @param wander how far the hull swings to either side (rad)
     * @return the body
     */
    public Convex fan(double wander) {
        List<Vec3> corners = new ArrayList<>();
        for (double tilt : tilts(FAN_STEP)) {
            for (double swing : new double[] {-wander, 0, wander}) {
                for (double share : new double[] {0, 0.25, 0.5, 0.75}) {
                    corners.add(point(share, tilt, swing));
                }
                corners.add(moving.at(tilt, swing));
            }
        }
        corners.add(fixed.at(from, 0));
        return new Corners(corners);
    }

    /**
     * The tilts at which to look at the line.
     *
     * @param step greatest step (rad)
     * @return tilts from the first to the last
     */
    public double[] tilts(double step) {
        int steps = Math.max(1, (int) Math.ceil((to - from) / step));
        double[] tilts = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            tilts[i] = from + (to - from) * i / steps;
        }
        return tilts;
    }

    /**
     * This line with its upper end higher: a pole head higher up, or a lug farther up the hull.
     *
     * @param by how much (m)
     * @return the changed line; the same where neither end can be raised
     */
    public LinePath raised(double by) {
        return new LinePath(part, kind, raised(moving, by, !(fixed instanceof AtHead)), raised(fixed, by, true), from,
                to, sag);
    }

    private static End raised(End end, double by, boolean lugToo) {
        if (end instanceof AtHead head) {
            return new AtHead(head.place.plus(Vec3.UP.times(by)));
        }
        if (end instanceof AtLug lug && lugToo) {
            FallingHull.BodyPoint at = lug.lug;
            return new AtLug(lug.hull, new FallingHull.BodyPoint(at.along() + by, at.off(), at.left()));
        }
        return end;
    }

    /**
     * Whether raising means the head of a pole.
     *
     * @return true for a pole head, false for a lug
     */
    public boolean hasHead() {
        return moving instanceof AtHead || fixed instanceof AtHead;
    }
}
