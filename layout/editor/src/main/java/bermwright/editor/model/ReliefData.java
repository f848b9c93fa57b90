// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.foundation.Progress;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.relief.Hillshade;
import bermwright.terrain.relief.Light;
import bermwright.terrain.relief.SlopeBands;
import java.util.stream.IntStream;

/**
 * Shade and slope of the ground at every node, in one byte each, at full size and halved again and again.
 *
 * <p>Rows run from the northernmost down, as pictures do. The value 0 of a shade marks ground that is not known.
 */
public final class ReliefData {
    /** Slopes are kept in steps of half a degree, so that the limits between bands are limits between steps. */
    private static final double SLOPE_STEP_DEG = 0.5;
    /** Up to 50 degrees; steeper ground counts as that. */
    private static final int SLOPE_STEPS = 100;
    private static final int SMALLEST_SIDE = 256;

    private final ElevationGrid grid;
    private final byte[][] shades;
    private final byte[][] slopes;
    private final int[] widths;
    private final int[] heights;

    private ReliefData(ElevationGrid grid, int levels) {
        this.grid = grid;
        this.shades = new byte[levels][];
        this.slopes = new byte[levels][];
        this.widths = new int[levels];
        this.heights = new int[levels];
    }

    /**
     * The data of a grid.
     *
     * @param grid     the ground
     * @param progress told how far the work has come, and asked whether to go on
     * @return the data
     */
    public static ReliefData of(ElevationGrid grid, Progress progress) {
        GridFrame frame = grid.frame();
        int levels = 1;
        for (int side = Math.max(frame.rows(), frame.columns()); side > SMALLEST_SIDE; side = (side + 1) / 2) {
            levels++;
        }
        ReliefData data = new ReliefData(grid, levels);
        data.widths[0] = frame.columns();
        data.heights[0] = frame.rows();
        progress.check();
        byte[] shades = Hillshade.of(grid, Light.OF_MAPS, 1);
        progress.report(0.3, "shading the ground");
        progress.check();
        SlopeBands bands = SlopeBands.of(grid, IntStream.rangeClosed(1, SLOPE_STEPS)
                .mapToDouble(step -> Math.toRadians(step * SLOPE_STEP_DEG)).toArray());
        progress.report(0.6, "shading the ground");
        data.shades[0] = new byte[frame.size()];
        data.slopes[0] = new byte[frame.size()];
        IntStream.range(0, frame.rows()).parallel().forEach(row -> {
            int line = (frame.rows() - 1 - row) * frame.columns();
            System.arraycopy(shades, row * frame.columns(), data.shades[0], line, frame.columns());
            for (int column = 0; column < frame.columns(); column++) {
                data.slopes[0][line + column] = (byte) Math.max(0, bands.band(row, column));
            }
        });
        progress.report(0.7, "shading the ground");
        for (int level = 1; level < levels; level++) {
            progress.check();
            data.halve(level);
        }
        return data;
    }

    private void halve(int level) {
        int w = (widths[level - 1] + 1) / 2;
        int h = (heights[level - 1] + 1) / 2;
        widths[level] = w;
        heights[level] = h;
        shades[level] = halved(shades[level - 1], level - 1, w, h);
        slopes[level] = halved(slopes[level - 1], level - 1, w, h);
    }

    private byte[] halved(byte[] from, int level, int w, int h) {
        byte[] to = new byte[w * h];
        int fromWidth = widths[level];
        int lastX = fromWidth - 1;
        int lastY = heights[level] - 1;
        IntStream.range(0, h).parallel().forEach(y -> {
            int upper = 2 * y * fromWidth;
            int lower = Math.min(2 * y + 1, lastY) * fromWidth;
            for (int x = 0; x < w; x++) {
                int left = 2 * x;
                int right = Math.min(left + 1, lastX);
                to[y * w + x] = (byte) (((from[upper + left] & 255) + (from[upper + right] & 255)
                        + (from[lower + left] & 255) + (from[lower + right] & 255) + 2) / 4);
            }
        });
        return to;
    }

    /**
     * The ground itself.
     *
     * @return the grid
     */
    public ElevationGrid grid() {
        return grid;
    }

    /**
     * How many sizes there are.
     *
     * @return number of levels (1); level k holds every 2^k-th node
     */
    public int levels() {
        return widths.length;
    }

    /**
     * The width of a level.
     *
     * @param level the level (1), from 0
     * @return its columns (1)
     */
    public int width(int level) {
        return widths[level];
    }

    /**
     * The height of a level.
     *
     * @param level the level (1), from 0
     * @return its rows (1)
     */
    public int height(int level) {
        return heights[level];
    }

    /**
     * The shade of a node.
     *
     * @param level the level (1), from 0
     * @param x     column (1), from the westernmost
     * @param y     row (1), from the northernmost
     * @return brightness (1), 1 to 255; 0 where the ground is not known
     */
    public int shade(int level, int x, int y) {
        return shades[level][y * widths[level] + x] & 255;
    }

    /**
     * The slope at a node.
     *
     * @param level the level (1), from 0
     * @param x     column (1), from the westernmost
     * @param y     row (1), from the northernmost
     * @return slope in degrees, rounded down to half a degree, at most 50; 0 where it is not known
     */
    public double slopeDeg(int level, int x, int y) {
        return (slopes[level][y * widths[level] + x] & 255) * SLOPE_STEP_DEG;
    }
}
