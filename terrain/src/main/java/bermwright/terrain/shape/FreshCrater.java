// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.shape;

import bermwright.foundation.Require;

/**
 * Measured proportions of fresh simple craters of the Moon.
 *
 * <p>Valid for rim diameters from some 10 m to 15 km; craters below 400 m are mostly worn and shallower, 0.05 to 0.15
 * of their diameter. Figures written down from memory. Single craters scatter by some 20 % and more about them.
 *
 * @see "Pike (1977), Size-dependence in the shape of fresh impact craters on the Moon, in Impact and Explosion
 *     Cratering, 489-509"
 */
public final class FreshCrater {
    private static final double KILOMETRE = 1000;
    private static final double GREATEST_DIAMETER = 15_000;

    private FreshCrater() {
    }

    /**
     * Depth from rim crest to floor: {@code 0.196 D^1.010}, both in km.
     *
     * @param rimDiameter rim crest to rim crest (m), positive, at most 15 km
     * @return depth (m), positive
     */
    public static double depth(double rimDiameter) {
        return power(rimDiameter, 0.196, 1.010);
    }

    /**
     * Height of the rim crest over the ground before: {@code 0.036 D^1.014}, both in km.
     *
     * @param rimDiameter rim crest to rim crest (m), positive, at most 15 km
     * @return rim height (m), positive
     */
    public static double rimHeight(double rimDiameter) {
        return power(rimDiameter, 0.036, 1.014);
    }

    private static double power(double rimDiameter, double factor, double exponent) {
        Require.positive("rim diameter", rimDiameter, "m");
        Require.within("rim diameter", rimDiameter, 0, GREATEST_DIAMETER, "m");
        return factor * StrictMath.pow(rimDiameter / KILOMETRE, exponent) * KILOMETRE;
    }
}
