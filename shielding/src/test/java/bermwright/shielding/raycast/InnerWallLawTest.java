// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Vec3;
import bermwright.regolith.BulkDensity;
import bermwright.shielding.scene.HullEnd;
import bermwright.shielding.scene.HullShape;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.InnerWall;
import bermwright.shielding.scene.Scene;
import bermwright.shielding.scene.Scenes;
import bermwright.shielding.scene.Soil;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Mass against a part of a hull's wall counts on the ways that cross this part, and on no others. */
class InnerWallLawTest {
    private static final double ROUNDING = 1e-6;
    private static final double FULL = 1e9;
    private static final double SKIN = 60;
    private static final double MASS = 140;
    private static final InnerWall RING = new InnerWall(0, 18, -Math.PI, Math.PI, MASS);
    private static final InnerWall PART = new InnerWall(3, 11, 0.4, 2.1, MASS);
    /** Within, near to the wall, near an end; beside the hull; far from it. */
    private static final double[][] PLACES = {{8, 0, 0.2}, {6, 1.6, 0.9}, {1.2, -0.4, -0.3}, {9, 4, -1.5}, {-6, 7, 0}};

    private static HullSolid hull(double skin, List<InnerWall> inner) {
        return new HullSolid("A", new HullShape(18, 2.5, HullEnd.dome(1), HullEnd.FLAT, skin, inner),
                Scenes.lying(new Vec3(0, -9, 3), Azimuth.ofDegrees(0), 0));
    }

    private static SceneRays rays(HullSolid hull) {
        ElevationGrid ground = ElevationGrid.sampled(new GridFrame(61, 61, -60, -60, 2), (e, n) -> 0);
        return SceneRays.of(new Scene(new Soil(ground, ground, 1650, BulkDensity.uniform(1800)), List.of(hull)));
    }

    private static Vec3 direction(Random random) {
        double z = 0.02 + 0.97 * random.nextDouble();
        double turn = 2 * Math.PI * random.nextDouble();
        double flat = Math.sqrt(1 - z * z);
        return new Vec3(flat * Math.cos(turn), flat * Math.sin(turn), z);
    }

    private static double path(SceneRays rays, double skin, Vec3 from, Vec3 way) {
        ScenePath path = new ScenePath(rays, new ScenePath.Skin(List.of(skin / 3, 2 * skin / 3), 1));
        path.at(ScenePath.Place.of(from));
        path.go(way.x(), way.y(), way.z(), FULL);
        return path.toSky();
    }

    @Test
    void aWholeRingIsALayerOfSkin() {
        HullSolid lined = hull(SKIN, List.of(RING));
        HullSolid thick = hull(SKIN + MASS, List.of());
        SceneRays one = rays(lined);
        SceneRays other = rays(thick);
        Random random = new Random(5);
        for (double[] place : PLACES) {
            Vec3 from = lined.pose().point(place[0], place[1], place[2]);
            for (int k = 0; k < 100; k++) {
                Vec3 way = direction(random);
                double expected = other.ray(from, way).skin();
                assertEquals(expected, one.ray(from, way).skin(), ROUNDING * (1 + expected), from + " " + way);
                assertEquals(path(other, SKIN, from, way), path(one, SKIN, from, way), ROUNDING * (1 + expected));
            }
        }
    }

    @Test
    void aPartCountsWhereAWayCrossesItAndNowhereElse() {
        HullSolid lined = hull(SKIN, List.of(PART));
        SceneRays bare = rays(hull(SKIN, List.of()));
        SceneRays with = rays(lined);
        Random random = new Random(6);
        int crossed = 0;
        int missed = 0;
        for (double[] place : PLACES) {
            Vec3 from = lined.pose().point(place[0], place[1], place[2]);
            for (int k = 0; k < 400; k++) {
                Vec3 way = direction(random);
                double skin = bare.ray(from, way).skin();
                double more = with.ray(from, way).skin() - skin;
                assertEquals(more, path(with, SKIN, from, way) - path(bare, SKIN, from, way), 1e-4 * (1 + more));
                if (lined.contains(from)) {
                    boolean meets = isOnPart(lined, from, way);
                    crossed += meets ? 1 : 0;
                    missed += meets ? 0 : 1;
                    assertEquals(meets ? skin * MASS / SKIN : 0, more, ROUNDING * (1 + skin), from + " " + way);
                } else {
                    assertTrue(more >= 0, from + " " + way);
                }
            }
        }
        assertTrue(crossed > 100 && missed > 400, crossed + " crossed, " + missed + " missed");
    }

    @Test
    void mirrorImagesAgree() {
        SceneRays left = rays(hull(SKIN, List.of(PART)));
        SceneRays right = rays(hull(SKIN, List.of(new InnerWall(3, 11, -2.1, -0.4, MASS))));
        Random random = new Random(7);
        for (int k = 0; k < 400; k++) {
            Vec3 way = direction(random);
            Vec3 from = new Vec3(1.1, -2, 3.3);
            assertEquals(left.ray(from, way).skin(), right.ray(new Vec3(-1.1, -2, 3.3),
                    new Vec3(-way.x(), way.y(), way.z())).skin(), ROUNDING, way.toString());
        }
    }

    /** Where a way from inside leaves the hull, found by halving, lies on the part. */
    private static boolean isOnPart(HullSolid hull, Vec3 from, Vec3 way) {
        double in = 0;
        double out = 60;
        for (int k = 0; k < 80; k++) {
            double mid = (in + out) / 2;
            if (hull.contains(from.plus(way.times(mid)))) {
                in = mid;
            } else {
                out = mid;
            }
        }
        Vec3 local = hull.pose().local(from.plus(way.times(in)));
        double around = Math.atan2(local.y(), local.z());
        return local.x() > 3 && local.x() < 11 && around > 0.4 && around < 2.1;
    }
}
