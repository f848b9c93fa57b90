// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import java.util.Objects;

/**
 * How uneven the ground is among a node and its eight neighbours, in metres; none at the outermost nodes and beside
 * missing heights.
 *
 * @param measure how it is measured
 */
public record RoughnessSurface(Measure measure) implements Surface {
    /** A measure of unevenness. */
    public enum Measure {
        /** The highest of the nine less the lowest. */
        RANGE,
        /**
         * The root of the sum of the squared differences to the eight neighbours.
         *
         * <p>Riley, DeGloria and Elliot (1999), A terrain ruggedness index that quantifies topographic heterogeneity,
         * Intermountain Journal of Sciences 5, 23-27.
         */
        RILEY,
        /**
         * The mean difference, without its sign, to the eight neighbours.
         *
         * <p>Wilson et al. (2007), Multiscale terrain analysis of multibeam bathymetry data, Marine Geodesy 30, 3-35.
         */
        WILSON,
        /** The node less the mean of its eight neighbours. */
        POSITION
    }

    private static final int[][] AROUND = {{1, -1}, {1, 0}, {1, 1}, {0, -1}, {0, 1}, {-1, -1}, {-1, 0}, {-1, 1}};

    /** Refuses null. */
    public RoughnessSurface {
        Objects.requireNonNull(measure, "measure");
    }

    @Override
    public int margin() {
        return 1;
    }

    @Override
    public String unit() {
        return "m";
    }

    @Override
    public void row(HeightBlock heights, int row, double[] into) {
        for (int column = 0; column < into.length; column++) {
            double here = heights.height(row, column);
            double low = here;
            double high = here;
            double squares = 0;
            double sizes = 0;
            double sum = 0;
            for (int[] step : AROUND) {
                double other = heights.height(row + step[0], column + step[1]);
                low = Math.min(low, other);
                high = Math.max(high, other);
                squares += (other - here) * (other - here);
                sizes += Math.abs(other - here);
                sum += other;
            }
            into[column] = switch (measure) {
                case RANGE -> high - low;
                case RILEY -> Math.sqrt(squares);
                case WILSON -> sizes / AROUND.length;
                case POSITION -> here - sum / AROUND.length;
            };
        }
    }
}
