// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.InputException;
import bermwright.foundation.Progress;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.HeightSource;
import bermwright.terrain.grid.NodeRange;
import bermwright.terrain.shape.MadeGround;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GroundSourceTest {
    /** A label in the manner of the standard's example of an IMAGE object with a map projection. */
    private static final String LABEL = """
            PDS_VERSION_ID = PDS3
            RECORD_TYPE = FIXED_LENGTH
            RECORD_BYTES = 80
            FILE_RECORDS = 30
            ^IMAGE = %s
            TARGET_NAME = MOON
            /* heights over a sphere */
            OBJECT = IMAGE
              LINES = 30
              LINE_SAMPLES = 40
              SAMPLE_TYPE = %s
              SAMPLE_BITS = 16
              UNIT = METER
              SCALING_FACTOR = 0.5
              OFFSET = %s
              MISSING_CONSTANT = -32768
            END_OBJECT = IMAGE
            OBJECT = IMAGE_MAP_PROJECTION
              MAP_PROJECTION_TYPE = "POLAR STEREOGRAPHIC"
              A_AXIS_RADIUS = 1737.4 <KM>
              CENTER_LATITUDE = -90 <DEG>
              CENTER_LONGITUDE = 0 <DEG>
              MAP_SCALE = 20 <METERS/PIXEL>
              LINE_PROJECTION_OFFSET = 14.5
              SAMPLE_PROJECTION_OFFSET = 19.5
              POSITIVE_LONGITUDE_DIRECTION = EAST
            END_OBJECT = IMAGE_MAP_PROJECTION
            END
            """;

    @TempDir
    private Path folder;

    private static GroundFile read(Path file) {
        return GroundFiles.read(file, GroundFiles.Knowledge.NONE, Progress.NONE);
    }

    private Path tiff(String name, DoubleBinaryOperator height) throws IOException {
        Path file = folder.resolve(name);
        GeoTiffWriter.write(file, ElevationGrid.sampled(new GridFrame(60, 80, 1000, 2000, 5), height),
                ReferenceSystem.lunarSouthPolar(), Progress.NONE);
        return file;
    }

    private static String odd(GroundFile file) {
        return String.join(" ", file.oddities());
    }

    private static byte[] samples(ByteOrder order) {
        ByteBuffer data = ByteBuffer.allocate(2400).order(order);
        for (int i = 0; i < 1200; i++) {
            data.putShort((short) (i == 41 ? -32768 : i - 300));
        }
        return data.array();
    }

    @Test
    void everyWindowIsAPartOfTheWhole() throws IOException {
        int looked = 0;
        for (Map.Entry<String, byte[]> entry : MatrixFiles.all().entrySet()) {
            if (entry.getKey().endsWith(".tif") && entry.getKey().hashCode() % 3 == 0) {
                Path file = Files.write(folder.resolve("part.tif"), entry.getValue());
                ElevationGrid whole = read(file).grid();
                try (GroundSource source = GroundFiles.open(file, GroundFiles.Knowledge.NONE, Progress.NONE)) {
                    ElevationGrid part = source.window(new NodeRange(5, 7, 20, 31));
                    for (int row = 0; row < 20; row++) {
                        for (int column = 0; column < 31; column++) {
                            assertEquals(whole.nodeHeight(row + 5, column + 7), part.nodeHeight(row, column));
                        }
                    }
                }
                looked++;
            }
        }
        assertTrue(looked > 40, looked + " files");
    }

    @Test
    void overviewsShowTheSameGround() throws IOException {
        Path file = folder.resolve("large.tif");
        MadeGround made = new MadeGround(new GridFrame(601, 803, 1000, 2000, 5), MadeGround.Recipe.HIGHLAND, 2);
        GeoTiffWriter.write(file, made, ReferenceSystem.lunarSouthPolar(), Progress.NONE);
        try (GroundSource source = GroundFiles.open(file, GroundFiles.Knowledge.NONE, Progress.NONE)) {
            assertEquals(2, source.overviews().size());
            HeightSource half = source.overviews().get(0);
            assertEquals(402, half.frame().columns());
            assertEquals(301, half.frame().rows());
            ElevationGrid fine = source.window(NodeRange.all(source.frame()));
            ElevationGrid coarse = half.window(NodeRange.all(half.frame()));
            double mean = (fine.nodeHeight(600, 0) + fine.nodeHeight(600, 1) + fine.nodeHeight(599, 0)
                    + fine.nodeHeight(599, 1)) / 4;
            assertEquals(mean, coarse.nodeHeight(300, 0), 1e-4);
            assertEquals(fine.height(3000, 4000), coarse.height(3000, 4000), 8);
        }
    }

    @ParameterizedTest
    @CsvSource({"LSB_INTEGER, 1737400., ''", "MSB_INTEGER, 1737400, ''", "LSB_INTEGER, 0, ''",
        "LSB_INTEGER, 1738000, 1738.0 km"})
    void readsAnImageWithADetachedLabel(String type, String offset, String said) throws IOException {
        Files.write(folder.resolve("T.IMG"), samples(type.startsWith("L") ? ByteOrder.LITTLE_ENDIAN
                : ByteOrder.BIG_ENDIAN));
        Path label = Files.writeString(folder.resolve("T.lbl"), LABEL.formatted("\"T.IMG\"", type, offset));
        GroundFile file = read(label);
        double over = offset.equals("1738000") ? 600 : 0;
        // As GDAL 3.6.2 places it: the corner of the first pixel at -400, 300.
        assertEquals(new GridFrame(30, 40, -390, -290, 20), file.grid().frame());
        assertEquals("PDS3 image", file.format());
        assertEquals(-150 + over, file.grid().nodeHeight(29, 0));
        assertEquals((1199 - 300) * 0.5 + over, file.grid().nodeHeight(0, 39));
        assertEquals(1, file.missing());
        assertTrue(Double.isNaN(file.grid().nodeHeight(28, 1)));
        assertEquals("IAU_2015:30135", file.referenceSystem().orElseThrow().code().orElseThrow());
        assertTrue(String.join("", file.cautions()).contains(said));
        assertEquals(said.isEmpty(), file.cautions().isEmpty());
        assertEquals(file.grid(), read(folder.resolve("T.IMG")).grid());
    }

    @Test
    void readsAnImageWithItsLabelAttached() throws IOException {
        byte[] head = LABEL.formatted("33", "LSB_INTEGER", "0").getBytes(StandardCharsets.US_ASCII);
        ByteBuffer file = ByteBuffer.allocate(32 * 80 + 2400).put(head).position(32 * 80)
                .put(samples(ByteOrder.LITTLE_ENDIAN));
        GroundFile read = read(Files.write(folder.resolve("attached.img"), file.array()));
        assertEquals(-150, read.grid().nodeHeight(29, 0));
        assertEquals((1199 - 300) * 0.5, read.grid().nodeHeight(0, 39));
    }

    @Test
    void readsAPds4ImageThatGdalWrote() throws IOException {
        for (String name : new String[] {"pds4.xml", "pds4.img"}) {
            try (var in = GroundSourceTest.class.getResourceAsStream(name)) {
                Files.copy(in, folder.resolve(name));
            }
        }
        GroundFile file = read(folder.resolve("pds4.xml"));
        assertEquals(new GridFrame(30, 40, 10002.5, 20002.5, 5), file.grid().frame());
        Map<String, byte[]> files = MatrixFiles.all();
        Path same = Files.write(folder.resolve("same.tif"), files.get("float32-deflate-p1-tiled-classic-little.tif"));
        assertEquals(read(same).grid(), file.grid());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-9999, -32768, -3.4028234663852886e38})
    void anUndeclaredFillValueIsMissingInEveryFormat(double fill) throws IOException {
        Path tiff = folder.resolve("fill.tif");
        // Written as if it were a height: our writer's own mark is put out of the way.
        GeoTiffWriter.write(tiff, ElevationGrid.sampled(new GridFrame(60, 80, 0, 0, 5), (e, n) -> n > 250 ? 1234.5
                : 10 + e / 10), Optional.empty(), Progress.NONE);
        byte[] bytes = Files.readAllBytes(tiff);
        String text = new String(bytes, StandardCharsets.ISO_8859_1).replace("-9999\0", "7777.\0");
        Files.write(tiff, text.getBytes(StandardCharsets.ISO_8859_1));
        assertFalse(read(tiff).missing() > 0);
        StringBuilder ascii = new StringBuilder("ncols 20\nnrows 20\nxllcorner 0\nyllcorner 0\ncellsize 5\n");
        for (int i = 0; i < 400; i++) {
            ascii.append(i == 45 ? String.format(Locale.ROOT, "%s", fill) : String.valueOf(10 + i % 7)).append(' ');
        }
        GroundFile file = read(Files.writeString(folder.resolve("fill.asc"), ascii));
        assertEquals(1, file.missing());
        assertTrue(odd(file).contains("is not declared as a mark"), odd(file));
        HeightScale scale = new HeightScale(1, 0, new double[0], new FileTrouble(tiff));
        double[] values = {5, fill, 6};
        scale.convert(values, 0, 3);
        assertTrue(Double.isNaN(values[1]) && values[0] == 5 && values[2] == 6);
        assertEquals(1, scale.fillsMet());
    }

    @Test
    void saysWhatIsOddAndNothingElse() throws IOException {
        DoubleBinaryOperator hills = (e, n) -> 40 * Math.sin(e / 60) * Math.cos(n / 45) - 1200;
        assertEquals("", odd(read(tiff("plain.tif", hills))));
        assertTrue(odd(read(tiff("radii.tif", (e, n) -> 1_737_400 + hills.applyAsDouble(e, n)))).contains("radii"));
        assertTrue(odd(read(tiff("feet.tif", (e, n) -> 12 * hills.applyAsDouble(e, n)))).contains("in feet"));
        Path collar = tiff("collar.tif", (e, n) -> e < 1050 || n > 2200 ? 0 : hills.applyAsDouble(e, n));
        GroundFile file = read(collar);
        assertTrue(odd(file).contains("Heights of exactly 0"), odd(file));
        assertTrue(file.missing() > 1000);
        assertEquals("", odd(read(tiff("sea.tif", (e, n) -> Math.max(0, 20 * Math.sin(e / 60) * Math.cos(n / 45))))));
        assertEquals("", odd(read(tiff("level.tif", (e, n) -> 0))));
        StringBuilder kilometres = new StringBuilder("ncols 40\nnrows 40\nxllcorner 0\nyllcorner 0\ncellsize 5\n");
        for (int i = 0; i < 1600; i++) {
            kilometres.append(String.format(Locale.ROOT, "%.6f ", hills.applyAsDouble(i % 40 * 5, i / 40 * 5) / 1000));
        }
        GroundFile small = read(Files.writeString(folder.resolve("km.asc"), kilometres));
        assertTrue(odd(small).contains("look like kilometres"), odd(small));
    }

    @Test
    void namesTheCommandThatConvertsAFormatItDoesNotRead() throws IOException {
        for (String[] known : new String[][] {{"\u0089HDF\r\n\u001a\n", "HDF5", "gdal_translate"},
            {"EHFA_HEADER_TAG", "ERDAS", "gdal_translate"}, {"DSAA", "Surfer", "gdal_translate"},
            {"Object = IsisCube", "ISIS", "gdal_translate"}, {"PK\u0003\u0004", "zip", "unzip"},
            {"SIMPLE  =", "FITS", "gdal_translate"}}) {
            Path file = Files.write(folder.resolve("other.dat"), known[0].getBytes(StandardCharsets.ISO_8859_1));
            InputException thrown = assertThrows(InputException.class, () -> read(file));
            assertEquals("format", thrown.key(), known[1]);
            assertTrue(thrown.value().contains(known[1]), thrown.getMessage());
            assertTrue(thrown.accepted().contains(known[2]), thrown.getMessage());
        }
    }

    @Test
    void aLabelThatAsksForTooMuchIsRefusedByItsKeyword() throws IOException {
        Files.write(folder.resolve("T.IMG"), samples(ByteOrder.LITTLE_ENDIAN));
        String good = LABEL.formatted("\"T.IMG\"", "LSB_INTEGER", "0");
        for (String[] bad : new String[][] {{"LINES = 30", "LINES = 2000000000", "^IMAGE"},
            {"SAMPLE_BITS = 16", "SAMPLE_BITS = 8", "IMAGE.SAMPLE_BITS"},
            {"LINE_SAMPLES = 40", "LINE_SAMPLES = -4", "IMAGE.LINE_SAMPLES"},
            {"\"T.IMG\"", "\"/etc/passwd\"", "^IMAGE"}, {"\"T.IMG\"", "(\"T.IMG\", 99999999999999)", "^IMAGE"},
            {"20 <METERS/PIXEL>", "1e308 <METERS/PIXEL>", "MAP_SCALE"},
            {"\"POLAR STEREOGRAPHIC\"", "\"SINUSOIDAL\"", "IMAGE_MAP_PROJECTION.MAP_PROJECTION_TYPE"},
            {"SCALING_FACTOR = 0.5", "SCALING_FACTOR = zero", "IMAGE.SCALING_FACTOR"},
            {"A_AXIS_RADIUS = 1737.4", "A_AXIS_RADIUS = 3396.2", "radius of the body"}}) {
            Path label = Files.writeString(folder.resolve("bad.lbl"), good.replace(bad[0], bad[1]));
            InputException thrown = assertThrows(InputException.class, () -> read(label), bad[1]);
            assertEquals(bad[2], thrown.key(), thrown.getMessage());
            assertFalse(thrown.value().isEmpty() || thrown.accepted().isEmpty());
        }
    }
}
