// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.regolith.BulkDensity;
import bermwright.shielding.dose.Response;
import bermwright.shielding.raycast.SceneChange;
import bermwright.shielding.raycast.SceneRays;
import bermwright.shielding.raycast.SkyChange;
import bermwright.shielding.scene.HullEnd;
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

/** What is remembered of a sky never changes what is seen, and what nothing touched is not looked at again. */
class SkyMemoryLawTest {
    private static final double SETTLED = 0.005;
    private static final int CHANGES = 40;
    private static final double QUARTER = 0.25;
    private static final Vec3 STATION = new Vec3(0, 0, 1);
    private static final GridFrame FRAME = new GridFrame(161, 161, -80, -80, 1);
    private static final List<Response> RESPONSES = List.of(new Decay(600, 1e9, 1, 90), new Decay(150));
    private static final BulkDensity LAYERED = BulkDensity.of(List.of(new BulkDensity.At(0, 1300),
            new BulkDensity.At(0.6, 1800)));

    /** A mound of 3 m over the station and one more wherever it is wanted. */
    private static SceneRays scene(Point mound, double height, List<WallSolid> walls, BulkDensity inPlace) {
        ElevationGrid natural = ElevationGrid.sampled(FRAME, (e, n) -> 0.4 * Math.sin(e / 11) * Math.cos(n / 13));
        ElevationGrid finished = ElevationGrid.sampled(FRAME, (e, n) -> natural.height(e, n)
                + Math.max(0, 5 - 0.4 * Math.hypot(e, n)) + Math.max(0, height - 0.5 * Math.hypot(e - mound.east(),
                n - mound.north())));
        List<HullSolid> hulls = List.of(hull("A", new Vec3(-8, 0, 1.5)), hull("B", mound.at(1.5)));
        return SceneRays.of(new Scene(new Soil(natural, finished, 1650, inPlace), hulls, walls));
    }

    private static HullSolid hull(String id, Vec3 base) {
        return new HullSolid(id, new HullShape(16, 2, HullEnd.FLAT, HullEnd.FLAT, 60),
                Scenes.lying(base, Azimuth.ofDegrees(90), 0));
    }

    private static SceneRays drawn(Random random) {
        Point mound = new Point(random.nextInt(100) - 50, random.nextInt(100) - 50);
        List<WallSolid> walls = random.nextInt(3) > 0 ? List.of() : List.of(new WallSolid(new Point(12, 9),
                new Point(12 + random.nextInt(5), 20), -1, 4, 0.5, 900));
        return scene(mound, random.nextInt(4), walls, random.nextInt(5) > 0 ? BulkDensity.uniform(1800) : LAYERED);
    }

    private static String seen(SkyView view, SceneRays scene) {
        List<Object> all = new ArrayList<>(List.of(view.openShare(), view.directions(), view.shareBeyondEdge()));
        view.forEach(all::add);
        for (Response response : RESPONSES) {
            all.add(FoldedDose.of(view, response, scene.scene().soil(), new Tolerances(0.1, 0.1)));
        }
        return all.toString();
    }

    @Test
    void afterAnyChangesTheViewIsThatOfTheFirstLook() {
        Random random = new Random(5);
        SkyMemory memory = new SkyMemory();
        for (int i = 0; i < CHANGES; i++) {
            SceneRays scene = drawn(random);
            assertEquals(seen(SkyView.settled(scene, STATION, RESPONSES, SETTLED), scene),
                    seen(memory.settled(scene, STATION, RESPONSES, SETTLED), scene), "change " + i);
        }
    }

    @Test
    void theSameSceneMadeAnewChangesNothing() {
        SceneRays one = scene(new Point(40, 0), 3, List.of(), LAYERED);
        SceneRays other = scene(new Point(40, 0), 3, List.of(), BulkDensity.of(List.of(new BulkDensity.At(0, 1300),
                new BulkDensity.At(0.6, 1800))));
        assertTrue(SceneChange.between(one, other).from(STATION).isNone());
    }

    @Test
    void onlyWhereSomethingChangedIsLookedAtAgain() {
        SceneRays before = scene(new Point(50, 0), 3, List.of(), BulkDensity.uniform(1800));
        SceneRays after = scene(new Point(50, 4), 3, List.of(), BulkDensity.uniform(1800));
        SkyChange change = SceneChange.between(before, after).from(STATION);
        assertTrue(change.share() > 0 && change.share() < QUARTER, "share " + change.share());
        KnownSky first = KnownSky.nothing();
        SkyView.settled(before, STATION, RESPONSES, SETTLED, first);
        KnownSky second = KnownSky.of(first, change);
        double west = Math.toRadians(270);
        double east = Math.toRadians(88);
        assertSame(first.turn(west), second.turn(west));
        assertNotSame(first.turn(east), second.turn(east));
    }

    @Test
    void anotherDensityOrAHoleUnderTheStationReachesEverywhere() {
        SceneRays before = scene(new Point(50, 0), 3, List.of(), BulkDensity.uniform(1800));
        assertEquals(1, SceneChange.between(before, scene(new Point(50, 0), 3, List.of(), LAYERED)).from(STATION)
                .share());
        assertEquals(1, SceneChange.between(before, scene(new Point(3, 0), 3, List.of(), BulkDensity.uniform(1800)))
                .from(STATION).share());
    }

    @Test
    void amongNarrowMemoriesNothingIsKeptAndNothingChanges() {
        SkyMemory narrow = new SkyMemory(10);
        SceneRays scene = scene(new Point(50, 0), 3, List.of(), BulkDensity.uniform(1800));
        for (int i = 0; i < 2; i++) {
            assertEquals(seen(SkyView.settled(scene, STATION, RESPONSES, SETTLED), scene),
                    seen(narrow.settled(scene, STATION, RESPONSES, SETTLED), scene));
        }
    }
}
