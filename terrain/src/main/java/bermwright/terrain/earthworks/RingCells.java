// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.terrain.grid.GridFrame;
import java.util.Arrays;

/** The cells of a grid inside an outline: runs of whole cells, and the cells along the outline in part. */
final class RingCells {
    /** A cell this close to the outline, in cells, is looked at in part, so that rounding loses none. */
    private static final double CLOSE = 1e-9;

    /** Is shown the cells of one row. */
    interface Visitor {
        /** Whole cells from one column to another, both included. */
        void whole(int row, int first, int last);

        /** A part of a cell, anticlockwise, in coordinates from 0 to 1 east and north of its south-west node. */
        void part(int row, int column, ClipShape shape);
    }

    private final int columns;
    private final int firstRow;
    private final int lastRow;
    private final double[] x;
    private final double[] y;

    RingCells(GridFrame frame, Ring ring) {
        int n = ring.corners().size();
        x = new double[n];
        y = new double[n];
        boolean turned = ring.signedArea() < 0;
        for (int i = 0; i < n; i++) {
            Point p = ring.corners().get(turned ? n - 1 - i : i);
            x[i] = (p.east() - frame.west()) / frame.spacing();
            y[i] = (p.north() - frame.south()) / frame.spacing();
        }
        columns = frame.columns() - 1;
        firstRow = (int) Math.max(0, Math.floor(Arrays.stream(y).min().orElse(0)));
        lastRow = (int) Math.min(frame.rows() - 2.0, Math.ceil(Arrays.stream(y).max().orElse(0)) - 1);
    }

    int firstRow() {
        return firstRow;
    }

    /** The last row of cells; below the first where the outline misses the grid. */
    int lastRow() {
        return lastRow;
    }

    void visitRow(int row, Visitor visitor) {
        boolean[] onOutline = new boolean[columns];
        double west = Double.POSITIVE_INFINITY;
        double east = Double.NEGATIVE_INFINITY;
        for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
            double low = Math.max(row, Math.min(y[i], y[j]));
            double high = Math.min(row + 1, Math.max(y[i], y[j]));
            if (low <= high) {
                double one = y[i] == y[j] ? x[j] : x[j] + (low - y[j]) / (y[i] - y[j]) * (x[i] - x[j]);
                double two = y[i] == y[j] ? x[i] : x[j] + (high - y[j]) / (y[i] - y[j]) * (x[i] - x[j]);
                double from = Math.min(one, two) - CLOSE;
                double to = Math.max(one, two) + CLOSE;
                west = Math.min(west, from);
                east = Math.max(east, to);
                int last = (int) Math.min(columns - 1.0, Math.floor(to));
                for (int column = (int) Math.max(0, Math.floor(from)); column <= last; column++) {
                    onOutline[column] = true;
                }
            }
        }
        ClipShape strip = new ClipShape(x, y, x.length).clipped(-row, 0, 1).clipped(row + 1.0, 0, -1);
        int last = (int) Math.min(columns - 1.0, Math.floor(east));
        int column = (int) Math.max(0, Math.floor(west));
        while (column <= last) {
            int start = column;
            while (column <= last && !onOutline[column]) {
                column++;
            }
            if (column > start && contains(start + 0.5, row + 0.5)) {
                visitor.whole(row, start, column - 1);
            }
            if (column <= last) {
                ClipShape shape = strip.clipped(-column, 1, 0).clipped(column + 1.0, -1, 0);
                if (!shape.isEmpty()) {
                    visitor.part(row, column, shape.from(column, row));
                }
                column++;
            }
        }
    }

    private boolean contains(double px, double py) {
        boolean inside = false;
        for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
            if (y[i] > py != y[j] > py && px < (x[j] - x[i]) * (py - y[i]) / (y[j] - y[i]) + x[i]) {
                inside = !inside;
            }
        }
        return inside;
    }
}
