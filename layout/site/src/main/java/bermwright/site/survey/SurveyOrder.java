// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.foundation.Require;
import bermwright.terrain.grid.NodeRange;
import java.io.Serializable;
import java.util.Objects;

/**
 * All that a worker needs to take part in a survey, as plain values that can be sent to another machine.
 *
 * @param elevationFile the elevation file, at a path that all workers see
 * @param planText      the plan whose hulls are placed, as the text of a plan file
 * @param planName      name of that plan for messages
 * @param isOwnGround   whether keep-outs, corridors and pads of the plan lie in the region
 * @param limits        what is asked of a place
 * @param window        first row, first column, rows and columns of the region
 */
public record SurveyOrder(String elevationFile, String planText, String planName, boolean isOwnGround,
        SurveyLimits limits, Window window) implements Serializable {
    /** Side of a block in nodes (1): a whole number of tiles and of squares of the map. */
    static final int SIDE = 1024;
    private static final long MOST_OF_A_MAP = 25_000_000;

    /**
     * The nodes of a region.
     *
     * @param firstRow    southernmost row (1)
     * @param firstColumn westernmost column (1)
     * @param rows        rows (1)
     * @param columns     columns (1)
     */
    public record Window(int firstRow, int firstColumn, int rows, int columns) implements Serializable {
        /** Refuses regions without nodes. */
        public Window {
            Require.that(firstRow >= 0 && firstColumn >= 0 && rows >= 1 && columns >= 1,
                    "a region of %s x %s nodes from row %s, column %s; accepted: at least one, from 0 on.", rows,
                    columns, firstRow, firstColumn);
        }

        long nodes() {
            return (long) rows * columns;
        }
    }

    /** Refuses null. */
    public SurveyOrder {
        Objects.requireNonNull(elevationFile, "elevationFile");
        Objects.requireNonNull(planText, "planText");
        Objects.requireNonNull(planName, "planName");
        Objects.requireNonNull(limits, "limits");
        Objects.requireNonNull(window, "window");
    }

    /**
     * How many cells along each side share one value of the map: as few as keep it below 25 million values.
     *
     * @return cells (1), a power of two, at most the side of a block
     */
    public int mapSquare() {
        int square = 1;
        while (square < SIDE && ((window.rows - 1L) / square + 1) * ((window.columns - 1L) / square + 1)
                > MOST_OF_A_MAP) {
            square *= 2;
        }
        return square;
    }

    /**
     * Into how many blocks the region is cut.
     *
     * @return blocks (1)
     */
    public int blocks() {
        return Math.multiplyExact(down(), across());
    }

    private int down() {
        return (window.rows - 1) / SIDE + 1;
    }

    private int across() {
        return (window.columns - 1) / SIDE + 1;
    }

    /**
     * A block.
     *
     * @param number its number, from 0 in the north-west on, as files keep their rows
     * @return its nodes
     */
    public NodeRange block(int number) {
        int row = (down() - 1 - number / across()) * SIDE;
        int column = number % across() * SIDE;
        return new NodeRange(window.firstRow + row, window.firstColumn + column, Math.min(SIDE, window.rows - row),
                Math.min(SIDE, window.columns - column));
    }
}
