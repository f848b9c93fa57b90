// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.example.SiteExample.Change;
import bermwright.site.example.SiteExample;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.plan.Corridor;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.Hull;
import bermwright.site.plan.KeepOut;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.LandingPad;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Seat;
import bermwright.site.plan.Tunnel;
import bermwright.site.plan.WorkStep;
import bermwright.site.planfile.PlanValues;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class ClearanceTest {
    /** Outlines lie on whole millimetres. */
    private static final double SNAP = 0.003;

    private static List<Finding> check(Plan plan, ElevationGrid ground) {
        return Clearance.of(SiteShapes.of(plan, Optional.of(ground), Map.of()), Optional.of(ground)).findings();
    }

    private static List<Finding> check(Plan plan) {
        return check(plan, SiteExample.level());
    }

    private static Optional<Finding> first(List<Finding> findings, String rule) {
        return findings.stream().filter(f -> f.rule().id().equals(rule)).findFirst();
    }

    private static boolean has(List<Finding> findings, String rule) {
        return first(findings, rule).isPresent();
    }

    @Test
    void aLoneHullOnLevelGroundBreaksNothing() {
        assertEquals(List.of("belly-not-known"),
                check(SiteExample.plan(SiteExample.hull("A", 300, 300, 0))).stream().map(f -> f.rule().id()).toList());
    }

    @Test
    void aPlanWithoutHullsIsAFinding() {
        assertEquals("no-hull", check(SiteExample.plan()).get(0).rule().id());
    }

    @Test
    void measuresTheDistanceBetweenTwoLyingHulls() {
        List<Finding> findings = check(SiteExample.plan(SiteExample.hull("A", 300, 300, 0),
                SiteExample.hull("B", 313, 300, 0)));
        Finding spacing = first(findings, "hull-spacing").orElseThrow();
        assertEquals(5, spacing.measured().orElseThrow(), SNAP);
        assertEquals(8, spacing.limit().orElseThrow());
        assertEquals("m", spacing.unit());
        assertEquals(306.5, spacing.place().orElseThrow().east(), 1);
        assertFalse(has(check(SiteExample.plan(SiteExample.hull("A", 300, 300, 0),
                SiteExample.hull("B", 316.01, 300, 0))), "hull-spacing"));
    }

    @Test
    void twoHullsInOnePlaceAreAFinding() {
        Finding same = first(check(SiteExample.plan(SiteExample.hull("A", 300, 300, 0),
                SiteExample.hull("B", 300, 300, 0))), "hulls-in-one-place").orElseThrow();
        assertEquals(Finding.Level.REFUSE, same.level());
        assertEquals(0, same.measured().orElseThrow());
    }

    @Test
    void theSpacingHoldsForEveryLandingInsideTheDispersion() {
        Hull a = SiteExample.with(SiteExample.hull("A", 300, 300, 0), Hull.Arrival.LOWERED, 1.5, List.of());
        List<Finding> findings = check(SiteExample.plan(a, SiteExample.hull("B", 317, 300, 0)));
        Finding dispersion = first(findings, "landing-dispersion").orElseThrow();
        assertEquals(7.5, dispersion.measured().orElseThrow(), SNAP);
        assertFalse(has(findings, "hull-spacing"));
    }

    @Test
    void whatOnlySomeLandingsTouchIsMeasuredAgainstTheDispersion() {
        Hull a = SiteExample.with(SiteExample.hull("A", 300, 300, 0), Hull.Arrival.STAYS_UPRIGHT, 1.5, List.of());
        Change change = new Change();
        change.keepOuts = List.of(new KeepOut("K", "boulders", SiteExample.square(306, 300, 2), Annotations.NOTHING));
        Finding some = first(check(SiteExample.with(SiteExample.plan(a), change)), "landing-dispersion").orElseThrow();
        assertEquals(1, some.measured().orElseThrow(), SNAP);
        assertEquals(1.5, some.limit().orElseThrow());
    }

    @Test
    void aSweepOverAnotherHullIsRefused() {
        List<Finding> findings = check(SiteExample.plan(SiteExample.hull("A", 300, 300, 0),
                SiteExample.hull("B", 300, 335, 90)));
        assertEquals(Finding.Level.REFUSE, first(findings, "sweep-over-hull").orElseThrow().level());
    }

    @Test
    void keepOutsMayNotBeTouched() {
        Change change = new Change();
        change.keepOuts = List.of(new KeepOut("K", "boulders", SiteExample.square(306.5, 320, 2), Annotations.NOTHING));
        Finding keepOut = first(check(SiteExample.with(SiteExample.plan(SiteExample.hull("A", 300, 300, 0)), change)),
                "keep-out").orElseThrow();
        assertEquals("A", keepOut.subject());
        assertEquals(306, keepOut.place().orElseThrow().east(), 1);
        // The hull, 8 m wide about east 300, reaches to 304: half of the 2 m square. The sweep is compared in space.
        change.keepOuts = List.of(new KeepOut("K", "boulders", SiteExample.square(304, 320, 2), Annotations.NOTHING));
        Finding overlap = first(check(SiteExample.with(SiteExample.plan(SiteExample.hull("A", 300, 300, 0)), change)),
                "keep-out").filter(f -> f.unit().equals("m2")).orElseThrow();
        assertEquals(2, overlap.measured().orElseThrow(), 4 * SNAP);
        assertEquals(0, overlap.limit().orElseThrow());
        assertTrue(overlap.text().startsWith("Lying hull A and keep-out K (boulders) overlap by 2.00 m², on ground"
                + " 1.00 m wide."), overlap.text());
        change.keepOuts = List.of(new KeepOut("K", "boulders", SiteExample.square(320, 320, 2), Annotations.NOTHING));
        assertFalse(has(check(SiteExample.with(SiteExample.plan(SiteExample.hull("A", 300, 300, 0)), change)),
                "keep-out"));
    }

    @Test
    void aLyingHullBlocksAWayAndItsSweepClosesOne() {
        Change change = new Change();
        change.corridors = List.of(new Corridor("W", 6, Math.toRadians(10),
                List.of(new Point(200, 320), new Point(400, 320)), Annotations.NOTHING));
        assertTrue(has(check(SiteExample.with(SiteExample.plan(SiteExample.hull("A", 300, 300, 0)), change)),
                "corridor-blocked"));
        change.corridors = List.of(new Corridor("W", 6, Math.toRadians(10),
                List.of(new Point(308, 250), new Point(308, 400)), Annotations.NOTHING));
        List<Finding> findings = check(SiteExample.with(SiteExample.plan(SiteExample.hull("A", 300, 300, 0)), change));
        assertFalse(has(findings, "corridor-blocked"));
        assertTrue(has(findings, "corridor-closed"));
    }

    @Test
    void aHullInsideAPadsStandOffIsRefusedUnlessItLandsThere() {
        Change change = new Change();
        change.pads = List.of(new LandingPad("P", new Point(100, 300), 15, 210, Annotations.NOTHING));
        Finding pad = first(check(SiteExample.with(SiteExample.plan(SiteExample.hull("A", 300, 300, 0)), change)),
                "pad-stand-off").orElseThrow();
        assertEquals(196, pad.measured().orElseThrow(), 0.01);
    }

    @Test
    void borrowTooNearAnAnchorIsRefused() {
        Change change = new Change();
        change.borrow = List.of(SiteExample.borrow("B1", SiteExample.square(306, 250, 10), 0.8));
        assertTrue(has(check(SiteExample.with(SiteExample.plan(SiteExample.hull("A", 300, 300, 0)), change)),
                "borrow-too-near"));
        change.borrow = List.of(SiteExample.borrow("B1", SiteExample.square(400, 100, 40), 0.8));
        assertFalse(has(check(SiteExample.with(SiteExample.plan(SiteExample.hull("A", 300, 300, 0)), change)),
                "borrow-too-near"));
    }

    @Test
    void aHullOffTheGridOrOverMissingGroundIsAFinding() {
        assertTrue(has(check(SiteExample.plan(SiteExample.hull("A", 300, 580, 0))), "hull-off-grid"));
        ElevationGrid hole = SiteExample.ground((e, n) -> Math.hypot(e - 300, n - 320) < 3 ? Double.NaN : 0);
        assertTrue(has(check(SiteExample.plan(SiteExample.hull("A", 300, 300, 0)), hole), "ground-unknown"));
    }

    @Test
    void slopesAlongAndAcrossAreToldApart() {
        double steep = Math.tan(Math.toRadians(7));
        Finding along = first(check(SiteExample.plan(SiteExample.hull("A", 300, 300, 0)),
                SiteExample.ground((e, n) -> steep * n)), "slope-under-hull").orElseThrow();
        assertEquals(7, along.measured().orElseThrow(), 1e-6);
        assertTrue(along.text().contains("along it"), along.text());
        Finding across = first(check(SiteExample.plan(SiteExample.hull("A", 300, 300, 0)),
                SiteExample.ground((e, n) -> steep * e)), "slope-under-hull").orElseThrow();
        assertTrue(across.text().contains("across it"), across.text());
    }

    @Test
    void aSlopeTheHeightsCannotTellFromTheLimitIsNotClear() {
        double nearly = Math.tan(Math.toRadians(4.95));
        Finding unsure = first(check(SiteExample.plan(SiteExample.hull("A", 300, 300, 0)),
                SiteExample.ground((e, n) -> nearly * e)), "slope-under-hull").orElseThrow();
        assertEquals(Finding.Level.WARN, unsure.level());
    }

    @Test
    void aRidgeUnderTheBellyIsAHighSpotAndTheHullRestsOnIt() {
        ElevationGrid ridge = SiteExample.ground((e, n) -> Math.max(0, 1 - Math.abs(n - 326) / 4));
        Finding spot = first(check(SiteExample.plan(SiteExample.hull("A", 300, 300, 0)), ridge), "belly-high-spot")
                .orElseThrow();
        assertEquals(326, spot.place().orElseThrow().north(), 0.6);
        assertTrue(spot.measured().orElseThrow() > 0.5 && spot.measured().orElseThrow() < 1.01, spot.text());
        assertTrue(spot.text().contains("22.0 m"), spot.text());
    }

    @Test
    void aHullSunkByItsDiameterOrMoreLiesInAPitAndIsRefused() {
        Hull hull = SiteExample.hull("A", 300, 300, 0);
        double deep = hull.diameter() + 0.5;
        List<Finding> pit = check(SiteExample.plan(hull.withSeat(Seat.usual(Seat.Kind.GROUND, deep, 0))));
        Finding under = first(pit, "hull-under-ground").orElseThrow();
        assertEquals(Finding.Level.REFUSE, under.level());
        assertEquals(deep, under.measured().orElseThrow(), SNAP);
        assertEquals(hull.diameter(), under.limit().orElseThrow(), SNAP);
        assertFalse(has(check(SiteExample.plan(hull.withSeat(Seat.usual(Seat.Kind.GROUND, hull.diameter() - 0.1, 0)))),
                "hull-under-ground"));
        assertFalse(has(check(SiteExample.plan(hull.withSeat(Seat.usual(Seat.Kind.CRADLE, deep, 1)))),
                "hull-under-ground"), "a cradle lifts its crown over the ground");
    }

    @Test
    void whatIsSmallerThanACellUnderTheBellyIsNotKnown() {
        assertTrue(has(check(SiteExample.plan(SiteExample.hull("A", 300, 300, 0))), "belly-not-known"));
    }

    @Test
    void anchorsOnSteepGroundAreAFinding() {
        ElevationGrid bank = SiteExample.ground((e, n) -> n < 270 ? (270 - n) * 0.4 : 0);
        List<Finding> findings = check(SiteExample.plan(SiteExample.hull("A", 300, 300, 0)), bank);
        Finding steep = first(findings, "gear-on-steep-ground").orElseThrow();
        assertEquals(Math.toDegrees(Math.atan(0.4)), steep.measured().orElseThrow(), 0.01);
    }

    @Test
    void aPullOverAnchorUnderTheFallingHullIsRefused() {
        Hull hull = SiteExample.hull("A", 300, 300, 0);
        Hull near = hull.withLowering(hull.lowering().map(g -> new bermwright.site.plan.LoweringGear(g.means(),
                g.rate(), g.wander(), g.margin(), g.lines(), g.poles(), g.stays(),
                g.pullOver().map(p -> new bermwright.site.plan.LoweringGear.PullOver(p.lugFromBase(), 35,
                        p.winchRating(), p.anchor(), p.annotations())), g.pivotHold(), g.sideThrusters(), g.landing(),
                g.temperature(), g.annotations())));
        assertTrue(has(check(SiteExample.plan(near)), "gear-in-own-sweep"));
    }

    @Test
    void aTurnOfTheBodyThatTurnsNothingIsSaid() {
        Plan plan = SiteExample.plan(SiteExample.hull("A", 300, 300, 0));
        assertFalse(has(check(plan), "clocking-turns-nothing"));
        assertTrue(has(check(PlanValues.with(plan, "hulls[0].clocking_deg", "30")), "clocking-turns-nothing"));
    }

    @Test
    void whatTheOrderOfWorkKeepsApartInTimeIsNoFinding() {
        Plan plan = SiteExample.plan(SiteExample.hull("A", 300, 300, 0), SiteExample.hull("B", 318, 300, 0));
        assertTrue(has(checkWithMounds(plan), "sweep-over-cover"));
        Change change = new Change();
        change.order = List.of(step("1", WorkStep.Kind.LOWER, "A"), step("2", WorkStep.Kind.LOWER, "B", "1"),
                step("3", WorkStep.Kind.COVER, "A", "2"), step("4", WorkStep.Kind.COVER, "B", "3"));
        assertFalse(has(checkWithMounds(SiteExample.with(plan, change)), "sweep-over-cover"));
        change.order = List.of(step("1", WorkStep.Kind.LOWER, "A"), step("3", WorkStep.Kind.COVER, "A", "1"),
                step("2", WorkStep.Kind.LOWER, "B", "3"), step("4", WorkStep.Kind.COVER, "B", "2"));
        List<Finding> findings = checkWithMounds(SiteExample.with(plan, change));
        assertEquals(List.of("B"), findings.stream().filter(f -> f.rule().id().equals("sweep-over-cover"))
                .map(Finding::subject).toList());
    }

    private static List<Finding> checkWithMounds(Plan plan) {
        Map<String, List<Ring>> toes = Map.of("A", List.of(SiteExample.square(300, 320, 60)), "B",
                List.of(SiteExample.square(318, 320, 60)));
        return Clearance.of(SiteShapes.of(plan, Optional.empty(), toes), Optional.empty()).findings();
    }

    private static WorkStep step(String id, WorkStep.Kind kind, String of, String... after) {
        return new WorkStep(id, kind, of, OptionalInt.empty(), OptionalDouble.empty(), Optional.empty(),
                List.of(after), Optional.empty(), Annotations.NOTHING);
    }

    @Test
    void anOutlineThatCrossesItselfIsMendedAndSaid() {
        Change change = new Change();
        change.keepOuts = List.of(new KeepOut("K", "bow tie", new Ring(List.of(new Point(290, 310),
                new Point(310, 330), new Point(310, 310), new Point(290, 330))), Annotations.NOTHING));
        List<Finding> findings = check(SiteExample.with(SiteExample.plan(SiteExample.hull("A", 300, 300, 0)), change));
        assertTrue(has(findings, "outline-crosses-itself"));
        assertTrue(has(findings, "keep-out"));
    }

    @Test
    void everyFindingCarriesASourceAndPlainWords() {
        List<Finding> findings = check(SiteExample.plan(SiteExample.hull("A", 300, 300, 0),
                SiteExample.hull("B", 305, 330, 120)), SiteExample.ground((e, n) -> 0.1 * e + Math.sin(n)));
        assertTrue(findings.size() > 5);
        for (Finding f : findings) {
            assertFalse(f.source().isBlank());
            assertTrue(f.text().endsWith("."), f.text());
            assertTrue(f.place().isPresent(), f.rule().id());
        }
    }

    @Test
    void aHullMayLandOnGearSetOutBeforehand() {
        Hull still = SiteExample.hull("A", 300, 300, 0);
        assertFalse(has(check(SiteExample.plan(still)), "landing-on-own-gear"));
        Hull scattered = SiteExample.with(still, Hull.Arrival.LOWERED, 8, List.of());
        Finding own = first(check(SiteExample.plan(scattered)), "landing-on-own-gear").orElseThrow();
        assertEquals(Finding.Level.WARN, own.level());
        Hull near = SiteExample.with(SiteExample.hull("B", 300, 256, 180), Hull.Arrival.LOWERED, 0, List.of());
        Hull far = SiteExample.with(still, Hull.Arrival.LOWERED, 25, List.of());
        List<Finding> both = check(SiteExample.plan(far, near));
        assertEquals("A", first(both, "landing-on-gear").orElseThrow().subject());
    }

    @Test
    void aTunnelMustReachForEveryLanding() {
        Hull a = hatched(SiteExample.with(SiteExample.hull("A", 300, 300, 0), Hull.Arrival.LOWERED, 1.5, List.of()));
        Hull b = hatched(SiteExample.with(SiteExample.hull("B", 330, 300, 0), Hull.Arrival.LOWERED, 2, List.of()));
        Plan plan = SiteExample.plan(a, b);
        Change change = new Change();
        change.tunnels = List.of(new Tunnel("T", "A/door", "B/door", 2, List.of(), Annotations.NOTHING));
        Finding reach = first(check(SiteExample.with(plan, change)), "tunnel-reach").orElseThrow();
        assertEquals(3.5, reach.measured().orElseThrow(), SNAP);
        assertTrue(reach.limit().isEmpty(), "the length of a tunnel is no limit that a shorter change keeps");
        assertTrue(reach.text().contains("26.5 m to 33.5 m"), reach.text());
        Plan exact = SiteExample.plan(hatched(SiteExample.hull("A", 300, 300, 0)),
                hatched(SiteExample.hull("B", 330, 300, 0)));
        assertFalse(has(check(SiteExample.with(exact, change)), "tunnel-reach"));
    }

    private static Hull hatched(Hull h) {
        return new Hull(h.id(), h.body(), h.massProperties(),
                h.placement(), h.lowering(), h.seat(),
                List.of(new Hatch("door", Hatch.End.BASE, 0, 0, 1, 2, 0, Annotations.NOTHING)), h.stations(),
                h.cover(), h.held(), h.annotations());
    }
}
