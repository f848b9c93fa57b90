// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.soil;

import bermwright.foundation.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * Regolith in place: density and strength against depth.
 *
 * <p>Density runs straight between the given depths and stays at the last beyond them. Friction angle and cohesion
 * are those of the top 15 cm; below, they rise in the proportion of the mean lunar profile (friction by up to 12
 * degrees but never above 45 degrees, for higher values hold at very low stress only; cohesion by up to 3.0/0.52),
 * unless the soil is uniform. Sites scatter widely: friction by 5 degrees, cohesion by a factor of two.
 *
 * @see "Carrier, Olhoeft and Mendell (1991), Lunar Sourcebook, chapter 9 (strength by depth: from memory)"
 */
public final class Regolith {
    /** Highest friction angle used for anchors and footings (rad), 45 degrees. */
    public static final double GREATEST_FRICTION_ANGLE = Math.PI / 4;
    private static final double TOP_MIDDLE = 0.075;
    private static final double DENSE_MIDDLE = 0.45;
    private static final double FRICTION_RISE = Math.toRadians(12);
    private static final double COHESION_RISE = 3.0 / 0.52;

    private final double[] depths;
    private final double[] densities;
    private final double frictionAngle;
    private final double cohesion;
    private final boolean rising;

    private Regolith(List<double[]> profile, Strength strength, boolean rising) {
        Require.that(!profile.isEmpty(), "a density profile without entries; at least one is needed.");
        this.depths = new double[profile.size()];
        this.densities = new double[profile.size()];
        for (int i = 0; i < depths.length; i++) {
            depths[i] = Require.notNegative("depth in the profile", profile.get(i)[0], "m");
            densities[i] = Require.positive("density in the profile", profile.get(i)[1], "kg/m3");
            Require.that(i == 0 || depths[i] > depths[i - 1], "depths in the density profile must increase.");
        }
        this.frictionAngle = strength.frictionAngle;
        this.cohesion = strength.cohesion;
        this.rising = rising;
    }

    /**
     * Strength of the top layer.
     *
     * @param frictionAngle friction angle (rad), 0 up to 60 degrees
     * @param cohesion      cohesion (Pa), zero or more
     */
    public record Strength(double frictionAngle, double cohesion) {
        /** Refuses strengths outside soil's range. */
        public Strength {
            Require.within("friction angle", frictionAngle, 0, Math.PI / 3, "rad");
            Require.notNegative("cohesion", cohesion, "Pa");
        }

        /**
         * A strength from degrees.
         *
         * @param frictionDeg friction angle in degrees, 0 to 60
         * @param cohesion    cohesion (Pa), zero or more
         * @return the strength
         */
        public static Strength ofDegrees(double frictionDeg, double cohesion) {
            return new Strength(Math.toRadians(frictionDeg), cohesion);
        }
    }

    /**
     * Soil that is the same at every depth, as textbooks have it.
     *
     * @param density  density (kg/m3), positive
     * @param strength strength
     * @return the soil
     */
    public static Regolith uniform(double density, Strength strength) {
        return new Regolith(List.of(new double[] {0, density}), strength, false);
    }

    /**
     * Soil by a density profile, its strength rising with depth.
     *
     * @param profile  pairs of depth (m) and density (kg/m3), depths rising
     * @param strength strength of the top 15 cm
     * @return the soil
     */
    public static Regolith of(List<double[]> profile, Strength strength) {
        return new Regolith(profile, strength, true);
    }

    /**
     * Mean lunar regolith, rho = 1.92 (z + 12.2)/(z + 18) g/cm3 with z in cm, to 3 m.
     *
     * @param strength strength of the top 15 cm
     * @return the soil
     * @see "Carrier, Olhoeft and Mendell (1991), Lunar Sourcebook, chapter 9"
     */
    public static Regolith lunarMean(Strength strength) {
        List<double[]> profile = new ArrayList<>();
        for (int cm = 0; cm <= 300; cm += cm < 60 ? 2 : 10) {
            profile.add(new double[] {cm / 100.0, lunarDensity(cm / 100.0)});
        }
        return new Regolith(profile, strength, true);
    }

    /**
     * The density of mean lunar regolith, 1.92 (z + 12.2)/(z + 18) g/cm3 with z in cm.
     *
     * @param depth depth (m), zero or more
     * @return the density (kg/m3)
     * @see "Carrier, Olhoeft and Mendell (1991), Lunar Sourcebook, chapter 9"
     */
    public static double lunarDensity(double depth) {
        double cm = 100 * Require.notNegative("depth", depth, "m");
        return 1920 * (cm + 12.2) / (cm + 18);
    }

    /**
     * The mean density of mean lunar regolith between two depths, by integration of the profile.
     *
     * @param top    upper depth (m), zero or more
     * @param bottom lower depth (m), more than the upper
     * @return the mean density (kg/m3)
     */
    public static double lunarMeanDensity(double top, double bottom) {
        Require.that(top >= 0 && bottom > top, "depths are %s m to %s m; accepted: rising from 0.", top, bottom);
        double a = 100 * top;
        double b = 100 * bottom;
        return 1920 * (b - a - 5.8 * Math.log((b + 18) / (a + 18))) / (b - a);
    }

    /**
     * The density at a depth.
     *
     * @param depth depth (m), zero or more
     * @return the density (kg/m3)
     */
    public double density(double depth) {
        Require.notNegative("depth", depth, "m");
        if (depth <= depths[0]) {
            return densities[0];
        }
        for (int i = 1; i < depths.length; i++) {
            if (depth <= depths[i]) {
                double share = (depth - depths[i - 1]) / (depths[i] - depths[i - 1]);
                return densities[i - 1] + share * (densities[i] - densities[i - 1]);
            }
        }
        return densities[depths.length - 1];
    }

    /**
     * The mean density from the surface to a depth.
     *
     * @param depth depth (m), positive
     * @return the mean density (kg/m3)
     */
    public double meanDensity(double depth) {
        Require.positive("depth", depth, "m");
        double mass = 0;
        double at = 0;
        for (double next : depths) {
            double to = Math.min(next, depth);
            if (to > at) {
                mass += (density(at) + density(to)) / 2 * (to - at);
                at = to;
            }
        }
        if (depth > at) {
            mass += densities[densities.length - 1] * (depth - at);
        }
        return mass / depth;
    }

    /**
     * The friction angle at a depth.
     *
     * @param depth depth (m), zero or more
     * @return the friction angle (rad), at most 45 degrees where the strength rises
     */
    public double frictionAngle(double depth) {
        return rising ? Math.min(GREATEST_FRICTION_ANGLE, frictionAngle + FRICTION_RISE * risen(depth))
                : frictionAngle;
    }

    /**
     * The cohesion at a depth.
     *
     * @param depth depth (m), zero or more
     * @return the cohesion (Pa), zero or more
     */
    public double cohesion(double depth) {
        return rising ? cohesion * (1 + (COHESION_RISE - 1) * risen(depth)) : cohesion;
    }

    private static double risen(double depth) {
        return Math.min(1, Math.max(0, (depth - TOP_MIDDLE) / (DENSE_MIDDLE - TOP_MIDDLE)));
    }
}
