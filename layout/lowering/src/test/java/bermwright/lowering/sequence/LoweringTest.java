// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.lowering.ReferenceBody;
import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.chain.LoadCase;
import bermwright.lowering.chain.Part;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.statics.LoweringCase;
import bermwright.regolith.LunarProfile;
import bermwright.regolith.Regolith;
import bermwright.regolith.Soils;
import java.util.List;
import org.junit.jupiter.api.Test;

class LoweringTest {
    private static final Regolith SOIL = LunarProfile.with(Soils.strength(42, 500));

    private static LoweringCase casus(TippingBody body, Rig rig) {
        return new LoweringCase(body, rig, SOIL, Math.toRadians(2) / 60);
    }

    private static List<String> rules(Lowered lowered, Finding.Level level) {
        return lowered.findings().stream().filter(t -> t.level() == level).map(f -> f.rule().id()).distinct().toList();
    }

    private static double held(LoweringResult result, Part part) {
        return result.chain().rows().stream().filter(r -> r.part() == part && r.load() == LoadCase.HELD).findFirst()
                .orElseThrow().factor().orElseThrow();
    }

    @Test
    void listsEveryDegreeFromStandingToLying() {
        LoweringResult result = Lowering.of(casus(ReferenceBody.onRim(), ReferenceBody.fullRig(-56)))
                .result().orElseThrow();
        assertEquals(91, result.tilts().size());
        assertEquals(0, result.tilts().get(0).tilt());
        assertEquals(Math.PI / 2, result.tilts().get(90).tilt(), 1e-12);
        assertEquals(Math.PI / 2, result.atTilt(), 1e-12);
        assertEquals(89_194.4706, result.greatestLineTension(), 1e-3);
        assertEquals(25_872.3711, result.greatestPullOver(), 1e-3);
        assertEquals(Math.atan2(25.5, 58), result.lineAngleAtRest(), 1e-12);
        assertEquals(816_600 / 89_194.4706, held(result, Part.LOWERING_LINE), 1e-6);
        assertEquals(0.9 * 816_600 / 89_194.4706, held(result, Part.TERMINATION), 1e-6);
        assertEquals(250_000 / 89_194.4706, held(result, Part.WINCH), 1e-6);
        assertTrue(result.factors().line().orElseThrow() < held(result, Part.TERMINATION));
        assertTrue(result.factors().anchor().isPresent());
        assertTrue(result.factors().pivotHold().isPresent());
        assertEquals(901, Lowering.of(casus(ReferenceBody.onRim(), ReferenceBody.fullRig(-56)), 0.1)
                .result().orElseThrow().tilts().size());
    }

    @Test
    void handOverComesAfterBalanceByTheUncertaintyOfBoth() {
        LoweringResult result = Lowering.of(casus(ReferenceBody.onRim(), ReferenceBody.fullRig(-56)))
                .result().orElseThrow();
        assertEquals(12.680383, Math.toDegrees(result.balanceTilt()), 1e-6);
        assertEquals(13.680383, Math.toDegrees(result.handOverTilt()), 1e-6);
    }

    @Test
    void refusesASlopeThatTipsTheStandingHull() {
        Lowered lowered = Lowering.of(casus(ReferenceBody.onSlope(Math.toRadians(12.7)), ReferenceBody.fullRig(-56)));
        assertTrue(lowered.result().isEmpty());
        assertTrue(rules(lowered, Finding.Level.REFUSE).contains("lowering-falls-while-standing"));
    }

    @Test
    void findsAndNamesTheTiltsAtWhichAPoleAheadHoldsNothing() {
        Lowered lowered = Lowering.of(casus(ReferenceBody.onRim(),
                ReferenceBody.plainRig(new PlanePoint(20, 30), 0)));
        assertTrue(rules(lowered, Finding.Level.REFUSE).contains("lowering-dead-point"));
        DeadPoint dead = lowered.result().orElseThrow().deadPoints().get(0);
        assertEquals(DeadPoint.Kind.LOWERING_LINES_HOLD_NOTHING, dead.kind());
        assertEquals(12.680383, Math.toDegrees(dead.from()), 1e-6);
        assertEquals(39.529560, Math.toDegrees(dead.to()), 0.1);
    }

    @Test
    void namesAGroundAnchorThatPassesTooCloseToThePivot() {
        Lowered lowered = Lowering.of(casus(ReferenceBody.onRim(), ReferenceBody.groundRig(60, 0)));
        assertTrue(lowered.result().orElseThrow().deadPoints().stream()
                .anyMatch(d -> d.kind() == DeadPoint.Kind.LOWERING_LINES_PASS_CLOSE));
    }

    @Test
    void refusesALugBeyondTheHullAndAPoleInTheSweep() {
        Rig rig = ReferenceBody.fullRig(-56);
        var lines = rig.lines();
        Rig far = new Rig(new bermwright.lowering.rig.LoweringLines(2,
                new bermwright.lowering.rig.Lug(51, 0, 4.5), lines.line(), lines.winch(), 0, 1,
                lines.ends(), lines.slack()), rig.poles(),
                rig.stays(), rig.pullOver(), rig.pivotHold(), rig.factors());
        assertTrue(rules(Lowering.of(casus(ReferenceBody.onRim(), far)), Finding.Level.REFUSE)
                .contains("lowering-lug-beyond-hull"));
        Lowered inside = Lowering.of(casus(ReferenceBody.onRim(), ReferenceBody.plainRig(new PlanePoint(-3, 30), 0)));
        assertTrue(rules(inside, Finding.Level.REFUSE).contains("lowering-pole-in-sweep"));
    }

    @Test
    void saysWhichRatingsAreMissing() {
        Lowered lowered = Lowering.of(casus(ReferenceBody.onRim(), ReferenceBody.plainRig(ReferenceBody.HEAD, 0)));
        List<String> texts = lowered.findings().stream().filter(t -> t.rule().id().equals("lowering-rating-missing"))
                .map(Finding::text).toList();
        assertEquals(1, texts.size());
        assertTrue(texts.get(0).startsWith("Capacity not given, so not judged: "), texts.toString());
        assertTrue(texts.get(0).contains("; anchor of a lowering winch;"), texts.toString());
        assertFalse(texts.get(0).contains("; lowering winch;"), texts.toString());
    }

    @Test
    void saysWhichBalanceIsHigher() {
        LoweringResult result = Lowering.of(casus(ReferenceBody.onRim(), ReferenceBody.fullRig(-56)))
                .result().orElseThrow();
        double hand = ReferenceBody.WEIGHT * 20 / 44 / Math.sin(Math.atan2(25.5, 58));
        assertEquals(hand, result.balances().hand().orElseThrow(), 1e-6);
        assertTrue(hand > result.balances().full());
        assertTrue(result.balances().words().startsWith("The hand balance is higher"));
    }

    @Test
    void sweepOfTheBareCylinder() {
        LoweringResult result = Lowering.of(casus(ReferenceBody.onRim(), ReferenceBody.fullRig(-56)))
                .result().orElseThrow();
        // Corners are carried to the next eighth of a degree outwards.
        double outwards = 0.12;
        assertEquals(-9 - outwards / 2, result.sweep().least(), outwards / 2);
        assertEquals(50 + outwards / 2, result.sweep().most(), outwards / 2);
        assertEquals(Math.hypot(50, 9), result.sweep().highest(), 0.01);
        assertTrue(result.sweep().covers(new PlanePoint(-8.9, 40)));
        assertFalse(result.sweep().covers(new PlanePoint(-9.2, 20)));
    }
}
