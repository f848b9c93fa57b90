// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import bermwright.foundation.Require;

/** Highest and lowest heights of square blocks of cells; a block with a hole has neither, so no walk skips it. */
final class Blocks {
    /** Cells along the side of a block. */
    final int side;
    /** The side as a power of two. */
    final int shift;
    final int columns;
    /** Highest and lowest height of each block side by side, rounded outwards. */
    final float[] range;

    Blocks(int side, int nodeColumns, double[] heights) {
        Require.that(Integer.bitCount(side) == 1, "side of a block is %s cells; accepted: a power of two", side);
        this.side = side;
        this.shift = Integer.numberOfTrailingZeros(side);
        int nodeRows = heights.length / nodeColumns;
        int rows = (nodeRows - 2) / side + 1;
        columns = (nodeColumns - 2) / side + 1;
        range = new float[2 * rows * columns];
        for (int block = 0; block < rows * columns; block++) {
            range[2 * block] = Float.NEGATIVE_INFINITY;
            range[2 * block + 1] = Float.POSITIVE_INFINITY;
        }
        for (int row = 0; row < nodeRows; row++) {
            int upper = Math.min(row / side, rows - 1);
            int lower = row % side == 0 && row > 0 ? Math.min(row / side - 1, upper) : upper;
            for (int column = 0; column < nodeColumns; column++) {
                double height = heights[row * nodeColumns + column];
                int right = Math.min(column / side, columns - 1);
                int left = column % side == 0 && column > 0 ? Math.min(column / side - 1, right) : right;
                for (int r = lower; r <= upper; r++) {
                    for (int c = left; c <= right; c++) {
                        take(r * columns + c, height);
                    }
                }
            }
        }
    }

    private void take(int block, double height) {
        if (Double.isNaN(height)) {
            range[2 * block] = Float.POSITIVE_INFINITY;
            range[2 * block + 1] = Float.NEGATIVE_INFINITY;
        } else {
            range[2 * block] = Math.max(range[2 * block], Math.nextUp((float) height));
            range[2 * block + 1] = Math.min(range[2 * block + 1], Math.nextDown((float) height));
        }
    }

    double highest() {
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < range.length; i += 2) {
            highest = Math.max(highest, range[i]);
        }
        return highest;
    }
}
