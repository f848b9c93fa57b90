// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.SampleSite;
import bermwright.editor.edit.HatchAxis;
import bermwright.editor.edit.Part;
import bermwright.editor.edit.PartOutline;
import bermwright.editor.edit.Turn;
import bermwright.finding.Finding;
import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.site.plan.Hull;
import bermwright.terrain.grid.TrueMetres;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MapHandsTest {
    private static final MapHands.Feel FREE = new MapHands.Feel(0.5, true);
    private static final MapHands.Feel SNAPPING = new MapHands.Feel(0.5, false);
    private static final double ROUNDING = 0.002;

    @TempDir
    private Path folder;
    private OpenSample sample;
    private Workbench bench;
    private MapHands hands;

    @BeforeEach
    void open() {
        sample = new OpenSample(folder);
        bench = sample.bench();
        hands = new MapHands(bench);
    }

    @AfterEach
    void close() {
        sample.close();
    }

    private Hull hull(String id) {
        return bench.plan().hull(id).orElseThrow();
    }

    private Point middle(String id) {
        return hull(id).lyingAt(TrueMetres.SAME, 12, 0);
    }

    @Test
    void aDragIsOneStepHoweverManyFramesItTook() {
        assertTrue(hands.press(middle("A"), FREE));
        for (int i = 1; i <= 30; i++) {
            hands.drag(middle("A").moved(new Azimuth(0), 0.1, 0), FREE);
        }
        Point end = bench.plan().hull("A").orElseThrow().baseCentre();
        hands.release();
        assertEquals(end, hull("A").baseCentre());
        assertEquals(List.of("Move Hull A"), bench.document().history().steps());
        bench.undo();
        assertEquals(new Point(120, 220), hull("A").baseCentre());
    }

    @Test
    void findingsFollowWhileTheHandIsStillDown() {
        assertFalse(touchesBoulders());
        Point grab = middle("A");
        hands.press(grab, FREE);
        hands.drag(new Point(SampleSite.KEEP_OUT[0], SampleSite.KEEP_OUT[1]), FREE);
        assertTrue(touchesBoulders());
        assertFalse(bench.document().isUnsaved(), "nothing is made before the hand lets go");
        hands.giveUp();
        assertFalse(touchesBoulders());
        assertEquals(new Point(120, 220), hull("A").baseCentre());
    }

    private boolean touchesBoulders() {
        return bench.findings().stream().anyMatch(f -> f.finding().level() == Finding.Level.REFUSE
                && f.finding().text().contains("boulders"));
    }

    @Test
    void theTurnHandleTurnsAboutTheStandingAxis() {
        bench.pick(Optional.of(Part.hull("A")));
        MapHands.Handle handle = hands.handles(0.5).get(0);
        assertTrue(hands.press(handle.place(), FREE));
        hands.drag(hull("A").baseCentre().moved(Azimuth.ofDegrees(200), 50, 0), FREE);
        hands.release();
        assertEquals(200, hull("A").layDownAzimuth().degrees(), 1e-3);
        assertEquals(new Point(120, 220), hull("A").baseCentre());
    }

    @Test
    void hatchesSnapIntoLineUnlessTheHandIsFree() {
        // B is turned so that its base hatch looks about at A's side hatch.
        bench.make(new Turn("B", hull("A").layDownAzimuth().turned(-Math.PI / 2 + 0.1)));
        HatchAxis fixed = HatchAxis.of(bench.plan(), "A/side").orElseThrow();
        Point before = HatchAxis.of(bench.plan(), "B/main").orElseThrow().place();
        Point wanted = fixed.place().moved(fixed.outward(), 40, 1.5);
        Point grab = middle("B");
        Point to = new Point(grab.east() + wanted.east() - before.east(), grab.north() + wanted.north()
                - before.north());
        hands.press(grab, SNAPPING);
        hands.drag(to, SNAPPING);
        assertTrue(hands.snapLine().isPresent());
        assertEquals(0, fixed.aside(HatchAxis.of(bench.plan(), "B/main").orElseThrow().place()), ROUNDING);
        hands.drag(to, FREE);
        assertEquals(1.5, fixed.aside(HatchAxis.of(bench.plan(), "B/main").orElseThrow().place()), ROUNDING);
        hands.giveUp();
    }

    /** B and an area are dragged until B is 0.3 m beside the axis of A. */
    @Test
    void severalThingsThatAreDraggedSnapTogetherToWhatStays() {
        Hull fixed = hull("A");
        Point off = fixed.baseCentre().moved(fixed.layDownAzimuth(), 90, 0.3);
        bench.pick(Optional.of(Part.hull("B")));
        bench.pickAlso(new Part(Part.Kind.KEEP_OUT, "boulders"));
        Point before = hull("B").baseCentre();
        Point corner = bench.plan().keepOuts().get(0).area().centre();
        Point grab = middle("B");
        hands.press(grab, SNAPPING);
        hands.drag(new Point(grab.east() + off.east() - before.east(), grab.north() + off.north() - before.north()),
                SNAPPING);
        Point moved = hull("B").baseCentre();
        Point on = fixed.baseCentre().moved(fixed.layDownAzimuth(), 90, 0);
        assertEquals(0, moved.distance(on), ROUNDING);
        Point cornerNow = bench.plan().keepOuts().get(0).area().centre();
        assertEquals(moved.east() - before.east(), cornerNow.east() - corner.east(), ROUNDING);
        assertEquals(moved.north() - before.north(), cornerNow.north() - corner.north(), ROUNDING);
        hands.giveUp();
    }

    @Test
    void cornersAreShiftedMadeAndTakenOut() {
        Part boulders = new Part(Part.Kind.KEEP_OUT, "boulders");
        bench.pick(Optional.of(boulders));
        assertEquals(8, hands.handles(0.5).size(), "four corners and four edges");
        hands.press(new Point(310, 280), FREE);
        hands.drag(new Point(310, 260), FREE);
        hands.release();
        assertEquals(new Point(310, 260), PartOutline.corners(bench.plan(), boulders).get(1));
        assertTrue(hands.dropCorner(new Point(310, 260), FREE));
        assertEquals(4, PartOutline.corners(bench.plan(), boulders).size());
    }

    @Test
    void aCornerDraggedAcrossTheOutlineIsRefusedAndSaid() {
        Part boulders = new Part(Part.Kind.KEEP_OUT, "boulders");
        bench.pick(Optional.of(boulders));
        hands.press(new Point(290, 280), FREE);
        hands.drag(new Point(345, 300), FREE);
        hands.release();
        assertEquals(SampleSite.plan(), bench.plan());
        assertTrue(bench.trouble().orElseThrow().contains("was not done"), bench.trouble().toString());
    }

    @Test
    void picksWhatIsDrawnLast() {
        Point inside = middle("A");
        assertEquals(Optional.of(Part.hull("A")), hands.partAt(inside, FREE));
        assertEquals(Optional.empty(), hands.partAt(new Point(20, 20), FREE));
    }

    @Test
    void nudgesAndTurnsByKeys() {
        bench.pick(Optional.of(Part.hull("A")));
        hands.nudge(1, 0);
        hands.nudgeTurn(Math.toRadians(1));
        assertEquals(new Point(121, 220), hull("A").baseCentre());
        assertEquals(81, hull("A").layDownAzimuth().degrees(), 1e-9);
    }
}
