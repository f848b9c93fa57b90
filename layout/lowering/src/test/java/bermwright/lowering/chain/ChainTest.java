// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.chain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Verdict;
import bermwright.lowering.ReferenceBody;
import bermwright.lowering.body.Body;
import bermwright.lowering.body.MassCentre;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.motion.Shock;
import bermwright.lowering.review.Loss;
import bermwright.lowering.review.Reviews;
import bermwright.lowering.rig.Anchor;
import bermwright.lowering.rig.GearPoints;
import bermwright.lowering.rig.LoweringLines;
import bermwright.lowering.rig.Poles;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.rig.Tube;
import bermwright.lowering.rig.Winch;
import bermwright.lowering.sequence.Lowering;
import bermwright.lowering.statics.LoweringCase;
import bermwright.regolith.LunarProfile;
import bermwright.regolith.Regolith;
import bermwright.regolith.Soils;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** "Holds" means that the whole chain holds, at its worst load. */
class ChainTest {
    private static final double EXACT = 1e-9;
    private static final Regolith SOIL = LunarProfile.with(Soils.strength(42, 500));
    private static final double SLOW = Math.toRadians(2) / 60;

    private static LoweringCase casus(Rig rig, double rate) {
        return new LoweringCase(ReferenceBody.onRim(), rig, SOIL, rate);
    }

    private static Rig with(Rig rig, LoweringLines lines, Optional<Poles> poles) {
        return new Rig(lines, poles, rig.stays(), rig.pullOver(), rig.pivotHold(), rig.factors());
    }

    private static Rig efficiency(Rig rig, double efficiency) {
        LoweringLines l = rig.lines();
        return with(rig, new LoweringLines(l.count(), l.lug(), l.line(), l.winch(), l.payOutMismatch(), efficiency,
                l.ends(), l.slack()), rig.poles());
    }

    private static ChainRow row(Chain chain, Part part, LoadCase load) {
        return chain.rows().stream().filter(r -> r.part() == part && r.load() == load).findFirst().orElseThrow();
    }

    /** Paid out at 300 deg/min the jolt of a stop governs the line, and its factor is the one that is said. */
    @Test
    void aFastRateGovernsTheLine() {
        Rig rig = ReferenceBody.fullRig(-56);
        Chain slow = Chain.of(casus(rig, SLOW));
        Chain fast = Chain.of(casus(rig, 150 * SLOW));
        ChainRow line = fast.governing(Part.LOWERING_LINE).orElseThrow();
        assertEquals(LoadCase.Kind.SHOCK, line.load().kind());
        assertTrue(fast.factors().line().orElseThrow() < 0.5 * slow.factors().line().orElseThrow());
        ChainRow stop = row(fast, Part.LOWERING_LINE, LoadCase.STOP);
        double jolt = Shock.emergencyStop(casus(rig, 150 * SLOW).held().orElseThrow(), stop.tilt(), 150 * SLOW)
                .extra();
        assertTrue(stop.demand().orElseThrow() > jolt / 2);
        assertTrue(fast.factors().line().orElseThrow() <= stop.factor().orElseThrow());
    }

    /** Hauled back over a sheave of 0.8 the winch pulls 1.25 times as much, and that factor is the one that is said. */
    @Test
    void theSheaveCountsInTheFactorOfTheWinch() {
        Chain plain = Chain.of(casus(efficiency(ReferenceBody.fullRig(-56), 1), SLOW));
        Chain hauled = Chain.of(casus(efficiency(ReferenceBody.fullRig(-56), 0.8), SLOW));
        assertEquals(0.8 * row(plain, Part.WINCH, LoadCase.HELD).factor().orElseThrow(),
                row(hauled, Part.WINCH, LoadCase.HAULING_BACK).factor().orElseThrow(), EXACT);
        assertTrue(row(hauled, Part.POLE, LoadCase.HAULING_BACK).demand().orElseThrow()
                > row(plain, Part.POLE, LoadCase.HELD).demand().orElseThrow());
        assertTrue(row(hauled, Part.STAY, LoadCase.PAYING_OUT).demand().orElseThrow()
                > row(plain, Part.STAY, LoadCase.HELD).demand().orElseThrow());
    }

    /** A centre of mass one tenth further out asks a tenth more: twice its spread is looked at to either end. */
    @Test
    void theSpreadOfTheCentreOfMassCounts() {
        TippingBody sure = ReferenceBody.onRim();
        Body body = sure.body();
        Body unsure = body.withCentre(new MassCentre(20, 0, 1));
        Rig rig = ReferenceBody.fullRig(-56);
        Chain stated = Chain.of(casus(rig, SLOW));
        Chain spread = Chain.of(new LoweringCase(sure.with(unsure), rig, SOIL, SLOW));
        ChainRow held = row(spread, Part.LOWERING_LINE, LoadCase.HELD);
        assertEquals(2, held.shift(), EXACT);
        assertEquals("held, centre of mass 2.00 m nearer the far end", held.loadWords());
        assertEquals(1.1 * row(stated, Part.LOWERING_LINE, LoadCase.HELD).demand().orElseThrow(),
                held.demand().orElseThrow(), 1e-3 * held.demand().orElseThrow());
    }

    /** A pole at half its strength, and an anchor: what is left after a loss is asked to its last part. */
    @Test
    void whatIsLeftHoldsOnlyIfEveryPartOfItDoes() {
        Rig rig = ReferenceBody.fullRig(-14);
        Poles p = rig.poles().orElseThrow();
        Poles weak = new Poles(p.foot(), p.head(), p.halfSpread(), Optional.of(new Tube(0.1, 0.004, 355e6, 210e9)),
                p.footArea(), p.count(), p.headGear());
        Chain left = Chain.after(casus(with(rig, rig.lines(), Optional.of(weak)), SLOW), LoadCase.LINE_LOST,
                Math.toRadians(85));
        assertEquals(Verdict.NOT_MET, row(left, Part.POLE, LoadCase.LINE_LOST).verdict());
        assertEquals(Verdict.NOT_MET, left.verdict());
        LoweringLines l = rig.lines();
        Winch w = l.winch();
        Winch loose = new Winch(w.at(), w.rating(), w.brakeHeat(), Optional.of(new Anchor.Ballast(10_000)),
                w.holding(), w.spacing());
        Chain anchored = Chain.after(casus(with(rig, new LoweringLines(2, l.lug(), l.line(), loose, 0.05, 1, l.ends(),
                l.slack()), rig.poles()), SLOW), LoadCase.LINE_LOST, Math.toRadians(85));
        assertEquals(Verdict.NOT_MET, row(anchored, Part.WINCH_ANCHOR, LoadCase.LINE_LOST).verdict());
    }

    /** With its only pole lost, nothing is left of a rig, whatever its line bears. */
    @Test
    void theOnlyPoleLostLetsTheHullFall() {
        Rig rig = ReferenceBody.plainRig(ReferenceBody.HEAD, 0);
        LoweringCase setup = casus(rig, SLOW);
        List<Loss> losses = Reviews.of(setup, Lowering.of(setup).result().orElseThrow()).losses();
        assertTrue(losses.stream().anyMatch(l -> l.lost().equals("a pole")));
        assertTrue(losses.stream().filter(l -> l.lost().equals("a pole"))
                .allMatch(l -> l.outcome() == Loss.Outcome.FALLS));
    }

    /** Of four lines in one plane three are left: each takes a third, and jolts by the share it gains. */
    @Test
    void theOthersTakeTheShareOfALostLineAndJolt() {
        Rig rig = ReferenceBody.plainRig(ReferenceBody.HEAD, 0);
        LoweringLines l = rig.lines();
        Winch winch = new Winch(l.winch().at(), l.winch().rating(), l.winch().brakeHeat(), l.winch().anchor(),
                l.winch().holding(), 0);
        Rig four = with(rig, new LoweringLines(4, l.lug(), l.line(), winch, 0, 1, l.ends(), l.slack()), rig.poles());
        double tilt = Math.toRadians(80);
        LoweringCase setup = casus(four, SLOW);
        GearPoints points = GearPoints.of(four);
        double each = new bermwright.lowering.statics.Statics(setup.tipping(), four).at(tilt).orElseThrow().lineEach();
        RemainingLines left = RemainingLines.of(points.lines(setup.tipping(), l.lug(), tilt),
                new boolean[] {false, true, true, true}, setup.tipping().tippingMoment(tilt));
        double third = 4 * each / 3;
        for (int i = 1; i < 4; i++) {
            assertEquals(third, left.tensions()[i], 1e-6 * each * 4);
        }
        ChainRow line = row(Chain.after(setup, LoadCase.LINE_LOST, tilt), Part.LOWERING_LINE, LoadCase.LINE_LOST);
        assertEquals(2 * third - each, line.demand().orElseThrow(), 2e-2 * each);
    }

    /** What is not rated is not judged, and never met. */
    @Test
    void whatIsNotRatedIsNotJudged() {
        Chain chain = Chain.of(casus(ReferenceBody.plainRig(ReferenceBody.HEAD, 0), SLOW));
        ChainRow anchor = chain.governing(Part.WINCH_ANCHOR).orElseThrow();
        assertEquals(OptionalDouble.empty(), anchor.factor());
        assertEquals(Verdict.NOT_JUDGED, anchor.verdict());
        assertEquals("not given, so not judged", anchor.source());
    }
}
