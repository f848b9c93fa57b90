// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.shape;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Require;

/**
 * A long step in the ground: high behind, lower by the drop ahead, steepest on its line.
 *
 * @param at       a place on its line, at half the drop
 * @param down     the direction in which it falls, square to its line
 * @param drop     height from top to bottom (m), positive
 * @param steepest slope on its line (rad), above 0 and below pi/2
 */
public record Scarp(Point at, Azimuth down, double drop, double steepest) implements Landform {
    /** Refuses a step without drop or slope. */
    public Scarp {
        Require.positive("drop", drop, "m");
        Require.that(steepest > 0 && steepest < Math.PI / 2, "slope is %s rad; accepted: above 0 to below pi/2.",
                steepest);
    }

    @Override
    public double height(double east, double north) {
        double along = (east - at.east()) * StrictMath.sin(down.radians())
                + (north - at.north()) * StrictMath.cos(down.radians());
        return -drop / 2 * StrictMath.tanh(2 * along * StrictMath.tan(steepest) / drop);
    }
}
