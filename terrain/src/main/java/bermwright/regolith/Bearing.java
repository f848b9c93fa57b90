// SPDX-License-Identifier: Apache-2.0
package bermwright.regolith;

import bermwright.foundation.Require;

/**
 * The pressure at which soil under a footing gives way: c Nc sc dc ic + q Nq sq dq iq + rho g B Ng sg ig / 2.
 *
 * <p>General shear of dry soil, with the strength stated at half the footing's width under its base. For friction up to
 * 45 degrees; above, the factors run away and extrapolate. What lunar soil is taken for spreads the answer by a factor
 * of ten and more.
 */
public final class Bearing {
    private Bearing() {
    }

    /**
     * A rectangular footing.
     *
     * @param width  shorter side (m), positive
     * @param length longer side (m), at least the shorter
     * @param depth  depth of its base under the ground (m), zero or more
     */
    public record Footing(double width, double length, double depth) {
        /** Refuses footings without size. */
        public Footing {
            Require.positive("footing width", width, "m");
            Require.atLeast("footing length", length, width, "m");
            Require.notNegative("footing depth", depth, "m");
        }

        /**
         * A square footing of an area on the surface.
         *
         * @param area area (m2), positive
         * @return the footing
         */
        public static Footing square(double area) {
            double side = Math.sqrt(Require.positive("footing area", area, "m2"));
            return new Footing(side, side, 0);
        }
    }

    /**
     * The three parts of the bearing pressure.
     *
     * @param cohesion  part from cohesion (Pa)
     * @param surcharge part from the soil beside the footing (Pa)
     * @param weight    part from the soil under the footing (Pa)
     */
    public record Parts(double cohesion, double surcharge, double weight) {
        /**
         * The whole.
         *
         * @return the pressure (Pa)
         */
        public double sum() {
            return cohesion + surcharge + weight;
        }
    }

    /**
     * Nq = e^(pi tan phi) tan2(45 + phi/2).
     *
     * @param phi friction angle (rad), 0 up to 60 degrees
     * @return the factor (1)
     * @see "Reissner (1924)"
     */
    public static double nq(double phi) {
        checked(phi);
        double t = Math.tan(Math.PI / 4 + phi / 2);
        return Math.exp(Math.PI * Math.tan(phi)) * t * t;
    }

    /**
     * Nc = (Nq - 1) cot phi; 2 + pi without friction.
     *
     * @param phi friction angle (rad), 0 up to 60 degrees
     * @return the factor (1)
     * @see "Prandtl (1921)"
     */
    public static double nc(double phi) {
        return phi < 1e-6 ? 2 + Math.PI : (nq(phi) - 1) / Math.tan(phi);
    }

    /**
     * Ng = 2 (Nq + 1) tan phi.
     *
     * @param phi friction angle (rad), 0 up to 60 degrees
     * @return the factor (1)
     * @see "Vesic (1973), Journal of the Soil Mechanics and Foundations Division 99, 45-73"
     */
    public static double ngVesic(double phi) {
        return 2 * (nq(phi) + 1) * Math.tan(phi);
    }

    /**
     * The pressure under a footing at failure, with Vesic's factors and shapes and Meyerhof's inclination.
     *
     * @param footing     the footing
     * @param soil        the soil; strength at the depth of half the footing's width below its base
     * @param gravity     acceleration of free fall (m/s2), positive
     * @param inclination angle of the load from plumb (rad), 0 up to a right angle
     * @return the parts of the pressure
     * @see "Vesic (1973); inclination: Meyerhof (1963)"
     */
    public static Parts ultimate(Footing footing, Regolith soil, double gravity, double inclination) {
        double looked = footing.depth + footing.width / 2;
        double phi = soil.frictionAngle(looked);
        double c = soil.cohesion(looked);
        double unit = soil.meanDensity(footing.depth + footing.width)
                * Require.positive("gravity", gravity, "m/s2");
        double slender = footing.width / footing.length;
        double ratio = footing.depth / footing.width;
        double k = ratio <= 1 ? ratio : Math.atan(ratio);
        double sin = Math.sin(phi);
        double tan = Math.tan(phi);
        double sc = 1 + slender * nq(phi) / nc(phi);
        double sq = 1 + slender * tan;
        double sg = 1 - 0.4 * slender;
        double dc = 1 + 0.4 * k;
        double dq = 1 + 2 * tan * (1 - sin) * (1 - sin) * k;
        double ic = inclined(inclination, Math.PI / 2);
        double ig = phi > 0 ? inclined(inclination, phi) : 0;
        return new Parts(c * nc(phi) * sc * dc * ic, unit * footing.depth * nq(phi) * sq * dq * ic,
                unit * footing.width / 2 * ngVesic(phi) * sg * ig);
    }

    /**
     * The factors of a method, as its table gives them.
     *
     * @param nc factor of cohesion (1)
     * @param nq factor of surcharge (1)
     * @param ng factor of weight (1)
     */
    public record Table(double nc, double nq, double ng) {
    }

    /**
     * How an inclined load weakens the soil, (1 - a/limit)2, nothing beyond the limit.
     *
     * @param inclination angle of the load from plumb a (rad), zero or more
     * @param limit       the limit (rad): a right angle for cohesion and surcharge, phi for weight
     * @return the factor (1), 0 to 1
     * @see "Meyerhof (1963)"
     */
    public static double inclined(double inclination, double limit) {
        double left = Math.max(0, 1 - Math.abs(inclination) / limit);
        return left * left;
    }

    private static void checked(double phi) {
        Require.within("friction angle", phi, 0, Strength.GREATEST_FRICTION_ANGLE + 1e-9, "rad");
    }
}
