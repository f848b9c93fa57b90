// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Progress;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.HornSlope;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Slope and aspect against {@code gdaldem slope -alg Horn} and {@code gdaldem aspect -alg Horn} of GDAL 3.6.2; the
 * commands stand in src/test/gdal/make-slopes.sh.
 */
class HornSlopeGdalTest {
    /** The largest difference allowed away from the edge, in degrees. */
    private static final double GREATEST_DIFFERENCE_DEG = 1e-3;
    private static final float NONE = -9999;

    @TempDir
    private Path folder;

    private ElevationGrid ground() throws IOException {
        String name = "float32-deflate-p1-tiled-classic-little.tif";
        Path file = Files.write(folder.resolve(name), MatrixFiles.all().get(name));
        // gdaldem divides by projected metres
        return GroundFiles.read(file, GroundFiles.Knowledge.NONE, Progress.NONE).grid().withMetreScale(1);
    }

    private static ByteBuffer expected(String name) throws IOException {
        try (InputStream in = HornSlopeGdalTest.class.getResourceAsStream(name)) {
            return ByteBuffer.wrap(in.readAllBytes()).order(ByteOrder.LITTLE_ENDIAN);
        }
    }

    @Test
    void slopeIsThatOfGdaldem() throws IOException {
        ElevationGrid ground = ground();
        ByteBuffer expected = expected("gdaldem-slope.f32");
        int compared = 0;
        for (int row = 0; row < 30; row++) {
            for (int column = 0; column < 40; column++) {
                float theirs = expected.getFloat(4 * ((29 - row) * 40 + column));
                double ours = Math.toDegrees(HornSlope.slope(ground, row, column));
                if (theirs == NONE) {
                    assertTrue(Double.isNaN(ours) || row == 0 || column == 0 || row == 29 || column == 39,
                            row + ", " + column);
                } else if (!Double.isNaN(ours)) {
                    assertEquals(theirs, ours, GREATEST_DIFFERENCE_DEG, row + ", " + column);
                    compared++;
                }
            }
        }
        assertTrue(compared > 1000, compared + " nodes were compared");
    }

    @Test
    void aspectIsThatOfGdaldem() throws IOException {
        ElevationGrid ground = ground();
        ByteBuffer expected = expected("gdaldem-aspect.f32");
        int compared = 0;
        for (int row = 1; row < 29; row++) {
            for (int column = 1; column < 39; column++) {
                float theirs = expected.getFloat(4 * ((29 - row) * 40 + column));
                if (theirs != NONE && HornSlope.gradient(ground, row, column).aspect().isPresent()) {
                    double ours = HornSlope.gradient(ground, row, column).aspect().orElseThrow().degrees();
                    assertEquals(0, Math.IEEEremainder(theirs - ours, 360), GREATEST_DIFFERENCE_DEG,
                            row + ", " + column);
                    compared++;
                }
            }
        }
        assertTrue(compared > 1000, compared + " nodes were compared");
    }
}
