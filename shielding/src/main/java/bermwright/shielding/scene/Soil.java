// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.scene;

import bermwright.foundation.Require;
import bermwright.regolith.BulkDensity;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.List;
import java.util.Objects;

/**
 * All soil of a scene as three surfaces over one grid: undisturbed below, placed above it.
 *
 * <p>Each cell is two triangles, cut from its south-west to its north-east node. Where the finished surface lies
 * below the natural ground (a trench), the soil between them is gone. Where the surfaces carry finer patches, rays
 * that begin in one run through its nodes first and through the grid's beyond it.
 *
 * @param natural       the ground before any work, from which depth in place is counted
 * @param finished      the surface as it stands, mound and cuts included; the same frame, and its
 *                      patches are those that count
 * @param placedDensity density of placed soil (kg/m3), positive
 * @param inPlace       density of undisturbed soil by depth below {@code natural}
 */
public record Soil(ElevationGrid natural, ElevationGrid finished, double placedDensity, BulkDensity inPlace) {
    /** Refuses surfaces on different grids and soil without mass. */
    public Soil {
        Objects.requireNonNull(inPlace, "inPlace");
        Require.that(natural.frame().equals(finished.frame()), "natural ground and finished surface lie on different"
                + " grids: %s and %s", natural.frame(), finished.frame());
        if (!frames(natural).equals(frames(finished))) {
            ElevationGrid before = natural.withPatches(List.of());
            natural = before.withPatches(frames(finished).stream().map(before::patch).toList());
        }
        Require.positive("density of placed soil", placedDensity, "kg/m3");
    }

    private static List<GridFrame> frames(ElevationGrid grid) {
        return grid.patches().stream().map(ElevationGrid::frame).toList();
    }
}
