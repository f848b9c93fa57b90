// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import bermwright.foundation.Progress;
import bermwright.foundation.Require;
import bermwright.terrain.grid.HeightSource;
import bermwright.terrain.grid.NodeRange;
import bermwright.terrain.grid.ValueSink;
import java.util.concurrent.atomic.AtomicLongArray;
import java.util.concurrent.atomic.DoubleAccumulator;
import java.util.concurrent.atomic.LongAdder;

/**
 * What heights and slopes there are in ground of any size, worked out as a stream of blocks.
 */
public final class GroundStatistics {
    private static final double BINS_PER_DEGREE = 100;

    private final DoubleAccumulator lowest = new DoubleAccumulator(Math::min, Double.POSITIVE_INFINITY);
    private final DoubleAccumulator highest = new DoubleAccumulator(Math::max, Double.NEGATIVE_INFINITY);
    private final LongAdder missing = new LongAdder();
    private final AtomicLongArray slopes = new AtomicLongArray((int) (90 * BINS_PER_DEGREE) + 1);

    private GroundStatistics() {
    }

    /**
     * Looks over ground.
     *
     * @param ground   the ground
     * @param progress is told how far it has come
     * @return what there is
     */
    public static GroundStatistics of(HeightSource ground, Progress progress) {
        GroundStatistics all = new GroundStatistics();
        Surface both = new Surface() {
            private final Surface slope = new SlopeSurface(GradientMethod.HORN);

            @Override
            public int margin() {
                return 1;
            }

            @Override
            public String unit() {
                return "deg";
            }

            @Override
            public void row(HeightBlock heights, int row, double[] into) {
                all.addHeights(heights, row);
                slope.row(heights, row, into);
            }
        };
        SurfaceStream.run(ground, both, all.sink(SurfaceStream.rowsOfABlock(ground, both),
                SurfaceStream.columnsOfABlock(ground, both)),
                progress);
        return all;
    }

    private void addHeights(HeightBlock heights, int row) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        long gaps = 0;
        for (int c = 0; c < heights.nodes().columns(); c++) {
            double h = heights.height(row, c);
            if (h < low) {
                low = h;
            }
            if (h > high) {
                high = h;
            }
            gaps += h != h ? 1 : 0;
        }
        lowest.accumulate(low);
        highest.accumulate(high);
        missing.add(gaps);
    }

    private ValueSink sink(int rows, int columns) {
        return new ValueSink() {
            @Override
            public int blockRows() {
                return rows;
            }

            @Override
            public int blockColumns() {
                return columns;
            }

            @Override
            public boolean isByBands() {
                return false;
            }

            @Override
            public void put(NodeRange block, float[] values) {
                int[] counts = new int[slopes.length()];
                for (float degrees : values) {
                    if (degrees == degrees) {
                        counts[(int) (degrees * BINS_PER_DEGREE)]++;
                    }
                }
                for (int i = 0; i < counts.length; i++) {
                    if (counts[i] > 0) {
                        slopes.addAndGet(i, counts[i]);
                    }
                }
            }

            @Override
            public void endOfBand() {
                // nothing waits for it
            }
        };
    }

    /**
     * The lowest height.
     *
     * @return the height (m), {@code NaN} where all are missing
     */
    public double lowest() {
        return lowest.get() > highest.get() ? Double.NaN : lowest.get();
    }

    /**
     * The highest height.
     *
     * @return the height (m), {@code NaN} where all are missing
     */
    public double highest() {
        return lowest.get() > highest.get() ? Double.NaN : highest.get();
    }

    /**
     * How many heights are missing.
     *
     * @return the number of nodes without a height (1)
     */
    public long missing() {
        return missing.sum();
    }

    /**
     * The slope (Horn 1981) that a share of the ground stays below.
     *
     * @param share share of the nodes with a slope (1), 0 to 1
     * @return angle to the level (rad), right to 0.005 degree; {@code NaN} where no node has a slope
     */
    public double slope(double share) {
        long total = 0;
        for (int i = 0; i < slopes.length(); i++) {
            total += slopes.get(i);
        }
        double wanted = Require.within("share of the ground", share, 0, 1, "1") * total;
        int bin = 0;
        long below = 0;
        while (bin < slopes.length() - 1 && below + slopes.get(bin) < wanted) {
            below += slopes.get(bin++);
        }
        return total == 0 ? Double.NaN : Math.toRadians((bin + 0.5) / BINS_PER_DEGREE);
    }
}
