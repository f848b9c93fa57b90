// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.grid;

import bermwright.foundation.Point;
import bermwright.foundation.Require;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.IntStream;

/** Heights for the nodes of a frame: by a formula, a part of a grid's, or put between them by the bilinear height. */
final class FinerNodes {
    /** Coordinates this near a node are on it (cells). */
    private static final double ROUNDING = 1e-7;

    private FinerNodes() {
    }

    static GridFrame between(GridFrame frame, int times) {
        return new GridFrame((frame.rows() - 1) * times + 1, (frame.columns() - 1) * times + 1, frame.west(),
                frame.south(), frame.spacing() / times);
    }

    static double[] sampled(GridFrame frame, DoubleBinaryOperator height) {
        double[] heights = new double[frame.size()];
        for (int row = 0; row < frame.rows(); row++) {
            for (int column = 0; column < frame.columns(); column++) {
                heights[row * frame.columns() + column] =
                        height.applyAsDouble(frame.east(column), frame.north(row));
            }
        }
        return heights;
    }

    /** First row and column, last row and column of the smallest part that holds what of an area lies in a frame. */
    static int[] window(GridFrame frame, Point southwest, Point northeast) {
        double s = frame.spacing();
        int firstColumn = (int) Math.max(0, Math.floor((southwest.east() - frame.west()) / s + ROUNDING));
        int firstRow = (int) Math.max(0, Math.floor((southwest.north() - frame.south()) / s + ROUNDING));
        int lastColumn = (int) Math.min(frame.columns() - 1,
                Math.ceil((northeast.east() - frame.west()) / s - ROUNDING));
        int lastRow = (int) Math.min(frame.rows() - 1, Math.ceil((northeast.north() - frame.south()) / s - ROUNDING));
        Require.that(firstColumn < lastColumn && firstRow < lastRow, "no cell of the grid lies in the window.");
        return new int[] {firstRow, firstColumn, lastRow, lastColumn};
    }

    static double[] part(ElevationGrid grid, GridFrame part, int firstRow, int firstColumn) {
        double[] kept = new double[part.size()];
        for (int i = 0; i < kept.length; i++) {
            kept[i] = grid.nodeHeight(firstRow + i / part.columns(), firstColumn + i % part.columns());
        }
        return kept;
    }

    /** Heights of a grid at other nodes, those of its patches where they lie. */
    static double[] heights(ElevationGrid grid, GridFrame nodes) {
        double[] heights = own(grid, nodes);
        double slack = ROUNDING * nodes.spacing();
        for (ElevationGrid patch : grid.patches()) {
            GridFrame f = patch.frame();
            int firstRow = (int) Math.max(0, Math.ceil((f.south() - slack - nodes.south()) / nodes.spacing()));
            int firstColumn = (int) Math.max(0, Math.ceil((f.west() - slack - nodes.west()) / nodes.spacing()));
            int lastRow = (int) Math.min(nodes.rows() - 1.0,
                    Math.floor((f.northEdge() + slack - nodes.south()) / nodes.spacing()));
            int lastColumn = (int) Math.min(nodes.columns() - 1.0,
                    Math.floor((f.eastEdge() + slack - nodes.west()) / nodes.spacing()));
            if (lastRow > firstRow && lastColumn > firstColumn) {
                GridFrame common = nodes.part(firstRow, firstColumn, lastRow, lastColumn);
                double[] finer = own(patch, common);
                for (int row = 0; row < common.rows(); row++) {
                    System.arraycopy(finer, row * common.columns(), heights,
                            (firstRow + row) * nodes.columns() + firstColumn, common.columns());
                }
            }
        }
        return heights;
    }

    /** The patches of a grid in a part of it, cut where they reach out of it. */
    static ElevationGrid[] patches(ElevationGrid grid, GridFrame part) {
        return grid.patches().stream().filter(p -> p.frame().west() < part.eastEdge()
                && p.frame().eastEdge() > part.west() && p.frame().south() < part.northEdge()
                && p.frame().northEdge() > part.south()).map(p -> p.window(new Point(part.west(), part.south()),
                new Point(part.eastEdge(), part.northEdge()))).toArray(ElevationGrid[]::new);
    }

    private static double[] own(ElevationGrid grid, GridFrame nodes) {
        double[] heights = new double[nodes.size()];
        GridFrame own = grid.frame();
        IntStream.range(0, nodes.rows()).parallel().forEach(r -> {
            double y = cell((nodes.north(r) - own.south()) / own.spacing(), own.rows());
            int row = Math.min((int) y, own.rows() - 2);
            for (int c = 0; c < nodes.columns(); c++) {
                double x = cell((nodes.east(c) - own.west()) / own.spacing(), own.columns());
                int column = Math.min((int) x, own.columns() - 2);
                heights[r * nodes.columns() + c] = between(grid, row, column, new double[] {x - column, y - row});
            }
        });
        return heights;
    }

    /** A coordinate in cells, on a node where only rounding keeps it off, and inside the grid. */
    private static double cell(double value, int nodes) {
        double near = Math.rint(value);
        return Math.max(0, Math.min(nodes - 1, Math.abs(value - near) < ROUNDING ? near : value));
    }

    /** The bilinear height; a missing node beside which the place does not lie takes nothing away. */
    private static double between(ElevationGrid grid, int row, int column, double[] share) {
        double south = mixed(grid.nodeHeight(row, column), grid.nodeHeight(row, column + 1), share[0]);
        double north = mixed(grid.nodeHeight(row + 1, column), grid.nodeHeight(row + 1, column + 1), share[0]);
        return mixed(south, north, share[1]);
    }

    private static double mixed(double one, double other, double share) {
        return share == 0 ? one : share == 1 ? other : (1 - share) * one + share * other;
    }
}
