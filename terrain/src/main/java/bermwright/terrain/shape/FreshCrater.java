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

    /**
     * Width of the flank outside the rim crest: {@code 0.257 D^1.011}, both in km.
     *
     * @param rimDiameter rim crest to rim crest (m), positive, at most 15 km
     * @return flank width (m), positive
     */
    public static double flankWidth(double rimDiameter) {
        return power(rimDiameter, 0.257, 1.011);
    }

    /**
     * Mean thickness of the debris around a fresh crater: {@code 0.14 R^0.74 (r/R)^-3}, metres only.
     *
     * @param rimRadius radius R of the rim crest (m), positive
     * @param distance  distance r from the middle (m), at least {@code rimRadius}
     * @return thickness (m), positive, falling with distance; single craters scatter widely about it
     * @see "McGetchin, Settle and Head (1973), Earth and Planetary Science Letters 20, 226-236"
     */
    public static double ejectaThickness(double rimRadius, double distance) {
        return 0.14 * StrictMath.pow(Require.positive("rim radius", rimRadius, "m"), 0.74)
                * cubeFall(rimRadius, distance);
    }

    /**
     * Mean thickness of the debris around a fresh crater, a second relation: {@code 0.033 R (r/R)^-3}.
     *
     * @param rimRadius radius R of the rim crest (m), positive
     * @param distance  distance r from the middle (m), at least {@code rimRadius}
     * @return thickness (m), positive, falling with distance
     * @see "Pike (1974), Earth and Planetary Science Letters 23, 265-271"
     */
    public static double ejectaThicknessByRadius(double rimRadius, double distance) {
        return 0.033 * Require.positive("rim radius", rimRadius, "m") * cubeFall(rimRadius, distance);
    }

    private static double cubeFall(double rimRadius, double distance) {
        Require.atLeast("distance", distance, rimRadius, "m");
        double ratio = rimRadius / distance;
        return ratio * ratio * ratio;
    }

    private static double power(double rimDiameter, double factor, double exponent) {
        Require.positive("rim diameter", rimDiameter, "m");
        Require.within("rim diameter", rimDiameter, 0, GREATEST_DIAMETER, "m");
        return factor * StrictMath.pow(rimDiameter / KILOMETRE, exponent) * KILOMETRE;
    }
}
