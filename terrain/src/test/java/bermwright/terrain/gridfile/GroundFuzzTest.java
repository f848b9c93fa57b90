// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.Progress;
import bermwright.fuzz.Changes;
import bermwright.fuzz.Fuzz;
import bermwright.terrain.grid.GridFrame;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Elevation files changed by chance are read or refused. */
class GroundFuzzTest {
    private static final String ASCII = """
            ncols 6
            nrows 4
            xllcorner 100.0
            yllcorner 200.0
            cellsize 2.5
            NODATA_value -9999
            1 2 3 4 5 6
            2 3 4 -9999 6 7
            3 4 5 6 7 8
            4 5 6 7 8 9.5
            """;

    @TempDir
    Path folder;

    @Test
    void textGridsAreReadOrRefused() throws IOException {
        Path file = folder.resolve("ground.asc");
        new Fuzz("asc", 150, List.of(Fuzz.bytes(ASCII), Fuzz.bytes(ASCII.replace("corner", "center")),
                Fuzz.bytes(ASCII.replace("cellsize 2.5", "dx 2.5\ndy 2.5").toUpperCase(java.util.Locale.ROOT))))
                .run(GroundFuzzTest.class, Changes::ofText, input -> read(file, input));
    }

    @Test
    void geoTiffsAreReadOrRefused() throws IOException {
        Path file = folder.resolve("ground.tif");
        List<byte[]> good = new ArrayList<>();
        for (Map.Entry<String, byte[]> entry : MatrixFiles.all().entrySet()) {
            if (entry.getKey().endsWith(".tif")) {
                good.add(entry.getValue());
            }
        }
        new Fuzz("tif", 200, good).run(GroundFuzzTest.class, Changes::ofBytes, input -> read(file, input));
    }

    @Test
    void labelsOfArchivesAreReadOrRefused() throws IOException {
        Path label = folder.resolve("pds4.xml");
        Files.write(folder.resolve("pds4.img"), resource("pds4.img"));
        new Fuzz("pds4", 50, List.of(resource("pds4.xml")))
                .run(GroundFuzzTest.class, Changes::ofText, input -> read(label, input));
    }

    private static byte[] resource(String name) throws IOException {
        return GroundFuzzTest.class.getResourceAsStream(name).readAllBytes();
    }

    private static String read(Path file, byte[] input) throws IOException {
        Files.write(file, input);
        GroundFile ground = GroundFiles.read(file, GroundFiles.Knowledge.NONE, Progress.NONE);
        GridFrame frame = ground.grid().frame();
        boolean isWhole = frame.rows() > 0 && frame.columns() > 0 && frame.spacing() > 0
                && Double.isFinite(frame.spacing());
        return isWhole ? "" : "a grid without size: " + frame;
    }
}
