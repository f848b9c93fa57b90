// SPDX-License-Identifier: Apache-2.0
package bermwright.site.burial;

import bermwright.foundation.Require;
import bermwright.regolith.Settlement;

/**
 * What a rigid cylinder presses into ground that yields in proportion to depth.
 *
 * @param perLength weight and soil carried per length of hull (N/m)
 * @param sinking   how far it sinks in (m)
 * @param halfWidth half the width of contact (m)
 * @param greatest  greatest pressure on the ground (Pa)
 */
public record SeatLoad(double perLength, double sinking, double halfWidth, double greatest) {
    /**
     * A cylinder on soil of a stiffness: q = (4/3) k z (2 R z)^0.5.
     *
     * @param perLength load per length (N/m), zero or more
     * @param radius    radius (m), positive
     * @param stiffness pressure per sinking (N/m3), positive
     * @return the seat's load
     * @see "common practice, no source: a flat parabola of contact under a rigid cylinder on Winkler ground"
     */
    public static SeatLoad on(double perLength, double radius, double stiffness) {
        Require.notNegative("load per length", perLength, "N/m");
        Require.positive("hull radius", radius, "m");
        Require.positive("stiffness of the ground", stiffness, "N/m3");
        double sinking = Settlement.cylinder(perLength, radius, stiffness);
        return new SeatLoad(perLength, sinking, Settlement.cylinderHalfWidth(sinking, radius), stiffness * sinking);
    }
}
