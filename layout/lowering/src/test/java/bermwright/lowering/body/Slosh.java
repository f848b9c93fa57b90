// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.body;

import bermwright.foundation.Require;

/**
 * Liquid in an upright round tank.
 *
 * @param radius  radius of the tank R (m), positive
 * @param depth   depth of the liquid h (m), positive
 * @param gravity acceleration of free fall (m/s2), positive
 */
public record Slosh(double radius, double depth, double gravity) {
    /** First root of the slope of the Bessel function J1 (1). */
    public static final double FIRST_LATERAL = 1.8411837813406593;

    /** Refuses empty tanks. */
    public Slosh {
        Require.positive("tank radius", radius, "m");
        Require.positive("depth of liquid", depth, "m");
        Require.positive("gravity", gravity, "m/s2");
    }

    /**
     * Period of the first sideways swing, w2 = (1.841 g/R) tanh(1.841 h/R).
     *
     * @return the period (s)
     * @see "Abramson (1966), The Dynamic Behavior of Liquids in Moving Containers, NASA SP-106"
     */
    public double period() {
        double squared = FIRST_LATERAL * gravity / radius * Math.tanh(FIRST_LATERAL * depth / radius);
        return 2 * Math.PI / Math.sqrt(squared);
    }

    /**
     * How far the liquid's centre moves sideways in a tank at a tilt, R2 tan(t) / (4h).
     *
     * @param tilt tilt (rad), 0 up to the tilt at which the bottom comes dry
     * @return the shift (m)
     * @throws IllegalArgumentException if the bottom is dry at that tilt
     */
    public double shift(double tilt) {
        Require.within("tilt of the tank", tilt, 0, dryTilt() + 1e-12, "rad");
        return radius * radius * Math.tan(tilt) / (4 * depth);
    }

    /**
     * The tilt at which the bottom begins to come dry, atan(h/R).
     *
     * @return the tilt (rad)
     */
    public double dryTilt() {
        return Math.atan(depth / radius);
    }
}
