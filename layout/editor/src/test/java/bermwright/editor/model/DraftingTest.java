// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.edit.Arranged;
import bermwright.editor.edit.GearSpot;
import bermwright.editor.edit.Move;
import bermwright.editor.edit.Part;
import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.site.assessment.SiteGround;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.TrueMetres;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Things drawn, measured, moved together and put in order on the map. */
class DraftingTest {
    private static final MapHands.Feel FREE = new MapHands.Feel(0.5, true);
    private static final MapHands.Feel SNAPPING = new MapHands.Feel(0.5, false);
    /** What is drawn is kept to a tenth of a metre, azimuths to a tenth of a degree. */
    private static final double DRAWN = 0.051;
    private static final double EXACT = 2e-3;

    @TempDir
    private Path folder;
    private OpenSample sample;
    private Workbench bench;
    private MapHands hands;
    private Drafting draft;

    @BeforeEach
    void open() {
        sample = new OpenSample(folder);
        bench = sample.bench();
        hands = new MapHands(bench);
        draft = hands.draft();
    }

    @AfterEach
    void close() {
        sample.close();
    }

    private Hull hull(String id) {
        return bench.plan().hull(id).orElseThrow();
    }

    private void drag(Point from, Point to, MapHands.Feel feel) {
        draft.press(from, feel);
        draft.move(to, feel);
        draft.release(to, feel);
    }

    private void click(double east, double north) {
        draft.press(new Point(east, north), FREE);
        draft.release(new Point(east, north), FREE);
    }

    @Test
    void aDragPlacesAHullAndTheWayItIsLaidDown() {
        draft.take(MapTool.HULL);
        draft.press(new Point(240, 200), FREE);
        Point to = new Point(240, 200).moved(Azimuth.ofDegrees(33), 40, 0);
        draft.move(to, FREE);
        assertTrue(bench.isTrying(), "it is tried before it is placed");
        String readout = draft.readout().orElseThrow();
        assertTrue(readout.contains("azimuth 33.0\u00b0") && readout.contains("E 240.0 m"), readout);
        assertTrue(readout.endsWith("not checked: no ground is read"), "without a ground nothing is in order");
        assertFalse(bench.document().isUnsaved());
        draft.release(to, FREE);
        assertEquals(33, hull("C").layDownAzimuth().degrees(), DRAWN);
        assertEquals(new Point(240, 200), hull("C").baseCentre());
        assertEquals(MapTool.PICK, draft.tool(), "the tool is laid down");
        assertEquals(Optional.of(Part.hull("C")), bench.picked());
        assertEquals(List.of("Add Hull C"), bench.document().history().steps(), "it is one step");
    }

    @Test
    void areasAreDraggedAsRectanglesOrClickedCornerByCorner() {
        draft.take(MapTool.KEEP_OUT);
        drag(new Point(10, 20), new Point(40, 60), FREE);
        Part dragged = bench.picked().orElseThrow();
        assertEquals(4, bench.plan().keepOuts().get(1).area().corners().size());
        assertEquals(30 * 40, bench.plan().keepOuts().get(1).area().area(), EXACT);
        draft.take(MapTool.STOCKPILE);
        click(200, 20);
        click(260, 20);
        click(260, 70);
        assertEquals(0, bench.document().plan().stockpiles().size(), "not ended yet");
        click(200.5, 20.5);
        assertEquals(60 * 50 / 2.0, bench.plan().stockpiles().get(0).area().area(), EXACT);
        assertFalse(dragged.equals(bench.picked().orElseThrow()));
    }

    @Test
    void aLineEndsWithEnterAndLosesACornerWithBackspace() {
        draft.take(MapTool.CORRIDOR);
        click(10, 10);
        click(60, 12);
        click(90, 80);
        draft.back();
        click(100, 40);
        draft.finish();
        assertEquals(List.of(new Point(10, 10), new Point(60, 12), new Point(100, 40)),
                bench.plan().corridors().get(1).line());
    }

    @Test
    void aMeasureChangesNothingAndSaysLengthAzimuthAndRise() {
        draft.take(MapTool.DISTANCE);
        Point from = new Point(100, 100);
        Point to = from.moved(Azimuth.ofDegrees(120), 50, 0);
        drag(from, to, FREE);
        String words = draft.readout().orElseThrow();
        assertTrue(words.contains("50.00 m, azimuth 120.0\u00b0"), words);
        ElevationGrid slope = ElevationGrid.sampled(new GridFrame(301, 301, 0, 0, 1), (e, n) -> -0.1 * e);
        String rise = new Measure(List.of(from, to), TrueMetres.SAME, Optional.of(slope)).lineWords();
        // 50 m towards 120 degrees is 43.301 m east; a tenth of that over 50 m is 4.95 degrees.
        assertTrue(rise.contains("falls 4.33 m, 4.9\u00b0") || rise.contains("falls 4.33 m, 5.0\u00b0"), rise);
        draft.take(MapTool.AREA);
        drag(new Point(0, 0), new Point(30, 40), FREE);
        assertTrue(draft.readout().orElseThrow().contains("1200 m\u00b2, edge 140.0 m"));
        assertFalse(bench.document().isUnsaved());
    }

    @Test
    void anAreaThatComesBackOnItsFirstCornerIsNoneYet() {
        for (MapTool tool : List.of(MapTool.AREA, MapTool.KEEP_OUT)) {
            int before = bench.plan().keepOuts().size();
            draft.take(tool);
            click(10, 10);
            click(60, 10);
            draft.move(new Point(10, 10), FREE);
            assertTrue(draft.readout().isPresent(), "it is read without a mistake");
            click(10, 10);
            draft.finish();
            assertEquals(before, bench.document().plan().keepOuts().size());
            assertEquals(Optional.empty(), bench.trouble());
            draft.take(MapTool.PICK);
        }
    }

    @Test
    void cornersSnapToRightAnglesAndTheGridUnlessTheHandIsFree() {
        draft.take(MapTool.WALL);
        draft.press(new Point(300, 100), SNAPPING);
        draft.move(new Point(340, 101), SNAPPING);
        assertEquals(100, draft.outline().get(1).north(), EXACT, "a right angle to grid north");
        assertFalse(draft.guides().isEmpty(), "and it is shown");
        draft.move(new Point(340, 101), FREE);
        assertEquals(101, draft.outline().get(1).north(), EXACT);
        draft.take(MapTool.KEEP_OUT);
        hands.snapping().grid(true, 5);
        draft.press(new Point(402.4, 18.1), SNAPPING);
        assertEquals(new Point(400, 20), draft.outline().get(0));
    }

    @Test
    void aHullTurnsParallelToAnotherWhereItIsClose() {
        bench.pick(Optional.of(Part.hull("B")));
        MapHands.Handle handle = hands.handles(0.5).stream().filter(h -> h.kind() == MapHands.HandleKind.TURN)
                .findFirst().orElseThrow();
        hands.press(handle.place(), SNAPPING);
        hands.drag(hull("B").baseCentre().moved(Azimuth.ofDegrees(81.5), 60, 0), SNAPPING);
        assertTrue(hands.readout().orElseThrow().contains("anticlockwise"), hands.readout().toString());
        hands.release();
        assertEquals(80, hull("B").layDownAzimuth().degrees(), EXACT);
    }

    @Test
    void gearIsDraggedByItself() {
        bench.pick(Optional.of(Part.hull("A")));
        Hull before = hull("A");
        GearSpot winch = GearSpot.of(before, TrueMetres.SAME).stream()
                .filter(s -> s.piece() == GearSpot.Piece.WINCH).findFirst().orElseThrow();
        assertTrue(hands.press(winch.place(), FREE));
        hands.drag(winch.place().moved(before.layDownAzimuth(), -12, 0), FREE);
        hands.release();
        LoweringGear gear = hull("A").lowering().orElseThrow();
        assertEquals(52, gear.lines().orElseThrow().winch().behindPivot(), DRAWN);
        assertEquals(before.lowering().orElseThrow().poles(), gear.poles(), "the poles stay");
        assertEquals(before.baseCentre(), hull("A").baseCentre(), "and so does the hull");
        GearSpot pole = GearSpot.of(hull("A"), TrueMetres.SAME).stream()
                .filter(s -> s.piece() == GearSpot.Piece.POLE).findFirst().orElseThrow();
        hands.press(pole.place(), FREE);
        hands.drag(pole.place().moved(before.layDownAzimuth(), -3, 0), FREE);
        hands.release();
        assertEquals(12, hull("A").lowering().orElseThrow().poles().orElseThrow().behindPivot(), DRAWN);
        assertEquals(5, hull("A").lowering().orElseThrow().poles().orElseThrow().halfSpread(), DRAWN);
    }

    @Test
    void severalThingsMoveTurnAlignAndSpreadTogetherAsOneStep() {
        bench.pick(Optional.of(Part.hull("A")));
        hands.pickAlso(hull("B").baseCentre(), FREE);
        assertEquals(List.of(Part.hull("A"), Part.hull("B")), bench.allPicked());
        Point grab = hull("A").lyingAt(TrueMetres.SAME, 12, 0);
        hands.press(grab, FREE);
        hands.drag(new Point(grab.east() + 7, grab.north() - 4), FREE);
        hands.release();
        assertEquals(new Point(127, 216), hull("A").baseCentre());
        assertEquals(new Point(127, 296), hull("B").baseCentre());
        assertEquals(1, bench.document().history().steps().size());
        hands.nudgeTurn(Math.PI / 2);
        assertEquals(170, hull("A").layDownAzimuth().degrees(), EXACT);
        assertEquals(80, hull("A").baseCentre().distance(hull("B").baseCentre()), EXACT, "they keep their distance");
        assertEquals(256, hull("A").baseCentre().north(), EXACT, "about their middle");
        bench.make(Arranged.parallel(bench.plan(), bench.allPicked()));
        assertEquals(170, hull("B").layDownAzimuth().degrees(), EXACT);
        hands.pickAlso(hull("B").baseCentre(), FREE);
        assertEquals(List.of(Part.hull("A")), bench.allPicked(), "a second time lets go");
    }

    @Test
    void spreadingMakesEqualGapsAndAligningOneLine() {
        Part keepOut = new Part(Part.Kind.KEEP_OUT, "boulders");
        List<Part> all = List.of(Part.hull("A"), Part.hull("B"), keepOut);
        bench.make(Arranged.spread(bench.plan(), all));
        // A and the keep-out are the farthest apart, from (120, 220) to (310, 300); B comes half way along.
        Point b = hull("B").baseCentre();
        double along = ((b.east() - 120) * 190 + (b.north() - 220) * 80) / Math.hypot(190, 80);
        assertEquals(Math.hypot(190, 80) / 2, along, EXACT);
        bench.make(Arranged.aligned(bench.plan(), List.of(Part.hull("A"), Part.hull("B"))));
        Azimuth way = hull("A").layDownAzimuth();
        double ahead = (hull("B").baseCentre().east() - 120) * way.east()
                + (hull("B").baseCentre().north() - 220) * way.north();
        assertEquals(0, ahead, EXACT);
    }

    @Test
    void neitherOfTwoHullsInOnePlaceIsSaidToBeInOrder() {
        bench.answers().ground(SiteGround.read(bench.plan(), bench.document().file(), Progress.NONE));
        Point a = hull("A").baseCentre();
        Point b = hull("B").baseCentre();
        bench.make(new Move(Part.hull("B"), a.east() - b.east() + 4, a.north() - b.north()));
        sample.settle();
        for (String id : List.of("A", "B")) {
            long named = bench.findings().stream().map(Numbered::finding)
                    .filter(f -> f.level() == Finding.Level.REFUSE && !bench.answers().isStale(bench.plan(), f))
                    .filter(f -> f.subject().split("/")[0].equals(id) || f.parts().contains(id)).count();
            String verdict = Verdict.of(bench, Part.hull(id));
            assertTrue(named > 0 && verdict.startsWith("\u2716 " + named + " refuse"), named + ": " + verdict);
        }
    }

    @Test
    void aFramePicksWhatLiesWholeInIt() {
        hands.pickWithin(new Point(280, 270), new Point(340, 330));
        assertEquals(List.of(new Part(Part.Kind.KEEP_OUT, "boulders")), bench.allPicked());
    }
}
