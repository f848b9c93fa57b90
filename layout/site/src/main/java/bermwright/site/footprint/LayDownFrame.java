// SPDX-License-Identifier: Apache-2.0
package bermwright.site.footprint;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.plan.Hull;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Places given ahead of a hull's pivot line and to the left of its plane, in true metres, brought onto the plan.
 *
 * @param pivot   middle of the pivot line
 * @param azimuth the lay-down azimuth
 * @param metres  true metres against those of the plan
 */
record LayDownFrame(Point pivot, Azimuth azimuth, TrueMetres metres) {
    /** Corners of a body's circle; they lie outside it, less than half a millimetre at 5 m, so that it is held. */
    private static final int BODY_CORNERS = 240;
    /** Corners of a zone's circle, outside it likewise, by 0.05 % of the radius. */
    private static final int ZONE_CORNERS = 96;

    static LayDownFrame of(Hull hull, TrueMetres metres) {
        return new LayDownFrame(hull.lyingBase(metres), hull.layDownAzimuth(), metres);
    }

    /** The place so far ahead and to the left, on whole millimetres. */
    Point place(double ahead, double left) {
        Point p = metres.moved(pivot, azimuth, ahead, left);
        return PlanGeometry.snapped(p.east(), p.north());
    }

    Ring ring(double[]... aheadAndLeft) {
        return new Ring(Arrays.stream(aheadAndLeft).map(p -> place(p[0], p[1])).toList());
    }

    Ring ring(List<double[]> aheadAndLeft) {
        return new Ring(aheadAndLeft.stream().map(p -> place(p[0], p[1])).toList());
    }

    Ring rectangle(double ahead, double left, double length, double width) {
        double l = length / 2;
        double w = width / 2;
        return ring(new double[] {ahead - l, left - w}, new double[] {ahead + l, left - w},
                new double[] {ahead + l, left + w}, new double[] {ahead - l, left + w});
    }

    Ring circle(double ahead, double left, double radius) {
        return circle(metres.moved(pivot, azimuth, ahead, left), metres.onPlan(radius));
    }

    /** The circle of a zone, in projected metres. */
    static Ring circle(Point centre, double radius) {
        return circle(centre, radius, ZONE_CORNERS);
    }

    /** The circle of a body, in projected metres. */
    static Ring bodyCircle(Point centre, double radius) {
        return circle(centre, radius, BODY_CORNERS);
    }

    private static Ring circle(Point centre, double radius, int count) {
        double outer = radius / Math.cos(Math.PI / count);
        return new Ring(IntStream.range(0, count).mapToObj(i -> {
            double a = 2 * Math.PI * i / count;
            return PlanGeometry.snapped(centre.east() + outer * Math.cos(a), centre.north() + outer * Math.sin(a));
        }).toList());
    }

    /** A piece of a circle about {@code from}, opening towards {@code to}. */
    Ring sector(double[] from, double[] to, double halfAngle, double radius) {
        double middle = Math.atan2(to[1] - from[1], to[0] - from[0]);
        int steps = 12;
        double outer = radius / Math.cos(halfAngle / steps);
        List<double[]> corners = new ArrayList<>();
        corners.add(from);
        for (int i = 0; i <= steps; i++) {
            double a = middle - halfAngle + 2 * halfAngle * i / steps;
            corners.add(new double[] {from[0] + outer * Math.cos(a), from[1] + outer * Math.sin(a)});
        }
        return ring(corners);
    }

    /** The smallest outline around places widened to all sides. */
    Ring around(double half, List<double[]> places) {
        return PlanGeometry.widenedHull(places.stream().map(p -> place(p[0], p[1])).toList(), metres.onPlan(half));
    }
}
