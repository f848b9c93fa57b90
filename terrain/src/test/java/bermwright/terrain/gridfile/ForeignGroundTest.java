// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bermwright.foundation.Progress;
import bermwright.terrain.grid.HornSlope;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Heights that this project did not make, in a file GDAL wrote (src/test/gdal/make-foreign-ground.sh), against what
 * {@code gdalinfo -stats} and {@code gdaldem slope} of GDAL 3.6.2 say of it.
 */
class ForeignGroundTest {
    /** The statistics are sums of 57,600 numbers of 32 bits. */
    private static final double STATISTICS = 1e-5;
    /** As near as slopes must come to those of gdaldem, in degrees. */
    private static final double SLOPE_DEG = 1e-3;

    @TempDir
    private Path folder;

    private GroundFile ground() throws IOException {
        Path file = folder.resolve("foreign-ground.tif");
        try (InputStream in = ForeignGroundTest.class.getResourceAsStream("foreign-ground.tif")) {
            Files.copy(in, file);
        }
        return GroundFiles.read(file, GroundFiles.Knowledge.NONE, Progress.NONE);
    }

    @Test
    void holdsWhatGdalSays() throws IOException {
        GroundFile ground = ground();
        assertEquals(240, ground.grid().frame().rows());
        assertEquals(240, ground.grid().frame().columns());
        assertEquals(4, ground.spacing());
        assertEquals(0, ground.missing());
        assertEquals("IAU_2015:30135", ground.referenceSystem().orElseThrow().code().orElseThrow());
        assertEquals(18.980333328247, ground.grid().highest(), STATISTICS);
        assertEquals(-26.747772216797, ground.grid().lowest(), STATISTICS);
        assertEquals(-5.9897308769754, Arrays.stream(ground.grid().heights()).average().orElseThrow(), STATISTICS);
    }

    @Test
    void hasTheSlopesThatGdaldemSays() throws IOException {
        double[] slopes = Arrays.stream(HornSlope.slopes(ground().grid().withMetreScale(1)))
                .filter(s -> !Double.isNaN(s)).map(Math::toDegrees).toArray();
        assertEquals(238 * 238, slopes.length);
        assertEquals(27.132717132568, Arrays.stream(slopes).max().orElseThrow(), SLOPE_DEG);
        assertEquals(0.015567181631923, Arrays.stream(slopes).min().orElseThrow(), SLOPE_DEG);
        assertEquals(3.6265253930807, Arrays.stream(slopes).average().orElseThrow(), SLOPE_DEG);
    }
}
