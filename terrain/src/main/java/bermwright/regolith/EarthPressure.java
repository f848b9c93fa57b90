// SPDX-License-Identifier: Apache-2.0
package bermwright.regolith;

import bermwright.foundation.Require;

/** Earth-pressure coefficients of dry soil against a vertical wall under level ground. */
public final class EarthPressure {
    private EarthPressure() {
    }

    /**
     * Pressure at rest, K0 = 1 - sin phi.
     *
     * @param frictionAngle friction angle (rad), 0 up to 60 degrees
     * @return the coefficient (1)
     * @see "Jaky (1944), formula as in soil-mechanics textbooks"
     */
    public static double atRest(double frictionAngle) {
        return 1 - Math.sin(checked(frictionAngle));
    }

    /**
     * Active pressure, tan2(45 - phi/2).
     *
     * @param frictionAngle friction angle (rad), 0 up to 60 degrees
     * @return the coefficient (1)
     * @see "Rankine (1857)"
     */
    public static double active(double frictionAngle) {
        double t = Math.tan(Math.PI / 4 - checked(frictionAngle) / 2);
        return t * t;
    }

    /**
     * Passive pressure, tan2(45 + phi/2).
     *
     * @param frictionAngle friction angle (rad), 0 up to 60 degrees
     * @return the coefficient (1)
     * @see "Rankine (1857)"
     */
    public static double passive(double frictionAngle) {
        return 1 / active(frictionAngle);
    }

    /**
     * Active pressure under a slope on an upright face, along the slope, cos b (cos b - r) / (cos b + r) with
     * r2 = cos2 b - cos2 phi.
     *
     * @param frictionAngle friction angle phi (rad), 0 up to 60 degrees
     * @param slope         slope of the ground b, up or down (rad), not steeper than the friction angle
     * @return the coefficient (1)
     * @see "Rankine (1857), inclined backfill without cohesion, as in foundation-engineering textbooks"
     */
    public static double activeUnderSlope(double frictionAngle, double slope) {
        double cos = Math.cos(Require.within("slope", slope, -checked(frictionAngle), frictionAngle, "rad"));
        double root = Math.sqrt(Math.max(0, cos * cos - Math.cos(frictionAngle) * Math.cos(frictionAngle)));
        return cos * (cos - root) / (cos + root);
    }

    /**
     * Passive pressure under a slope on an upright face, along the slope, cos b (cos b + r) / (cos b - r).
     *
     * @param frictionAngle friction angle phi (rad), above 0 up to 60 degrees
     * @param slope         slope of the ground b, up or down (rad), not steeper than the friction angle
     * @return the coefficient (1)
     * @see "Rankine (1857), inclined backfill without cohesion, as in foundation-engineering textbooks"
     */
    public static double passiveUnderSlope(double frictionAngle, double slope) {
        double cos = Math.cos(slope);
        return cos * cos / activeUnderSlope(frictionAngle, slope);
    }

    private static double checked(double frictionAngle) {
        return Require.within("friction angle", frictionAngle, 0, Strength.GREATEST_FRICTION_ANGLE + 1e-9, "rad");
    }
}
