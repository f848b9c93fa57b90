// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.grid;

import bermwright.foundation.Point;
import bermwright.foundation.Require;

/**
 * Where the nodes of a regular grid lie.
 *
 * @param rows         rows of nodes (1), at least 2; row 0 is the southernmost
 * @param columns      columns of nodes (1), at least 2; column 0 is the westernmost
 * @param west         east coordinate of column 0 (m)
 * @param south        north coordinate of row 0 (m)
 * @param spacing      distance between neighbouring nodes, east and north alike (m), positive
 */
public record GridFrame(int rows, int columns, double west, double south, double spacing) {
    /** Refuses grids of fewer than 2 x 2 nodes or without spacing. */
    public GridFrame {
        Require.that(rows >= 2 && columns >= 2, "a grid of %s x %s nodes; at least 2 x 2 are needed.", rows, columns);
        Require.finite("west edge", west, "m");
        Require.finite("south edge", south, "m");
        Require.positive("node spacing", spacing, "m");
    }

    /**
     * The east coordinate of a column.
     *
     * @param column column (1), 0 is the westernmost
     * @return the east coordinate (m)
     */
    public double east(int column) {
        return west + column * spacing;
    }

    /**
     * The north coordinate of a row.
     *
     * @param row row (1), 0 is the southernmost
     * @return the north coordinate (m)
     */
    public double north(int row) {
        return south + row * spacing;
    }

    /**
     * The east coordinate of the last column.
     *
     * @return the east edge (m)
     */
    public double eastEdge() {
        return east(columns - 1);
    }

    /**
     * The north coordinate of the last row.
     *
     * @return the north edge (m)
     */
    public double northEdge() {
        return north(rows - 1);
    }

    /**
     * Whether a place lies between the outermost nodes, edges included.
     *
     * @param place the place
     * @return true where it does
     */
    public boolean contains(Point place) {
        return holds(place.east(), place.north());
    }

    /**
     * Whether a place lies between the outermost nodes, edges included.
     *
     * @param east  east (m)
     * @param north north (m)
     * @return true where it does
     */
    public boolean holds(double east, double north) {
        return east >= west && east <= eastEdge() && north >= south && north <= northEdge();
    }

    /**
     * The part of this frame from one node to another with nodes put between.
     *
     * @param firstRow    southernmost row kept (1), 0 to {@code lastRow} - 1
     * @param firstColumn westernmost column kept (1), 0 to {@code lastColumn} - 1
     * @param lastRow     northernmost row kept (1), inside this frame
     * @param lastColumn  easternmost column kept (1), inside this frame
     * @param times       parts into which each cell is cut along each side (1), positive
     * @return the finer frame; every node of this frame in that part is one of its nodes
     */
    public GridFrame finerPart(int firstRow, int firstColumn, int lastRow, int lastColumn, int times) {
        return FinerNodes.between(part(firstRow, firstColumn, lastRow, lastColumn), times);
    }

    /**
     * The middle of the grid.
     *
     * @return the middle
     */
    public Point centre() {
        return new Point((west + eastEdge()) / 2, (south + northEdge()) / 2);
    }

    /**
     * The part of this frame from one node to another.
     *
     * @param firstRow    southernmost row kept (1), 0 to {@code lastRow} - 1
     * @param firstColumn westernmost column kept (1), 0 to {@code lastColumn} - 1
     * @param lastRow     northernmost row kept (1), inside this frame
     * @param lastColumn  easternmost column kept (1), inside this frame
     * @return the smaller frame, on the same nodes
     * @throws IllegalArgumentException if the part leaves this frame or is smaller than 2 x 2 nodes
     */
    public GridFrame part(int firstRow, int firstColumn, int lastRow, int lastColumn) {
        Require.that(firstRow >= 0 && firstColumn >= 0 && lastRow < rows && lastColumn < columns,
                "rows %s to %s, columns %s to %s leave a grid of %s x %s nodes.", firstRow, lastRow, firstColumn,
                lastColumn, rows, columns);
        return new GridFrame(lastRow - firstRow + 1, lastColumn - firstColumn + 1, east(firstColumn), north(firstRow),
                spacing);
    }

    /**
     * How many nodes there are, where they fit into one array.
     *
     * @return the number of nodes (1)
     * @throws ArithmeticException if there are more than an array can hold
     */
    public int size() {
        return Math.toIntExact(nodes());
    }

    /**
     * How many nodes there are.
     *
     * @return the number of nodes (1)
     */
    public long nodes() {
        return (long) rows * columns;
    }
}
