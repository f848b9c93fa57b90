// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.regolith.BulkDensity;
import bermwright.regolith.LunarProfile;
import bermwright.regolith.Soils;
import bermwright.shielding.cover.CoveredHull;
import bermwright.shielding.cover.Mounds;
import bermwright.shielding.scene.HullEnd;
import bermwright.shielding.scene.HullPose;
import bermwright.shielding.scene.HullShape;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.Scene;
import bermwright.shielding.scene.Scenes;
import bermwright.shielding.scene.Soil;
import bermwright.shielding.scene.WallSolid;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SceneRaysLawTest {
    /** Step of the slow march that rays are held against (m). */
    private static final double STEP = 0.002;
    /** A march misses at most a step at each crossing; 8 crossings of soil of 2000 kg/m3 at most. */
    private static final double MARCH = 8 * STEP * 2000;
    private static final double ROUNDING = 1e-9;
    private static final double DENSITY = 1650;
    private static final GridFrame FRAME = new GridFrame(81, 91, -45, -40, 1);

    private static List<HullSolid> hulls() {
        HullSolid one = new HullSolid("A", new HullShape(18, 2.5, HullEnd.FLAT, HullEnd.cone(3), 60),
                Scenes.lying(new Vec3(-9, -6, 2.2), Azimuth.ofDegrees(75), 0.03));
        HullSolid two = new HullSolid("B", new HullShape(14, 2, HullEnd.dome(1.5), HullEnd.dome(1), 40),
                Scenes.lying(new Vec3(-6, 4, 2), Azimuth.ofDegrees(60), -0.02));
        HullSolid tunnel = new HullSolid("T", new HullShape(10, 0.9, HullEnd.FLAT, HullEnd.FLAT, 25),
                Scenes.lying(new Vec3(-1, -4, 1.7), Azimuth.ofDegrees(5), 0));
        HullSolid standing = new HullSolid("C", new HullShape(12, 1.5, HullEnd.FLAT, HullEnd.cone(4), 30),
                HullPose.upright(new Vec3(14, -14, -0.4), Azimuth.ofDegrees(40)));
        return List.of(one, two, tunnel, standing);
    }

    private static ElevationGrid rolling(long seed) {
        Random random = new Random(seed);
        return ElevationGrid.sampled(FRAME, (e, n) -> 0.02 * e + 0.5 * Math.sin(e / 8) * Math.cos(n / 6)
                + 0.1 * random.nextGaussian() + 6 / (1 + Math.exp(-(n - 25))));
    }

    private static Scene scene(long seed, double thickness, BulkDensity profile) {
        ElevationGrid natural = rolling(seed);
        // A trench, so that undisturbed soil has a cut top.
        ElevationGrid cut = ElevationGrid.sampled(FRAME, (e, n) -> natural.height(e, n)
                - (Math.abs(e) < 14 && Math.abs(n + 5) < 6 ? 1.2 : 0));
        List<CoveredHull> covers = hulls().subList(0, 2).stream().map(h -> CoveredHull.uniform(h, thickness)).toList();
        // On the grid's own nodes: PatchedRaysLawTest looks through the mound's.
        ElevationGrid finished = Mounds.over(cut, covers, Math.toRadians(34), List.of()).finished()
                .withPatches(List.of());
        return new Scene(new Soil(natural, finished, DENSITY, profile), hulls());
    }

    private static Vec3 direction(Random random, double lowest) {
        double turn = 2 * Math.PI * random.nextDouble();
        double sine = lowest + (0.999 - lowest) * random.nextDouble();
        double cosine = Math.sqrt(1 - sine * sine);
        return new Vec3(cosine * Math.sin(turn), cosine * Math.cos(turn), sine);
    }

    /** Height of a surface of two triangles a cell, written down again without the code under test. */
    private static double height(ElevationGrid grid, double east, double north) {
        double x = east - FRAME.west();
        double y = north - FRAME.south();
        int c = (int) Math.floor(x);
        int r = (int) Math.floor(y);
        if (c < 0 || r < 0 || c >= FRAME.columns() - 1 || r >= FRAME.rows() - 1) {
            return Double.NaN;
        }
        double u = x - c;
        double v = y - r;
        double sw = grid.nodeHeight(r, c);
        double ne = grid.nodeHeight(r + 1, c + 1);
        double third = u > v ? grid.nodeHeight(r, c + 1) : grid.nodeHeight(r + 1, c);
        return u > v ? sw * (1 - u) + third * (u - v) + ne * v : sw * (1 - v) + third * (v - u) + ne * u;
    }

    private static double[] march(Scene scene, Vec3 from, Vec3 direction) {
        double placed = 0;
        double inPlace = 0;
        double beyond = 0;
        boolean out = false;
        Soil soil = scene.soil();
        for (double at = STEP / 2; ; at += STEP) {
            Vec3 p = from.plus(direction.times(at));
            double finished = height(soil.finished(), p.x(), p.y());
            if (Double.isNaN(finished)) {
                return new double[] {placed, inPlace, beyond};
            }
            out |= p.z() >= finished && placed + inPlace > 0;
            if (p.z() < finished && Scenes.around(scene, p).isEmpty()) {
                double natural = height(soil.natural(), p.x(), p.y());
                double density = p.z() < natural ? soil.inPlace().density(natural - p.z()) : soil.placedDensity();
                inPlace += p.z() < natural ? STEP * density : 0;
                placed += p.z() < natural ? 0 : STEP * density;
                beyond += out ? STEP * density : 0;
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void raysAgreeWithASlowMarch(long seed) {
        Scene scene = scene(seed, 1.4, LunarProfile.bulkDensity());
        SceneRays rays = SceneRays.of(scene);
        Random random = new Random(seed);
        for (int i = 0; i < 40; i++) {
            HullSolid hull = scene.hulls().get(i % 4);
            Vec3 from = hull.pose().point(hull.shape().length() * (0.2 + 0.6 * random.nextDouble()),
                    0.4 * random.nextGaussian(), 0.3 * random.nextGaussian());
            Vec3 way = direction(random, 0.15);
            SceneRays.Crossed crossed = rays.ray(from, way);
            if (!crossed.beyondEdge()) {
                double[] marched = march(scene, from, way);
                String where = "seed " + seed + ", ray " + i + ", from " + from + " along " + way;
                assertEquals(marched[0], crossed.placed(), MARCH, where);
                assertEquals(marched[1], crossed.inPlace(), MARCH, where);
                SkyRays alone = new SkyRays();
                rays.from(from).look(new Azimuth(Math.atan2(way.x(), way.y())), new double[] {way.z()}, alone);
                assertEquals(marched[2], alone.beyond(0), MARCH, where);
            }
        }
    }

    /** Sharing one cut of the ground, and skipping blocks, changes no ray. */
    @ParameterizedTest
    @ValueSource(longs = {4, 5})
    void aFanGivesTheSameAsItsRaysAlone(long seed) {
        SceneRays rays = SceneRays.of(scene(seed, 1.4, LunarProfile.bulkDensity()));
        Vec3 from = hulls().get(1).pose().point(6, 0.3, 0.2);
        Random random = new Random(seed);
        SkyRays fan = new SkyRays();
        for (int a = 0; a < 60; a++) {
            double[] sines = random.doubles(40, 0.001, 0.999).sorted().toArray();
            Azimuth azimuth = new Azimuth(2 * Math.PI * random.nextDouble());
            rays.from(from).look(azimuth, sines, fan);
            for (int k = 0; k < sines.length; k++) {
                double cosine = Math.sqrt(1 - sines[k] * sines[k]);
                SceneRays.Crossed alone = rays.ray(from,
                        new Vec3(cosine * azimuth.east(), cosine * azimuth.north(), sines[k]));
                assertEquals(alone.placed(), fan.placed(k), 1e-6 * Math.max(1, alone.placed()));
                assertEquals(alone.inPlace(), fan.inPlace(k), 1e-6 * Math.max(1, alone.inPlace()));
                assertEquals(alone.skin(), fan.skin(k), 1e-6 * Math.max(1, alone.skin()));
            }
        }
    }

    /** Rays followed side by side, each for itself, are those of fans: along lines and diagonals of the grid too. */
    @ParameterizedTest
    @ValueSource(longs = {14, 15})
    void singleRaysAreThoseOfFans(long seed) {
        Scene whole = scene(seed, 1.4, BulkDensity.uniform(1800));
        Scene one = new Scene(whole.soil(), whole.hulls().subList(1, 2));
        Vec3 node = new Vec3(20, -15, whole.soil().finished().height(20, -15) - 3);
        Vec3 inside = hulls().get(1).pose().point(6, 0.3, 0.2);
        Random random = new Random(seed);
        for (Vec3 from : List.of(inside, node, node.plus(new Vec3(0.4, 0.4, 9)))) {
            for (Scene scene : List.of(whole, one)) {
                compareSingleRays(SceneRays.of(scene), from, random, from == inside);
            }
        }
    }

    /** A ray that runs in edges of triangles, as the first 8 from a node do, leaves through either face of one. */
    private static void compareSingleRays(SceneRays rays, Vec3 from, Random random, boolean inside) {
        int many = 700;
        double[][] directions = new double[3][many];
        Azimuth[] azimuths = new Azimuth[many];
        for (int k = 0; k < many; k++) {
            azimuths[k] = k < 8 ? Azimuth.ofDegrees(45 * k) : new Azimuth(2 * Math.PI * random.nextDouble());
            double sine = k % 5 == 0 ? 0.001 + 0.1 * random.nextDouble() : 0.001 + 0.998 * random.nextDouble();
            double cosine = Math.sqrt(1 - sine * sine);
            directions[0][k] = cosine * azimuths[k].east();
            directions[1][k] = cosine * azimuths[k].north();
            directions[2][k] = sine;
        }
        SkyRays single = new SkyRays();
        rays.from(from).look(directions[0], directions[1], directions[2], single);
        SkyRays fan = new SkyRays();
        int beyond = 0;
        for (int k = 0; k < many; k++) {
            rays.from(from).look(azimuths[k], new double[] {directions[2][k]}, fan);
            String where = "from " + from + " along " + azimuths[k] + ", sine " + directions[2][k];
            assertEquals(fan.placed(0), single.placed(k), 1e-6 * Math.max(1, fan.placed(0)), where);
            assertEquals(fan.inPlace(0), single.inPlace(k), 1e-6 * Math.max(1, fan.inPlace(0)), where);
            assertEquals(fan.skin(0), single.skin(k), 1e-6 * Math.max(1, fan.skin(0)), where);
            if (k >= 8 || inside) {
                assertEquals(fan.slant(0), single.slant(k), 1e-6, where);
            }
            assertEquals(fan.beyond(0), single.beyond(k), 1e-6 * Math.max(1, fan.beyond(0)), where);
            beyond += fan.beyondEdge();
        }
        assertEquals(beyond, single.beyondEdge());
    }

    @ParameterizedTest
    @ValueSource(longs = {6, 7})
    void moreCoverNeverLessensArealDensityInAnyDirection(long seed) {
        BulkDensity profile = BulkDensity.uniform(1800);
        SceneRays thin = SceneRays.of(scene(seed, 1, profile));
        SceneRays thick = SceneRays.of(scene(seed, 1.7, profile));
        Random random = new Random(seed);
        for (int i = 0; i < 3000; i++) {
            HullSolid hull = hulls().get(i % 3);
            Vec3 from = hull.pose().point(hull.shape().length() * (0.1 + 0.8 * random.nextDouble()), 0.2, 0);
            Vec3 way = direction(random, 0.01);
            assertTrue(thick.ray(from, way).arealDensity(1) >= thin.ray(from, way).arealDensity(1) - 1e-6,
                    "seed " + seed + ", from " + from + " along " + way);
        }
    }

    @Test
    void doublingEveryDensityDoublesTheSoilAndLeavesTheSkin() {
        BulkDensity profile = LunarProfile.bulkDensity();
        Scene scene = scene(8, 1.2, profile);
        Soil soil = scene.soil();
        Scene heavy = new Scene(new Soil(soil.natural(), soil.finished(), 2 * DENSITY, Soils.times(profile, 2)),
                scene.hulls());
        SceneRays one = SceneRays.of(scene);
        SceneRays two = SceneRays.of(heavy);
        Random random = new Random(8);
        for (int i = 0; i < 500; i++) {
            Vec3 from = hulls().get(i % 3).pose().point(5, 0.2, 0);
            Vec3 way = direction(random, 0.01);
            SceneRays.Crossed a = one.ray(from, way);
            SceneRays.Crossed b = two.ray(from, way);
            assertEquals(2 * (a.placed() + a.inPlace()), b.placed() + b.inPlace(), 1e-9 * (1 + b.placed()));
            assertEquals(a.skin(), b.skin(), ROUNDING);
        }
    }

    @Test
    void skinInsideAnotherHullIsCutAway() {
        ElevationGrid flat = ElevationGrid.sampled(FRAME, (e, n) -> -10);
        HullSolid hull = new HullSolid("A", new HullShape(20, 3, HullEnd.FLAT, HullEnd.FLAT, 50),
                Scenes.lying(new Vec3(-10, 0, 0), Azimuth.ofDegrees(90), 0));
        HullSolid tunnel = new HullSolid("T", new HullShape(8, 1, HullEnd.FLAT, HullEnd.FLAT, 20),
                Scenes.lying(new Vec3(0, 2, 0), Azimuth.ofDegrees(0), 0));
        SceneRays rays = SceneRays.of(new Scene(Scenes.bare(flat, BulkDensity.uniform(1500)),
                List.of(hull, tunnel)));
        // Out through the tunnel's mouth: the hull's skin is cut there, only the tunnel's far end is crossed.
        assertEquals(20, rays.ray(Vec3.ZERO, new Vec3(0, 1, 1e-4)).skin(), 1e-6);
        assertEquals(50, rays.ray(Vec3.ZERO, new Vec3(0, 0, 1)).skin(), 1e-4);
    }

    @Test
    void wallsCountWhereARayPassesOverTheirLineBelowTheirTop() {
        ElevationGrid flat = ElevationGrid.sampled(FRAME, (e, n) -> 0);
        WallSolid wall = new WallSolid(new Point(5, -5), new Point(5, 5), 0, 3, 0.5, 900);
        SceneRays rays = SceneRays.of(new Scene(Scenes.bare(flat, BulkDensity.uniform(1500)), List.of(),
                List.of(wall)));
        Vec3 eye = new Vec3(0, 0, 1);
        assertEquals(900 * Math.sqrt(1 + 0.04), rays.ray(eye, new Vec3(1, 0, 0.2)).placed(), 1e-6);
        assertEquals(0, rays.ray(eye, new Vec3(1, 0, 0.5)).placed(), ROUNDING);
        assertEquals(0, rays.ray(eye, new Vec3(-1, 0, 0.2)).placed(), ROUNDING);
    }

    /** The face of soil that a wall holds is the wall's own, whichever way it runs across the nodes. */
    @Test
    void soilHeldByAWallIsLeftThroughTheWallsFace() {
        GridFrame fine = new GridFrame(161, 161, -20, -20, 0.25);
        for (double turn : new double[] {0, 0.3, Math.PI / 6, 2, 4.4}) {
            Vec3 out = new Vec3(Math.sin(turn), Math.cos(turn), 0);
            Point middle = new Point(5.5 * out.x(), 5.5 * out.y());
            WallSolid wall = new WallSolid(new Point(middle.east() - 15 * out.y(), middle.north() + 15 * out.x()),
                    new Point(middle.east() + 15 * out.y(), middle.north() - 15 * out.x()), 0, 12, 1, 1600);
            ElevationGrid mound = ElevationGrid.sampled(fine, (e, n) ->
                    10 * Math.max(0, Math.min(1, 5.5 - e * out.x() - n * out.y())));
            SceneRays rays = SceneRays.of(new Scene(new Soil(ElevationGrid.sampled(fine, (e, n) -> 0), mound, 1500,
                    BulkDensity.uniform(1500)), List.of(), List.of(wall)));
            SkyRays seen = new SkyRays();
            for (double aside : new double[] {-0.5, 0, 0.2, 0.6}) {
                rays.from(new Vec3(0, 0, 4)).look(new Azimuth(turn + aside), new double[] {0.05, 0.3, 0.6}, seen);
                for (int k = 0; k < 3; k++) {
                    double level = Math.sqrt(1 - Math.pow(new double[] {0.05, 0.3, 0.6}[k], 2));
                    assertEquals(1 / (Math.cos(aside) * level), seen.slant(k), 1e-9, turn + " " + aside);
                }
            }
        }
    }

    @Test
    void groundBeyondTheEdgeIsLevelAndSaid() {
        ElevationGrid flat = ElevationGrid.sampled(FRAME, (e, n) -> 0);
        SceneRays rays = SceneRays.of(new Scene(Scenes.bare(flat, BulkDensity.uniform(1000)), List.of()));
        SceneRays.Crossed crossed = rays.ray(new Vec3(0, 0, -2), new Vec3(1, 0, 0.01).direction());
        assertTrue(crossed.beyondEdge());
        assertEquals(2 / new Vec3(1, 0, 0.01).direction().z() * 1000, crossed.inPlace(), 1e-3);
    }

    /** Heights that are not known end the known ground as its edge does, for fans and for single rays. */
    @Test
    void groundBeyondAHoleIsLevelAndSaid() {
        ElevationGrid holed = ElevationGrid.sampled(FRAME, (e, n) -> e > 8 && e < 12 ? Double.NaN : 0);
        SceneRays rays = SceneRays.of(new Scene(Scenes.bare(holed, BulkDensity.uniform(1000)), List.of()));
        Vec3 from = new Vec3(0, 0, -2);
        Vec3 through = new Vec3(1, 0.1, 0.1).direction();
        Vec3 before = new Vec3(1, 0.1, 0.5).direction();
        SkyRays single = new SkyRays();
        rays.from(from).look(new double[] {through.x(), before.x()}, new double[] {through.y(), before.y()},
                new double[] {through.z(), before.z()}, single);
        assertTrue(rays.ray(from, through).beyondEdge());
        assertTrue(!rays.ray(from, before).beyondEdge());
        assertEquals(1, single.beyondEdge());
        assertEquals(2 / through.z() * 1000, rays.ray(from, through).inPlace(), 1e-3);
        assertEquals(2 / through.z() * 1000, single.inPlace(0), 1e-3);
        assertEquals(2 / before.z() * 1000, single.inPlace(1), 1e-3);
    }

    @Test
    void refusesAStationOffTheGridAndARayIntoTheGround() {
        ElevationGrid flat = ElevationGrid.sampled(FRAME, (e, n) -> 0);
        SceneRays rays = SceneRays.of(new Scene(Scenes.bare(flat, BulkDensity.uniform(1000)), List.of()));
        List<String> messages = new ArrayList<>();
        messages.add(assertThrows(IllegalArgumentException.class,
                () -> rays.from(new Vec3(500, 0, 1))).getMessage());
        messages.add(assertThrows(IllegalArgumentException.class,
                () -> rays.ray(Vec3.ZERO, new Vec3(1, 0, -0.2))).getMessage());
        assertEquals("a station at east 500 m, north 0 m is not over the grid", messages.get(0));
        assertEquals("a ray's upward part is -0.196116; accepted: above 0, since others meet the ground",
                messages.get(1));
    }
}
