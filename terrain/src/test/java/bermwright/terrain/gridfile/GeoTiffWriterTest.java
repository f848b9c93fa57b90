// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Progress;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GeoTiffWriterTest {
    /** A 32-bit number of order 100 is right to 4e-6. */
    private static final double FLOAT = 4e-6;

    @TempDir
    private Path folder;

    static ElevationGrid ground(int rows, int columns) {
        return ElevationGrid.sampled(new GridFrame(rows, columns, 1000, -2000, 2.5),
                (e, n) -> e == 1005 && n == -1995 ? Double.NaN : 50 * Math.sin(e / 40) + n / 100);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 15, 16, 17, 256, 257, 300})
    void readsBackWhatItWrote(int size) throws IOException {
        for (ReferenceSystem system : List.of(ReferenceSystem.lunarSouthPolar(), ReferenceSystem.lunarNorthPolar(),
                ReferenceSystem.lunarEquirectangular())) {
            ElevationGrid ground = ground(size, Math.max(2, size - 1));
            Path file = folder.resolve("ground.tif");
            GeoTiffWriter.write(file, ground, system, Progress.NONE);
            GroundFile read = GroundFiles.read(file, GroundFiles.Knowledge.NONE, Progress.NONE);
            assertEquals(ground.frame(), read.grid().frame());
            assertEquals(ground.missing(), read.missing());
            assertEquals(system.projection(), read.referenceSystem().orElseThrow().projection());
            for (int row = 0; row < ground.frame().rows(); row++) {
                for (int column = 0; column < ground.frame().columns(); column++) {
                    double height = ground.nodeHeight(row, column);
                    assertTrue(Double.isNaN(height) ? Double.isNaN(read.grid().nodeHeight(row, column))
                            : Math.abs(height - read.grid().nodeHeight(row, column)) < FLOAT);
                }
            }
        }
        try (var left = Files.list(folder)) {
            assertEquals(1, left.count());
        }
    }
}
