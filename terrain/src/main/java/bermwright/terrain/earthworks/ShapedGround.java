// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.terrain.grid.ElevationGrid;

/**
 * Ground after a shaping.
 *
 * @param before      the ground before
 * @param after       the ground after, on the same nodes; missing where the ground before is missing
 * @param meetsGround false where a side reaches the edge of the grid, or ground that is not known, before it meets
 *                    the ground
 */
public record ShapedGround(ElevationGrid before, ElevationGrid after, boolean meetsGround) {
    /**
     * What was moved.
     *
     * @return cut and fill over the whole grid
     */
    public CutAndFill moved() {
        return CutAndFill.between(before, after);
    }

    static ShapedGround of(ElevationGrid before, double[] heights) {
        int rows = before.frame().rows();
        int columns = before.frame().columns();
        boolean meets = true;
        for (int row = 0; row < rows && meets; row++) {
            for (int column = 0; column < columns && meets; column++) {
                double ground = before.nodeHeight(row, column);
                double made = heights[row * columns + column];
                boolean changed = !Double.isNaN(made) && made != ground;
                meets = !changed || row > 0 && column > 0 && row < rows - 1 && column < columns - 1
                        && !Double.isNaN(before.nodeHeight(row - 1, column) + before.nodeHeight(row + 1, column)
                        + before.nodeHeight(row, column - 1) + before.nodeHeight(row, column + 1));
            }
        }
        return new ShapedGround(before, before.withHeights(heights), meets);
    }
}
