// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.shape;

import bermwright.foundation.Point;
import bermwright.foundation.Require;

/**
 * A long heap on level ground with a level crown, straight from one place to another, its ends rounded.
 *
 * @param from       start of the crown's middle line
 * @param to         end of the crown's middle line
 * @param height     height of the crown (m), positive
 * @param crownWidth width of the level crown (m), zero for a sharp ridge
 * @param slope      slope of the sides (rad), above 0 and below pi/2
 */
public record Berm(Point from, Point to, double height, double crownWidth, double slope) implements Landform {
    /** Refuses heaps without height or slope. */
    public Berm {
        Require.positive("height of the berm", height, "m");
        Require.notNegative("crown width", crownWidth, "m");
        Require.that(slope > 0 && slope < Math.PI / 2, "slope is %s rad; accepted: above 0 to below pi/2.", slope);
    }

    @Override
    public double height(double east, double north) {
        double dx = to.east() - from.east();
        double dy = to.north() - from.north();
        double squared = dx * dx + dy * dy;
        double t = squared == 0 ? 0
                : ((east - from.east()) * dx + (north - from.north()) * dy) / squared;
        double along = Math.max(0, Math.min(1, t));
        double x = east - from.east() - along * dx;
        double y = north - from.north() - along * dy;
        double outside = Math.sqrt(x * x + y * y) - crownWidth / 2;
        return Math.max(0, height - Math.max(0, outside) * StrictMath.tan(slope));
    }
}
