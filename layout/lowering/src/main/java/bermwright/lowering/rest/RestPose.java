// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rest;

import bermwright.foundation.Point;
import bermwright.regolith.Settlement;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How a rigid cylinder lies on the ground as it is, before anything sinks.
 *
 * <p>The ground is dilated along the axis, h(s) = max over y of z(s, y) - (r - sqrt(r2 - y2)); the cylinder rests on
 * the edge of the upper convex hull of h that straddles the centre of mass. Ground between the nodes of the grid is not
 * known: spots smaller than a cell are not seen. Ground that the hull reaches once it has sunk counts as touched, so
 * that a plane is touched over the whole length. Rolling: a bed of springs lets the hull stand in its own trough up
 * to a cross slope of asin(a/(3r)) surely and asin(a/r) at most, a half the width of contact.
 *
 * @param contacts    outermost distances from the base plane at which it touches once sunk (m)
 * @param heights     heights of the ground at the contacts, as the hull feels them (m)
 * @param pitch       how far the far end points down (rad), negative where it points up
 * @param rockMargin  distance from the centre of mass to the nearer contact along the axis (m); small: it may rock
 * @param baseGap     gap between base edge and ground (m), zero or more
 * @param greatestGap greatest gap between the hull's belly and the ground along it (m)
 * @param crossSlope  cross slope of the ground under it (rad), positive where it falls to the left
 * @param sinkage     sinkage on average lunar soil, load spread over the whole length (m)
 * @param rollsSurely cross slope from which it rolls unless chocked (rad)
 * @param staysSurely cross slope up to which it stays (rad)
 */
public record RestPose(List<Double> contacts, List<Double> heights, double pitch, double rockMargin, double baseGap,
        double greatestGap, double crossSlope, double sinkage, double rollsSurely, double staysSurely) {
    private static final int ACROSS = 41;

    /** Copies the lists. */
    public RestPose {
        contacts = List.copyOf(contacts);
        heights = List.copyOf(heights);
    }

    /** Whether the hull stays where it is laid. */
    public enum Roll {
        /** It stays. */
        STAYS,
        /** It may roll. */
        MAY_ROLL,
        /** It rolls. */
        ROLLS;

        /**
         * The word used in files and pages.
         *
         * @return the words in lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /**
     * How a cylinder lies.
     *
     * @param cylinder the cylinder
     * @param ground   the ground
     * @return the pose; absent where ground under it is missing
     */
    public static Optional<RestPose> of(LyingCylinder cylinder, ElevationGrid ground) {
        int stations = Math.max(21, (int) Math.ceil(2 * cylinder.length() / ground.trueSpacing()) + 1);
        double[] felt = new double[stations];
        double[] across = new double[stations];
        for (int i = 0; i < stations; i++) {
            double along = cylinder.length() * i / (stations - 1);
            felt[i] = felt(cylinder, ground, along);
            across[i] = fallToLeft(cylinder, ground, along);
            if (!Double.isFinite(felt[i]) || !Double.isFinite(across[i])) {
                return Optional.empty();
            }
        }
        felt[0] += cylinder.baseLift();
        return Optional.of(resting(felt, mean(across), cylinder));
    }

    /**
     * The same with its contacts counted from a place ahead of the cylinder.
     *
     * @param by how far the cylinder begins behind that place (m)
     * @return the pose
     */
    public RestPose beginning(double by) {
        return by == 0 ? this : new RestPose(contacts.stream().map(c -> c + by).toList(), heights, pitch, rockMargin,
                baseGap, greatestGap, crossSlope, sinkage, rollsSurely, staysSurely);
    }

    /**
     * Whether the hull stays where it is laid, before it is chocked.
     *
     * @return the answer
     */
    public Roll roll() {
        double slope = Math.abs(crossSlope);
        return slope <= staysSurely ? Roll.STAYS : slope < rollsSurely ? Roll.MAY_ROLL : Roll.ROLLS;
    }

    /**
     * How a cylinder rests on heights as it feels them.
     *
     * @param felt       dilated heights at equal steps from base to far end (m), at least two
     * @param crossSlope cross slope (rad)
     * @param cylinder   the cylinder
     * @return the pose
     */
    static RestPose resting(double[] felt, double crossSlope, LyingCylinder cylinder) {
        double step = cylinder.length() / (felt.length - 1);
        int[] hull = upperHull(felt);
        double centre = cylinder.load().centre();
        int edge = 0;
        while (edge < hull.length - 2 && hull[edge + 1] * step < centre) {
            edge++;
        }
        int a = hull[edge];
        int b = hull[edge + 1];
        double slope = (felt[b] - felt[a]) / ((b - a) * step);
        double sunk = Settlement.cylinder(cylinder.load().weight() / cylinder.length(), cylinder.radius(),
                Settlement.LUNAR_STIFFNESS);
        int first = a;
        int last = b;
        for (int i = 0; i < felt.length; i++) {
            if (felt[a] + slope * (i - a) * step - felt[i] <= sunk) {
                first = Math.min(first, i);
                last = Math.max(last, i);
            }
        }
        double greatest = 0;
        for (int i = 0; i < felt.length; i++) {
            greatest = Math.max(greatest, felt[a] + slope * (i - a) * step - felt[i]);
        }
        double half = Settlement.cylinderHalfWidth(sunk, cylinder.radius());
        return new RestPose(List.of(first * step, last * step), List.of(felt[first], felt[last]), -Math.atan(slope),
                Math.min(centre - first * step, last * step - centre),
                Math.max(0, felt[a] - slope * a * step - felt[0]),
                greatest, crossSlope, sunk, Math.asin(Math.min(1, half / cylinder.radius())),
                Math.asin(Math.min(1, half / (3 * cylinder.radius()))));
    }

    /** Indices of the upper convex hull. */
    private static int[] upperHull(double[] heights) {
        List<Integer> hull = new ArrayList<>();
        for (int i = 0; i < heights.length; i++) {
            while (hull.size() >= 2) {
                int a = hull.get(hull.size() - 2);
                int b = hull.get(hull.size() - 1);
                double turn = (heights[b] - heights[a]) * (i - a) - (heights[i] - heights[a]) * (b - a);
                if (turn > 0) {
                    break;
                }
                hull.remove(hull.size() - 1);
            }
            hull.add(i);
        }
        return hull.stream().mapToInt(Integer::intValue).toArray();
    }

    /** The height at which the cylinder's belly would touch at a station (m). */
    private static double felt(LyingCylinder cylinder, ElevationGrid ground, double along) {
        double felt = Double.NEGATIVE_INFINITY;
        double r = cylinder.radius();
        for (int j = 0; j < ACROSS; j++) {
            double y = r * 0.999 * (2.0 * j / (ACROSS - 1) - 1);
            double z = ground.height(place(cylinder, ground, along, y));
            if (!Double.isFinite(z)) {
                return Double.NaN;
            }
            felt = Math.max(felt, z - (r - Math.sqrt(r * r - y * y)));
        }
        return felt;
    }

    private static double fallToLeft(LyingCylinder cylinder, ElevationGrid ground, double along) {
        double side = cylinder.radius() / 2;
        double left = ground.height(place(cylinder, ground, along, side));
        double right = ground.height(place(cylinder, ground, along, -side));
        return Math.atan((right - left) / (2 * side));
    }

    private static Point place(LyingCylinder cylinder, ElevationGrid ground, double along, double left) {
        double scale = ground.metreScale();
        return cylinder.base().moved(cylinder.azimuth(), along / scale, left / scale);
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double v : values) {
            sum += v;
        }
        return sum / values.length;
    }
}
