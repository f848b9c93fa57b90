// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import bermwright.foundation.Require;
import bermwright.terrain.grid.ElevationGrid;
import java.util.stream.IntStream;

/**
 * The ground sorted by steepness into bands, with slopes by Horn's weights.
 *
 * <p>At the edge the missing neighbours are taken from the edge itself.
 */
public final class SlopeBands {
    /** The band of a node whose height or neighbour is missing. */
    public static final byte UNKNOWN = -1;
    private static final int MOST_LIMITS = 100;

    private final ElevationGrid grid;
    private final double[] limits;
    private final byte[] bands;

    private SlopeBands(ElevationGrid grid, double[] limits, byte[] bands) {
        this.grid = grid;
        this.limits = limits;
        this.bands = bands;
    }

    /**
     * Sorts the ground.
     *
     * @param grid   the ground
     * @param limits slopes between the bands (rad), rising, 1 to 100 of them, above 0 and below pi/2
     * @return the bands
     */
    public static SlopeBands of(ElevationGrid grid, double... limits) {
        Require.that(limits.length > 0 && limits.length <= MOST_LIMITS, "%s limits; accepted: 1 to 100.",
                limits.length);
        double[] squares = new double[limits.length];
        for (int i = 0; i < limits.length; i++) {
            Require.that(limits[i] > (i == 0 ? 0 : limits[i - 1]) && limits[i] < Math.PI / 2,
                    "limit %s is %s rad; limits must rise from above 0 to below pi/2.", i + 1, limits[i]);
            squares[i] = Math.tan(limits[i]) * Math.tan(limits[i]);
        }
        int columns = grid.frame().columns();
        byte[] bands = new byte[grid.frame().size()];
        IntStream.range(0, grid.frame().rows()).parallel().forEach(row -> {
            NodeWindow window = new NodeWindow(grid, row, 1);
            for (int column = 0; column < columns; column++) {
                window.moveTo(column);
                double square = window.gradientEast() * window.gradientEast()
                        + window.gradientNorth() * window.gradientNorth();
                byte band = 0;
                while (band < squares.length && square >= squares[band]) {
                    band++;
                }
                bands[row * columns + column] = Double.isNaN(square) ? UNKNOWN : band;
            }
        });
        return new SlopeBands(grid, limits.clone(), bands);
    }

    /**
     * The band of a node.
     *
     * @param row    row (1), 0 is the southernmost
     * @param column column (1), 0 is the westernmost
     * @return how many limits the slope reaches (1), {@link #UNKNOWN} where it is not known
     */
    public int band(int row, int column) {
        return bands[row * grid.frame().columns() + column];
    }

    /**
     * The limits between the bands.
     *
     * @return the limits (rad), rising
     */
    double[] limits() {
        return limits.clone();
    }

    /**
     * How much ground each band has.
     *
     * @return share of the known ground (1) in each band, one more than there are limits; {@code NaN} where none is
     *     known
     */
    double[] shares() {
        double[] shares = new double[limits.length + 1];
        long known = 0;
        for (byte band : bands) {
            if (band != UNKNOWN) {
                shares[band]++;
                known++;
            }
        }
        for (int i = 0; i < shares.length; i++) {
            shares[i] /= known;
        }
        return shares;
    }
}
