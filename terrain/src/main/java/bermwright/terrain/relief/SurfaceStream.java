// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import bermwright.foundation.Progress;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.HeightSource;
import bermwright.terrain.grid.NodeRange;
import bermwright.terrain.grid.ValueSink;
import java.util.Arrays;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * Works out a surface of ground of any size, block by block on all processors.
 *
 * <p>A value depends on the heights around its node alone, so it is the same to the last bit however the ground is
 * cut into blocks. Memory is that of one block with its margin for each processor.
 */
public final class SurfaceStream {
    /** A block with its margin takes some this many heights; they stay in the processor's cache. */
    private static final int NODES_OF_A_BLOCK = 1 << 18;
    private static final int MOST_COLUMNS = 1 << 14;
    private static final int WIDE_MARGIN = 16;
    private static final int LEAST_SIDE = 128;
    private static final int MOST_SIDE = 1024;

    private final HeightSource ground;
    private final Surface surface;

    private SurfaceStream(HeightSource ground, Surface surface) {
        this.ground = ground;
        this.surface = surface;
    }

    /**
     * Works out a surface.
     *
     * @param ground   the ground
     * @param surface  the surface
     * @param sink     takes the values
     * @param progress is told how far it has come
     */
    public static void run(HeightSource ground, Surface surface, ValueSink sink, Progress progress) {
        new SurfaceStream(ground, surface).run(sink, progress);
    }

    /**
     * Works out a surface as a whole.
     *
     * @param ground  the ground
     * @param surface the surface
     * @return the values, rows x columns, row 0 southernmost, {@code NaN} where there is none
     */
    public static float[] whole(HeightSource ground, Surface surface) {
        int columns = ground.frame().columns();
        float[] all = new float[ground.frame().size()];
        run(ground, surface, new ValueSink() {
            @Override
            public int blockRows() {
                return rowsOfABlock(ground, surface);
            }

            @Override
            public int blockColumns() {
                return columnsOfABlock(ground, surface);
            }

            @Override
            public boolean isByBands() {
                return false;
            }

            @Override
            public void put(NodeRange block, float[] values) {
                for (int i = 0; i < block.rows(); i++) {
                    System.arraycopy(values, i * block.columns(), all,
                            (block.firstRow() + i) * columns + block.firstColumn(), block.columns());
                }
            }

            @Override
            public void endOfBand() {
                // nothing waits for it
            }
        }, Progress.NONE);
        return all;
    }

    /**
     * Works out a block of a surface by itself; the same values as in the whole.
     *
     * @param ground  the ground
     * @param surface the surface
     * @param block   its nodes, inside the ground
     * @return the values, row by row from the southernmost, {@code NaN} where there is none
     */
    public static float[] block(HeightSource ground, Surface surface, NodeRange block) {
        return new SurfaceStream(ground, surface).values(block, new HeightBlock(ground, surface.margin()));
    }

    /**
     * In how many rows this ground is best worked on at a time, where the sink does not mind.
     *
     * @param ground  the ground
     * @param surface the surface
     * @return rows (1), at least 1
     */
    public static int rowsOfABlock(HeightSource ground, Surface surface) {
        if (surface.margin() > WIDE_MARGIN) {
            return Math.min(ground.frame().rows(), sideOfABlock(surface));
        }
        int columns = Math.min(ground.frame().columns(), MOST_COLUMNS);
        int few = Math.max(Math.max(1, 2 * surface.margin()), NODES_OF_A_BLOCK / columns);
        return Math.max(few, Math.min(ground.blockRows(), MOST_SIDE));
    }

    /**
     * In how many columns this ground is best worked on at a time, where the sink does not mind.
     *
     * @param ground  the ground
     * @param surface the surface
     * @return columns (1), at least 1
     */
    public static int columnsOfABlock(HeightSource ground, Surface surface) {
        int columns = ground.frame().columns();
        return surface.margin() > WIDE_MARGIN ? Math.min(columns, sideOfABlock(surface))
                : ground.blockRows() > 1 ? Math.min(columns, MOST_COLUMNS) : columns;
    }

    /** A margin read again and again for each block costs less where the block is as wide as the margin. */
    private static int sideOfABlock(Surface surface) {
        return Math.min(MOST_SIDE, Math.max(LEAST_SIDE, 2 * surface.margin()));
    }

    private void run(ValueSink sink, Progress progress) {
        GridFrame frame = ground.frame();
        int down = (frame.rows() - 1) / sink.blockRows() + 1;
        int across = (frame.columns() - 1) / sink.blockColumns() + 1;
        AtomicInteger done = new AtomicInteger();
        if (!sink.isByBands()) {
            AtomicInteger next = new AtomicInteger();
            int blocks = Math.multiplyExact(down, across);
            // Blocks are taken in turn, so that the file is read and written from its beginning to its end.
            int workers = Runtime.getRuntime().availableProcessors();
            IntStream.range(0, workers).parallel().forEach(w -> {
                HeightBlock heights = new HeightBlock(ground, surface.margin());
                for (int i = next.getAndIncrement(); i < blocks; i = next.getAndIncrement()) {
                    progress.check();
                    work(block(sink, i / across, i % across), heights, sink);
                    progress.report((double) done.incrementAndGet() / blocks, "working out the surface");
                }
            });
            return;
        }
        ThreadLocal<HeightBlock> room = ThreadLocal.withInitial(() -> new HeightBlock(ground, surface.margin()));
        for (int band = 0; band < down; band++) {
            int line = band;
            IntStream.range(0, across).parallel().forEach(column -> {
                progress.check();
                work(block(sink, line, column), room.get(), sink);
            });
            sink.endOfBand();
            progress.report((double) (band + 1) / down, "working out the surface");
        }
    }

    private NodeRange block(ValueSink sink, int band, int column) {
        GridFrame frame = ground.frame();
        int top = band * sink.blockRows();
        int rows = Math.min(sink.blockRows(), frame.rows() - top);
        int left = column * sink.blockColumns();
        return new NodeRange(frame.rows() - top - rows, left, rows, Math.min(sink.blockColumns(),
                frame.columns() - left));
    }

    private void work(NodeRange block, HeightBlock heights, ValueSink sink) {
        sink.put(block, values(block, heights));
    }

    private float[] values(NodeRange block, HeightBlock heights) {
        heights.fill(block);
        float[] values = new float[block.rows() * block.columns()];
        double[] row = new double[block.columns()];
        for (int r = 0; r < block.rows(); r++) {
            surface.row(heights, r, row);
            if (!surface.reachesEdge()) {
                clearEdge(block, block.firstRow() + r, row);
            }
            int at = r * row.length;
            for (int c = 0; c < row.length; c++) {
                values[at + c] = (float) row[c];
            }
        }
        return values;
    }

    private void clearEdge(NodeRange block, int gridRow, double[] row) {
        int margin = surface.margin();
        GridFrame frame = ground.frame();
        if (gridRow < margin || gridRow >= frame.rows() - margin) {
            Arrays.fill(row, Double.NaN);
            return;
        }
        int west = Math.min(row.length, Math.max(0, margin - block.firstColumn()));
        int east = Math.min(row.length, Math.max(0, block.firstColumn() + row.length - frame.columns() + margin));
        Arrays.fill(row, 0, west, Double.NaN);
        Arrays.fill(row, row.length - east, row.length, Double.NaN);
    }
}
