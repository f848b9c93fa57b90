// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.foundation.Point;
import bermwright.site.plan.Hull;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.FittedPlane;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * The line on which a round, stiff hull comes to rest on uneven ground.
 *
 * <p>At a distance y from the belly line the skin of a cylinder of radius r stands r - sqrt(r^2 - y^2) higher, so the
 * ground there counts by as much less. Along the hull the highest such ground is the profile; the hull rests on the
 * edge of its upper outline that lies under the centre of mass. Ground does not yield and the hull is not rolled.
 *
 * @param highest      highest ground against the fitted plane at the belly (m)
 * @param place        where that is
 * @param firstContact distance of the first contact from the base plane (m)
 * @param lastContact  distance of the last contact from the base plane (m)
 * @param pitch        angle of the line of rest to the fitted plane (rad), positive where the far end lies higher
 */
record BellyLine(double highest, Point place, double firstContact, double lastContact, double pitch) {
    private static final double WIDEST_SHARE = 0.9;
    private static final double FINEST_STEP = 0.25;

    static BellyLine of(Hull hull, FittedPlane plane, ElevationGrid ground) {
        double step = Math.max(FINEST_STEP, ground.trueSpacing() / 2);
        double first = hull.baseEnd().depth();
        double length = Math.max(step, hull.length() - hull.farEnd().depth() - first);
        int steps = (int) Math.ceil(length / step);
        List<double[]> profile = new ArrayList<>(steps + 1);
        double highest = Double.NEGATIVE_INFINITY;
        Point place = hull.lyingBase(ground.metres());
        for (int i = 0; i <= steps; i++) {
            double s = first + length * i / steps;
            Spot spot = highestAcross(hull, ground, plane, s);
            profile.add(new double[] {s, spot.height});
            if (spot.height > highest) {
                highest = spot.height;
                place = spot.place;
            }
        }
        double[][] rest = rest(profile, hull.centreOfMassFromBase());
        double run = rest[1][0] - rest[0][0];
        return new BellyLine(highest, place, rest[0][0], rest[1][0],
                run > 0 ? Math.atan((rest[1][1] - rest[0][1]) / run) : 0);
    }

    private record Spot(double height, Point place) {
    }

    private static Spot highestAcross(Hull hull, ElevationGrid ground, FittedPlane plane, double s) {
        double radius = hull.radius();
        int sides = (int) Math.ceil(WIDEST_SHARE * radius / Math.max(FINEST_STEP, ground.trueSpacing() / 2));
        Spot best = new Spot(Double.NEGATIVE_INFINITY, hull.baseCentre());
        for (int j = -sides; j <= sides; j++) {
            double y = WIDEST_SHARE * radius * j / sides;
            Point at = hull.lyingAt(ground.metres(), s, y);
            double above = ground.height(at) - plane.height(at) - (radius - Math.sqrt(radius * radius - y * y));
            if (above > best.height) {
                best = new Spot(above, at);
            }
        }
        return best;
    }

    /** The edge of a profile's upper outline under a place. */
    private static double[][] rest(List<double[]> profile, double under) {
        Deque<double[]> upper = new ArrayDeque<>();
        for (double[] p : profile) {
            while (upper.size() >= 2) {
                double[] last = upper.pollLast();
                double[] before = upper.peekLast();
                if ((last[0] - before[0]) * (p[1] - before[1]) < (last[1] - before[1]) * (p[0] - before[0])) {
                    upper.addLast(last);
                    break;
                }
            }
            upper.addLast(p);
        }
        List<double[]> edge = List.copyOf(upper);
        for (int i = 0; i + 1 < edge.size(); i++) {
            if (under <= edge.get(i + 1)[0] || i + 2 == edge.size()) {
                return new double[][] {edge.get(i), edge.get(i + 1)};
            }
        }
        return new double[][] {edge.get(0), edge.get(0)};
    }
}
