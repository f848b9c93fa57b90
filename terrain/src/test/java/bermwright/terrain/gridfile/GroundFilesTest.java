// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.HornSlope;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files with something odd about them; GDAL wrote them, by src/test/gdal/make-odd-files.sh. */
class GroundFilesTest {
    /** Heights in text keep all digits of a 32-bit number. */
    private static final double FLOAT = 1e-4;
    /** Scales are differences over a metre of places 10^6 m from the middle of the body. */
    private static final double SCALE = 1e-8;

    @TempDir
    private Path folder;

    @BeforeEach
    void unpack() throws IOException {
        for (Map.Entry<String, byte[]> file : MatrixFiles.all("odd-files.zip").entrySet()) {
            Files.write(folder.resolve(file.getKey()), file.getValue());
        }
        String plain = "float32-deflate-p1-tiled-classic-little.tif";
        Files.write(folder.resolve("plain.tif"), MatrixFiles.all().get(plain));
    }

    private GroundFile read(String name) {
        return GroundFiles.read(folder.resolve(name), GroundFiles.Knowledge.NONE, Progress.NONE);
    }

    private String refusal(String name) {
        return assertThrows(InputException.class, () -> read(name)).getMessage().replace(folder + "/", "");
    }

    private Path text(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    @Test
    void tellsWhatAFileHolds() {
        GroundFile plain = read("plain.tif");
        assertEquals("GeoTIFF", plain.format());
        assertEquals("float32", plain.heights().stored());
        assertEquals(-9999, plain.heights().noDataMark().orElseThrow());
        assertEquals("metre (not stated)", plain.heights().verticalUnit());
        assertTrue(plain.heights().cellsAreAreas());
        assertEquals(5, plain.spacing());
        assertEquals(6, plain.missing());
        assertEquals(1_737_400, plain.referenceSystem().orElseThrow().bodyRadius());
        assertEquals("Moon (2015) - Sphere / Ocentric / South Polar", plain.referenceSystem().orElseThrow().name());
        assertEquals(java.util.List.of(), plain.cautions());
        double[] quantiles = HornSlope.quantiles(plain.grid(), 0, 0.5, 1);
        assertTrue(quantiles[0] < quantiles[1] && quantiles[1] < quantiles[2]);
    }

    @Test
    void pointsStandWhereTheTiePointSays() {
        GroundFile point = read("point.tif");
        assertFalse(point.heights().cellsAreAreas());
        assertEquals(read("plain.tif").grid().frame(), point.grid().frame());
    }

    @Test
    void refusesDegreesAndNamesTheProjection() {
        assertEquals("degrees.tif: GTModelType (GeoKey 1024) is 2, in degrees; accepted: a projected system in metres;"
                + " warp the file with gdalwarp -t_srs '+proj=tmerc +lat_0=-10.02 +lon_0=20.02 +R=1737400 +units=m'"
                + " IN OUT",
                refusal("degrees.tif"));
    }

    @Test
    void refusesUnlikeScalesAndNamesTheProjection() {
        assertEquals("equirectangular-40n.tif: scale of the projection is 0.770547 along east and 1.000000 along"
                + " north; accepted: scales that agree to 0.1 %; warp the file with gdalwarp -t_srs"
                + " '+proj=tmerc +lat_0=39.58 +lon_0=32.98 +R=1737400 +units=m' IN OUT",
                refusal("equirectangular-40n.tif").replaceAll("0\\.7[0-9]{5}", "0.770547"));
    }

    @Test
    void acceptsEquirectangularNearItsStandardParallel() {
        GroundFile file = read("equirectangular-true-at-40n.tif");
        assertEquals(1, file.scale().north(), SCALE);
        assertEquals(1, file.scale().east(), GroundFile.GREATEST_SCALE_DIFFERENCE);
        assertEquals(0, Math.IEEEremainder(file.scale().trueNorth().orElseThrow().radians(), 2 * Math.PI), SCALE);
    }

    @ParameterizedTest
    @CsvSource({"transverse-mercator.tif, 1737400, 1", "oblique-stereographic.tif, 1737400, 1"})
    void readsOtherProjections(String name, double radius, double scale) {
        GroundFile file = read(name);
        assertEquals(radius, file.referenceSystem().orElseThrow().bodyRadius());
        assertEquals(scale, file.scale().mean(), 1e-4);
        assertEquals(file.scale().mean(), file.grid().metreScale());
    }

    @Test
    void refusesGroundOfAnotherBody() {
        assertEquals("utm33.tif: radius of the body is 6378137 m (WGS 84 / UTM zone 33N); accepted: the Moon, 1737400 m"
                + " to 0.2 %; another body's ground is not for this program", refusal("utm33.tif"));
    }

    @Test
    void theObliqueStereographicSystemIsCentredWhereItSays() {
        GeographicPlace place = read("oblique-stereographic.tif").referenceSystem().orElseThrow()
                .geographic(new Point(0, 0));
        assertEquals(40, place.latitudeDeg(), 1e-9);
        assertEquals(30, place.longitudeDeg(), 1e-9);
    }

    @Test
    void refusesOblongPixels() {
        assertEquals("oblong-pixels.tif: ModelPixelScale (tag 33550) is 5 x 4; accepted: square pixels; gdalwarp -tr"
                + " 5 5 IN OUT makes them", refusal("oblong-pixels.tif"));
    }

    @Test
    void refusesAPicture() {
        assertEquals("photo.tif: SamplesPerPixel (tag 277) is 3; accepted: 1, the height; a picture of several bands"
                + " is no elevation model", refusal("photo.tif"));
    }

    @Test
    void refusesACompressionItDoesNotKnow() {
        assertEquals("zstd.tif: Compression (tag 259) is 50000; accepted: 1 (none), 5 (LZW), 8 (deflate);"
                + " gdal_translate -co COMPRESS=DEFLATE rewrites it", refusal("zstd.tif"));
    }

    @Test
    void convertsFeetAndRefusesFathoms() {
        assertEquals(read("plain.tif").grid().highest() * 0.3048, read("ft.tif").grid().highest(), FLOAT);
        assertEquals("fathom.tif: unit of the heights is \"fathom\"; accepted: metre, kilometre, centimetre, foot or"
                + " US survey foot", refusal("fathom.tif"));
    }

    @Test
    void anAsciiGridIsTheSameGround() {
        GroundFile ascii = read("ascii.asc");
        GroundFile plain = read("plain.tif");
        assertEquals("ESRI ASCII grid", ascii.format());
        assertEquals(plain.grid().frame(), ascii.grid().frame());
        assertEquals(plain.missing(), ascii.missing());
        assertEquals("IAU_2015:30135", ascii.referenceSystem().orElseThrow().code().orElseThrow());
        assertEquals(plain.grid().metreScale(), ascii.grid().metreScale(), SCALE);
        for (int row = 0; row < 30; row++) {
            for (int column = 0; column < 40; column++) {
                if (!Double.isNaN(plain.grid().nodeHeight(row, column))) {
                    assertEquals(plain.grid().nodeHeight(row, column), ascii.grid().nodeHeight(row, column), FLOAT);
                }
            }
        }
    }

    @Test
    void aMissingHeightMayBeWrittenNan() {
        assertEquals(6, read("nan.asc").missing());
        assertTrue(read("nan.asc").cautions().get(0).startsWith("No reference system is known"));
    }

    @Test
    void theReferenceSystemMayBeDeclared() {
        GroundFile file = GroundFiles.read(folder.resolve("nan.asc"),
                new GroundFiles.Knowledge(Optional.of("IAU_2015:30130"), Optional.of(new Point(10_050, 20_050))),
                Progress.NONE);
        assertEquals("IAU_2015:30130", file.referenceSystem().orElseThrow().code().orElseThrow());
        assertEquals(new Point(10_050, 20_050), file.centre());
    }

    @Test
    void aDeclarationMayNotContradictTheFile() {
        InputException thrown = assertThrows(InputException.class, () -> GroundFiles.read(folder.resolve("plain.tif"),
                new GroundFiles.Knowledge(Optional.of("IAU_2015:30130"), Optional.empty()), Progress.NONE));
        assertEquals("reference_system", thrown.key());
        assertEquals("Moon (2015) - Sphere / Ocentric / North Polar (IAU_2015:30130)", thrown.value());
        GroundFiles.read(folder.resolve("plain.tif"),
                new GroundFiles.Knowledge(Optional.of("IAU2000:30120"), Optional.empty()), Progress.NONE);
    }

    @Test
    void legacyCodesAreNotTakenForNewOnes() throws IOException {
        GroundFile file = GroundFiles.read(folder.resolve("nan.asc"),
                new GroundFiles.Knowledge(Optional.of("IAU2000:30120"), Optional.empty()), Progress.NONE);
        assertEquals(ReferenceSystem.lunarSouthPolar().projection(),
                file.referenceSystem().orElseThrow().projection());
        assertTrue(file.cautions().stream().anyMatch(c -> c.contains("list of 2000")));
        assertThrows(InputException.class,
                () -> ReferenceSystem.named("IAU_2015:30120", InputException.Place.of("plan")));
        assertThrows(InputException.class,
                () -> ReferenceSystem.named("IAU_2015:30100", InputException.Place.of("plan")));
        assertThrows(InputException.class, () -> ReferenceSystem.named("moon", InputException.Place.of("plan")));
    }

    @Test
    void theScaleCanBeTakenElsewhere() {
        GroundFile plain = read("plain.tif");
        GroundFile away = plain.about(new Point(107_277.322503, 107_277.322503));
        assertEquals(1 / 1.001906, away.grid().metreScale(), 1e-6);
        assertEquals(45, away.scale().trueNorth().orElseThrow().degrees(), 1e-6);
        assertEquals(plain.grid().frame(), away.grid().frame());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "ncols 2 nrows|line 1: nrows is \"nothing\"|",
        "ncols 2\\nnrows 2\\nxllcorner 0\\nyllcorner 0\\n1 2 3 4|cellsize: the header has none|",
        "ncols 2\\nnrows two|line 2: nrows is \"two\"; accepted: a number|",
        "ncols 2\\nnrows 2\\nxllcorner 0\\nyllcorner 0\\ncellsize 5\\n1 2 3|heights: the file holds 3 where 4"
            + " are announced|",
        "ncols 2\\nnrows 2\\nxllcorner 0\\nyllcorner 0\\ncellsize 5\\n1 2 3 4 5|line 6: text after the last height|",
        "ncols 2\\nnrows 2\\nxllcorner 0\\nyllcorner 0\\ncellsize 5\\n1 2\\n3 x|line 7: height is \"x\"|",
        "ncols 2\\nnrows 2\\nxllcorner 0\\nyllcorner 0\\ncellsize -5\\n1 2 3 4|cellsize is -5.0|",
        "ncols 2\\nnrows 2\\nxllcorner 0\\nyllcorner 0\\ncellsize 5\\n1 2 3 1e20|height is 1.0E20|",
        "ncols 200000\\nnrows 2000000\\nxllcorner 0\\nyllcorner 0\\ncellsize 5\\n1|"
            + "ncols, nrows is 200000 x 2000000; accepted: no more heights than|",
        "ncols 2\\nnrows 2\\nxllcorner 20\\nyllcorner -89\\ncellsize 0.001\\n1 2 3 4|with all coordinates within|"})
    void refusesABrokenAsciiGrid(String text, String words) throws IOException {
        text("broken.asc", text.replace("\\n", "\n"));
        assertTrue(refusal("broken.asc").contains(words), refusal("broken.asc"));
    }

    @Test
    void refusesWhatIsNoFile() throws IOException {
        assertEquals("nothing.tif: there is no such file; accepted: a GeoTIFF, ESRI ASCII, PDS3 or PDS4 elevation file",
                refusal("nothing.tif"));
        text("letter.tif", "Dear reader");
        assertEquals("letter.tif: first bytes: this is neither a TIFF file, an ESRI ASCII grid nor an image with a"
                + " PDS label; accepted: a GeoTIFF, ESRI ASCII, PDS3 or PDS4 elevation file; gdal_translate -of GTiff"
                + " IN OUT.tif converts most others", refusal("letter.tif"));
        text("empty.tif", "");
        assertTrue(refusal("empty.tif").contains("neither a TIFF"));
    }

    @Test
    void readingCanBeCancelled() {
        Progress cancelled = new Progress() {
            @Override
            public void report(double share, String step) {
            }

            @Override
            public boolean isCancelled() {
                return true;
            }
        };
        assertThrows(CancellationException.class, () -> GroundFiles.read(folder.resolve("plain.tif"),
                GroundFiles.Knowledge.NONE, cancelled));
        assertThrows(CancellationException.class, () -> GroundFiles.read(folder.resolve("ascii.asc"),
                GroundFiles.Knowledge.NONE, cancelled));
    }

    @Test
    void theFrameOfAnAsciiGridMayBeGivenByCentres() throws IOException {
        text("centres.asc", "NCOLS 2\nNROWS 3\nXLLCENTER 10\nYLLCENTER 20\nCELLSIZE 4\n1 2\n3 4\n5 -9999\n");
        GroundFile file = read("centres.asc");
        assertEquals(new GridFrame(3, 2, 10, 20, 4), file.grid().frame());
        assertEquals(5, file.grid().nodeHeight(0, 0));
        assertEquals(1, file.grid().nodeHeight(2, 0));
        assertEquals(1, file.missing());
    }
}
