// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What an elevation file holds.
 *
 * @param file            the file
 * @param format          its format in words, such as {@code GeoTIFF}
 * @param grid            the ground in projected metres, with its metre scale set at {@code centre}; heights in metres
 * @param referenceSystem the reference system; absent where neither the file nor its reader named one, and then
 *                        coordinates are taken as true metres
 * @param centre          where the metre scale and true north were taken
 * @param scale           the scales along east and north at the centre, and true north
 * @param heights         how the file keeps its heights
 * @param cautions        what a user should know before trusting the file, in sentences; empty where nothing is odd
 * @param oddities        those of the cautions that doubt the heights themselves
 * @param whole           the frame of all of the file, of which {@code grid} may be a part
 */
public record GroundFile(Path file, String format, ElevationGrid grid, Optional<ReferenceSystem> referenceSystem,
        Point centre, PointScale scale, Heights heights, List<String> cautions, List<String> oddities,
        GridFrame whole) {
    /** The scales along east and north must agree to this share for one metre scale to serve both. */
    public static final double GREATEST_SCALE_DIFFERENCE = 1e-3;

    /**
     * How a file keeps its heights.
     *
     * @param stored       how a number is stored, such as {@code float32} or {@code text}
     * @param verticalUnit unit of the heights in the file, with "not stated" where metres were assumed
     * @param noDataMark   the mark for a missing height; absent where the file names none
     * @param cellsAreAreas true where the file's coordinates are those of cell corners, false where of points; the
     *                     grid's nodes are at the cells' middles either way
     */
    public record Heights(String stored, String verticalUnit, OptionalDouble noDataMark, boolean cellsAreAreas) {
    }

    /** Refuses nothing; copies the cautions. */
    public GroundFile {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(grid, "grid");
        Objects.requireNonNull(whole, "whole");
        cautions = List.copyOf(cautions);
        oddities = List.copyOf(oddities);
    }

    /**
     * The same file with the metre scale taken at another place.
     *
     * @param place the place, in projected metres, such as the middle of a plan
     * @return the file about that place
     * @throws InputException if the scales along east and north do not agree there
     */
    GroundFile about(Point place) {
        if (referenceSystem.isEmpty()) {
            return this;
        }
        PointScale there = checkedScale(file, referenceSystem.get(), place);
        return new GroundFile(file, format, grid.withMetreScale(there.mean()), referenceSystem, place, there, heights,
                cautions, oddities, whole);
    }

    /**
     * Whether only a part of the file was read.
     *
     * @return true where the file has nodes that the grid has not
     */
    public boolean isPart() {
        return !whole.equals(grid.frame());
    }

    static PointScale checkedScale(Path file, ReferenceSystem system, Point place) {
        FileTrouble trouble = new FileTrouble(file);
        PointScale scale;
        GeographicPlace geographic;
        double skew;
        try {
            scale = system.scale(place);
            geographic = system.geographic(place);
            skew = system.skew(place);
        } catch (IllegalArgumentException e) {
            throw trouble.unreadable("coordinates", e.getMessage(), "coordinates that the file's projection reaches",
                    e);
        }
        if (!(scale.difference() <= GREATEST_SCALE_DIFFERENCE) || !(Math.abs(skew) <= GREATEST_SCALE_DIFFERENCE)) {
            throw trouble.badValue("scale of the projection", String.format(java.util.Locale.ROOT,
                    "%.6f along east and %.6f along north", scale.east(), scale.north()),
                    "scales that agree to 0.1 %; warp the file with " + Warp.command(geographic, system.bodyRadius()));
        }
        return scale;
    }

    /**
     * The distance between neighbouring nodes as the file has it.
     *
     * @return the spacing (m, projected), positive
     */
    public double spacing() {
        return grid.frame().spacing();
    }

    /**
     * How many heights are missing.
     *
     * @return the number of nodes without a height (1)
     */
    public long missing() {
        return grid.missing();
    }
}
