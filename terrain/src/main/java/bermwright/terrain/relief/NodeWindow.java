// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import bermwright.terrain.grid.ElevationGrid;

/** Slides along a row and keeps the three by three heights around a node; neighbours beyond the edge repeat it. */
final class NodeWindow {
    private final ElevationGrid grid;
    private final int below;
    private final int row;
    private final int above;
    private final int lastColumn;
    private final double eastStep;
    private final double northStep;
    private double gradientEast;
    private double gradientNorth;

    NodeWindow(ElevationGrid grid, int row, double exaggeration) {
        this.grid = grid;
        this.row = row;
        this.below = Math.max(0, row - 1);
        this.above = Math.min(grid.frame().rows() - 1, row + 1);
        this.lastColumn = grid.frame().columns() - 1;
        this.eastStep = exaggeration / (4 * grid.trueSpacing());
        this.northStep = exaggeration / (4 * grid.trueSpacing() * (above - below));
    }

    void moveTo(int column) {
        int left = column > 0 ? column - 1 : 0;
        int right = column < lastColumn ? column + 1 : lastColumn;
        double northwest = grid.nodeHeight(above, left);
        double northeast = grid.nodeHeight(above, right);
        double southwest = grid.nodeHeight(below, left);
        double southeast = grid.nodeHeight(below, right);
        double here = grid.nodeHeight(row, column);
        gradientEast = here - here + (northeast + 2 * grid.nodeHeight(row, right) + southeast
                - northwest - 2 * grid.nodeHeight(row, left) - southwest) * eastStep / (right - left);
        gradientNorth = (northwest + 2 * grid.nodeHeight(above, column) + northeast
                - southwest - 2 * grid.nodeHeight(below, column) - southeast) * northStep;
    }

    /** Rise per metre towards east (1), {@code NaN} where some height is missing. */
    double gradientEast() {
        return gradientEast;
    }

    /** Rise per metre towards north (1), {@code NaN} where some height is missing. */
    double gradientNorth() {
        return gradientNorth;
    }
}
