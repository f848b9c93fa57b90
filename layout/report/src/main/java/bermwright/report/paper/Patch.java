// SPDX-License-Identifier: Apache-2.0
package bermwright.report.paper;

import bermwright.report.drawing.Dot;
import java.util.List;

/**
 * A rectangle on paper, turned or not: the room that words or a table take.
 *
 * @param middle     its middle (mm)
 * @param halfWidth  half its width along its own axis (mm)
 * @param halfHeight half its height (mm)
 * @param turn       how far it is turned against the clock (rad)
 */
public record Patch(Dot middle, double halfWidth, double halfHeight, double turn) {
    /**
     * An upright rectangle between two opposite corners.
     *
     * @param a one corner (mm)
     * @param b the other (mm)
     * @return the rectangle
     */
    public static Patch between(Dot a, Dot b) {
        return new Patch(new Dot((a.x() + b.x()) / 2, (a.y() + b.y()) / 2), Math.abs(a.x() - b.x()) / 2,
                Math.abs(a.y() - b.y()) / 2, 0);
    }

    /**
     * The same, wider all around.
     *
     * @param by how much (mm)
     * @return the rectangle
     */
    public Patch wider(double by) {
        return new Patch(middle, halfWidth + by, halfHeight + by, turn);
    }

    /**
     * Its corners.
     *
     * @return the four, in turn (mm)
     */
    public List<Dot> corners() {
        return List.of(corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1));
    }

    private Dot corner(int along, int up) {
        double x = along * halfWidth;
        double y = up * halfHeight;
        return new Dot(middle.x() + x * Math.cos(turn) + y * Math.sin(turn),
                middle.y() - x * Math.sin(turn) + y * Math.cos(turn));
    }

    /**
     * Whether two rectangles have anything in common.
     *
     * @param other the other
     * @return true where they overlap
     */
    public boolean overlaps(Patch other) {
        return !isApart(other) && !other.isApart(this);
    }

    /** Whether a line along one of its own sides parts the two. */
    private boolean isApart(Patch other) {
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Dot corner : other.corners()) {
            Dot own = own(corner);
            left = Math.min(left, own.x());
            right = Math.max(right, own.x());
            low = Math.min(low, own.y());
            high = Math.max(high, own.y());
        }
        return left >= halfWidth || right <= -halfWidth || low >= halfHeight || high <= -halfHeight;
    }

    /** A place in its own axes, from its middle. */
    private Dot own(Dot place) {
        double x = place.x() - middle.x();
        double y = place.y() - middle.y();
        return new Dot(x * Math.cos(turn) - y * Math.sin(turn), x * Math.sin(turn) + y * Math.cos(turn));
    }

    /**
     * Whether a straight line crosses it.
     *
     * @param from one end (mm)
     * @param to   the other (mm)
     * @return true where some of it lies inside
     */
    public boolean isCrossed(Dot from, Dot to) {
        Dot a = own(from);
        Dot b = own(to);
        double[] part = {0, 1};
        return slab(a.x(), b.x(), halfWidth, part) && slab(a.y(), b.y(), halfHeight, part);
    }

    private static boolean slab(double a, double b, double half, double[] part) {
        if (a == b) {
            return Math.abs(a) < half;
        }
        double first = (-half - a) / (b - a);
        double second = (half - a) / (b - a);
        part[0] = Math.max(part[0], Math.min(first, second));
        part[1] = Math.min(part[1], Math.max(first, second));
        return part[0] < part[1];
    }

    /**
     * Whether it lies wholly inside an upright rectangle.
     *
     * @param frame the rectangle, not turned
     * @return true where all its corners do
     */
    public boolean isInside(Patch frame) {
        return corners().stream().allMatch(c -> Math.abs(c.x() - frame.middle.x()) <= frame.halfWidth
                && Math.abs(c.y() - frame.middle.y()) <= frame.halfHeight);
    }
}
