// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.Progress;
import bermwright.foundation.Require;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.ValueSink;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A GeoTIFF that takes the values of a surface block by block; of any size, classic or big as it needs. The file
 * stands in its place once it is finished, and not at all where it is closed before.
 */
public abstract sealed class SurfaceFile implements ValueSink, Closeable permits PlainSurfaceFile, PackedSurfaceFile {
    SurfaceFile() {
    }

    /**
     * Where values lie and what they are.
     *
     * @param frame   where the nodes lie
     * @param system  the reference system; absent where it is not known
     * @param content what the values are
     */
    public record Layer(GridFrame frame, Optional<ReferenceSystem> system, SurfaceContent content) {
    }

    /**
     * A file of plain numbers in strips, the fastest to write.
     *
     * @param file    the file, replaced where it exists
     * @param layer   where the values lie and what they are
     * @param rows    in how many rows blocks come (1), at least 1
     * @param columns in how many columns blocks come (1), at least 1
     * @return the file, to be filled, finished and closed
     * @throws IOException if it cannot be written
     */
    public static SurfaceFile plain(Path file, Layer layer, int rows, int columns) throws IOException {
        Require.that(rows >= 1 && columns >= 1, "blocks of %s x %s; accepted: 1 or more", rows, columns);
        return new PlainSurfaceFile(file, layer, rows, Math.min(columns, layer.frame.columns()));
    }

    /**
     * A file of tiles packed by deflate, with overviews.
     *
     * @param file  the file, replaced where it exists
     * @param layer where the values lie and what they are
     * @return the file, to be filled, finished and closed
     * @throws IOException if it cannot be written
     */
    public static SurfaceFile packed(Path file, Layer layer) throws IOException {
        return new PackedSurfaceFile(file, layer);
    }

    /**
     * All values are there: makes what is made of them and puts the file in its place.
     *
     * @param progress is told how far it has come
     * @throws IOException if the file cannot be written
     */
    public abstract void finish(Progress progress) throws IOException;

    @Override
    public abstract void close() throws IOException;
}
