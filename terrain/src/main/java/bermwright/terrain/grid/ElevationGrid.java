// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.grid;

import bermwright.foundation.Point;
import bermwright.foundation.Require;
import java.util.Arrays;
import java.util.Objects;
import java.util.function.DoubleBinaryOperator;

/** Heights at the nodes of a regular grid; never changes once made, so it can be shared between threads. */
public final class ElevationGrid {
    private final GridFrame frame;
    private final double[] heights;

    private ElevationGrid(GridFrame frame, double[] heights) {
        this.frame = frame;
        this.heights = heights;
    }

    /**
     * A grid from heights.
     *
     * @param frame   where the nodes lie
     * @param heights heights (m), rows x columns, row 0 southernmost, {@code NaN} where missing; copied
     * @return the grid
     * @throws IllegalArgumentException if the number of heights is not that of the nodes, or one is infinite
     */
    public static ElevationGrid of(GridFrame frame, double[] heights) {
        Objects.requireNonNull(frame, "frame");
        Require.that(heights.length == frame.size(), "%s heights for %s nodes.", heights.length, frame.size());
        for (double h : heights) {
            Require.that(!Double.isInfinite(h), "a height is infinite; missing heights are NaN.");
        }
        return new ElevationGrid(frame, heights.clone());
    }

    /**
     * A grid from a formula.
     *
     * @param frame  where the nodes lie
     * @param height height (m) from east (m) and north (m)
     * @return the grid
     */
    public static ElevationGrid sampled(GridFrame frame, DoubleBinaryOperator height) {
        double[] heights = new double[frame.size()];
        for (int row = 0; row < frame.rows(); row++) {
            for (int column = 0; column < frame.columns(); column++) {
                heights[row * frame.columns() + column] =
                        height.applyAsDouble(frame.east(column), frame.north(row));
            }
        }
        return of(frame, heights);
    }

    /**
     * Where the nodes lie.
     *
     * @return the frame
     */
    public GridFrame frame() {
        return frame;
    }

    /**
     * The height at a node.
     *
     * @param row    row (1), 0 is the southernmost
     * @param column column (1), 0 is the westernmost
     * @return the height (m), {@code NaN} where missing
     */
    public double height(int row, int column) {
        return heights[row * frame.columns() + column];
    }

    /**
     * The bilinear height.
     *
     * @param place the place
     * @return the height (m); {@code NaN} outside the grid or where one of the four nodes is missing
     */
    public double height(Point place) {
        return height(place.east(), place.north());
    }

    /**
     * The bilinear height.
     *
     * @param east  east (m)
     * @param north north (m)
     * @return the height (m); {@code NaN} outside the grid or where one of the four nodes is missing
     */
    public double height(double east, double north) {
        double x = (east - frame.west()) / frame.spacing();
        double y = (north - frame.south()) / frame.spacing();
        if (!(x >= 0 && y >= 0 && x <= frame.columns() - 1 && y <= frame.rows() - 1)) {
            return Double.NaN;
        }
        int column = Math.min((int) x, frame.columns() - 2);
        int row = Math.min((int) y, frame.rows() - 2);
        double u = x - column;
        double v = y - row;
        return (1 - v) * ((1 - u) * height(row, column) + u * height(row, column + 1))
                + v * ((1 - u) * height(row + 1, column) + u * height(row + 1, column + 1));
    }

    /**
     * A copy of all heights.
     *
     * @return heights (m), rows x columns, row 0 southernmost, {@code NaN} where missing
     */
    public double[] heights() {
        return heights.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ElevationGrid that && frame.equals(that.frame)
                && Arrays.equals(heights, that.heights);
    }

    @Override
    public int hashCode() {
        return 31 * frame.hashCode() + Arrays.hashCode(heights);
    }
}
