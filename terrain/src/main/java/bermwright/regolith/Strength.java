// SPDX-License-Identifier: Apache-2.0
package bermwright.regolith;

import bermwright.foundation.Require;

/**
 * Shear strength of soil after Mohr and Coulomb, as stated.
 *
 * @param frictionAngle friction angle (rad), 0 up to 60 degrees
 * @param cohesion      cohesion (Pa), zero or more
 */
public record Strength(double frictionAngle, double cohesion) {
    /** Greatest friction angle that can be stated (rad), 60 degrees. */
    public static final double GREATEST_FRICTION_ANGLE = Math.PI / 3;
    /** Friction angle above which formulas of footings and anchors extrapolate (rad), 45 degrees. */
    public static final double GREATEST_FOR_DESIGN = Math.PI / 4;

    /** Refuses strengths outside soil's range. */
    public Strength {
        Require.within("friction angle", frictionAngle, 0, GREATEST_FRICTION_ANGLE + 1e-9, "rad");
        Require.notNegative("cohesion", cohesion, "Pa");
    }

    /**
     * A strength that differs by this much, kept within 0 to 60 degrees and not below no cohesion.
     *
     * @param friction change of the friction angle (rad)
     * @param cohesive change of the cohesion (Pa)
     * @return the changed strength
     */
    public Strength changed(double friction, double cohesive) {
        return new Strength(Math.min(GREATEST_FRICTION_ANGLE, Math.max(0, frictionAngle + friction)),
                Math.max(0, cohesion + cohesive));
    }

    /**
     * Friction of smooth steel on the soil, the tangent of two thirds of the friction angle.
     *
     * @return the coefficient (1)
     * @see "EN 1997-1, 6.5.3 (10), smooth base, from memory; common practice for steel"
     */
    public double onSteel() {
        return Math.tan(2 * frictionAngle / 3);
    }

    /**
     * Whether formulas of footings and anchors extrapolate: angles above 45 degrees are measured at very low stress
     * only.
     *
     * @return true above 45 degrees
     * @see "Carrier, Olhoeft and Mendell (1991), Lunar Sourcebook, chapter 9, from memory: 49 to 55 degrees are secants
     *      at low stress"
     */
    public boolean isBeyondDesign() {
        return frictionAngle > GREATEST_FOR_DESIGN + 1e-9;
    }
}
