// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.SampleSite;
import bermwright.foundation.Azimuth;
import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PlanEditTest {
    /** Places are kept to a millimetre, azimuths to a thousandth of a degree over a hull's length (m). */
    private static final double ROUNDING = 0.002;
    private static final Plan PLAN = SampleSite.plan();
    private static final Part HULL = Part.hull("A");
    private static final Part KEEP_OUT = new Part(Part.Kind.KEEP_OUT, "boulders");

    @Test
    void movesAHullAndNothingElse() {
        Plan moved = new Move(HULL, 3, -2).applied(PLAN);
        assertEquals(new Point(123, 218), moved.hull("A").orElseThrow().baseCentre());
        assertEquals(PLAN.hull("B"), moved.hull("B"));
        assertEquals(PLAN, new Move(HULL, -3, 2).applied(moved));
    }

    @Test
    void movesEveryKindThatHasAPlaceByTheSameWay() {
        Plan plan = withOneOfEachKind();
        for (Part.Kind kind : Part.Kind.values()) {
            if (PartOutline.fewestCorners(kind) > 0) {
                Part part = new Part(kind, Part.ids(plan, kind).get(0));
                List<Point> before = PartOutline.corners(plan, part);
                List<Point> after = PartOutline.corners(new Move(part, 7, 11).applied(plan), part);
                for (int i = 0; i < before.size(); i++) {
                    assertEquals(Math.hypot(7, 11), before.get(i).distance(after.get(i)), ROUNDING, part.words());
                }
            }
        }
    }

    @Test
    void shiftsInsertsAndDropsCorners() {
        Plan more = new InsertCorner(KEEP_OUT, 1, new Point(310, 270)).applied(PLAN);
        assertEquals(5, PartOutline.corners(more, KEEP_OUT).size());
        assertEquals(new Point(310, 270), PartOutline.corners(more, KEEP_OUT).get(1));
        assertEquals(PLAN, new DropCorner(KEEP_OUT, 1).applied(more));
        Plan shifted = new ShiftCorner(KEEP_OUT, 0, new Point(280, 270)).applied(PLAN);
        assertEquals(new Point(280, 270), PartOutline.corners(shifted, KEEP_OUT).get(0));
    }

    @Test
    void leavesAThirdOfThreeCornersAlone() {
        Plan three = new DropCorner(KEEP_OUT, 0).applied(PLAN);
        assertEquals(3, PartOutline.corners(three, KEEP_OUT).size());
        assertSame(three, new DropCorner(KEEP_OUT, 0).applied(three));
    }

    @Test
    void refusesAValueThatAFileCouldNotHoldAndSaysWhatIsAccepted() {
        InputException refused = assertThrows(InputException.class,
                () -> new SetValue("hulls[0].diameter_m", "-1", "x").applied(PLAN));
        assertEquals("hulls[0].diameter_m", refused.key());
        assertTrue(refused.accepted().contains("0.1 to "), refused.accepted());
    }

    @ParameterizedTest
    @EnumSource(Part.Kind.class)
    void addsCopiesAndRemovesEveryKindAPlanCanHoldSeveralOf(Part.Kind kind) {
        if (kind.isSingle()) {
            assertEquals(Optional.empty(), NewPart.of(PLAN, kind, new Point(100, 100), 30));
            return;
        }
        AddItem add = NewPart.of(PLAN, kind, new Point(100, 100), 30).orElseThrow();
        Plan added = add.applied(PLAN);
        assertEquals(Part.ids(PLAN, kind).size() + 1, Part.ids(added, kind).size());
        assertEquals(added, PlanFiles.read(PlanFiles.text(added), "added"), "what was added can be saved and read");
        String other = NewPart.freeId(added, kind);
        Plan copied = new CopyPart(add.part(), other, 5, 5).applied(added);
        assertTrue(new Part(kind, other).isIn(copied));
        Plan removed = new RemovePart(add.part()).applied(new RemovePart(new Part(kind, other)).applied(copied));
        // A list that was added to and emptied again stays in the file as an empty list.
        assertEquals(PlanFiles.text(PLAN), PlanFiles.text(removed).replaceAll(",\n  \"[a-z_]+\": \\[\\]", ""));
    }

    @Test
    void removingAHullTakesItsStepsAlongAndForgetsThemInOthers() {
        Plan without = new RemovePart(HULL).applied(PLAN);
        assertEquals(List.of("3"), Part.ids(without, Part.Kind.WORK_STEP));
        assertEquals(List.of(), without.orderOfWork().get(0).after());
    }

    @Test
    void alignsAHatchSquarelyWithAnother() {
        AlignHatches edit = new AlignHatches("A/side", "B/main");
        Plan aligned = edit.applied(PLAN);
        HatchAxis fixed = HatchAxis.of(aligned, "A/side").orElseThrow();
        HatchAxis moved = HatchAxis.of(aligned, "B/main").orElseThrow();
        assertEquals(0, fixed.aside(moved.place()), ROUNDING);
        assertEquals(0, fixed.turnToFace(moved), 1e-4);
        assertTrue(fixed.ahead(moved.place()) > 1);
        assertEquals(PLAN.hull("A"), aligned.hull("A"), "the other hull stays");
    }

    @Test
    void hatchesLookOutOfTheirHull() {
        HatchAxis base = HatchAxis.of(PLAN, "A/main").orElseThrow();
        assertEquals(260, base.outward().degrees(), 1e-9);
        HatchAxis side = HatchAxis.of(PLAN, "A/side").orElseThrow();
        assertEquals(350, side.outward().degrees(), 1e-9, "left of azimuth 80 looks to 350");
    }

    @Test
    void turnsToAThousandthOfADegree() {
        Plan turned = new Turn("A", Azimuth.ofDegrees(123.45678)).applied(PLAN);
        assertEquals(123.457, turned.hull("A").orElseThrow().layDownAzimuth().degrees(), 1e-9);
    }

    @Test
    void anEditOfWhatIsGoneChangesNothing() {
        Part gone = Part.hull("Z");
        assertEquals(PLAN, new Move(gone, 1, 1).applied(PLAN));
        assertEquals(PLAN, new RemovePart(gone).applied(PLAN));
        assertEquals(PLAN, new CopyPart(gone, "Y", 1, 1).applied(PLAN));
        assertFalse(gone.isIn(PLAN));
        assertNotEquals(PLAN, new Move(HULL, 1, 1).applied(PLAN));
    }

    private static Plan withOneOfEachKind() {
        Plan plan = PLAN;
        for (Part.Kind kind : Part.Kind.values()) {
            if (!kind.isSingle()) {
                plan = NewPart.of(plan, kind, new Point(200, 200), 20).orElseThrow().applied(plan);
            }
        }
        return plan;
    }
}
