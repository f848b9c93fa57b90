// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The ground a plan stands on.
 *
 * @param grid      heights
 * @param trueNorth azimuth of true north from grid north (rad); empty where it is not known
 * @param words     what the file is, in a few words
 * @param cautions  what to bear in mind about it
 */
public record SiteGround(ElevationGrid grid, OptionalDouble trueNorth, String words, List<String> cautions) {
    /** Copies the cautions. */
    public SiteGround {
        Objects.requireNonNull(grid, "grid");
        cautions = List.copyOf(cautions);
    }
}
