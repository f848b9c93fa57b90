// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Progress;
import bermwright.foundation.Vec3;
import bermwright.outside.OutsideProgram;
import bermwright.report.exchange.GdmlReader;
import bermwright.shielding.raycast.SceneRays;
import bermwright.shielding.scene.HullShape;
import bermwright.shielding.scene.HullSolid;
import bermwright.site.assessment.Assessment;
import bermwright.site.exposure.SiteCover;
import bermwright.site.exposure.SiteScene;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Station;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Scenes handed over for other transport programs, read by a reader not ours, against our own rays. */
class SceneFilesTest {
    /** Triangles are off by up to 5 cm, some ten kg/m2, more at a slant; and skins by the sides of their round. */
    private static final double OFF = 120;
    private static final double SHARE = 0.03;
    private static final double MEAN_SHARE = 0.006;
    private static final int RAYS = 60;
    /** Both sum the same triangles, read with all their decimals. */
    private static final double ROOM_SHARE = 1e-6;

    @TempDir
    private static Path folder;
    private static Assessment assessment;

    @BeforeAll
    static void write() throws Exception {
        assessment = SiteOfTests.assessment(folder);
        for (String name : List.of("a", "b")) {
            SceneFiles.write(assessment, Files.createDirectories(folder.resolve(name)), Progress.NONE);
        }
    }

    private static List<Path> scenes() throws Exception {
        try (var files = Files.list(folder.resolve("a"))) {
            return files.filter(f -> f.toString().endsWith(".gdml")).sorted().toList();
        }
    }

    @Test
    void raysCrossAsMuchMassAsOurOwnAndNoBodiesOverlap() throws Exception {
        SiteCover cover = assessment.cover().orElseThrow();
        SiteScene scene = SiteScene.of(assessment.plan(), cover);
        Random random = new Random(20260730);
        int stations = 0;
        for (Path file : scenes()) {
            GdmlReader reader = new GdmlReader(file);
            for (Hull hull : assessment.plan().hulls()) {
                SceneRays rays = SceneRays.of(scene.forRays(assessment.plan(), SiteCover.density(assessment.plan(),
                        hull)));
                for (Station station : hull.stations()) {
                    Vec3 at = reader.place("at_" + DoseScene.name("station", hull.id() + "/" + station.id()));
                    if (at != null) {
                        compare(reader, at, rays, SiteScene.place(station, scene.hull(hull.id()).orElseThrow()),
                                random);
                        stations++;
                    }
                }
            }
            assertTrue(reader.overlap() < 1e-6, file + ": bodies overlap by " + reader.overlap() + " m");
        }
        assertTrue(stations >= 2, stations + " stations");
    }

    private static void compare(GdmlReader reader, Vec3 at, SceneRays rays, Vec3 place, Random random) {
        double ours = 0;
        double theirs = 0;
        double most = 0;
        for (int i = 0; i < RAYS; i++) {
            double up = 0.25 + 0.75 * random.nextDouble();
            double azimuth = 2 * Math.PI * random.nextDouble();
            double level = Math.sqrt(1 - up * up);
            Vec3 way = new Vec3(level * Math.sin(azimuth), level * Math.cos(azimuth), up);
            SceneRays.Crossed crossed = rays.ray(place, way);
            double expected = crossed.arealDensity(1);
            // The ball of tissue that the ray starts in is the scene's alone.
            double got = reader.mass(at, way) - 1000 * Math.min(0.15, ball(reader, at, way));
            ours += expected;
            theirs += got;
            most = Math.max(most, Math.abs(got - expected));
            assertEquals(expected, got, OFF + SHARE * expected, () -> "towards " + way);
        }
        System.out.printf("areal density of %d rays: ours %.1f, the scene's %.1f kg/m2 in the mean, worst %.1f apart%n",
                RAYS, ours / RAYS, theirs / RAYS, most);
        assertEquals(ours, theirs, MEAN_SHARE * ours);
    }

    /** Radius of the ball at a station, by how little a ray that just leaves it crosses less. */
    private static double ball(GdmlReader reader, Vec3 at, Vec3 way) {
        double near = reader.mass(at, way);
        double past = reader.mass(at.plus(way.times(0.16)), way);
        return (near - past) / 1000;
    }

    @Test
    void hullsHaveTheRoomOfTheirRound() throws Exception {
        SiteScene scene = SiteScene.of(assessment.plan(), assessment.cover().orElseThrow());
        int seen = 0;
        for (Path file : scenes()) {
            GdmlReader reader = new GdmlReader(file);
            for (HullSolid hull : scene.hulls()) {
                String skin = DoseScene.name("skin_1", hull.id());
                if (reader.volumes().contains(skin)) {
                    HullShape shape = hull.shape();
                    assertEquals(shape.volume(), reader.room(skin + "_form"), 0.004 * shape.volume(), hull.id());
                    seen++;
                }
            }
        }
        assertEquals(scene.hulls().size(), seen);
    }

    /** Bodies, their materials and their room, read by the library libvgdml of Debian and reckoned in C++. */
    @Test
    void aLibraryOfOthersReadsTheSameBodies() throws Exception {
        OutsideProgram.GDML.need("g++");
        OutsideProgram.GDML.needFile(Path.of("/usr/include/VecGeom/gdml/Frontend.h"));
        Path source = folder.resolve("gdml-volumes.cpp");
        try (var in = SceneFilesTest.class.getResourceAsStream("gdml-volumes.cpp")) {
            Files.copy(in, source);
        }
        Path program = folder.resolve("gdml-volumes");
        OutsideProgram.run("g++", "-std=c++17", "-w", "-DVECCORE_ENABLE_VC", source.toString(), "-o",
                program.toString(), "-lvgdml", "-lvecgeom", "-lxerces-c", "-lVc");
        for (Path file : scenes()) {
            GdmlReader reader = new GdmlReader(file);
            List<String> said = OutsideProgram.run(program.toString(), file.toString()).lines().toList();
            assertEquals(reader.volumes().size(), said.size(), file + ": " + said);
            int soil = 0;
            for (String line : said) {
                String[] parts = line.split(" ");
                assertTrue(reader.volumes().contains(parts[0]), line);
                double density = Double.parseDouble(parts[1]);
                if (Integer.parseInt(parts[2]) > 0) {
                    double room = reader.room(parts[0] + "_form");
                    assertEquals(room, Double.parseDouble(parts[3]), ROOM_SHARE * room, line);
                }
                if (parts[0].startsWith("soil_in_place")) {
                    soil++;
                    assertEquals(1, 1000 / density, 0.6, line);
                    assertTrue(parts[4].startsWith("soil_"), line);
                } else if (parts[0].startsWith("station")) {
                    assertEquals(1000, density, 1, line);
                    assertTrue(parts[4].startsWith("inside"), line);
                }
            }
            assertTrue(soil > 0, file + " without soil in place");
        }
    }

    @Test
    void theFolderSaysWhatIsInItAndIsTheSameEachTime() throws Exception {
        String readme = Files.readString(folder.resolve("a/README.txt"));
        assertTrue(readme.contains("square of ground") && readme.contains("divide by 4 pi")
                && readme.contains("ground.asc"), readme);
        List<String> stations = Files.readAllLines(folder.resolve("a/stations.csv"));
        assertEquals(1 + assessment.plan().hulls().stream().mapToInt(h -> h.stations().size()).sum(),
                stations.size());
        List<String> cosmic = Files.readAllLines(folder.resolve("a/source-cosmic.csv"));
        assertEquals("Z,A,energy_MeV_per_nucleon,flux_per_m2_s_sr_MeV_per_nucleon", cosmic.get(0));
        assertEquals(1 + 28 * 65, cosmic.size());
        try (var files = Files.list(folder.resolve("b"))) {
            for (Path one : files.toList()) {
                assertEquals(-1, Files.mismatch(one, folder.resolve("a").resolve(one.getFileName())), one.toString());
            }
        }
    }
}
