// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Progress;
import bermwright.outside.OutsideProgram;
import bermwright.report.exchange.Detail;
import bermwright.report.exchange.LandXmlReader;
import bermwright.report.exchange.Tin;
import bermwright.shielding.cover.DepthMap;
import bermwright.shielding.cover.Mound;
import bermwright.shielding.scene.HullSolid;
import bermwright.site.assessment.Assessment;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.PassedThrough;
import bermwright.site.exposure.SiteCover;
import bermwright.site.exposure.SiteScene;
import bermwright.terrain.grid.GridFrame;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Surfaces handed over against the assessment they were made from, read by programs and readers not ours. */
class SurfaceFilesTest {
    /** Triangles are 3 cm off at most at the middle of a side; over a mound that is below one part in a hundred. */
    private static final double VOLUME_SHARE = 0.01;

    @TempDir
    private static Path folder;
    private static Assessment assessment;

    @BeforeAll
    static void write() throws Exception {
        assessment = SiteOfTests.assessment(folder);
        for (String name : List.of("a", "b")) {
            SurfaceFiles.write(assessment, SiteFeatures.frame(assessment),
                    Files.createDirectories(folder.resolve(name)), Progress.NONE);
        }
    }

    private static Path file(String name) {
        return folder.resolve("a").resolve(name);
    }

    @Test
    void theTriangulatedMoundHoldsTheSoilOfTheAssessment() throws Exception {
        LandXmlReader finished = LandXmlReader.read(file("finished.xml"));
        LandXmlReader prepared = LandXmlReader.read(file("prepared.xml"));
        SiteCover cover = assessment.cover().orElseThrow();
        SiteScene scene = SiteScene.of(assessment.plan(), cover);
        double expected = cover.volume() + cover.passing().stream().mapToDouble(PassedThrough::displaced).sum();
        List<HullSolid> solids = new ArrayList<>(scene.hulls());
        solids.addAll(scene.others());
        for (HullSolid solid : solids) {
            expected += Mound.takenUp(solid, scene.prepared(), scene.finished());
        }
        double scale = scene.metreScale();
        double got = finished.above(prepared) * scale * scale;
        System.out.printf("mound by triangles %.1f m3, by the assessment with its hulls %.1f m3; %d triangles%n", got,
                expected, finished.faces.size());
        assertEquals(expected, got, VOLUME_SHARE * expected);
        assertEquals(Double.parseDouble(finished.stated.get("Definition/area2DSurf")), finished.area(), 0.01);
        assertTrue(finished.stated.get("CoordinateSystem/verticalDatum").contains("ground.asc"));
        assertEquals("meter", finished.stated.get("Metric/linearUnit"));
    }

    @Test
    void theSameAssessmentGivesTheSameBytes() throws Exception {
        try (var files = Files.list(folder.resolve("b"))) {
            for (Path one : files.toList()) {
                assertEquals(-1, Files.mismatch(one, folder.resolve("a").resolve(one.getFileName())), one.toString());
            }
        }
    }

    @Test
    void gdalReadsGridsAndFaces() throws Exception {
        OutsideProgram.GDAL.need("gdalinfo", "ogrinfo");
        for (String name : List.of("finished", "slope", "cover_depth", "placed_thickness")) {
            String said = OutsideProgram.run("gdalinfo", "-stats", file(name + ".tif").toString());
            assertTrue(said.contains("STATISTICS_MAXIMUM") && said.contains("Unit Type: "
                    + (name.equals("slope") ? "deg" : "m")), said);
        }
        double deepest = value(OutsideProgram.run("gdalinfo", "-stats", file("placed_thickness.tif").toString()),
                "MAXIMUM=");
        assertTrue(deepest > 2 && deepest < 20, "soil " + deepest + " m thick");
        int faces = LandXmlReader.read(file("finished.xml")).faces.size();
        String said = OutsideProgram.run("ogrinfo", "-so", "-al", file("finished_faces.dxf").toString());
        assertTrue(said.contains("Feature Count: " + faces), said);
    }

    @Test
    void aLiftHoldsItsSoilAndAStripAroundItOnly() throws Exception {
        LandXmlReader finished = LandXmlReader.read(file("finished.xml"));
        List<String> lifts = Files.readAllLines(file("lifts.csv"));
        assertTrue(lifts.size() > 1, "lifts.csv lists " + lifts.size() + " lines");
        double first = 0;
        double last = 0;
        for (String line : lifts.subList(1, lifts.size())) {
            LandXmlReader lift = LandXmlReader.read(file(line.substring(0, line.indexOf(',')) + ".xml"));
            assertTrue(lift.faces.size() > 10 && lift.faces.size() < 10_000, line + ": " + lift.faces.size());
            assertTrue(lift.area() > 10 && lift.area() < finished.area() / 2, line + ": " + lift.area() + " m2");
            first = first == 0 ? lift.area() : first;
            last = lift.area();
        }
        assertTrue(last < first / 2, "the top lift, " + last + " m2, lies on the lifts before, the lowest " + first);
    }

    private static double value(String said, String key) {
        int at = said.indexOf(key) + key.length();
        return Double.parseDouble(said.substring(at, said.indexOf('\n', at)).trim());
    }

    @Test
    void coverDepthOnTheMapIsThatOfTheAssessmentsUpperSkin() throws Exception {
        OutsideProgram.GDAL.need("gdalinfo");
        String said = OutsideProgram.run("gdalinfo", "-stats", file("cover_depth.tif").toString());
        double most = 0;
        double least = Double.POSITIVE_INFINITY;
        for (HullCover hull : assessment.cover().orElseThrow().hulls()) {
            DepthMap map = hull.depth();
            for (int i = 0; i < map.rows(); i++) {
                for (int j = 0; j < map.columns(); j++) {
                    if (Math.abs(map.aroundAt(j)) < Math.PI / 2) {
                        most = Math.max(most, map.trueDepth(i, j));
                        least = Math.min(least, map.trueDepth(i, j));
                    }
                }
            }
        }
        // Nodes that stand over the steep flanks may skip a cell there, over the crown they do not.
        assertEquals(most, value(said, "MAXIMUM="), 0.05);
        assertEquals(least, value(said, "MINIMUM="), 0.05);
    }

    @Test
    void aPlaneIsTwoTrianglesAndAMissingHeightHasNone() {
        GridFrame frame = new GridFrame(9, 9, 100, 200, 0.5);
        double[] plane = new double[81];
        for (int i = 0; i < plane.length; i++) {
            plane[i] = 3 + 0.1 * (i % 9) - 0.2 * (i / 9);
        }
        Tin two = Tin.over(frame, List.of(plane), even(1e-6));
        assertEquals(2, two.triangles());
        assertEquals(4, two.points());
        plane[40] = Double.NaN;
        Tin holed = Tin.over(frame, List.of(plane), even(1e-6));
        assertTrue(holed.triangles() > 8);
        double area = 0;
        for (int t = 0; t < holed.triangles(); t++) {
            double[] x = new double[3];
            double[] y = new double[3];
            for (int k = 0; k < 3; k++) {
                x[k] = holed.east(holed.corner(t, k));
                y[k] = holed.north(holed.corner(t, k));
                assertTrue(Math.hypot(x[k] - 102, y[k] - 202) > 0.1, "no corner at the missing height");
            }
            double twice = (x[1] - x[0]) * (y[2] - y[0]) - (x[2] - x[0]) * (y[1] - y[0]);
            assertTrue(twice > 0, "anticlockwise");
            area += twice / 2;
        }
        // The four cells about the missing node lose their triangles; two of them lose one of two only, at most.
        assertTrue(area >= 16 - 1 && area <= 16 - 0.5, "area " + area);
    }

    @Test
    void aRoughSurfaceIsFollowedWithinWhatIsSaid() {
        GridFrame frame = new GridFrame(65, 65, 0, 0, 1);
        double[] rough = new double[65 * 65];
        for (int i = 0; i < rough.length; i++) {
            rough[i] = 2 * Math.sin(i % 65 / 9.0) * Math.cos(i / 65 / 7.0);
        }
        Tin net = Tin.over(frame, List.of(rough), even(0.05));
        assertTrue(net.greatestMiss() > 0.02 && net.greatestMiss() < 0.15, "off by " + net.greatestMiss());
        assertTrue(net.triangles() < 2 * 64 * 64 / 2, net.triangles() + " triangles");
        assertEquals(0, Tin.over(frame, List.of(rough), even(0)).greatestMiss(), 1e-12);
    }

    @Test
    void groundWithoutWorkIsFollowedLessCloselyAndLeftOutWhereOnlyWorkIsAskedFor() {
        GridFrame frame = new GridFrame(65, 65, 0, 0, 1);
        double[] rough = new double[65 * 65];
        for (int i = 0; i < rough.length; i++) {
            rough[i] = 2 * Math.sin(i % 65 / 9.0) * Math.cos(i / 65 / 7.0);
        }
        Tin close = Tin.over(frame, List.of(rough), even(0.02));
        Tin west = Tin.over(frame, List.of(rough), new Detail(n -> n % 65 < 20 ? 0.02 : 0.4, n -> n % 65 < 20, false));
        assertTrue(west.triangles() < close.triangles() / 2, west.triangles() + " of " + close.triangles());
        assertTrue(west.greatestMiss() < 0.06 && west.greatestMissElsewhere() > 0.06, "off by " + west.greatestMiss()
                + " and " + west.greatestMissElsewhere());
        Tin only = Tin.over(frame, List.of(rough), new Detail(n -> n % 65 < 20 ? 0.02 : 0.4, n -> n % 65 < 20, true));
        double area = 0;
        for (int t = 0; t < only.triangles(); t++) {
            int[] c = {only.corner(t, 0), only.corner(t, 1), only.corner(t, 2)};
            area += ((only.east(c[1]) - only.east(c[0])) * (only.north(c[2]) - only.north(c[0]))
                    - (only.east(c[2]) - only.east(c[0])) * (only.north(c[1]) - only.north(c[0]))) / 2;
        }
        assertTrue(area >= 19 * 64 && area < 40 * 64, "area " + area);
    }

    private static Detail even(double tolerance) {
        return new Detail(node -> tolerance, node -> true, false);
    }
}
