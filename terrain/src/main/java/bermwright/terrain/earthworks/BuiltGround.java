// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.Ring;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.FinerPatch;
import bermwright.terrain.grid.GridFrame;
import java.util.function.Function;

/**
 * Ground shaped on nodes of its own, so that what is built does not hang on the cell of the elevation file.
 *
 * @param after       the ground after, with a finer patch where it was shaped
 * @param moved       cut and fill on the finer nodes
 * @param meetsGround false where a side never meets known ground
 */
public record BuiltGround(ElevationGrid after, CutAndFill moved, boolean meetsGround) {
    /** Nodes of what is built lie no farther apart (m). */
    public static final double SPACING = 0.25;
    /** Cells kept around what is changed, so that its edge lies inside. */
    private static final int MARGIN = 3;

    /**
     * Shapes the ground: roughly on its own nodes to find where it changes, then on finer ones there.
     *
     * @param ground  the ground
     * @param area    where it is shaped at the least
     * @param shaping shapes a ground, whichever nodes it has
     * @return the ground shaped
     */
    public static BuiltGround of(ElevationGrid ground, Ring area,
            Function<ElevationGrid, ShapedGround> shaping) {
        ShapedGround rough = shaping.apply(ground);
        ElevationGrid part = FinerPatch.over(ground, changed(rough, area.box()), SPACING);
        ShapedGround fine = shaping.apply(part);
        return new BuiltGround(FinerPatch.put(ground, fine.after()), fine.moved(), rough.meetsGround());
    }

    /** The box around what is changed and what is to be. */
    private static Ring.Box changed(ShapedGround rough, Ring.Box area) {
        GridFrame frame = rough.before().frame();
        double west = area.west();
        double south = area.south();
        double east = area.east();
        double north = area.north();
        for (int row = 0; row < frame.rows(); row++) {
            for (int column = 0; column < frame.columns(); column++) {
                if (Math.abs(rough.after().nodeHeight(row, column) - rough.before().nodeHeight(row, column)) > 0) {
                    west = Math.min(west, frame.east(column));
                    south = Math.min(south, frame.north(row));
                    east = Math.max(east, frame.east(column));
                    north = Math.max(north, frame.north(row));
                }
            }
        }
        return new Ring.Box(west, south, east, north).wider(MARGIN * frame.spacing());
    }
}
