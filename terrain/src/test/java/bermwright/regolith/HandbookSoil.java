// SPDX-License-Identifier: Apache-2.0
package bermwright.regolith;

import bermwright.foundation.Require;

/** Formulas of handbooks that ours are held against, and that no plan needs. */
final class HandbookSoil {
    private HandbookSoil() {
    }

    /**
     * Nc of a rough base, (Nq - 1) cot phi.
     *
     * @param phi friction angle (rad), positive, up to 60 degrees
     * @return the factor (1)
     * @see "Terzaghi (1943), Theoretical Soil Mechanics"
     */
    public static double ncTerzaghi(double phi) {
        return (nqTerzaghi(phi) - 1) / Math.tan(phi);
    }

    /**
     * Ng = 1.5 (Nq - 1) tan phi.
     *
     * @param phi friction angle (rad), 0 up to 60 degrees
     * @return the factor (1)
     * @see "Hansen (1970), Danish Geotechnical Institute Bulletin 28"
     */
    public static double ngHansen(double phi) {
        return 1.5 * (Bearing.nq(phi) - 1) * Math.tan(phi);
    }

    /**
     * Ng = (Nq - 1) tan(1.4 phi).
     *
     * @param phi friction angle (rad), 0 up to 60 degrees
     * @return the factor (1)
     * @see "Meyerhof (1963), Canadian Geotechnical Journal 1, 16-26"
     */
    public static double ngMeyerhof(double phi) {
        return (Bearing.nq(phi) - 1) * Math.tan(1.4 * phi);
    }

    /**
     * The pressure under a square footing at failure, 1.3 c Nc + q Nq + 0.4 g B Ng.
     *
     * @param cohesion   cohesion c (Pa), zero or more; two thirds of it for local shear
     * @param surcharge  pressure of the soil beside the footing q (Pa), zero or more
     * @param underWidth weight per volume times width g B (Pa), zero or more
     * @param factors    the factors
     * @return the pressure (Pa)
     * @see "Terzaghi (1943), Theoretical Soil Mechanics"
     */
    public static double squareTerzaghi(double cohesion, double surcharge, double underWidth, Bearing.Table factors) {
        return 1.3 * cohesion * factors.nc() + surcharge * factors.nq() + 0.4 * underWidth * factors.ng();
    }

    /**
     * Active pressure with wall friction on a plane slip surface; pressure along the wall's friction angle.
     *
     * @param frictionAngle friction angle of the soil (rad), positive, up to 60 degrees
     * @param wallFriction  friction angle between wall and soil (rad), 0 up to the soil's
     * @return the coefficient (1)
     * @see "Coulomb (1776)"
     */
    public static double coulombActive(double frictionAngle, double wallFriction) {
        return coulomb(frictionAngle, wallFriction, 1);
    }

    /**
     * Passive pressure with wall friction on a plane slip surface. Unsafe where the wall friction is above half the
     * soil's: the true surface is curved.
     *
     * @param frictionAngle friction angle of the soil (rad), positive, up to 60 degrees
     * @param wallFriction  friction angle between wall and soil (rad), 0 up to half the soil's
     * @return the coefficient (1)
     * @see "Coulomb (1776)"
     */
    public static double coulombPassive(double frictionAngle, double wallFriction) {
        Require.within("wall friction", wallFriction, 0, frictionAngle / 2 + 1e-12, "rad");
        return coulomb(frictionAngle, wallFriction, -1);
    }

    private static double coulomb(double phi, double delta, int sign) {
        Require.within("friction angle", phi, 0, Math.PI / 2, "rad");
        double root = Math.sqrt(Math.sin(phi + delta) * Math.sin(phi) / Math.cos(delta));
        double below = 1 + sign * root;
        return Math.cos(phi) * Math.cos(phi) / (Math.cos(delta) * below * below);
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
     * The density at a depth.
     *
     * @param depth depth (m), zero or more; fitted to 3 m
     * @return bank density (kg/m3)
     */
    public static double density(double depth) {
        return 1920 * (Require.notNegative("depth", depth, "m") + 0.122) / (depth + 0.18);
    }

    /**
     * Nq of a rough base, e^((3 pi/2 - phi) tan phi) / (2 cos2(45 + phi/2)).
     *
     * @param phi friction angle (rad), 0 up to 60 degrees
     * @return the factor (1)
     * @see "Terzaghi (1943), Theoretical Soil Mechanics"
     */
    public static double nqTerzaghi(double phi) {
        double c = Math.cos(Math.PI / 4 + phi / 2);
        return Math.exp((1.5 * Math.PI - phi) * Math.tan(phi)) / (2 * c * c);
    }
}
