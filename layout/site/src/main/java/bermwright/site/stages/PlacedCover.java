// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import bermwright.foundation.Require;
import bermwright.foundation.Ring;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;

/**
 * The finished cover of a hull.
 *
 * @param hull     the hull's id
 * @param finished surface with the whole cover on it, on the ground's grid
 * @param placed   soil in it (m3), zero or more
 * @param toes     where it meets the ground
 */
public record PlacedCover(String hull, ElevationGrid finished, double placed, List<Ring> toes) {
    /** Refuses volumes below zero. */
    public PlacedCover {
        Require.notNegative("placed volume over " + hull, placed, "m3");
        toes = List.copyOf(toes);
    }
}
