// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.lowering.ReferenceBody;
import bermwright.lowering.body.Ground;
import bermwright.lowering.body.Pivot;
import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.chain.EdgeState;
import bermwright.lowering.rig.Ends;
import bermwright.lowering.rig.Line;
import bermwright.lowering.rig.LoweringLines;
import bermwright.lowering.rig.Lug;
import bermwright.lowering.rig.Poles;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.rig.ThermalAction;
import bermwright.lowering.rig.Winch;
import bermwright.lowering.sequence.Lowering;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.statics.LoweringCase;
import bermwright.regolith.LunarProfile;
import bermwright.regolith.Regolith;
import bermwright.regolith.Soils;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ReviewTest {
    private static final Regolith SOIL = LunarProfile.with(Soils.strength(42, 500));
    private static final double RATE = Math.toRadians(0.5);

    private static LoweringCase casus(TippingBody body, Rig rig) {
        return new LoweringCase(body, rig, SOIL, RATE);
    }

    private static Review review(LoweringCase setup) {
        LoweringResult result = Lowering.of(setup).result().orElseThrow();
        return Reviews.of(setup, result);
    }

    /** Two lines in planes side by side, 31 m from head to winch. */
    private static Rig parallel(double mismatch) {
        Rig full = ReferenceBody.fullRig(-14);
        Winch winch = new Winch(new PlanePoint(-14, -1), OptionalDouble.of(250_000), OptionalDouble.of(5e6),
                Optional.empty());
        return new Rig(new LoweringLines(2, new Lug(ReferenceBody.LUG, 0, 4.5), ReferenceBody.rope(), winch, mismatch,
                1, Ends.USUAL, LoweringLines.USUAL_SLACK), Optional.of(new Poles(new PlanePoint(-14, 0),
                ReferenceBody.HEAD, 4.5, Optional.empty(), OptionalDouble.empty())),
                full.stays(), full.pullOver(), full.pivotHold(), full.factors());
    }

    @Test
    void unequalPayOutPullsTheLinesApart() {
        LineReview lines = review(casus(ReferenceBody.onRim(), parallel(0.05))).lines();
        assertEquals(94.358109, lines.longest(), 6e-7);
        assertEquals(43_149.5, lines.mismatch().difference(), 0.1);
        assertEquals(178_117.374 / 2 + 43_149.5 / 2, lines.mismatch().hardest(), 0.1);
        assertFalse(lines.mismatch().slack());
        assertTrue(lines.mismatch().sidePull().isEmpty());
        assertEquals(0.048408, lines.sag(), 3e-4);
        assertEquals(39.590818, lines.paidOut(), 0.3);
        assertEquals(94.358109 * 1.2e-5 * 100, lines.coolingShortening(), 1e-9);
        assertEquals(81_430_081.58 * 1.2e-5 * 100, lines.coolingGain().orElseThrow(), 1e-3);
    }

    @Test
    void unequalTensionYawsAndRollsTheHull() {
        LineReview.Mismatch apart = review(casus(ReferenceBody.onRim(), parallel(44_529.34 / 862_989.757)))
                .lines().mismatch();
        assertEquals(80_648.59, apart.rollMoment(), 0.1);
        assertEquals(183_436.01, apart.yawMoment(), 0.1);
        LineReview.Mismatch far = review(casus(ReferenceBody.onRim(), parallel(1))).lines().mismatch();
        assertTrue(far.slack());
        assertEquals(322_594.36, far.rollMoment(), 0.1);
        assertEquals(733_744.04, far.yawMoment(), 0.1);
    }

    @Test
    void motionAtSixtyDegrees() {
        MotionReview motion = review(casus(ReferenceBody.onRim(), parallel(0))).motion();
        MotionState sixty = motion.states().stream().filter(s -> Math.abs(s.tilt() - Math.PI / 3) < 1e-9).findFirst()
                .orElseThrow();
        assertEquals(2.075260, sixty.stopFactor(), 6e-7);
        assertEquals(3_110_400, motion.brakeHeat(), 1e-6);
        assertEquals(0.2816320082, motion.freeRate(), 6e-11);
        assertEquals(14.307904, motion.freeSpeed(), 6e-7);
        assertEquals(22.53671859, motion.freeTime(), 6e-9);
        assertEquals(180, motion.duration(), 1e-9);
        assertTrue(sixty.runAwaySpeed() < motion.freeSpeed());
        assertTrue(motion.runOnRate() > RATE);
    }

    @Test
    void everyLossAtEveryFifthDegreeSaysWhatThen() {
        List<Loss> losses = review(casus(ReferenceBody.onRim(), ReferenceBody.fullRig(-14))).losses();
        assertTrue(losses.stream().anyMatch(l -> l.outcome() == Loss.Outcome.ROCKS_BACK && l.tilt() == 0));
        Loss line = losses.stream().filter(l -> l.lost().startsWith("a lowering line")
                && l.tilt() > Math.toRadians(89)).findFirst().orElseThrow();
        // Held before by a winch line of 816.6 kN and called "holds"; its rim cannot keep it from turning in plan.
        assertEquals(Loss.Outcome.FALLS, line.outcome());
        assertTrue(line.words().contains("; pivot against turning in plan: demand"), line.words());
        Loss hold = losses.stream().filter(l -> l.lost().equals("the hold at the pivot")
                && l.tilt() > Math.toRadians(89)).findFirst().orElseThrow();
        assertEquals(Loss.Outcome.SLIDES, hold.outcome());
        losses.forEach(l -> assertFalse(l.words().isBlank()));
    }

    @Test
    void aSingleLineLostLetsTheHullFall() {
        List<Loss> losses = review(casus(ReferenceBody.onRim(), ReferenceBody.plainRig(ReferenceBody.HEAD, 0)))
                .losses();
        Loss line = losses.stream().filter(l -> l.lost().startsWith("a lowering line")).findFirst().orElseThrow();
        assertEquals(Loss.Outcome.FALLS, line.outcome());
        assertTrue(line.speed() > 13 && line.speed() < 14.5);
    }

    @Test
    void theRimSinksAndShoesCarry() {
        Review rim = review(casus(ReferenceBody.onRim(), ReferenceBody.fullRig(-14)));
        EdgeState middle = rim.edge().stream().filter(e -> Math.abs(e.tilt() - Math.PI / 4) < 1e-9).findFirst()
                .orElseThrow();
        assertTrue(middle.sinkage() > 0.05 && middle.sinkage() < 0.5, "" + middle.sinkage());
        assertEquals(0.336650 / 0.5, middle.frictionUsed(), 1e-6);
        TippingBody shod = new TippingBody(ReferenceBody.body(20, 0), new Pivot.Shoes(4.5, 4, 0.7),
                new Ground(ReferenceBody.GRAVITY, 0, 0, 0.5));
        EdgeState shoes = review(casus(shod, ReferenceBody.fullRig(-14))).edge().get(0);
        assertEquals(1.4, shoes.area(), 1e-12);
        assertEquals(shoes.pressure() * 1.4 / 820_000 / 1.4, shoes.sinkage(), 0.01 * shoes.sinkage());
    }

    @Test
    void windowsOfLightSayWhereTheLinesCool() {
        Rig plain = parallel(0.05);
        Line rope = plain.lines().line();
        ThermalAction thermal =
                new ThermalAction(200, ThermalAction.STEEL_EXPANSION, List.of(new ThermalAction.Light(0, 60, true),
                new ThermalAction.Light(60, 90, false), new ThermalAction.Light(90, 120, false),
                        new ThermalAction.Light(120, 150, true)));
        Line line = new Line(rope.breakingLoad(), rope.massPerLength(), rope.stiffness(), rope.diameter(), thermal);
        LoweringLines lines = plain.lines();
        Rig rig = new Rig(new LoweringLines(2, lines.lug(), line, lines.winch(), 0.05, 1, lines.ends(),
                lines.slack()), plain.poles(), plain.stays(),
                plain.pullOver(), plain.pivotHold(), plain.factors());
        LineReview review = review(casus(ReferenceBody.onRim(), rig)).lines();
        assertEquals(2, review.lightChanges().size());
        LineReview.LightChange shade = review.lightChanges().get(0);
        assertEquals(60 * RATE, shade.tilt(), 1e-12);
        assertTrue(shade.intoShade());
        assertFalse(review.lightChanges().get(1).intoShade());
        assertEquals(195_432, shade.gain().orElseThrow(), 1);
        assertEquals(150 * RATE, review.lightUnknownFrom().orElseThrow(), 1e-12);
        assertEquals(94.358109 * 1.2e-5 * 200, review.coolingShortening(), 1e-9);
    }
}
