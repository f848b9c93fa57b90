// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.scene;

import bermwright.foundation.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * Density of soil in place by depth below the natural ground: straight lines between the points given, the first value
 * above the first point and the last below the last.
 *
 * @param points depths and densities, deeper and deeper, at least one
 */
public record DensityProfile(List<At> points) {
    /**
     * Density at a depth.
     *
     * @param depth   depth below the natural ground (m), zero or more
     * @param density density (kg/m3), positive
     */
    public record At(double depth, double density) {
        /** Refuses negative depths and empty soil. */
        public At {
            Require.notNegative("depth", depth, "m");
            Require.positive("density", density, "kg/m3");
        }
    }

    /** Refuses an empty list and depths that do not grow. */
    public DensityProfile {
        points = List.copyOf(points);
        Require.that(!points.isEmpty(), "a density profile has no points; at least 1 is needed.");
        for (int i = 1; i < points.size(); i++) {
            Require.that(points.get(i).depth > points.get(i - 1).depth,
                    "depths of a density profile do not grow: %s m after %s m",
                    points.get(i).depth, points.get(i - 1).depth);
        }
    }

    /**
     * The same density at every depth.
     *
     * @param density density (kg/m3), positive
     * @return the profile
     */
    public static DensityProfile uniform(double density) {
        return new DensityProfile(List.of(new At(0, density)));
    }

    /**
     * Lunar soil in place: 1920 (z + 12.2) / (z + 18) kg/m3 with z in cm, in steps of 2 cm to 4 m.
     *
     * <p>Fitted to cores of the upper 3 m; single cores scatter by about 10 %.
     *
     * @return the profile
     * @see "Carrier, Olhoeft and Mendell (1991), Lunar Sourcebook, chapter 9"
     */
    public static DensityProfile lunarSoilInPlace() {
        List<At> points = new ArrayList<>();
        for (int cm = 0; cm <= 400; cm += 2) {
            points.add(new At(cm / 100.0, 1920 * (cm + 12.2) / (cm + 18)));
        }
        return new DensityProfile(points);
    }

    /**
     * Whether the density is the same everywhere.
     *
     * @return true for a single point
     */
    public boolean isUniform() {
        return points.size() == 1;
    }

    /**
     * The density at a depth.
     *
     * @param depth depth below the natural ground (m); above it the first value holds
     * @return density (kg/m3)
     */
    public double density(double depth) {
        At before = points.get(0);
        if (depth <= before.depth) {
            return before.density;
        }
        for (int i = 1; i < points.size(); i++) {
            At after = points.get(i);
            if (depth <= after.depth) {
                return before.density + (after.density - before.density) * (depth - before.depth)
                        / (after.depth - before.depth);
            }
            before = after;
        }
        return before.density;
    }

    /**
     * The mass over an area above a depth.
     *
     * @param depth depth below the natural ground (m); negative gives a negative mass, at the first density
     * @return mass (kg/m2)
     */
    public double columnMass(double depth) {
        At before = points.get(0);
        if (depth <= before.depth) {
            return depth * before.density;
        }
        double mass = before.depth * before.density;
        for (int i = 1; i < points.size(); i++) {
            At after = points.get(i);
            double to = Math.min(depth, after.depth);
            double there = before.density + (after.density - before.density) * (to - before.depth)
                    / (after.depth - before.depth);
            mass += (to - before.depth) * (before.density + there) / 2;
            if (depth <= after.depth) {
                return mass;
            }
            before = after;
        }
        return mass + (depth - before.depth) * before.density;
    }

    /**
     * This profile with every density changed by one factor.
     *
     * @param factor factor (1), positive
     * @return the changed profile
     */
    public DensityProfile times(double factor) {
        return new DensityProfile(points.stream().map(p -> new At(p.depth, p.density * factor)).toList());
    }
}
