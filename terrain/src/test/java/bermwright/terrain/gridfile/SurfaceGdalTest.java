// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.outside.OutsideProgram;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.relief.AspectSurface;
import bermwright.terrain.relief.ContourLine;
import bermwright.terrain.relief.Contours;
import bermwright.terrain.relief.GradientMethod;
import bermwright.terrain.relief.HillshadeSurface;
import bermwright.terrain.relief.Light;
import bermwright.terrain.relief.RoughnessSurface;
import bermwright.terrain.relief.SlopeSurface;
import bermwright.terrain.relief.Surface;
import bermwright.terrain.relief.SurfaceStream;
import bermwright.terrain.shape.MadeGround;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Surfaces written by us against those that the programs of GDAL write from the same file, node by node. GDAL works
 * with numbers of 32 bits: the ground here stays within some 60 m, so that their last digit counts for less than the
 * tolerance.
 */
class SurfaceGdalTest {
    private static final double RELATIVE_ABOVE_ONE = 1e-4;
    private static final double BELOW_ONE = 1e-4;
    private static final int ROWS = 240;
    private static final int COLUMNS = 310;
    private static final float NONE = -9999;

    @TempDir
    private static Path folder;
    private static ElevationGrid ground;

    @BeforeAll
    static void writeGround() throws IOException, InterruptedException {
        OutsideProgram.GDAL.need("gdaldem", "gdal_contour", "gdal_translate");
        MadeGround made = new MadeGround(new GridFrame(ROWS, COLUMNS, 1000, 2000, 5),
                new MadeGround.Recipe(4, 600, 0.8, 1, 150, 0, 3), 12);
        // Without a reference system both programs take projected metres as true ones.
        GeoTiffWriter.write(folder.resolve("ground.tif"), holed(made.window(new bermwright.terrain.grid.NodeRange(0, 0,
                ROWS, COLUMNS))), Optional.empty(), Progress.NONE);
        ground = GroundFiles.read(folder.resolve("ground.tif"), GroundFiles.Knowledge.NONE, Progress.NONE).grid();
    }

    private static ElevationGrid holed(ElevationGrid grid) {
        double[] heights = grid.heights();
        heights[100 * COLUMNS + 50] = Double.NaN;
        heights[7 * COLUMNS + 200] = Double.NaN;
        return grid.withHeights(heights);
    }

    private static void run(String... command) throws IOException, InterruptedException {
        OutsideProgram.runIn(folder, command);
    }

    /** What gdaldem makes of a file, line by line from the north. */
    private static ByteBuffer gdaldem(String from, String kind, String... options) throws IOException,
            InterruptedException {
        List<String> command = new ArrayList<>(List.of("gdaldem", kind, from, "theirs.tif", "-q"));
        command.addAll(List.of(options));
        run(command.toArray(String[]::new));
        run("gdal_translate", "-q", "-of", "ENVI", "-ot", "Float32", "theirs.tif", "theirs.raw");
        return ByteBuffer.wrap(Files.readAllBytes(folder.resolve("theirs.raw"))).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static void compare(Surface surface, ByteBuffer theirs, boolean isByFour) {
        float[] ours = SurfaceStream.whole(ground, surface);
        int compared = 0;
        for (int row = 1; row < ROWS - 1; row++) {
            for (int column = 1; column < COLUMNS - 1; column++) {
                double expected = theirs.getFloat(4 * ((ROWS - 1 - row) * COLUMNS + column));
                double got = ours[row * COLUMNS + column];
                String where = row + ", " + column + ": " + got + " and " + expected;
                if (expected == NONE) {
                    // GDAL asks for all nine heights also where a method takes four of them.
                    assertTrue(Double.isNaN(got) || isByFour, where);
                } else {
                    assertEquals(expected, got, Math.max(BELOW_ONE, RELATIVE_ABOVE_ONE * Math.abs(expected)), where);
                    compared++;
                }
            }
        }
        assertTrue(compared > 70_000, compared + " nodes were compared");
    }

    @ParameterizedTest
    @CsvSource({"HORN, Horn", "ZEVENBERGEN_THORNE, ZevenbergenThorne"})
    void slopeIsThatOfGdaldem(GradientMethod method, String theirs) throws Exception {
        compare(new SlopeSurface(method), gdaldem("ground.tif", "slope", "-alg", theirs),
                method == GradientMethod.ZEVENBERGEN_THORNE);
    }

    @ParameterizedTest
    @CsvSource({"HORN, Horn", "ZEVENBERGEN_THORNE, ZevenbergenThorne"})
    void aspectIsThatOfGdaldem(GradientMethod method, String theirs) throws Exception {
        // The direction of nearly level ground is as uncertain as its 32-bit rises; there the bound is wider.
        ByteBuffer expected = gdaldem("ground.tif", "aspect", "-alg", theirs);
        float[] slope = SurfaceStream.whole(ground, new SlopeSurface(method));
        float[] ours = SurfaceStream.whole(ground, new AspectSurface(method));
        int compared = 0;
        for (int row = 1; row < ROWS - 1; row++) {
            for (int column = 1; column < COLUMNS - 1; column++) {
                double theirsThere = expected.getFloat(4 * ((ROWS - 1 - row) * COLUMNS + column));
                double got = ours[row * COLUMNS + column];
                double rise = Math.tan(Math.toRadians(slope[row * COLUMNS + column]));
                if (theirsThere != NONE && rise > 1e-3) {
                    double uncertain = Math.toDegrees(60 * Math.ulp(1f) / (8 * 5) * 8 / rise);
                    assertEquals(0, Math.IEEEremainder(got - theirsThere, 360), Math.max(1e-4 * Math.max(1,
                            theirsThere), uncertain), row + ", " + column);
                    compared++;
                }
            }
        }
        assertTrue(compared > 70_000, compared + " nodes were compared");
    }

    @Test
    void roughnessIsThatOfGdaldem() throws Exception {
        compare(new RoughnessSurface(RoughnessSurface.Measure.RANGE), gdaldem("ground.tif", "roughness"), false);
        compare(new RoughnessSurface(RoughnessSurface.Measure.RILEY), gdaldem("ground.tif", "TRI", "-alg", "Riley"),
                false);
        compare(new RoughnessSurface(RoughnessSurface.Measure.WILSON), gdaldem("ground.tif", "TRI", "-alg", "Wilson"),
                false);
        compare(new RoughnessSurface(RoughnessSurface.Measure.POSITION), gdaldem("ground.tif", "TPI"), false);
    }

    @Test
    void hillshadeIsThatOfGdaldem() throws Exception {
        ByteBuffer theirs = gdaldem("ground.tif", "hillshade", "-az", "315", "-alt", "45");
        float[] ours = SurfaceStream.whole(ground, new HillshadeSurface(Light.OF_MAPS, 1));
        int other = 0;
        for (int row = 1; row < ROWS - 1; row++) {
            for (int column = 1; column < COLUMNS - 1; column++) {
                int expected = (int) theirs.getFloat(4 * ((ROWS - 1 - row) * COLUMNS + column));
                int got = (int) ours[row * COLUMNS + column];
                assertTrue(Math.abs(expected - got) <= 1, row + ", " + column + ": " + got + ", " + expected);
                other += expected == got ? 0 : 1;
            }
        }
        // Shades that fall between two steps are rounded by numbers of 32 bits there and 64 here.
        assertTrue(other < 50, other + " shades differ by one");
    }

    @Test
    void contoursRunWhereGdalHasThem() throws Exception {
        run("gdal_contour", "-q", "-a", "height", "-i", "2", "-f", "GeoJSON", "-lco", "COORDINATE_PRECISION=8",
                "ground.tif", "lines.json");
        Map<Double, List<Point>> ours = new HashMap<>();
        for (ContourLine line : Contours.every(ground, 2)) {
            ours.computeIfAbsent(line.level(), l -> new ArrayList<>()).addAll(line.points());
        }
        Pattern feature = Pattern.compile("\"height\": ([-0-9.]+).*?\"coordinates\": \\[(.*?)\\] \\}", Pattern.DOTALL);
        Matcher lines = feature.matcher(Files.readString(folder.resolve("lines.json")));
        int compared = 0;
        while (lines.find()) {
            List<Point> same = ours.getOrDefault(Double.parseDouble(lines.group(1)), List.of());
            Matcher point = Pattern.compile("\\[ ([-0-9.]+), ([-0-9.]+)").matcher(lines.group(2));
            for (int i = 0; point.find(); i++) {
                Point p = new Point(Double.parseDouble(point.group(1)), Double.parseDouble(point.group(2)));
                // Beyond the outermost nodes GDAL leads its lines on to the edge of the picture.
                if (i % 20 == 0 && isInside(p)) {
                    double nearest = same.stream().mapToDouble(q -> q.distance(p)).min().orElse(99);
                    assertTrue(nearest < 1e-3, "height " + lines.group(1) + " at " + p + ": " + nearest + " m off");
                    compared++;
                }
            }
        }
        assertTrue(compared > 300, compared + " points were compared");
    }

    private static boolean isInside(Point p) {
        GridFrame f = ground.frame();
        return p.east() > f.west() + 15 && p.east() < f.eastEdge() - 15 && p.north() > f.south() + 15
                && p.north() < f.northEdge() - 15 && Math.hypot(p.east() - f.east(50), p.north() - f.north(100)) > 15
                && Math.hypot(p.east() - f.east(200), p.north() - f.north(7)) > 15;
    }

    @Test
    void gdalReadsWhatWeWriteWithItsOverviews() throws Exception {
        MadeGround made = new MadeGround(new GridFrame(700, 900, 1000, 2000, 5), MadeGround.Recipe.HIGHLAND, 5);
        GeoTiffWriter.write(folder.resolve("packed.tif"), made, ReferenceSystem.lunarSouthPolar(), Progress.NONE);
        run("gdal_translate", "-q", "-of", "ENVI", "packed.tif", "all.raw");
        run("gdal_translate", "-q", "-of", "ENVI", "-outsize", "450", "350", "-r", "nearest", "packed.tif", "half.raw");
        ByteBuffer all = ByteBuffer.wrap(Files.readAllBytes(folder.resolve("all.raw"))).order(ByteOrder.LITTLE_ENDIAN);
        ByteBuffer half = ByteBuffer.wrap(Files.readAllBytes(folder.resolve("half.raw")))
                .order(ByteOrder.LITTLE_ENDIAN);
        double[] row = new double[900];
        for (int line = 0; line < 700; line++) {
            made.read(new bermwright.terrain.grid.NodeRange(699 - line, 0, 1, 900), row);
            for (int c = 0; c < 900; c++) {
                assertEquals((float) row[c], all.getFloat(4 * (line * 900 + c)));
            }
        }
        for (int line = 0; line < 350; line++) {
            for (int c = 0; c < 450; c++) {
                double mean = 0;
                for (int k = 0; k < 4; k++) {
                    mean += all.getFloat(4 * ((2 * line + k / 2) * 900 + 2 * c + k % 2)) / 4.0;
                }
                assertEquals(mean, half.getFloat(4 * (line * 450 + c)), 1e-4);
            }
        }
    }
}
