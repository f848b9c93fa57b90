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
     * Upright stress under a point load, 3 Q z3 / (2 pi R5).
     *
     * @param load  load Q (N)
     * @param depth depth z (m), positive
     * @param away  level distance (m), zero or more
     * @return the stress (Pa)
     * @see "Boussinesq (1885)"
     */
    public static double underPoint(double load, double depth, double away) {
        Require.positive("depth", depth, "m");
        return 3 * load * Math.pow(depth, 3) / (2 * Math.PI * Math.pow(Math.hypot(depth, away), 5));
    }

    /**
     * Upright stress under the middle of a loaded strip as a share of its pressure, (a + sin a)/pi, a = 2 atan(b/z).
     *
     * @param halfWidth half width b (m), positive
     * @param depth     depth z (m), positive
     * @return the share (1), 0 to 1
     * @see "Michell (1902), as in soil-mechanics textbooks"
     */
    public static double underStrip(double halfWidth, double depth) {
        double a = 2 * Math.atan(halfWidth / Require.positive("depth", depth, "m"));
        return (a + Math.sin(a)) / Math.PI;
    }

    /**
     * Upright stress under a line load, 2 Q / (pi z).
     *
     * @param load  load per length (N/m)
     * @param depth depth z (m), positive
     * @return the stress (Pa)
     * @see "Flamant (1892)"
     */
    public static double underLine(double load, double depth) {
        return 2 * load / (Math.PI * Require.positive("depth", depth, "m"));
    }

    /**
     * Upright stress under the corner of a loaded rectangle as a share of its pressure.
     *
     * @param m one side over the depth (1), positive
     * @param n other side over the depth (1), positive
     * @return the share (1), 0 to 0.25
     * @see "Newmark (1935)"
     */
    public static double underCorner(double m, double n) {
        double mm = m * m;
        double nn = n * n;
        double v = mm + nn + 1;
        double root = Math.sqrt(v);
        double angle = Math.atan2(2 * m * n * root, v - mm * nn);
        return (2 * m * n * root / (v + mm * nn) * (v + 1) / v + angle) / (4 * Math.PI);
    }

    /**
     * Elastic settlement of a footing, q B (1 - nu2) I / E.
     *
     * @param pressure pressure q (Pa)
     * @param width    width B (m), positive
     * @param modulus  modulus of the soil E (Pa), positive
     * @param poisson  Poisson's ratio of the soil (1), 0 to 0.5
     * @param shape    influence factor I (1): 1.122 middle of a flexible square, 0.82 a rigid one
     * @return the settlement (m)
     * @see "elastic half-space, factors as in soil-mechanics textbooks"
     */
    public static double elastic(double pressure, double width, double modulus, double poisson, double shape) {
        return pressure * width * (1 - poisson * poisson) * shape / Require.positive("modulus", modulus, "Pa");
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
