// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.regolith.BulkDensity;
import bermwright.regolith.LunarProfile;
import bermwright.shielding.cover.CoveredHull;
import bermwright.shielding.cover.Mounds;
import bermwright.shielding.scene.HullEnd;
import bermwright.shielding.scene.HullShape;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.Scene;
import bermwright.shielding.scene.Scenes;
import bermwright.shielding.scene.Soil;
import bermwright.shielding.scene.WallSolid;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A particle's way through a scene crosses what a ray to the sky crosses, wherever it begins. */
class ScenePathLawTest {
    private static final double FULL = 1e9;
    /** Lower ways leave the grid near its rising edge, where ray and way go on differently (1). */
    private static final double LEAST_SINE = 0.15;
    /** Surfaces are straight over steps of 0.2 m: some millimetres of soil. */
    private static final double STEPS_KG_M2 = 25;
    private static final double SHARE = 0.004;
    private static final ScenePath.Skin SKIN = new ScenePath.Skin(List.of(20.0, 40.0), 0.9);
    private static final HullSolid HULL = new HullSolid("A", new HullShape(18, 2.5, HullEnd.dome(1), HullEnd.cone(3),
            60), Scenes.lying(new Vec3(-9, -3, 2.4), Azimuth.ofDegrees(75), 0.03));
    private static final HullSolid OTHER = new HullSolid("B", new HullShape(6, 1.2, HullEnd.FLAT, HullEnd.FLAT, 30),
            Scenes.lying(new Vec3(4, -9, 1.6), Azimuth.ofDegrees(350), 0));

    private static final WallSolid WALL = new WallSolid(new Point(-14, -8), new Point(-12, 6), -1, 7, 1, 1650);

    private static SceneRays scene(BulkDensity profile) {
        ElevationGrid ground = ElevationGrid.sampled(new GridFrame(61, 61, -60, -60, 2),
                (e, n) -> 0.03 * e - 0.02 * n + (n > 40 ? 0.4 * (n - 40) : 0));
        ElevationGrid finished = Mounds.over(ground, List.of(CoveredHull.uniform(HULL, 1.4)), Math.toRadians(34),
                List.of()).finished();
        return SceneRays.of(new Scene(new Soil(ground, finished, 1650, profile), List.of(HULL, OTHER),
                List.of(WALL)));
    }

    private static Vec3 direction(Random random, double least) {
        double z = least + (0.999 - least) * random.nextDouble();
        double turn = 2 * Math.PI * random.nextDouble();
        double flat = Math.sqrt(1 - z * z);
        return new Vec3(flat * Math.cos(turn), flat * Math.sin(turn), z);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void crossesWhatARayCrosses(boolean uniform) {
        SceneRays rays = scene(uniform ? BulkDensity.uniform(1800) : LunarProfile.bulkDensity());
        ScenePath path = new ScenePath(rays, SKIN);
        Random random = new Random(11);
        for (Vec3 from : List.of(HULL.pose().point(6, 0.3, 0.2), HULL.pose().point(9, 3.1, 0.4),
                new Vec3(2, 1, -0.8), new Vec3(-20, 15, 3), OTHER.pose().point(3, 0.2, 0.1))) {
            for (int k = 0; k < 200; k++) {
                Vec3 way = direction(random, LEAST_SINE);
                path.at(ScenePath.Place.of(from));
                path.go(way.x(), way.y(), way.z(), FULL);
                double expected = rays.ray(from, way).arealDensity(SKIN.equivalence());
                assertEquals(expected, path.toSky(), STEPS_KG_M2 + SHARE * expected, from + " " + way);
            }
        }
    }

    @Test
    void goesOnFromAnyPlaceOfTheWay() {
        ScenePath path = new ScenePath(scene(BulkDensity.uniform(1800)), SKIN);
        Random random = new Random(12);
        int inSkin = 0;
        for (int k = 0; k < 600; k++) {
            Vec3 way = direction(random, -0.95);
            path.at(ScenePath.Place.of(HULL.pose().point(1 + 15 * random.nextDouble(), 0.3, 0.2)));
            path.go(way.x(), way.y(), way.z(), 5000);
            int stretch = random.nextInt(path.count());
            double share = random.nextDouble();
            inSkin += path.material(stretch) > 0 ? 1 : 0;
            double expected = path.toSky(stretch, share);
            path.at(path.place(stretch, share));
            path.go(way.x(), way.y(), way.z(), 5000);
            if (Double.isFinite(expected)) {
                assertEquals(expected, path.toSky(), STEPS_KG_M2 + SHARE * expected, k + " " + way);
            }
        }
        assertTrue(inSkin > 50, inSkin + " places in the skin");
    }

    @Test
    void turnsBackThroughTheSkinThatItWasIn() {
        ScenePath path = new ScenePath(scene(BulkDensity.uniform(1800)), SKIN);
        path.at(ScenePath.Place.of(HULL.pose().point(9, 0, 0)));
        Vec3 up = HULL.pose().crown();
        path.go(up.x(), up.y(), up.z(), FULL);
        assertEquals(2, path.material(0), "the inner layer comes first");
        assertEquals(1, path.material(1));
        path.at(path.place(0, 0.25));
        path.go(-up.x(), -up.y(), -up.z(), FULL);
        assertEquals(2, path.material(0));
        assertEquals(10, path.arealDensity(0), 1e-6);
        assertEquals(2, path.material(1), "then the far side of the hull");
        assertEquals(40, path.arealDensity(1), 1e-3);
        assertTrue(Double.isInfinite(path.toSky()));
        path.at(path.place(0, 0.5));
        path.go(up.x(), up.y(), up.z(), FULL);
        assertEquals(35, path.arealDensity(0), 1e-6, "turned again within the skin");
    }

    @Test
    void turnsWithinAWallOnlyThroughWhatIsLeftOfIt() {
        ScenePath path = new ScenePath(scene(BulkDensity.uniform(1800)), SKIN);
        Vec3 from = new Vec3(-20, -1, 4);
        Vec3 way = new Vec3(14, -2, 0).direction();
        path.at(ScenePath.Place.of(from));
        path.go(way.x(), way.y(), way.z(), FULL);
        assertEquals(1650, path.arealDensity(0), 1e-6, "square through the wall");
        ScenePath.Place inside = path.place(0, 0.25);
        path.at(inside);
        path.go(-way.x(), -way.y(), -way.z(), FULL);
        assertEquals(412.5, path.arealDensity(0), 1e-6);
        path.at(path.place(0, 0.5));
        path.go(way.x(), way.y(), way.z(), FULL);
        assertEquals(1650 - 206.25, path.arealDensity(0), 1e-6);
        path.at(inside);
        path.go(0, 0, 1, FULL);
        assertEquals(3 * 1650, path.toSky(), 1e-6, "3 m up to its top, of the placed soil's density");
    }

    @Test
    void knowsWhichWayIsOut() {
        Random random = new Random(13);
        double h = 1e-5;
        HullShape shape = HULL.shape();
        for (int k = 0; k < 300; k++) {
            double along = shape.length() * (0.01 + 0.98 * random.nextDouble());
            double turn = 2 * Math.PI * random.nextDouble();
            double r = shape.radiusAt(along);
            Vec3 out = shape.outward(new Vec3(along, r * Math.sin(turn), r * Math.cos(turn)));
            double slope = (shape.radiusAt(along + h) - shape.radiusAt(along - h)) / (2 * h);
            Vec3 expected = new Vec3(-slope, Math.sin(turn), Math.cos(turn)).direction();
            assertEquals(1, out.dot(expected), 1e-4, along + " " + out + " " + expected);
        }
    }
}
