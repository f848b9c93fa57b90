// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import bermwright.foundation.Progress;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The file we write against one that was shown to GDAL: {@code gdalinfo -checksum written.tif} of GDAL 3.6.2 gave
 * written.gdalinfo.txt, with the right reference system, place, mark and unit, and the least and greatest height.
 */
class GeoTiffWriterPinnedTest {
    @TempDir
    private Path folder;

    @Test
    void writesTheFileThatGdalRead() throws IOException {
        Path shown = folder.resolve("shown.tif");
        try (InputStream in = GeoTiffWriterPinnedTest.class.getResourceAsStream("written.tif")) {
            Files.copy(in, shown);
        }
        Path now = folder.resolve("now.tif");
        GeoTiffWriter.write(now, GeoTiffWriterTest.ground(30, 40), ReferenceSystem.lunarSouthPolar(), Progress.NONE);
        assertEquals(GroundFiles.read(shown, GroundFiles.Knowledge.NONE, Progress.NONE).grid(), GroundFiles.read(now,
                GroundFiles.Knowledge.NONE, Progress.NONE).grid());
        try (FileChannel a = FileChannel.open(shown); FileChannel b = FileChannel.open(now)) {
            TiffDirectory theirs = TiffDirectory.all(a, new FileTrouble(shown)).get(0);
            TiffDirectory ours = TiffDirectory.all(b, new FileTrouble(now)).get(0);
            for (int tag : new int[] {TiffRaster.WIDTH, TiffRaster.HEIGHT, TiffRaster.BITS, TiffRaster.COMPRESSION,
                TiffRaster.PREDICTOR, TiffRaster.SAMPLE_FORMAT, TiffRaster.TILE_WIDTH, TiffRaster.TILE_HEIGHT,
                GeoKeys.DIRECTORY}) {
                assertArrayEquals(theirs.wholes(tag), ours.wholes(tag), "tag " + tag);
            }
            for (int tag : new int[] {GeoTiffReader.PIXEL_SCALE, GeoTiffReader.TIE_POINTS, GeoKeys.DOUBLES}) {
                assertArrayEquals(theirs.reals(tag), ours.reals(tag), "tag " + tag);
            }
            for (int tag : new int[] {GeoKeys.TEXTS, GeoTiffReader.GDAL_METADATA, GeoTiffReader.GDAL_NODATA}) {
                assertEquals(theirs.text(tag), ours.text(tag), "tag " + tag);
            }
        }
    }
}
