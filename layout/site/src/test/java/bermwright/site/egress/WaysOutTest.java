// SPDX-License-Identifier: Apache-2.0
package bermwright.site.egress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.site.SamplePlans;
import bermwright.site.exposure.SiteCover;
import bermwright.site.finding.Finding;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Kept;
import bermwright.site.plan.LandingPad;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Tunnel;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class WaysOutTest {
    private static final ElevationGrid GROUND = SamplePlans.ground((e, n) -> 0);

    private static Hull hull(String id, double north, CoverPlan.End base, CoverPlan.End far) {
        Hull plain = SamplePlans.hull(id, new Point(100, north), 90);
        CoverPlan cover = new CoverPlan(2.5, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty(), base, far, Optional.empty(), Optional.empty(), 0, 0.5, OptionalDouble.empty(),
                List.of(), Kept.NOTHING);
        List<Hatch> hatches = List.of(new Hatch("main", Hatch.End.BASE, 0, 0, 1.2, 2, 0.4, Kept.NOTHING),
                new Hatch("back", Hatch.End.FAR, 0, 0, 1.2, 2, 0.4, Kept.NOTHING),
                new Hatch("side", Hatch.End.SIDE, 20, Math.toRadians(north > 150 ? -90 : 90), 1.2, 2, 0.4,
                        Kept.NOTHING));
        return new Hull(plain.id(), plain.length(), plain.diameter(), plain.baseEnd(), plain.farEnd(), plain.skin(),
                plain.shell(), plain.innerPressure(), plain.mass(), plain.centreOfMassFromBase(),
                plain.centreOfMassOffAxis(), plain.centreOfMassSpread(), plain.inertiaAboutCentre(),
                plain.residualPropellant(), plain.baseCentre(), plain.landingDispersion(), plain.layDownAzimuth(),
                plain.clocking(), plain.pivot(), plain.arrival(), plain.lowering(), hatches, plain.seat(),
                plain.stations(), Optional.of(cover), plain.kept());
    }

    private static WaysOut ways(Plan plan) {
        return WaysOut.of(plan, SiteCover.raised(plan, GROUND, GROUND));
    }

    @Test
    void twoOpenEndsAreTwoWays() {
        WaysOut ways = ways(SamplePlans.plan(List.of(hull("A", 150, CoverPlan.End.OPEN, CoverPlan.End.OPEN))));
        assertEquals(2, ways.hulls().get("A"));
        assertEquals(List.of(), ways.findings());
        assertEquals("A/bunks", ways.shelters().get(0).shelter());
        assertEquals(0, ways.shelters().get(0).distance());
        assertEquals(18, ways.shelters().stream().filter(s -> s.from().equals("A/main")).findFirst().orElseThrow()
                .seconds() * WaysOut.WALK_SPEED);
    }

    @Test
    void aHullClosedAllRoundHasNone() {
        WaysOut ways = ways(SamplePlans.plan(List.of(hull("A", 150, CoverPlan.End.COVERED, CoverPlan.End.COVERED))));
        assertEquals(0, ways.hulls().get("A"));
        assertTrue(ways.findings().stream().anyMatch(f -> f.rule().equals("ways-out")
                && f.level() == Finding.Level.REFUSE));
    }

    @Test
    void aBuriedHullWhoseHatchesAreNotStatedIsWarnedOfOnly() {
        Hull h = hull("A", 150, CoverPlan.End.COVERED, CoverPlan.End.COVERED);
        Hull bare = new Hull(h.id(), h.length(), h.diameter(), h.baseEnd(), h.farEnd(), h.skin(), h.shell(),
                h.innerPressure(), h.mass(), h.centreOfMassFromBase(), h.centreOfMassOffAxis(),
                h.centreOfMassSpread(), h.inertiaAboutCentre(), h.residualPropellant(), h.baseCentre(),
                h.landingDispersion(), h.layDownAzimuth(), h.clocking(), h.pivot(), h.arrival(), h.lowering(),
                List.of(), h.seat(), h.stations(), h.cover(), h.kept());
        assertEquals(List.of(Finding.Level.WARN), ways(SamplePlans.plan(List.of(bare))).findings().stream()
                .filter(f -> f.rule().equals("ways-out")).map(Finding::level).toList());
    }

    @Test
    void aTunnelToAHullWithAnOpenEndIsAWay() {
        Plan two = SamplePlans.plan(List.of(hull("A", 140, CoverPlan.End.OPEN, CoverPlan.End.COVERED),
                hull("B", 165, CoverPlan.End.OPEN, CoverPlan.End.COVERED)));
        Plan joined = new Plan(two.title(), two.ground(), two.hulls(), two.walls(),
                List.of(new Tunnel("T", "A/side", "B/side", 2.4, List.of(), Kept.NOTHING)), two.keepOuts(),
                two.corridors(), two.landingPads(), two.preparations(), two.borrowGrounds(), two.stockpiles(),
                two.machines(), two.exposure(), two.rules(), two.orderOfWork(), two.kept());
        assertEquals(1, ways(two).hulls().get("A"));
        assertEquals(2, ways(joined).hulls().get("A"));
        assertEquals(2, ways(joined).hulls().get("B"));
    }

    /** From the middle of a pad 90 m west of the open end on level ground: 90 m outside, then 18 m to the bunks. */
    @Test
    void theWayFromAPadRunsOverTheGroundAndThenInside() {
        Plan p = SamplePlans.plan(List.of(hull("A", 150, CoverPlan.End.OPEN, CoverPlan.End.COVERED)));
        Point mouth = p.hulls().get(0).lyingBase();
        Plan plan = new Plan(p.title(), p.ground(), p.hulls(), p.walls(), p.tunnels(), p.keepOuts(), p.corridors(),
                List.of(new LandingPad("P", new Point(mouth.east() - 90, 150), 10, 100, Kept.NOTHING)),
                p.preparations(), p.borrowGrounds(), p.stockpiles(), p.machines(), p.exposure(), p.rules(),
                p.orderOfWork(), p.kept());
        WaysOut.WayToShelter way = ways(plan).shelters().stream().filter(s -> s.from().equals("P")).findFirst()
                .orElseThrow();
        assertEquals("A/bunks", way.shelter());
        assertEquals(90, way.outside(), 1e-9);
        assertEquals(18, way.inside(), 1e-9);
        assertEquals(18 / WaysOut.WALK_SPEED + 90 / WaysOut.OUTSIDE_SPEED, way.seconds(), 1e-9);
    }

    @Test
    void aPadFarAwayIsWarnedOf() {
        Plan p = SamplePlans.plan(List.of(hull("A", 150, CoverPlan.End.OPEN, CoverPlan.End.OPEN)));
        Plan plan = new Plan(p.title(), p.ground(), p.hulls(), p.walls(), p.tunnels(), p.keepOuts(), p.corridors(),
                List.of(new LandingPad("P", new Point(-2000, 150), 10, 100, Kept.NOTHING)), p.preparations(),
                p.borrowGrounds(), p.stockpiles(), p.machines(), p.exposure(), p.rules(), p.orderOfWork(), p.kept());
        Finding far = ways(plan).findings().stream().filter(f -> f.rule().equals("shelter-far")).findFirst()
                .orElseThrow();
        assertEquals("P", far.subject());
        assertTrue(far.measured().orElseThrow() > 30);
    }
}
