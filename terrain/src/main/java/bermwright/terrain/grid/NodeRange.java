// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.grid;

import bermwright.foundation.Require;

/**
 * A block of nodes of a grid.
 *
 * @param firstRow    southernmost row (1), 0 or more
 * @param firstColumn westernmost column (1), 0 or more
 * @param rows        rows (1), at least 1
 * @param columns     columns (1), at least 1
 */
public record NodeRange(int firstRow, int firstColumn, int rows, int columns) {
    /** Refuses blocks without nodes and those whose nodes cannot be counted. */
    public NodeRange {
        Require.that(firstRow >= 0 && firstColumn >= 0 && rows >= 1 && columns >= 1
                && firstRow <= Integer.MAX_VALUE - rows && firstColumn <= Integer.MAX_VALUE - columns,
                "%s x %s nodes from row %s, column %s; accepted: at least one, from 0 on.", rows, columns, firstRow,
                firstColumn);
    }

    /**
     * All nodes of a frame.
     *
     * @param frame the frame
     * @return the block
     */
    public static NodeRange all(GridFrame frame) {
        return new NodeRange(0, 0, frame.rows(), frame.columns());
    }

    /**
     * This block with a margin, as far as the frame has one.
     *
     * @param margin nodes on each side (1), zero or more
     * @param frame  the frame
     * @return the larger block
     */
    public NodeRange widened(int margin, GridFrame frame) {
        int row = Math.max(0, firstRow - margin);
        int column = Math.max(0, firstColumn - margin);
        int lastRow = (int) Math.min(frame.rows() - 1L, firstRow + rows - 1L + margin);
        int lastColumn = (int) Math.min(frame.columns() - 1L, firstColumn + columns - 1L + margin);
        return new NodeRange(row, column, lastRow - row + 1, lastColumn - column + 1);
    }

    /**
     * Whether a frame has all of these nodes.
     *
     * @param frame the frame
     * @return true where it has
     */
    public boolean isIn(GridFrame frame) {
        return firstRow + rows <= frame.rows() && firstColumn + columns <= frame.columns();
    }

    /**
     * How many nodes there are.
     *
     * @return the number of nodes (1), at least 1
     */
    public long nodes() {
        return (long) rows * columns;
    }
}
