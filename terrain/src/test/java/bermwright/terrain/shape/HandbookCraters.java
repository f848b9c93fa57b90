// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.shape;

import bermwright.foundation.Require;

/** Published shapes of fresh craters that invented ground is held against. */
public final class HandbookCraters {
    private HandbookCraters() {
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

    /**
     * Width of the flank outside the rim crest: {@code 0.257 D^1.011}, both in km.
     *
     * @param rimDiameter rim crest to rim crest (m), positive, at most 15 km
     * @return flank width (m), positive
     */
    public static double flankWidth(double rimDiameter) {
        return 0.257 * StrictMath.pow(Require.positive("rim diameter", rimDiameter, "m") / 1000, 1.011) * 1000;
    }

    /** Volume of the bowl below the plane of its rim, pi D^2 d / 8 (m3). */
    static double bowlVolume(Crater crater) {
        return Math.PI * crater.rimDiameter() * crater.rimDiameter() * crater.depth() / 8;
    }

    /** Slope of the bowl at its rim, atan(4 d / D) (rad). */
    static double steepestWall(Crater crater) {
        return StrictMath.atan(4 * crater.depth() / crater.rimDiameter());
    }

    /**
     * Volume of a berm with half a mound at each end.
     *
     * @param berm the berm
     * @return volume (m3), positive
     */
    public static double volume(Berm berm) {
        return sectionArea(berm) * berm.from().distance(berm.to())
                + volume(new Mound(berm.from(), berm.height(), berm.crownWidth() / 2, berm.slope()));
    }

    /**
     * The area of a berm's cross section: w h + h2 / tan slope.
     *
     * @param berm the berm
     * @return the area (m2)
     */
    public static double sectionArea(Berm berm) {
        return berm.crownWidth() * berm.height() + berm.height() * berm.height() / StrictMath.tan(berm.slope());
    }

    /**
     * The volume of a mound, pi h / 3 (R2 + R r + r2).
     *
     * @param mound the mound
     * @return the volume (m3)
     */
    public static double volume(Mound mound) {
        double toe = mound.toeRadius();
        return Math.PI * mound.height() / 3 * (toe * toe + toe * mound.crownRadius()
                + mound.crownRadius() * mound.crownRadius());
    }
}
