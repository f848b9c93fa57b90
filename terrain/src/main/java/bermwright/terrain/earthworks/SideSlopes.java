// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.Require;

/**
 * The slopes by which made ground meets the ground around it.
 *
 * @param cut  slope of a side that is cut (rad), above 0 and below pi/2
 * @param fill slope of a side that is filled (rad), above 0 and below pi/2
 */
public record SideSlopes(double cut, double fill) {
    /** Refuses slopes that are no slopes. */
    public SideSlopes {
        Require.that(cut > 0 && cut < Math.PI / 2, "cut slope is %s rad; accepted: above 0 to below pi/2.", cut);
        Require.that(fill > 0 && fill < Math.PI / 2, "fill slope is %s rad; accepted: above 0 to below pi/2.", fill);
    }

    /**
     * The same slope for both.
     *
     * @param slope the slope (rad), above 0 and below pi/2
     * @return the slopes
     */
    public static SideSlopes of(double slope) {
        return new SideSlopes(slope, slope);
    }
}
