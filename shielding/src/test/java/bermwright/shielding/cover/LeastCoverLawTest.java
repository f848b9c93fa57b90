// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.shielding.scene.HullEnd;
import bermwright.shielding.scene.HullPose;
import bermwright.shielding.scene.HullShape;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.Scenes;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LeastCoverLawTest {
    /** Dips between the skin points of our lattice and of the slow one (m). */
    private static final double LATTICE = 0.01;
    /** The slow lattice misses up to three centimetres of skin where an end meets the barrel or a rim (m). */
    private static final double SLOW_LATTICE = 0.03;
    /** Heights come from a search along the skin that stops at a share of this (m). */
    private static final double SEARCHED = 1e-6;
    private static final double SLOPE_DEG = 34;
    private static final double SLOPE = Math.toRadians(SLOPE_DEG);
    /** Half-metre cells take this much off crests and depths (m). */
    private static final double CELL = 0.05;

    private static HullSolid drawn(Random random, boolean upright) {
        HullEnd[] ends = {HullEnd.FLAT, HullEnd.dome(0.5 + random.nextDouble()), HullEnd.cone(1 + random.nextDouble())};
        HullShape shape = new HullShape(10 + 8 * random.nextDouble(), 1.5 + 2 * random.nextDouble(),
                ends[random.nextInt(3)], ends[random.nextInt(3)], 40);
        Azimuth azimuth = new Azimuth(2 * Math.PI * random.nextDouble());
        Vec3 base = new Vec3(random.nextGaussian(), random.nextGaussian(), upright ? -3 : shape.radius() - 0.3);
        return new HullSolid("A", shape, upright ? HullPose.upright(base, azimuth)
                : Scenes.lying(base, azimuth, 0.2 * (random.nextDouble() - 0.5)));
    }

    /** The height asked for by brute force: the highest rounded cone over thousands of skin points. */
    private static double slow(CoveredHull covered, double east, double north) {
        HullSolid hull = covered.hull();
        Repose repose = Repose.of(SLOPE);
        double best = Double.NEGATIVE_INFINITY;
        int along = 1600;
        for (int i = 0; i <= along; i++) {
            // Steps crowd at both ends, where a dome narrows fast.
            double s = hull.shape().length() * (1 - Math.cos(Math.PI * i / along)) / 2;
            double r = hull.shape().radiusAt(s);
            for (int j = 0; j < 240; j++) {
                double around = Math.PI * (j / 120.0 - 1);
                // Flat ends are discs; where they stand upright their rims are enough for the highest cone.
                Vec3 p = hull.pose().point(s, r * Math.sin(around), r * Math.cos(around));
                double d = Math.hypot(east - p.x(), north - p.y());
                best = Math.max(best, p.z() + repose.rise(d, covered.wanted(s, around)));
            }
        }
        return Math.max(best, slowFace(covered, east, north));
    }

    /** The same over the flat end of an upright hull. */
    private static double slowFace(CoveredHull covered, double east, double north) {
        HullShape shape = covered.hull().shape();
        double best = Double.NEGATIVE_INFINITY;
        if (covered.hull().pose().axis().z() < 0.9 || shape.farEnd().shape() != HullEnd.Shape.FLAT) {
            return best;
        }
        for (int i = 0; i <= 100; i++) {
            for (int j = 0; j < 240; j++) {
                double r = shape.radius() * i / 100;
                double around = Math.PI * (j / 120.0 - 1);
                Vec3 p = covered.hull().pose().point(shape.length(), r * Math.sin(around), r * Math.cos(around));
                best = Math.max(best, p.z() + Repose.of(SLOPE).rise(Math.hypot(east - p.x(), north - p.y()),
                        covered.thickness().farEnd()));
            }
        }
        return best;
    }

    /**
     * An upright hull's flat top is a disc wider than its cover is thick: over it the soil is level and as thick as
     * wanted everywhere, and the depth over it counts.
     */
    @Test
    void theFlatTopOfAnUprightHullIsCoveredToItsMiddle() {
        CoveredHull covered = CoveredHull.uniform(new HullSolid("A", new HullShape(8, 4, HullEnd.FLAT, HullEnd.FLAT,
                40), HullPose.upright(new Vec3(0.3, -0.2, 0), Azimuth.ofDegrees(20))), 1.5);
        ElevationGrid ground = LevelCase.level(60, 0.5);
        Mound mound = Mounds.over(ground, List.of(covered), SLOPE, List.of());
        for (double r = 0; r <= 3.5; r += 0.25) {
            for (double turn = 0; turn < 6; turn += 0.5) {
                assertEquals(9.5, mound.finished().height(0.3 + r * Math.cos(turn), -0.2 + r * Math.sin(turn)), LATTICE,
                        "at " + r + " m from the middle");
            }
        }
        assertEquals(1.5, DepthMap.of(covered, mound.finished(), 16, 72).least().depth(), CELL);
        // Soil to the top alone leaves the face bare, which the unrolled side does not show.
        ElevationGrid bare = ElevationGrid.sampled(ground.frame(), (e, n) -> Math.min(8, Math.max(0,
                20 - Math.hypot(e, n))));
        DepthMap map = DepthMap.of(covered, bare, 16, 72);
        assertEquals(0, map.least().depth(), 1e-9);
        assertEquals(8, map.least().along(), 1e-9);
        assertTrue(map.thinPlaces(0.02).stream().anyMatch(p -> p.along() == 8
                && Math.abs(p.area() - Math.PI * 16) < 1e-6));
        assertTrue(map.shareBelowWanted(0.02) > Math.PI * 16 / (Math.PI * 16 + 2 * Math.PI * 4 * 8) - 1e-6);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 12, 18})
    void agreesWithTheHighestConeOverThousandsOfSkinPoints(long seed) {
        Random random = new Random(seed);
        CoverThickness thickness = seed % 2 == 0 ? CoverThickness.uniform(1.5)
                : new CoverThickness(1.8, 1.1, 2.2, seed % 3 == 0 ? 0.4 : 1.5);
        boolean upright = seed % 6 == 0;
        CoveredHull covered = new CoveredHull(drawn(random, upright), thickness, EndCover.COVERED, EndCover.COVERED, 0);
        HullEnvelope envelope = new HullEnvelope(covered, Repose.of(SLOPE), LevelCase.level(40, 1));
        Vec3 middle = covered.hull().middle();
        for (int i = 0; i < 25; i++) {
            double east = middle.x() + 9 * random.nextGaussian();
            double north = middle.y() + 9 * random.nextGaussian();
            int[] starts = new int[envelope.patches()];
            for (int k = 0; k < starts.length; k++) {
                starts[k] = envelope.middle(k);
            }
            double ours = envelope.height(east, north, Double.NEGATIVE_INFINITY, starts);
            double slow = slow(covered, east, north);
            assertTrue(ours >= slow - LATTICE, "seed " + seed + ": " + ours + " under " + slow);
            assertEquals(slow, ours, SLOW_LATTICE, "seed " + seed + " at " + east + ", " + north);
        }
    }

    private static ElevationGrid rolling(double spacing) {
        int nodes = (int) Math.round(100 / spacing) + 1;
        return ElevationGrid.sampled(new GridFrame(nodes, nodes, -50, -50, spacing),
                (e, n) -> 0.05 * e + 0.5 * Math.sin(e / 9) * Math.cos(n / 7));
    }

    private static List<CoveredHull> two() {
        List<CoveredHull> two = new ArrayList<>();
        two.add(CoveredHull.uniform(new HullSolid("A", new HullShape(20, 2.5, HullEnd.FLAT, HullEnd.cone(3), 40),
                Scenes.lying(new Vec3(-12, -5, 2.2), Azimuth.ofDegrees(70), 0.05)), 1.5));
        two.add(CoveredHull.uniform(new HullSolid("B", new HullShape(16, 2, HullEnd.dome(1), HullEnd.FLAT, 40),
                Scenes.lying(new Vec3(-8, 6, 1.8), Azimuth.ofDegrees(95), 0.04)), 2));
        return two;
    }

    /**
     * The highest of cones of one slope rises nowhere faster than that slope, in any direction: no chord between two
     * nodes of placed soil is steeper. Chords square to each other may well be steeper together round a cone.
     */
    @Test
    void placedSoilIsNowhereSteeperThanTheStableSlope() {
        ElevationGrid ground = rolling(0.2);
        ElevationGrid finished = Mounds.over(ground, two(), SLOPE, List.of()).finished();
        double steepest = 0;
        double beyond = 0;
        int[][] chords = {{0, 1}, {1, 0}, {1, 1}, {1, -1}, {1, 2}, {2, -1}, {3, 1}, {7, -5}};
        GridFrame f = ground.frame();
        for (int[] chord : chords) {
            double run = Math.hypot(chord[0], chord[1]) * f.spacing();
            for (int r = 0; r + chord[0] < f.rows(); r++) {
                for (int c = Math.max(0, -chord[1]); c + Math.max(0, chord[1]) < f.columns(); c++) {
                    if (isRaised(ground, finished, r, c) && isRaised(ground, finished, r + chord[0], c + chord[1])) {
                        double rise = Math.abs(finished.nodeHeight(r + chord[0], c + chord[1])
                                - finished.nodeHeight(r, c));
                        steepest = Math.max(steepest, rise / run);
                        beyond = Math.max(beyond, rise - run * Math.tan(SLOPE));
                    }
                }
            }
        }
        assertTrue(steepest > 0.999 * Math.tan(SLOPE), "steepest " + steepest);
        assertTrue(beyond <= SEARCHED, "a chord rises " + beyond + " m more than the slope allows");
    }

    private static boolean isRaised(ElevationGrid ground, ElevationGrid finished, int r, int c) {
        return finished.nodeHeight(r, c) > ground.nodeHeight(r, c) + 1e-9;
    }

    @Test
    void everyPointOfSkinKeepsItsThickness() {
        ElevationGrid ground = rolling(0.5);
        Mound mound = Mounds.over(ground, two(), SLOPE, List.of());
        for (CoveredHull hull : mound.hulls()) {
            DepthMap map = DepthMap.of(hull, mound.finished(), 40, 48);
            assertTrue(map.least().depth() >= map.least().wanted() - CELL, hull.hull().id() + " " + map.least());
            assertEquals(0, map.shareBelowWanted(CELL));
            assertEquals(List.of(), map.thinPlaces(CELL));
        }
    }

    @Test
    void mountsToTheSameVolumeHoweverTheSiteIsTurned() {
        double first = Double.NaN;
        for (double turn : new double[] {0, 30, 45, 110}) {
            CoveredHull hull = CoveredHull.uniform(LevelCase.hull(18, 2.5, HullEnd.FLAT, Azimuth.ofDegrees(turn),
                    2.5), 1.5);
            double volume = LevelCase.mound(hull, SLOPE_DEG, LevelCase.level(30, 0.5)).placedVolume();
            first = Double.isNaN(first) ? volume : first;
            assertEquals(first, volume, 2e-3 * first, "turned by " + turn);
        }
    }

    @Test
    void volumeConvergesWithTheMoundsNodesAndDoesNotHangOnTheGrounds() {
        double[] off = new double[3];
        double fine = volume(0.125, 0.125);
        for (int i = 0; i < 3; i++) {
            double spacing = new double[] {2, 1, 0.5}[i];
            off[i] = Math.abs(volume(spacing, spacing) - fine) / fine;
            assertEquals(fine, volume(spacing, LeastCover.FINE_SPACING), 1e-4 * fine, "cells of " + spacing + " m");
        }
        assertTrue(off[1] < off[0] / 2 && off[2] < off[1] / 2 && off[2] < 2e-3,
                off[0] + ", " + off[1] + ", " + off[2]);
    }

    private static double volume(double cell, double nodes) {
        return LeastCover.on(nodes).raised(LevelCase.level(30, cell), List.of(CoveredHull.uniform(LevelCase.hull(18,
                2.5, HullEnd.FLAT, Azimuth.ofDegrees(20), 2.5), 1.5)), Math.toRadians(SLOPE_DEG), List.of())
                .placedVolume();
    }

    /** Independent volume: every triangle of mound, ground and hull as a signed tetrahedron from the origin. */
    @Test
    void volumeIsThatOfAClosedMesh() {
        double r = 2.5;
        double length = 18;
        ElevationGrid ground = LevelCase.level(30, 0.5);
        HullSolid hull = LevelCase.hull(length, r, HullEnd.cone(2), Azimuth.ofDegrees(33), r + 0.2);
        Mound mound = LevelCase.mound(CoveredHull.uniform(hull, 1.5), SLOPE_DEG, ground);
        double mesh = surface(mound.finished()) - surface(ground) - mesh(hull);
        assertEquals(mesh, mound.placedVolume(), 1e-3 * mesh);
    }

    private static double surface(ElevationGrid grid) {
        GridFrame f = grid.frame();
        double sum = 0;
        for (int i = 0; i + 1 < f.rows(); i++) {
            for (int j = 0; j + 1 < f.columns(); j++) {
                Vec3 a = node(grid, i, j);
                Vec3 b = node(grid, i, j + 1);
                Vec3 c = node(grid, i + 1, j + 1);
                Vec3 d = node(grid, i + 1, j);
                sum += under(a, b, c) + under(a, c, d);
            }
        }
        return sum;
    }

    private static double under(Vec3 a, Vec3 b, Vec3 c) {
        double plan = ((b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x())) / 2;
        return plan * (a.z() + b.z() + c.z()) / 3;
    }

    private static Vec3 node(ElevationGrid grid, int row, int column) {
        return new Vec3(grid.frame().east(column), grid.frame().north(row), grid.nodeHeight(row, column));
    }

    private static double mesh(HullSolid hull) {
        int along = 600;
        int around = 360;
        double sum = 0;
        for (int i = 0; i < along; i++) {
            double s = hull.shape().length() * i / along;
            double t = hull.shape().length() * (i + 1) / along;
            for (int j = 0; j < around; j++) {
                double p = 2 * Math.PI * j / around;
                double q = 2 * Math.PI * (j + 1) / around;
                Vec3 a = hull.skin(s, p);
                Vec3 b = hull.skin(s, q);
                Vec3 c = hull.skin(t, q);
                Vec3 d = hull.skin(t, p);
                sum += a.dot(b.cross(c)) / 6 + a.dot(c.cross(d)) / 6;
            }
        }
        return Math.abs(sum);
    }

    @Test
    void stripsKeptClearStayBareAndTheirSidesStandBack() {
        ElevationGrid ground = LevelCase.level(30, 0.5);
        CoveredHull hull = CoveredHull.uniform(LevelCase.hull(18, 2.5, HullEnd.FLAT, Azimuth.ofDegrees(90), 2.5), 1.5);
        KeptClear strip = new KeptClear(new Point(9, 0), new Point(20, 0), 2);
        Mound mound = Mounds.over(ground, List.of(hull), SLOPE, List.of(strip));
        assertEquals(0, mound.finished().height(12, 0.5));
        assertTrue(mound.finished().height(12, 3) <= 2 * Math.tan(SLOPE) + 1e-9);
        assertTrue(mound.placedVolume() < LevelCase.mound(hull, SLOPE_DEG, ground).placedVolume());
    }

    @Test
    void anOpenEndStaysBareAndAHeldEndStandsFull() {
        ElevationGrid ground = LevelCase.level(30, 0.5);
        HullSolid hull = LevelCase.hull(18, 2.5, HullEnd.FLAT, Azimuth.ofDegrees(90), 2.5);
        Mound open = LevelCase.mound(new CoveredHull(hull, CoverThickness.uniform(1.5), EndCover.COVERED,
                EndCover.OPEN, 0), SLOPE_DEG, ground);
        Mound held = LevelCase.mound(new CoveredHull(hull, CoverThickness.uniform(1.5), EndCover.COVERED,
                EndCover.HELD, 0), SLOPE_DEG, ground);
        assertEquals(0, open.finished().height(9.5, 3));
        assertEquals(0, held.finished().height(9.5, 3));
        assertTrue(open.finished().height(8, 0) <= Math.tan(SLOPE) + 1e-9);
        assertEquals(6.5, held.finished().height(8.5, 0), 1e-6);
        DepthMap map = DepthMap.of(open.hulls().get(0), open.finished(), 36, 48);
        assertEquals(0, map.least().depth());
        assertTrue(map.least().along() > 10, "bare near the open far end: " + map.least());
        assertFalse(map.thinPlaces(CELL).isEmpty());
    }

    /** Straight out of the skin at an angle psi beyond the slope the depth is R / cos(psi - beta) - r. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 20, 50, 70})
    void radialDepthFollowsItsClosedForm(double psiDeg) {
        double r = 4;
        double t = 2.5;
        ElevationGrid ground = LevelCase.level(40, 0.25);
        CoveredHull hull = CoveredHull.uniform(LevelCase.hull(30, r, HullEnd.FLAT, Azimuth.ofDegrees(90), r), t);
        DepthMap map = DepthMap.of(hull, LevelCase.mound(hull, SLOPE_DEG, ground).finished(), 15, 360);
        int column = (int) Math.floor((psiDeg / 180 + 1) / 2 * 360);
        double psi = Math.toDegrees(map.aroundAt(column));
        double expected = psi <= SLOPE_DEG ? t : (r + t) / Math.cos(Math.toRadians(psi - SLOPE_DEG)) - r;
        assertEquals(expected, map.radialDepth(7, column), 0.01);
        assertTrue(map.trueDepth(7, column) <= map.radialDepth(7, column) + 1e-9);
        assertTrue(map.trueDepth(7, column) <= map.uprightDepth(7, column) + 1e-9);
    }

    @Test
    void saysWhenTheToeNeverMeetsTheGround() {
        CoveredHull hull = CoveredHull.uniform(LevelCase.hull(18, 2.5, HullEnd.FLAT, Azimuth.ofDegrees(90), 2.5), 1.5);
        Mound off = LevelCase.mound(hull, SLOPE_DEG, LevelCase.level(12, 0.5));
        assertTrue(off.runsOffTheGround());
        assertTrue(off.leavesTheGround().isPresent());
        assertFalse(LevelCase.mound(hull, SLOPE_DEG, LevelCase.level(30, 0.5)).runsOffTheGround());
        // Ground that falls away as steeply as the soil stands never meets it.
        ElevationGrid cliff = ElevationGrid.sampled(new GridFrame(81, 81, -40, -40, 1), (e, n) -> -0.75 * Math.abs(n));
        assertTrue(LevelCase.mound(hull, SLOPE_DEG, cliff).runsOffTheGround());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 90, 120, Double.NaN})
    void refusesSlopesOutOfRange(double slopeDeg) {
        assertThrows(IllegalArgumentException.class, () -> LevelCase.mound(CoveredHull.uniform(
                LevelCase.hull(18, 2.5, HullEnd.FLAT, Azimuth.ofDegrees(90), 2.5), 1), slopeDeg,
                LevelCase.level(12, 1)));
    }
}
