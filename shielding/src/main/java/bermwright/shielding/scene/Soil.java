// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.scene;

import bermwright.foundation.Require;
import bermwright.regolith.BulkDensity;
import bermwright.terrain.grid.ElevationGrid;
import java.util.Objects;

/**
 * All soil of a scene as three surfaces over one grid: undisturbed below, placed above it.
 *
 * <p>Each cell is two triangles, cut from its south-west to its north-east node. Where the finished surface lies
 * below the natural ground (a trench), the soil between them is gone.
 *
 * @param natural       the ground before any work, from which depth in place is counted
 * @param finished      the surface as it stands, mound and cuts included; the same frame
 * @param placedDensity density of placed soil (kg/m3), positive
 * @param inPlace       density of undisturbed soil by depth below {@code natural}
 */
public record Soil(ElevationGrid natural, ElevationGrid finished, double placedDensity, BulkDensity inPlace) {
    /** Refuses surfaces on different grids and soil without mass. */
    public Soil {
        Objects.requireNonNull(inPlace, "inPlace");
        Require.that(natural.frame().equals(finished.frame()), "natural ground and finished surface lie on different"
                + " grids: %s and %s", natural.frame(), finished.frame());
        Require.positive("density of placed soil", placedDensity, "kg/m3");
    }

    /**
     * Ground without a mound.
     *
     * @param ground  the ground
     * @param inPlace its density by depth
     * @return the soil
     */
    public static Soil bare(ElevationGrid ground, BulkDensity inPlace) {
        return new Soil(ground, ground, inPlace.density(0), inPlace);
    }
}
