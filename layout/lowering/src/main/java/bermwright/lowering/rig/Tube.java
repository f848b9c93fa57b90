// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import bermwright.foundation.Require;

/**
 * A round tube as a pole.
 *
 * @param diameter outer diameter (m), positive
 * @param wall     wall thickness (m), positive, less than half the diameter
 * @param yield    yield stress (Pa), positive
 * @param modulus  modulus of elasticity (Pa), positive
 */
public record Tube(double diameter, double wall, double yield, double modulus) {
    /** Refuses walls that leave no tube. */
    public Tube {
        Require.positive("pole diameter", diameter, "m");
        Require.positive("pole wall", wall, "m");
        Require.that(wall < diameter / 2, "pole wall is %s m; accepted: less than half the diameter of %s m.",
                wall, diameter);
        Require.positive("yield stress", yield, "Pa");
        Require.positive("modulus of elasticity", modulus, "Pa");
    }

    /**
     * The area of metal.
     *
     * @return the area (m2), positive
     */
    public double area() {
        double inner = diameter - 2 * wall;
        return Math.PI / 4 * (diameter * diameter - inner * inner);
    }

    /**
     * The second moment of area.
     *
     * @return the second moment (m4), positive
     */
    public double secondMoment() {
        double inner = diameter - 2 * wall;
        return Math.PI / 64 * (Math.pow(diameter, 4) - Math.pow(inner, 4));
    }
}
