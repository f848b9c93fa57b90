// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.shape;

import bermwright.foundation.Point;
import bermwright.foundation.Require;

/**
 * A round mound on level ground: a cone, cut off level where it has a crown.
 *
 * @param centre      the middle
 * @param height      height of the crown (m), positive
 * @param crownRadius radius of the level crown (m), zero for a pointed cone
 * @param slope       slope of the side (rad), above 0 and below pi/2
 */
public record Mound(Point centre, double height, double crownRadius, double slope) implements Landform {
    /** Refuses mounds without height or slope. */
    public Mound {
        Require.positive("height of the mound", height, "m");
        Require.notNegative("crown radius", crownRadius, "m");
        Require.that(slope > 0 && slope < Math.PI / 2, "slope is %s rad; accepted: above 0 to below pi/2.", slope);
    }

    @Override
    public double height(double east, double north) {
        double x = east - centre.east();
        double y = north - centre.north();
        double outside = Math.sqrt(x * x + y * y) - crownRadius;
        return Math.max(0, height - Math.max(0, outside) * StrictMath.tan(slope));
    }

    /**
     * The radius where it meets the level ground.
     *
     * @return the toe radius (m)
     */
    public double toeRadius() {
        return crownRadius + height / StrictMath.tan(slope);
    }
}
