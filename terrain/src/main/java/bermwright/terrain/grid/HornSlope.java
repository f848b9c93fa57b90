// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.grid;

import bermwright.foundation.Require;
import java.util.stream.IntStream;

/**
 * Slope and aspect at the nodes from the eight neighbours, by Horn's weights.
 *
 * <p>Holds for slopes over two cells; noise of standard deviation s in the heights gives 0.433 s / spacing in the
 * slope. The outermost nodes and those beside a missing height have no slope: {@code NaN}.
 *
 * @see "Horn (1981), Hill shading and the reflectance map, Proceedings of the IEEE 69, 14-47"
 */
public final class HornSlope {
    private static final double BINS_PER_DEGREE = 100;

    private HornSlope() {
    }

    /**
     * The gradient at a node.
     *
     * @param grid   the ground
     * @param row    row (1), 0 is the southernmost
     * @param column column (1), 0 is the westernmost
     * @return the gradient, unknown at the edge and where the node or one of its eight neighbours is missing
     */
    public static Gradient gradient(ElevationGrid grid, int row, int column) {
        GridFrame frame = grid.frame();
        if (row < 1 || column < 1 || row > frame.rows() - 2 || column > frame.columns() - 2
                || Double.isNaN(grid.nodeHeight(row, column))) {
            return Gradient.UNKNOWN;
        }
        // In the order in which whole rows are worked out elsewhere, so that both give the same to the last bit.
        double step = 1 / grid.trueSpacing() / 8;
        double northwest = grid.nodeHeight(row + 1, column - 1);
        double northeast = grid.nodeHeight(row + 1, column + 1);
        double southwest = grid.nodeHeight(row - 1, column - 1);
        double southeast = grid.nodeHeight(row - 1, column + 1);
        double east = (northeast + 2 * grid.nodeHeight(row, column + 1) + southeast
                - (northwest + 2 * grid.nodeHeight(row, column - 1) + southwest)) * step;
        double north = (northwest - southwest + 2 * (grid.nodeHeight(row + 1, column)
                - grid.nodeHeight(row - 1, column)) + (northeast - southeast)) * step;
        return new Gradient(east, north);
    }

    /**
     * The slope at a node.
     *
     * @param grid   the ground
     * @param row    row (1), 0 is the southernmost
     * @param column column (1), 0 is the westernmost
     * @return angle to the level (rad); {@code NaN} at the edge and beside missing heights
     */
    public static double slope(ElevationGrid grid, int row, int column) {
        return gradient(grid, row, column).slope();
    }

    /**
     * The slopes at all nodes.
     *
     * @param grid the ground
     * @return angles to the level (rad), rows x columns, row 0 southernmost; {@code NaN} at the edge and beside
     *     missing heights
     */
    public static double[] slopes(ElevationGrid grid) {
        GridFrame frame = grid.frame();
        double[] slopes = new double[frame.size()];
        IntStream.range(0, frame.rows()).parallel().forEach(row -> {
            for (int column = 0; column < frame.columns(); column++) {
                slopes[row * frame.columns() + column] = slope(grid, row, column);
            }
        });
        return slopes;
    }

    /**
     * Slopes that given shares of the ground stay below.
     *
     * @param grid   the ground
     * @param shares shares of the nodes with a slope (1), 0 to 1 each
     * @return angles to the level (rad), one for each share, right to 0.005 degree; {@code NaN} where no node has a
     *     slope
     */
    public static double[] quantiles(ElevationGrid grid, double... shares) {
        int[] counts = new int[(int) (90 * BINS_PER_DEGREE) + 1];
        long total = 0;
        for (double slope : slopes(grid)) {
            if (!Double.isNaN(slope)) {
                counts[(int) (Math.toDegrees(slope) * BINS_PER_DEGREE)]++;
                total++;
            }
        }
        double[] quantiles = new double[shares.length];
        for (int i = 0; i < shares.length; i++) {
            double wanted = Require.within("share of the ground", shares[i], 0, 1, "1") * total;
            int bin = 0;
            long below = 0;
            while (bin < counts.length - 1 && below + counts[bin] < wanted) {
                below += counts[bin++];
            }
            quantiles[i] = total == 0 ? Double.NaN : Math.toRadians((bin + 0.5) / BINS_PER_DEGREE);
        }
        return quantiles;
    }
}
