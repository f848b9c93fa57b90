// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Progress;
import bermwright.terrain.grid.GridFrame;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Every cell of the matrix of TIFF kinds, each held against GDAL's own reading of a file GDAL wrote. */
class GeoTiffMatrixTest {
    /** Stored numbers are read bit by bit; scaling them rounds once more. */
    private static final double ROUNDING = 1e-12;
    private static final int FILES = 170;

    @TempDir
    private Path folder;

    @TestFactory
    Stream<DynamicTest> readsWhatGdalReads() throws IOException {
        Map<String, byte[]> files = MatrixFiles.all();
        long tiffs = files.keySet().stream().filter(n -> n.endsWith(".tif")).count();
        assertEquals(FILES, tiffs);
        return files.keySet().stream().filter(n -> n.endsWith(".tif")).map(name -> DynamicTest.dynamicTest(name, () -> {
            Path file = Files.write(folder.resolve(name), files.get(name));
            String kind = name.substring(0, name.indexOf('-'));
            String expected = "expected-" + kind + (name.contains("scaled") ? "-scaled" : "") + ".f64";
            check(GroundFiles.read(file, GroundFiles.Knowledge.NONE, Progress.NONE),
                    ByteBuffer.wrap(files.get(expected))
                    .order(ByteOrder.LITTLE_ENDIAN));
        }));
    }

    private static void check(GroundFile ground, ByteBuffer expected) {
        assertEquals(new GridFrame(30, 40, 10002.5, 20002.5, 5), ground.grid().frame());
        for (int row = 0; row < 30; row++) {
            for (int column = 0; column < 40; column++) {
                double height = expected.getDouble(8 * ((29 - row) * 40 + column));
                String where = "row " + row + ", column " + column;
                if (Double.isNaN(height)) {
                    assertTrue(Double.isNaN(ground.grid().nodeHeight(row, column)), where);
                } else {
                    assertEquals(height, ground.grid().nodeHeight(row, column), ROUNDING * (1 + Math.abs(height)),
                            where);
                }
            }
        }
        assertEquals(6, ground.missing());
        assertEquals("IAU_2015:30135", ground.referenceSystem().orElseThrow().code().orElseThrow());
    }
}
