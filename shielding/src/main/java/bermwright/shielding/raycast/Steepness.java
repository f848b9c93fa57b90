// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

/** The steepest a surface gets anywhere in each tile of cells and the tiles around it. */
final class Steepness {
    /** Cells along the side of a tile, as a power of two: so far one may look from any place of the tile. */
    static final int SHIFT = 3;
    private static final int SIDE = 1 << SHIFT;

    final int columns;
    /** Rise over run (1), by tile; without bound where a height is missing. */
    final float[] most;

    Steepness(int nodeColumns, double spacing, double[] heights) {
        int nodeRows = heights.length / nodeColumns;
        columns = (nodeColumns - 2) / SIDE + 1;
        int rows = (nodeRows - 2) / SIDE + 1;
        float[] own = new float[rows * columns];
        for (int row = 0; row < nodeRows - 1; row++) {
            for (int column = 0; column < nodeColumns - 1; column++) {
                int at = row * nodeColumns + column;
                double corner = heights[at];
                double opposite = heights[at + nodeColumns + 1];
                double east = heights[at + 1];
                double north = heights[at + nodeColumns];
                double one = square(east - corner, opposite - east);
                double other = square(north - corner, opposite - north);
                int tile = (row >> SHIFT) * columns + (column >> SHIFT);
                // Not a number stays.
                own[tile] = Math.max(own[tile], (float) Math.max(one, other));
            }
        }
        most = new float[own.length];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                most[row * columns + column] = (float) around(own, row, column, rows, spacing);
            }
        }
    }

    private double around(float[] own, int row, int column, int rows, double spacing) {
        float square = 0;
        for (int r = Math.max(0, row - 1); r <= Math.min(row + 1, rows - 1); r++) {
            for (int c = Math.max(0, column - 1); c <= Math.min(column + 1, columns - 1); c++) {
                square = Math.max(square, own[r * columns + c]);
            }
        }
        return Float.isNaN(square) ? Float.POSITIVE_INFINITY : Math.sqrt(square) / spacing * (1 + 1e-6);
    }

    private static double square(double one, double other) {
        return one * one + other * other;
    }
}
