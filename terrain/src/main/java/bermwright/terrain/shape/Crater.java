// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.shape;

import bermwright.foundation.Point;
import bermwright.foundation.Require;

/**
 * A simple crater: a bowl of parabolic section inside its rim crest, and outside it a rim that falls with the cube
 * of the distance, as the debris does, down to nothing at six rim radii.
 *
 * <p>The floor lies {@code depth - rimHeight} below the ground before.
 *
 * @param centre      the middle
 * @param rimDiameter rim crest to rim crest (m), positive
 * @param depth       rim crest to floor (m), positive, less than the rim radius
 * @param rimHeight   rim crest over the ground before (m), zero up to {@code depth}
 */
public record Crater(Point centre, double rimDiameter, double depth, double rimHeight) implements Landform {
    private static final double REACH_IN_RADII = 6;
    private static final double REST_AT_REACH = 1 / (REACH_IN_RADII * REACH_IN_RADII * REACH_IN_RADII);

    /** Refuses bowls that are not bowls. */
    public Crater {
        Require.positive("rim diameter", rimDiameter, "m");
        Require.positive("depth", depth, "m");
        Require.that(depth < rimDiameter / 2, "depth is %s m; it must be less than the rim radius, %s m."
                + " Were diameter and radius swapped?", depth, rimDiameter / 2);
        Require.within("rim height", rimHeight, 0, depth, "m");
    }

    /**
     * A crater that time has made shallower.
     *
     * @param centre      the middle
     * @param rimDiameter rim crest to rim crest (m), positive
     * @param left        share of the fresh depth and rim that is left (1), above 0 up to 1
     * @return the crater
     */
    public static Crater worn(Point centre, double rimDiameter, double left) {
        Require.positive("share left", left, "1");
        Require.within("share left", left, 0, 1, "1");
        return new Crater(centre, rimDiameter, left * FreshCrater.depth(rimDiameter),
                left * FreshCrater.rimHeight(rimDiameter));
    }

    @Override
    public double height(double east, double north) {
        double x = east - centre.east();
        double y = north - centre.north();
        double radius = rimDiameter / 2;
        double squared = (x * x + y * y) / (radius * radius);
        if (squared >= REACH_IN_RADII * REACH_IN_RADII) {
            return 0;
        }
        if (squared <= 1) {
            return rimHeight - depth * (1 - squared);
        }
        double cube = 1 / (squared * Math.sqrt(squared));
        return rimHeight * (cube - REST_AT_REACH) / (1 - REST_AT_REACH);
    }
}
