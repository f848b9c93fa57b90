// SPDX-License-Identifier: Apache-2.0
package bermwright.site.footprint;

import bermwright.foundation.Require;
import bermwright.site.plan.Hull;

/** Radius of a hull's body along its axis, and how much of a lying body stands below a level. */
public final class BodyProfile {
    private static final int SLICES = 200;

    private BodyProfile() {
    }

    /**
     * Radius of the body.
     *
     * @param hull the hull
     * @param s    distance from the base plane (m), 0 to the hull's length
     * @return radius there (m), nothing at the tip of a cone or dome
     */
    public static double radiusAt(Hull hull, double s) {
        return hull.radius() * Math.min(share(hull.baseEnd(), s), share(hull.farEnd(), hull.length() - s));
    }

    private static double share(Hull.End end, double fromTip) {
        if (end.depth() <= 0 || fromTip >= end.depth()) {
            return 1;
        }
        double u = Math.max(0, fromTip) / end.depth();
        return switch (end.shape()) {
            case FLAT -> 1;
            case CONE -> u;
            case DOME -> Math.sqrt(Math.max(0, 1 - (1 - u) * (1 - u)));
        };
    }

    /**
     * Volume of the lying body below a level, measured along its axis.
     *
     * @param hull  the hull
     * @param level height over the body's lowest line (m), finite
     * @return volume (m3), from nothing below that line to the whole body
     */
    public static double volumeBelow(Hull hull, double level) {
        Require.finite("level", level, "m");
        double slice = hull.length() / SLICES;
        double volume = 0;
        for (int i = 0; i < SLICES; i++) {
            double radius = radiusAt(hull, (i + 0.5) * slice);
            volume += slice * segment(radius, level - (hull.radius() - radius));
        }
        return volume;
    }

    /**
     * Area of a circle below a level.
     *
     * @param radius radius (m), zero or more
     * @param level  height of the level over the circle's lowest point (m)
     * @return the area (m2), from zero to the whole circle
     */
    public static double segment(double radius, double level) {
        if (!(level > 0) || !(radius > 0)) {
            return 0;
        }
        if (level >= 2 * radius) {
            return Math.PI * radius * radius;
        }
        double off = radius - level;
        return radius * radius * Math.acos(off / radius) - off * Math.sqrt(radius * radius - off * off);
    }
}
