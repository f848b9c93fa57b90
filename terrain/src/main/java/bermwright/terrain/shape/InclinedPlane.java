// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.shape;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Require;

/**
 * A plane that falls along an azimuth.
 *
 * @param at     a place on it
 * @param height its height there (m)
 * @param slope  angle to the level (rad), 0 up to but not including pi/2
 * @param down   the direction in which it falls
 */
public record InclinedPlane(Point at, double height, double slope, Azimuth down) implements Landform {
    /** Refuses heights that are not finite and slopes that are no slopes. */
    public InclinedPlane {
        Require.finite("height of the plane", height, "m");
        Require.that(slope >= 0 && slope < Math.PI / 2, "slope is %s rad; accepted: 0 to below pi/2.", slope);
    }

    @Override
    public double height(double east, double north) {
        double along = (east - at.east()) * StrictMath.sin(down.radians())
                + (north - at.north()) * StrictMath.cos(down.radians());
        return height - along * StrictMath.tan(slope);
    }
}
