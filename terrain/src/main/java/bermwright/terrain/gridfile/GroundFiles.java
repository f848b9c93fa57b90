// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Reads elevation files: GeoTIFF (classic and big, strips and tiles, uncompressed, LZW and deflate with any
 * predictor, whole and floating point numbers) and ESRI ASCII grids.
 */
public final class GroundFiles {
    private static final int HEAD = 64;

    private GroundFiles() {
    }

    /**
     * What a reader knows beside the file.
     *
     * @param referenceSystem the reference system, as a code or well-known text; used where the file has none
     * @param centre          where the metre scale is taken, in projected metres; the grid's middle where absent
     */
    public record Knowledge(Optional<String> referenceSystem, Optional<Point> centre) {
        /** Nothing but the file. */
        public static final Knowledge NONE = new Knowledge(Optional.empty(), Optional.empty());
    }

    /**
     * Reads an elevation file by itself.
     *
     * @param file     the file
     * @param progress is told how far the reading has come
     * @return what the file holds
     * @throws InputException if the file cannot be used
     */
    public static GroundFile read(Path file, Progress progress) {
        return read(file, Knowledge.NONE, progress);
    }

    /**
     * Reads an elevation file.
     *
     * @param file      the file
     * @param knowledge what is known beside the file
     * @param progress  is told how far the reading has come
     * @return what the file holds
     * @throws InputException if the file cannot be used
     */
    public static GroundFile read(Path file, Knowledge knowledge, Progress progress) {
        FileTrouble trouble = new FileTrouble(file);
        if (!Files.isRegularFile(file)) {
            throw trouble.unreadable(Files.isDirectory(file) ? "this is a folder" : "there is no such file",
                    "a GeoTIFF or ESRI ASCII elevation file");
        }
        try {
            byte[] head;
            try (InputStream in = Files.newInputStream(file)) {
                head = in.readNBytes(HEAD);
            }
            if (TiffDirectory.isTiff(head)) {
                return GeoTiffReader.read(file, knowledge, progress);
            }
            if (EsriAsciiReader.isAsciiGrid(head)) {
                return EsriAsciiReader.read(file, knowledge, progress);
            }
            throw trouble.unreadable("this is neither a TIFF file nor an ESRI ASCII grid",
                    "a GeoTIFF or ESRI ASCII elevation file");
        } catch (IOException e) {
            throw trouble.unreadable("it cannot be read (" + e.getMessage() + ")", "a readable file", e);
        } catch (UncheckedIOException e) {
            throw trouble.unreadable("it cannot be read (" + e.getMessage() + ")", "a readable file", e);
        }
    }
}
