// SPDX-License-Identifier: Apache-2.0
package bermwright.regolith;

import bermwright.foundation.Require;

/** Stress under loads and how far they sink in; elastic half-space or a bed of springs, as each method says. */
public final class Settlement {
    /** Stiffness of average lunar soil per depth for wide plates, k_phi (N/m3); Bekker's model, from memory. */
    public static final double LUNAR_STIFFNESS = 820_000;
    /** Stiffness of average lunar soil from cohesion, k_c (N/m2); Bekker's model, from memory. */
    public static final double LUNAR_COHESIVE_STIFFNESS = 1400;

    private Settlement() {
    }

    /**
     * Sinkage of a plate, p / (k_c/b + k_phi).
     *
     * @param pressure pressure p (Pa), zero or more
     * @param width    shorter side b (m), positive
     * @return the sinkage (m)
     * @see "Bekker (1969), Introduction to Terrain-Vehicle Systems, with exponent 1; lunar values from memory"
     */
    public static double plate(double pressure, double width) {
        return pressure / (LUNAR_COHESIVE_STIFFNESS / Require.positive("width", width, "m") + LUNAR_STIFFNESS);
    }

    /**
     * Sinkage of a lying cylinder on a bed of springs, (3 q / (4 k sqrt(2R)))^(2/3).
     *
     * @param load      load per length q (N/m), zero or more
     * @param radius    radius R (m), positive
     * @param stiffness pressure per depth k (N/m3), positive
     * @return the sinkage (m)
     */
    public static double cylinder(double load, double radius, double stiffness) {
        return Math.pow(3 * load / (4 * stiffness * Math.sqrt(2 * radius)), 2.0 / 3);
    }

    /**
     * Half the width of contact of a sunken cylinder, sqrt(2 R z).
     *
     * @param sinkage sinkage z (m), zero or more
     * @param radius  radius R (m), positive
     * @return the half width (m)
     */
    public static double cylinderHalfWidth(double sinkage, double radius) {
        return Math.sqrt(2 * radius * sinkage);
    }

    /**
     * Sinkage of the corner of a tilted cylinder on a bed of springs: base and side carry together
     * F = (8/15) sqrt(2R) k z^2.5 / (sin^1.5 t cos t).
     *
     * <p>Small sinkage against the radius, tilt well away from standing and lying, where the whole base or side
     * carries and the sinkage is less.
     *
     * @param load      load F (N), zero or more
     * @param radius    radius R (m), positive
     * @param stiffness pressure per depth k (N/m3), positive
     * @param tilt      tilt t (rad), above 0, below a right angle
     * @return the sinkage z (m)
     */
    public static double corner(double load, double radius, double stiffness, double tilt) {
        double shape = Math.pow(Math.sin(tilt), 1.5) * Math.cos(tilt);
        return Math.pow(15 * load * shape / (8 * Math.sqrt(2 * radius) * stiffness), 0.4);
    }

    /**
     * Area of ground under the sunken corner of a tilted cylinder, seen from above:
     * (4/3) sqrt(2R) z^1.5 / (sin^1.5 t cos t).
     *
     * @param sinkage sinkage z (m), zero or more
     * @param radius  radius R (m), positive
     * @param tilt    tilt t (rad), above 0, below a right angle
     * @return the area (m2)
     */
    public static double cornerArea(double sinkage, double radius, double tilt) {
        return 4.0 / 3 * Math.sqrt(2 * radius) * Math.pow(sinkage, 1.5)
                / (Math.pow(Math.sin(tilt), 1.5) * Math.cos(tilt));
    }
}
