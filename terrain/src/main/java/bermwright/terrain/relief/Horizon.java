// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Require;
import java.util.ArrayList;
import java.util.List;
import bermwright.foundation.Point;
import bermwright.terrain.grid.ElevationGrid;

/**
 * How high the ground stands around a point of view, seen over the curve of the Moon.
 *
 * <p>The ground is looked at every half cell near by and in steps of a part of the distance further off, bilinear
 * between the nodes; a peak narrower than the step can be missed. Beyond the reach or the edge nothing is seen.
 */
public final class Horizon {
    /** Radius of the sphere over which heights count (m). */
    static final double MOON_RADIUS = 1_737_400;
    /** Steps grow with the distance by this share (1). */
    private static final double STEP_SHARE = 0.005;

    private Horizon() {
    }

    /**
     * The highest ground in one direction.
     *
     * @param azimuth   the direction
     * @param elevation its elevation over the level (rad); -pi/2 where no ground is known that way
     * @param distance  how far it is (m), 0 where no ground is known
     */
    public record Sight(Azimuth azimuth, double elevation, double distance) {
    }

    /**
     * The horizon all around a place.
     *
     * @param ground   the ground
     * @param place    the place, inside the ground
     * @param eye      height of the eye over the ground (m), zero or more
     * @param reach    how far to look (m), positive
     * @param azimuths in how many directions, evenly from grid north on (1), 4 to 36,000
     * @return the sights in order
     * @throws IllegalArgumentException if the ground is not known at the place
     */
    public static List<Sight> around(ElevationGrid ground, Point place, double eye, double reach, int azimuths) {
        Require.that(azimuths >= 4 && azimuths <= 36_000, "%s directions; accepted: 4 to 36000.", azimuths);
        List<Sight> sights = new ArrayList<>(azimuths);
        for (int i = 0; i < azimuths; i++) {
            sights.add(towards(ground, place, eye, reach, new Azimuth(2 * Math.PI * i / azimuths)));
        }
        return sights;
    }

    /**
     * The horizon in one direction.
     *
     * @param ground  the ground
     * @param place   the place, inside the ground
     * @param eye     height of the eye over the ground (m), zero or more
     * @param reach   how far to look (m), positive
     * @param azimuth the direction
     * @return the highest ground that way
     * @throws IllegalArgumentException if the ground is not known at the place
     */
    public static Sight towards(ElevationGrid ground, Point place, double eye, double reach, Azimuth azimuth) {
        Require.notNegative("height of the eye", eye, "m");
        Require.positive("reach", reach, "m");
        double from = ground.height(place) + eye;
        Require.that(Double.isFinite(from), "the ground is not known at %s.", place);
        double scale = ground.metreScale();
        double best = -Math.PI / 2;
        double at = 0;
        double step = ground.trueSpacing() / 2;
        for (double d = step; d <= reach; d += Math.max(step, d * STEP_SHARE)) {
            double east = place.east() + d / scale * azimuth.east();
            double north = place.north() + d / scale * azimuth.north();
            if (!ground.frame().contains(new Point(east, north))) {
                break;
            }
            double elevation = elevation(from, ground.height(east, north), d);
            if (elevation > best) {
                best = elevation;
                at = d;
            }
        }
        return new Sight(azimuth, best, at);
    }

    /**
     * The elevation at which a point is seen.
     *
     * @param from     height of the eye over the sphere (m)
     * @param height   height of the point over the sphere (m)
     * @param distance distance between both along the sphere (m), positive
     * @return the elevation over the level of the eye (rad), -pi/2 to pi/2
     */
    public static double elevation(double from, double height, double distance) {
        double angle = distance / MOON_RADIUS;
        double half = Math.sin(angle / 2);
        // (R + h) cos a - (R + h0), without the loss of digits of the difference.
        double up = height - from - 2 * (MOON_RADIUS + height) * half * half;
        return Math.atan2(up, (MOON_RADIUS + height) * Math.sin(angle));
    }
}
