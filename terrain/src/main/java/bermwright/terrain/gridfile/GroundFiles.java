// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.terrain.grid.NodeRange;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * Opens elevation files: GeoTIFF (classic and big, cloud-optimised or not, strips and tiles, uncompressed, LZW and
 * deflate with any predictor, whole and floating point numbers, overviews), ESRI ASCII grids, and raw images of the
 * Planetary Data System with their label (PDS3 attached or detached, PDS4).
 */
public final class GroundFiles {
    private static final int HEAD = 512;
    private static final String ACCEPTED = "a GeoTIFF, ESRI ASCII, PDS3 or PDS4 elevation file";

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
     * Reads an elevation file whole.
     *
     * @param file      the file
     * @param knowledge what is known beside the file
     * @param progress  is told how far the reading has come
     * @return what the file holds
     * @throws InputException if the file cannot be used, or memory cannot hold it whole
     */
    public static GroundFile read(Path file, Knowledge knowledge, Progress progress) {
        try (GroundSource source = open(file, knowledge, progress)) {
            return source.part(NodeRange.all(source.frame()), progress);
        }
    }

    /**
     * Opens an elevation file; of its heights only some rows are looked at, but those of a text are read through.
     *
     * @param file      the file
     * @param knowledge what is known beside the file
     * @param progress  is told how far the reading of a text has come
     * @return the open file, to be closed
     * @throws InputException if the file cannot be used
     */
    public static GroundSource open(Path file, Knowledge knowledge, Progress progress) {
        FileTrouble trouble = new FileTrouble(file);
        if (!Files.isRegularFile(file)) {
            throw trouble.unreadable("", Files.isDirectory(file) ? "this is a folder" : Files.exists(file)
                    ? "this is no regular file" : "there is no such file", ACCEPTED);
        }
        try {
            GroundFacts facts = facts(file, knowledge, progress);
            try {
                return GroundAssembly.of(file, facts, knowledge);
            } catch (RuntimeException e) {
                facts.ground().samples().close();
                throw e;
            }
        } catch (IOException e) {
            throw trouble.unreadable("", "it cannot be read (" + e.getMessage() + ")", "a readable file", e);
        } catch (UncheckedIOException e) {
            throw trouble.unreadable("", "it cannot be read (" + e.getMessage() + ")", "a readable file", e);
        }
    }

    private static GroundFacts facts(Path file, Knowledge knowledge, Progress progress) throws IOException {
        byte[] head;
        try (InputStream in = Files.newInputStream(file)) {
            head = in.readNBytes(HEAD);
        }
        if (TiffDirectory.isTiff(head)) {
            return tiff(file);
        }
        if (EsriAsciiReader.isAsciiGrid(head)) {
            return EsriAsciiReader.open(file, knowledge, progress);
        }
        if (Pds3Reader.isLabel(head)) {
            return Pds3Reader.open(file);
        }
        Optional<OtherFormats.Known> other = OtherFormats.of(head);
        if (other.isPresent()) {
            throw new FileTrouble(file).badValue("format", other.get().format(), ACCEPTED + "; "
                    + other.get().command());
        }
        if (Pds4Reader.isLabel(head)) {
            return Pds4Reader.open(file);
        }
        for (String ending : new String[] {".lbl", ".LBL", ".xml", ".XML"}) {
            Path label = BesideFile.withEnding(file, ending);
            if (!label.equals(file) && Files.isRegularFile(label) && hasLabelFor(label, file)) {
                return ending.equalsIgnoreCase(".xml") ? Pds4Reader.open(label) : Pds3Reader.open(label);
            }
        }
        throw new FileTrouble(file).unreadable("first bytes", "this is neither a TIFF file, an ESRI ASCII grid nor an"
                + " image with a PDS label", ACCEPTED + "; gdal_translate -of GTiff IN OUT.tif converts most others");
    }

    private static boolean hasLabelFor(Path label, Path file) throws IOException {
        byte[] head;
        try (InputStream in = Files.newInputStream(label)) {
            head = in.readNBytes(HEAD);
        }
        return Pds3Reader.isLabel(head) || Pds4Reader.isLabel(head) && !label.equals(file);
    }

    private static GroundFacts tiff(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.READ);
        try {
            return GeoTiffReader.open(channel, new FileTrouble(file));
        } catch (RuntimeException | IOException e) {
            channel.close();
            throw e;
        }
    }
}
