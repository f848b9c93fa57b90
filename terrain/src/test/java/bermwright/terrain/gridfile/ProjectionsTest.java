// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Places by every reference system that is read, against PROJ: from a GeoTIFF, from a .prj and from well-known text,
 * all written by GDAL (src/test/gdal/make-projections.py).
 */
class ProjectionsTest {
    /** 0.3 mm on the Moon, in degrees. */
    private static final double SAME_PLACE_DEG = 1e-8;
    /** Half a millimetre. */
    private static final double SAME_MAP_PLACE = 5e-4;

    @TempDir
    private Path folder;

    @TestFactory
    Stream<DynamicTest> placesAreThoseOfProj() throws IOException {
        Map<String, byte[]> files = MatrixFiles.all("projections.zip");
        List<DynamicTest> tests = new ArrayList<>();
        new String(files.get("places.csv"), StandardCharsets.UTF_8).lines().skip(1).forEach(line -> {
            String[] cells = line.split(",");
            for (String kind : new String[] {"tif", "prj", "wkt"}) {
                byte[] data = files.get(cells[0] + "." + kind);
                tests.add(DynamicTest.dynamicTest(cells[0] + " from " + kind, () -> check(cells, kind, data)));
            }
        });
        return tests.stream();
    }

    /** The system in a file's keys, of whatever body. */
    private static ReferenceSystem inFile(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file)) {
            FileTrouble trouble = new FileTrouble(file);
            return new GeoKeys(TiffDirectory.all(channel, trouble).get(0), trouble).referenceSystem().orElseThrow();
        }
    }

    private void check(String[] cells, String kind, byte[] data) throws IOException {
        ReferenceSystem system = kind.equals("tif")
                ? inFile(Files.write(folder.resolve(cells[0] + ".tif"), data))
                : ReferenceSystem.named(new String(data, StandardCharsets.UTF_8), InputException.Place.of("plan"));
        Point place = new Point(Double.parseDouble(cells[1]), Double.parseDouble(cells[2]));
        GeographicPlace there = system.geographic(place);
        assertEquals(Double.parseDouble(cells[3]), there.latitudeDeg(), SAME_PLACE_DEG);
        double turn = Math.IEEEremainder(Double.parseDouble(cells[4]) - there.longitudeDeg(), 360);
        assertEquals(0, turn * Math.cos(Math.toRadians(there.latitudeDeg())), SAME_PLACE_DEG);
        Point back = system.projected(there);
        assertEquals(0, back.distance(place), SAME_MAP_PLACE);
    }
}
