// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

/** Highest heights of square tiles of cells, and of all that lies beyond a tile in each quarter of the compass. */
final class Tiles {
    /** Cells along the side of a tile, as a power of two. */
    static final int SHIFT = 3;
    private static final int SIDE = 1 << SHIFT;

    final int columns;
    final int rows;
    /** Highest height of each tile, rounded up; without bound where a height is missing, so that no walk skips it. */
    final float[] tops;
    /** The same over a tile and all tiles that lie both further east (0, 2) or west, and north (0, 1) or south. */
    final float[][] beyond = new float[4][];

    Tiles(int nodeColumns, double[] heights) {
        int nodeRows = heights.length / nodeColumns;
        columns = (nodeColumns - 2) / SIDE + 1;
        rows = (nodeRows - 2) / SIDE + 1;
        tops = new float[rows * columns];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                tops[row * columns + column] = top(row, column, nodeRows, nodeColumns, heights);
            }
        }
        for (int quarter = 0; quarter < beyond.length; quarter++) {
            beyond[quarter] = beyond(quarter % 2 == 0 ? 1 : -1, quarter < 2 ? 1 : -1);
        }
    }

    /** The number of the quarter of the compass that a way leads into. */
    static int quarter(double east, double north) {
        return (east >= 0 ? 0 : 1) + (north >= 0 ? 0 : 2);
    }

    private static float top(int row, int column, int nodeRows, int nodeColumns, double[] heights) {
        double top = Double.NEGATIVE_INFINITY;
        int lastRow = Math.min((row + 1) * SIDE, nodeRows - 1);
        int lastColumn = Math.min((column + 1) * SIDE, nodeColumns - 1);
        for (int r = row * SIDE; r <= lastRow; r++) {
            for (int c = column * SIDE; c <= lastColumn; c++) {
                // Not a number stays.
                top = Math.max(top, heights[r * nodeColumns + c]);
            }
        }
        return Double.isNaN(top) ? Float.POSITIVE_INFINITY : Math.nextUp((float) top);
    }

    private float[] beyond(int east, int north) {
        float[] all = tops.clone();
        for (int i = 0; i < rows; i++) {
            int row = north > 0 ? rows - 1 - i : i;
            for (int k = 0; k < columns; k++) {
                int column = east > 0 ? columns - 1 - k : k;
                int at = row * columns + column;
                if (k > 0) {
                    all[at] = Math.max(all[at], all[at + east]);
                }
                if (i > 0) {
                    all[at] = Math.max(all[at], all[at + north * columns]);
                }
            }
        }
        return all;
    }
}
