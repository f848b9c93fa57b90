// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.foundation.Point;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.NodeRange;
import java.util.List;

/** The rectangle around all that a plan names. */
final class PlanExtent {
    /** Gear stands this many hull lengths from its hull at most, and no nearer than the least below matters. */
    private static final double LENGTHS_OF_GEAR = 4;
    private static final double LEAST_OF_GEAR = 200;

    private double west = Double.POSITIVE_INFINITY;
    private double south = Double.POSITIVE_INFINITY;
    private double east = Double.NEGATIVE_INFINITY;
    private double north = Double.NEGATIVE_INFINITY;

    private PlanExtent() {
    }

    static PlanExtent of(Plan plan) {
        PlanExtent extent = new PlanExtent();
        for (Hull hull : plan.hulls()) {
            extent.add(hull.baseCentre(), Math.max(LEAST_OF_GEAR, LENGTHS_OF_GEAR * hull.length()));
        }
        plan.walls().forEach(w -> extent.add(w.line()));
        plan.keepOuts().forEach(k -> extent.add(k.area().corners()));
        plan.corridors().forEach(c -> extent.add(c.line()));
        plan.landingPads().forEach(p -> extent.add(p.centre(), p.radius()));
        plan.preparations().forEach(p -> extent.add(p.area().corners()));
        plan.borrowGrounds().forEach(b -> extent.add(b.area().corners()));
        plan.stockpiles().forEach(s -> extent.add(s.area().corners()));
        return extent;
    }

    private void add(List<Point> points) {
        points.forEach(p -> add(p, 0));
    }

    private void add(Point place, double around) {
        west = Math.min(west, place.east() - around);
        east = Math.max(east, place.east() + around);
        south = Math.min(south, place.north() - around);
        north = Math.max(north, place.north() + around);
    }

    /** Whether the plan places nothing. */
    boolean isEmpty() {
        return west > east;
    }

    /** Whether a frame holds the rectangle as far as another one, the whole file's, reaches there. */
    boolean isIn(GridFrame frame, GridFrame whole) {
        return isEmpty() || (Math.max(west, whole.west()) >= frame.west() || west > whole.eastEdge())
                && (Math.min(east, whole.eastEdge()) <= frame.eastEdge() || east < whole.west())
                && (Math.max(south, whole.south()) >= frame.south() || south > whole.northEdge())
                && (Math.min(north, whole.northEdge()) <= frame.northEdge() || north < whole.south());
    }

    /** The nodes of a frame in and around the rectangle; a corner of the frame where the two lie apart. */
    NodeRange nodes(GridFrame frame, double reach) {
        double s = frame.spacing();
        int left = inside((west - reach - frame.west()) / s, frame.columns() - 2);
        int right = inside((east + reach - frame.west()) / s + 1, frame.columns() - 1);
        int below = inside((south - reach - frame.south()) / s, frame.rows() - 2);
        int above = inside((north + reach - frame.south()) / s + 1, frame.rows() - 1);
        return new NodeRange(below, left, Math.max(2, above - below + 1), Math.max(2, right - left + 1));
    }

    private static int inside(double place, int last) {
        return (int) Math.floor(Math.max(0, Math.min(last, place)));
    }
}
