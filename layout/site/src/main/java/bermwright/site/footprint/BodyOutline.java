// SPDX-License-Identifier: Apache-2.0
package bermwright.site.footprint;

import bermwright.foundation.Ring;
import bermwright.site.plan.Hull;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Outline of a hull's body seen from above, lying and while it falls.
 *
 * <p>The body is a cylinder with its two ends. While it turns over its pivot line, a point at {@code s} along the axis
 * and {@code n} off it stands at x = s sin t + (n - d) cos t, z = s cos t - (n - d) sin t; on ground that leans, its
 * place in plan moves with z. The sweep is the smallest convex outline around all of these for every tilt, turned to
 * both sides by the wander about the middle of the pivot line, and widened by the margin.
 */
final class BodyOutline {
    private static final int END_STEPS = 8;
    private static final int TURN_STEPS_AT_REST = 96;
    private static final int TURN_STEPS_BETWEEN = 24;
    private static final double TILT_STEP = Math.toRadians(5);
    private static final double FAN_STEP = Math.toRadians(1);

    private BodyOutline() {
    }

    /** Places along the axis between which the outline is straight or nearly so. */
    private static List<Double> stations(Hull hull) {
        List<Double> stations = new ArrayList<>();
        addEnd(stations, hull.baseEnd(), 0, 1);
        addEnd(stations, hull.farEnd(), hull.length(), -1);
        stations.sort(null);
        return stations;
    }

    private static void addEnd(List<Double> stations, Hull.End end, double tip, int inwards) {
        stations.add(tip);
        if (end.shape() == Hull.Shape.FLAT || !(end.depth() > 0)) {
            return;
        }
        int steps = end.shape() == Hull.Shape.CONE ? 1 : END_STEPS;
        for (int i = 1; i <= steps; i++) {
            double u = end.shape() == Hull.Shape.CONE ? 1 : 1 - Math.cos(Math.PI / 2 * i / steps);
            stations.add(tip + inwards * u * end.depth());
        }
    }

    /** The lying body. */
    static Ring lying(Hull hull, LayDownFrame frame) {
        List<double[]> corners = new ArrayList<>();
        List<Double> stations = stations(hull);
        for (double s : stations) {
            corners.add(new double[] {s, -BodyProfile.radiusAt(hull, s)});
        }
        for (int i = stations.size() - 1; i >= 0; i--) {
            double half = BodyProfile.radiusAt(hull, stations.get(i));
            if (half > 0) {
                corners.add(new double[] {stations.get(i), half});
            }
        }
        return frame.ring(corners);
    }

    /** Everything the falling body can pass over. */
    static Ring sweep(Hull hull, LayDownFrame frame, HullShapes.Lean lean) {
        double wander = hull.lowering().map(g -> g.wander()).orElse(0.0);
        double margin = hull.lowering().map(g -> g.margin()).orElse(0.0);
        double[][] convex = PlanGeometry.convexHull(passed(hull, lean));
        Ring fan = frame.ring(wander > 0 ? fan(convex, wander) : List.of(convex));
        return PlanGeometry.widened(fan, frame.metres().onPlan(margin));
    }

    /** Places that the body's skin passes over, in the frame of the pivot line (m). */
    private static List<double[]> passed(Hull hull, HullShapes.Lean lean) {
        double ahead = hull.pivotAhead();
        double shiftAlong = Math.sin(lean.along());
        double shiftLeft = Math.sin(lean.left());
        List<double[]> places = new ArrayList<>();
        List<Double> stations = stations(hull);
        int steps = (int) Math.round(Math.PI / 2 / TILT_STEP);
        boolean bare = lean.equals(HullShapes.Lean.NONE) && ahead >= hull.radius();
        for (int i = 0; i <= steps; i += bare ? steps : 1) {
            double tilt = Math.PI / 2 * i / steps;
            double sin = Math.sin(tilt);
            double cos = Math.cos(tilt);
            int turns = i == 0 || i == steps ? TURN_STEPS_AT_REST : TURN_STEPS_BETWEEN;
            for (double s : stations) {
                double radius = BodyProfile.radiusAt(hull, s);
                for (int k = 0; k < turns; k++) {
                    double n = radius * Math.cos(2 * Math.PI * k / turns) - ahead;
                    double y = radius * Math.sin(2 * Math.PI * k / turns);
                    double x = s * sin + n * cos;
                    double z = Math.max(0, s * cos - n * sin);
                    places.add(new double[] {x, y});
                    places.add(new double[] {x + z * shiftAlong, y + z * shiftLeft});
                }
            }
        }
        return places;
    }

    /** A convex outline around the origin, turned about it to both sides. */
    private static List<double[]> fan(double[][] convex, double wander) {
        double[] angles = Arrays.stream(convex).mapToDouble(c -> Math.atan2(c[1], c[0])).toArray();
        double[] radii = Arrays.stream(convex).mapToDouble(c -> Math.hypot(c[0], c[1])).toArray();
        List<Double> directions = new ArrayList<>();
        for (double a : angles) {
            directions.add(wound(a - wander));
            directions.add(wound(a + wander));
        }
        for (double a = -Math.PI; a < Math.PI; a += FAN_STEP) {
            directions.add(a);
        }
        directions.sort(null);
        List<double[]> fan = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (double a : directions) {
            if (a - last > 1e-9) {
                // The turned outline reaches farthest at a corner inside the turn, or at the turn's ends.
                double reach = Math.max(ray(convex, a - wander), ray(convex, a + wander));
                for (int i = 0; i < radii.length; i++) {
                    if (radii[i] > reach && Math.abs(wound(angles[i] - a)) <= wander + 1e-12) {
                        reach = radii[i];
                    }
                }
                fan.add(new double[] {reach * Math.cos(a), reach * Math.sin(a)});
                last = a;
            }
        }
        return fan;
    }

    /** Distance from the origin to a convex outline around it. */
    private static double ray(double[][] convex, double direction) {
        double dx = Math.cos(direction);
        double dy = Math.sin(direction);
        double reach = Double.POSITIVE_INFINITY;
        for (int i = 0; i < convex.length; i++) {
            double[] a = convex[i];
            double[] b = convex[i + 1 == convex.length ? 0 : i + 1];
            double nx = b[1] - a[1];
            double ny = a[0] - b[0];
            double towards = nx * dx + ny * dy;
            double offset = nx * a[0] + ny * a[1];
            if (towards > 0 && offset < reach * towards) {
                reach = offset / towards;
            }
        }
        return Math.max(0, reach);
    }

    private static double wound(double angle) {
        return Math.IEEEremainder(angle, 2 * Math.PI);
    }
}
