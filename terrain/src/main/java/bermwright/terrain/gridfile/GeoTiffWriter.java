// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.Progress;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.HeightSource;
import bermwright.terrain.grid.NodeRange;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Writes ground as a GeoTIFF file: heights in metres as 32-bit floating point (right to 0.25 mm at 4 km), tiles of
 * deflate with predictor 3, overviews, coordinates of cell areas, missing heights as -9999.
 */
public final class GeoTiffWriter {
    private GeoTiffWriter() {
    }

    /**
     * Writes ground; the file is there whole or not at all.
     *
     * @param file     the file, replaced where it exists
     * @param ground   the ground, of any size
     * @param system   the reference system of its coordinates
     * @param progress is told how far the writing has come
     * @throws IOException if the file cannot be written
     */
    public static void write(Path file, HeightSource ground, ReferenceSystem system, Progress progress)
            throws IOException {
        write(file, ground, Optional.of(system), progress);
    }

    /**
     * Writes ground; the file is there whole or not at all.
     *
     * @param file     the file, replaced where it exists
     * @param ground   the ground, of any size
     * @param system   the reference system of its coordinates; absent where it is not known
     * @param progress is told how far the writing has come
     * @throws IOException if the file cannot be written
     */
    public static void write(Path file, HeightSource ground, Optional<ReferenceSystem> system, Progress progress)
            throws IOException {
        write(file, ground, new SurfaceFile.Layer(ground.frame(), system, SurfaceContent.HEIGHTS), progress);
    }

    /**
     * Writes the values of a grid; the file is there whole or not at all.
     *
     * @param file     the file, replaced where it exists
     * @param ground   the values, of any size
     * @param layer    where they lie and what they are; of 32-bit floating point
     * @param progress is told how far the writing has come
     * @throws IOException if the file cannot be written
     */
    public static void write(Path file, HeightSource ground, SurfaceFile.Layer layer, Progress progress)
            throws IOException {
        GridFrame frame = ground.frame();
        try (SurfaceFile out = SurfaceFile.packed(file, layer)) {
            int tile = out.blockRows();
            int across = (frame.columns() - 1) / tile + 1;
            int down = (frame.rows() - 1) / tile + 1;
            for (int band = 0; band < down; band++) {
                progress.check();
                int top = band * tile;
                int rows = Math.min(tile, frame.rows() - top);
                IntStream.range(0, across).parallel().forEach(x -> {
                    NodeRange block = new NodeRange(frame.rows() - top - rows, x * tile, rows,
                            Math.min(tile, frame.columns() - x * tile));
                    out.put(block, heights(ground, block));
                });
                out.endOfBand();
                progress.report((double) (band + 1) / down, "writing heights");
            }
            out.finish(progress);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static float[] heights(HeightSource ground, NodeRange block) {
        double[] heights = new double[(int) block.nodes()];
        ground.read(block, heights);
        float[] values = new float[heights.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = (float) heights[i];
        }
        return values;
    }
}
