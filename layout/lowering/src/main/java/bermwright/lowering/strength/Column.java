// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.strength;

import bermwright.foundation.Require;
import bermwright.lowering.rig.Tube;

/**
 * What a straight pole bears along its axis, by Euler and by two codes; the lower governs.
 *
 * @param area         area of metal (m2), positive
 * @param secondMoment second moment of area (m4), positive
 * @param yield        yield stress (Pa), positive
 * @param modulus      modulus of elasticity (Pa), positive
 * @param length       length between hinges (m), positive
 */
public record Column(double area, double secondMoment, double yield, double modulus, double length) {
    /** Imperfection factor of hot-finished hollow sections, curve a (1); EN 1993-1-1 table 6.1, from memory. */
    public static final double CURVE_A = 0.21;
    /** Imperfection factor of curve b (1); EN 1993-1-1 table 6.1, from memory. */
    public static final double CURVE_B = 0.34;
    /** Imperfection factor of cold-formed hollow sections, curve c (1); EN 1993-1-1 table 6.1, from memory. */
    public static final double CURVE_C = 0.49;
    /** Imperfection factor of curve d (1); EN 1993-1-1 table 6.1, from memory. */
    public static final double CURVE_D = 0.76;

    /** Refuses columns without size. */
    public Column {
        Require.positive("column area", area, "m2");
        Require.positive("second moment of area", secondMoment, "m4");
        Require.positive("yield stress", yield, "Pa");
        Require.positive("modulus of elasticity", modulus, "Pa");
        Require.positive("column length", length, "m");
    }

    /**
     * A tube hinged at both ends.
     *
     * @param tube   the tube
     * @param length length (m), positive
     * @return the column
     */
    public static Column of(Tube tube, double length) {
        return new Column(tube.area(), tube.secondMoment(), tube.yield(), tube.modulus(), length);
    }

    /**
     * Euler's load, pi2 E I / L2.
     *
     * @return the load (N)
     * @see "Euler (1744)"
     */
    public double euler() {
        return Math.PI * Math.PI * modulus * secondMoment / (length * length);
    }

    /**
     * The slenderness against yield, sqrt(A fy / Ncr).
     *
     * @return the slenderness (1)
     */
    public double slenderness() {
        return Math.sqrt(area * yield / euler());
    }

    /**
     * The load a code column bears, chi A fy.
     *
     * @param imperfection imperfection factor of the curve (1), 0.13 to 0.76
     * @return the load (N)
     * @see "EN 1993-1-1:2005, 6.3.1.2"
     */
    public double curve(double imperfection) {
        return reduction(slenderness(), imperfection) * area * yield;
    }

    /**
     * The reduction for buckling, chi = 1 / (Phi + sqrt(Phi2 - l2)), Phi = (1 + a (l - 0.2) + l2) / 2, at most 1.
     *
     * @param slenderness  slenderness l (1), zero or more
     * @param imperfection imperfection factor a (1)
     * @return the reduction (1), above 0 up to 1
     * @see "EN 1993-1-1:2005, 6.3.1.2"
     */
    public static double reduction(double slenderness, double imperfection) {
        double phi = (1 + imperfection * (slenderness - 0.2) + slenderness * slenderness) / 2;
        return Math.min(1, 1 / (phi + Math.sqrt(phi * phi - slenderness * slenderness)));
    }

    /**
     * The nominal load of the American code: 0.658^(Fy/Fe) Fy A, or 0.877 Fe A for slender columns.
     *
     * @return the load (N), without factor
     * @see "ANSI/AISC 360, chapter E3 (from memory)"
     */
    public double flexural() {
        double elastic = euler() / area;
        double limit = 4.71 * Math.sqrt(modulus / yield);
        double ratio = length / Math.sqrt(secondMoment / area);
        return area * (ratio <= limit ? Math.pow(0.658, yield / elastic) * yield : 0.877 * elastic);
    }

    /**
     * What the pole bears: the lowest of Euler, the cold-formed European curve and the American code.
     *
     * @return the load (N)
     */
    public double capacity() {
        return Math.min(euler(), Math.min(curve(CURVE_C), flexural()));
    }
}
