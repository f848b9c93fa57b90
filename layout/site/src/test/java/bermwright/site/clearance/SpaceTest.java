// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.finding.PairingRule;
import bermwright.finding.Rule;
import bermwright.foundation.Point;
import bermwright.site.example.SiteExample;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

/**
 * The cases that a comparison of outlines from above got wrong. Hull A of the example is laid down north from (300,
 * 300): its pivot line lies at north 304, its poles of 28 m at 294, its winches at 259, its pull-over anchor at 364.
 */
class SpaceTest {
    private static List<Finding> check(Plan plan, DoubleBinaryOperator height) {
        Optional<ElevationGrid> ground = Optional.of(SiteExample.ground(height));
        return Clearance.of(SiteShapes.of(plan, ground, Map.of()), ground).findings();
    }

    private static List<Finding> check(DoubleBinaryOperator height) {
        return check(SiteExample.plan(SiteExample.hull("A", 300, 300, 0)), height);
    }

    private static Optional<Finding> first(List<Finding> findings, Rule rule) {
        return findings.stream().filter(f -> f.rule() == rule).findFirst();
    }

    /** A ridge that runs east, of a height and half a width at its foot, with its crest at a north. */
    private static DoubleBinaryOperator ridge(double north, double high, double half) {
        return (e, n) -> Math.max(0, high * (1 - Math.abs(n - north) / half));
    }

    @Test
    void aRidgeAcrossThePullOverLineIsRefusedWhereItIs() {
        Finding ridge = first(check(ridge(352, 20, 6)), PairingRule.LINE_MEETS_GROUND).orElseThrow();
        assertEquals(Finding.Level.REFUSE, ridge.level());
        assertEquals(352, ridge.place().orElseThrow().north(), 3);
        assertTrue(ridge.measured().orElseThrow() < -5, ridge.text());
        assertTrue(ridge.text().contains("pull-over line") && ridge.text().contains("tilt"), ridge.text());
        assertTrue(ridge.todo().contains("cut the ground") || ridge.todo().contains("Cut the ground"), ridge.todo());
        assertTrue(first(check(ridge(352, 2, 6)), PairingRule.LINE_MEETS_GROUND).isEmpty());
    }

    @Test
    void aRidgeBetweenPoleAndWinchIsRefusedAndTheRaiseOfTheHeadThatIsNamedIsEnough() {
        Finding ridge = check(ridge(275, 16, 5)).stream().filter(f -> f.rule() == PairingRule.LINE_MEETS_GROUND
                && f.text().contains("pole to winch")).findFirst().orElseThrow();
        assertEquals(275, ridge.place().orElseThrow().north(), 2);
        assertTrue(ridge.todo().startsWith("Raise the pole head by "), ridge.todo());
        double by = Double.parseDouble(ridge.todo().replaceAll("Raise the pole head by ([0-9.]+) m.*", "$1"));
        Plan higher = SiteExample.plan(withPoles(SiteExample.hull("A", 300, 300, 0), 28 + by));
        assertTrue(check(higher, ridge(275, 16, 5)).stream().noneMatch(f -> f.rule() == PairingRule.LINE_MEETS_GROUND
                && f.text().contains("pole to winch")));
        Plan tooLow = SiteExample.plan(withPoles(SiteExample.hull("A", 300, 300, 0), 28 + by - 0.5));
        assertTrue(check(tooLow, ridge(275, 16, 5)).stream().anyMatch(f -> f.text().contains("pole to winch")
                || f.todo().contains("pole head")));
    }

    private static Hull withPoles(Hull hull, double height) {
        return hull.withLowering(hull.lowering().map(g -> new LoweringGear(g.means(), g.rate(), g.wander(),
                g.margin(), g.lines(), g.poles().map(p -> new LoweringGear.Poles(height, p.behindPivot(),
                        p.halfSpread(), p.diameter(), p.wall(), p.yield(), p.modulus(), p.footArea(), p.count(),
                        p.head(), p.annotations())), g.stays(), g.pullOver(), g.pivotHold(), g.sideThrusters(),
                                g.landing(),
                g.temperature(), g.annotations())));
    }

    @Test
    void aHillInsideTheMarginOfTheSweepIsRefused() {
        DoubleBinaryOperator hill = (e, n) -> Math.abs(e - 306.5) < 1.5 && Math.abs(n - 325) < 5 ? 4 : 0;
        Finding near = first(check(hill), PairingRule.GROUND_IN_SWEEP).orElseThrow();
        assertEquals(Finding.Level.REFUSE, near.level());
        assertEquals(2, near.limit().orElseThrow());
        assertEquals(325, near.place().orElseThrow().north(), 6);
        DoubleBinaryOperator off = (e, n) -> Math.abs(e - 312.5) < 1.5 && Math.abs(n - 325) < 5 ? 4 : 0;
        assertTrue(first(check(off), PairingRule.GROUND_IN_SWEEP).isEmpty());
    }

    @Test
    void aHighRidgeUnderTheHullIsRefusedAndALowOneIsABellysMatter() {
        Finding high = first(check(ridge(326, 6, 5)), PairingRule.GROUND_IN_SWEEP).orElseThrow();
        assertEquals(0, high.measured().orElseThrow());
        assertTrue(high.text().contains("deg before it lies"), high.text());
        assertTrue(first(check(ridge(326, 1, 4)), PairingRule.GROUND_IN_SWEEP).isEmpty());
    }

    @Test
    void aLineHighOverALyingHullIsNoFinding() {
        // The winch lines of A fall from 28 m at north 294 to the ground at 259; B lies across below them.
        Hull b = SiteExample.with(SiteExample.hull("B", 280, 289, 90), Hull.Arrival.LANDS_LYING, 0, List.of());
        List<Finding> under = check(SiteExample.plan(withPoles(SiteExample.hull("A", 300, 300, 0), 60), b),
                (e, n) -> 0);
        assertFalse(first(under, PairingRule.LINE_OVER_HULL).isPresent(), under.toString());
        Hull low = b.withBaseCentre(new Point(280, 268));
        Finding struck = first(check(SiteExample.plan(withPoles(SiteExample.hull("A", 300, 300, 0), 28), low),
                (e, n) -> 0), PairingRule.LINE_OVER_HULL).orElseThrow();
        assertEquals(Finding.Level.REFUSE, struck.level());
        assertTrue(struck.todo().contains("Shift hull A"), struck.todo());
    }

    @Test
    void aWinchLineThroughAFinishedMoundIsAFindingOfThatMound() {
        Plan plan = SiteExample.plan(SiteExample.hull("A", 300, 300, 0), SiteExample.hull("B", 450, 450, 90));
        Optional<ElevationGrid> ground = Optional.of(SiteExample.level());
        ElevationGrid mound = SiteExample.ground((e, n) -> Math.max(0, 14 - Math.abs(n - 270)));
        List<Finding> findings = Clearance.of(SiteShapes.of(plan, ground, Map.of()), ground, Map.of("B", mound))
                .findings();
        Finding through = first(findings, PairingRule.LINE_THROUGH_COVER).orElseThrow();
        assertTrue(through.text().contains("cover of hull B"), through.text());
        assertTrue(through.measured().orElseThrow() < 0);
        assertTrue(first(Clearance.of(SiteShapes.of(plan, ground, Map.of()), ground, Map.of("A", mound)).findings(),
                PairingRule.LINE_THROUGH_COVER).stream().noneMatch(f -> f.subject().equals("A")));
    }

    @Test
    void linesOverGroundThatIsNotKnownAreSaid() {
        assertTrue(first(check((e, n) -> n > 350 ? Double.NaN : 0), PairingRule.LINE_GROUND_UNKNOWN).isPresent());
    }

    @Test
    void levelGroundIsClear() {
        assertEquals(List.of("belly-not-known"), check((e, n) -> 0).stream().map(f -> f.rule().id()).toList());
        assertEquals(List.of("belly-not-known"), check((e, n) -> -0.05 * n + 0.03 * e).stream()
                .map(f -> f.rule().id()).toList());
    }
}
