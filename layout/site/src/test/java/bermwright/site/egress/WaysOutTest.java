// SPDX-License-Identifier: Apache-2.0
package bermwright.site.egress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.SamplePlans;
import bermwright.site.exposure.SiteCover;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.haulage.FootWays;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.Hull;
import bermwright.site.plan.KeepOut;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.LandingPad;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Station;
import bermwright.site.plan.Tunnel;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class WaysOutTest {
    private static final ElevationGrid GROUND = SamplePlans.ground((e, n) -> 0);

    private static Hull hull(String id, double north, CoverPlan.End base, CoverPlan.End far) {
        Hull plain = SamplePlans.hull(id, new Point(100, north), 90);
        CoverPlan cover = new CoverPlan(2.5, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty(), base, far, Optional.empty(), Optional.empty(), 0, 0.5, OptionalDouble.empty(),
                List.of(), Annotations.NOTHING);
        List<Hatch> hatches = List.of(new Hatch("main", Hatch.End.BASE, 0, 0, 1.2, 2, 0.4, Annotations.NOTHING),
                new Hatch("back", Hatch.End.FAR, 0, 0, 1.2, 2, 0.4, Annotations.NOTHING),
                new Hatch("side", Hatch.End.SIDE, 20, Math.toRadians(north > 150 ? -90 : 90), 1.2, 2, 0.4,
                        Annotations.NOTHING));
        return new Hull(plain.id(), plain.body(),
                plain.massProperties(), plain.placement(), plain.lowering(), plain.seat(), hatches,
                plain.stations(), Optional.of(cover), plain.held(), plain.annotations());
    }

    private static WaysOut ways(Plan plan) {
        return ways(plan, GROUND);
    }

    private static WaysOut ways(Plan plan, ElevationGrid ground) {
        return WaysOut.of(SiteShapes.of(plan, Optional.of(ground), Map.of()),
                SiteCover.raised(plan, ground, ground));
    }

    private static WaysOut.WayToShelter from(WaysOut ways, String from) {
        return ways.shelters().stream().filter(s -> s.from().equals(from)).findFirst().orElseThrow();
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
        assertTrue(ways.findings().stream().anyMatch(f -> f.rule().id().equals("ways-out")
                && f.level() == Finding.Level.REFUSE));
    }

    private static Hull with(Hull h, List<Hatch> hatches, List<Station> stations) {
        return new Hull(h.id(), h.body(), h.massProperties(),
                h.placement(), h.lowering(), h.seat(), hatches, stations, h.cover(), h.held(), h.annotations());
    }

    @Test
    void oneHatchFewerNeverTurnsARefusalIntoAWarning() {
        Hull h = hull("A", 150, CoverPlan.End.COVERED, CoverPlan.End.COVERED);
        Hull bare = with(h, List.of(), h.stations());
        for (Hull one : List.of(h, bare)) {
            assertEquals(List.of(Finding.Level.REFUSE), ways(SamplePlans.plan(List.of(one))).findings().stream()
                    .filter(f -> f.rule().id().equals("ways-out")).map(Finding::level).toList());
            Hull store = with(one, one.hatches(), List.of());
            assertEquals(List.of(Finding.Level.WARN), ways(SamplePlans.plan(List.of(store))).findings().stream()
                    .filter(f -> f.rule().id().equals("ways-out")).map(Finding::level).toList());
        }
    }

    @Test
    void aTunnelToAHullWithAnOpenEndIsAWay() {
        Plan two = SamplePlans.plan(List.of(hull("A", 140, CoverPlan.End.OPEN, CoverPlan.End.COVERED),
                hull("B", 165, CoverPlan.End.OPEN, CoverPlan.End.COVERED)));
        Plan joined = new Plan(two.title(), two.ground(), two.hulls(), two.walls(),
                List.of(new Tunnel("T", "A/side", "B/side", 2.4, List.of(), Annotations.NOTHING)), two.keepOuts(),
                two.corridors(), two.landingPads(), two.preparations(), two.borrowGrounds(), two.stockpiles(),
                two.machines(), two.exposure(), two.rules(), two.orderOfWork(), two.arrangeWithin(), two.annotations());
        assertEquals(1, ways(two).hulls().get("A"));
        assertEquals(2, ways(joined).hulls().get("A"));
        assertEquals(2, ways(joined).hulls().get("B"));
    }

    /** A way begins and turns on the lattice, which is a metre wide. */
    private static final double LATTICE = 1;

    private static Plan withPad(Plan p, Point pad, Ring... keepOuts) {
        return new Plan(p.title(), p.ground(), p.hulls(), p.walls(), p.tunnels(),
                Arrays.stream(keepOuts).map(k -> new KeepOut("K", "boulder field", k, Annotations.NOTHING)).toList(),
                p.corridors(), List.of(new LandingPad("P", pad, 10, 100, Annotations.NOTHING)), p.preparations(),
                p.borrowGrounds(), p.stockpiles(), p.machines(), p.exposure(), p.rules(), p.orderOfWork(),
                        p.arrangeWithin(), p.annotations());
    }

    private static Plan oneHull(CoverPlan.End far) {
        return SamplePlans.plan(List.of(hull("A", 150, CoverPlan.End.OPEN, far)));
    }

    private static final Point MOUTH = oneHull(CoverPlan.End.OPEN).hulls().get(0).lyingBase(TrueMetres.SAME);
    private static final Point PAD = new Point(MOUTH.east() - 90, 150);

    /** From the middle of a pad 90 m west of the open end on level ground: 90 m outside, then 18 m to the bunks. */
    @Test
    void theWayFromAPadRunsOverTheGroundAndThenInside() {
        WaysOut.WayToShelter way = from(ways(withPad(oneHull(CoverPlan.End.COVERED), PAD)), "P");
        assertEquals("A/bunks", way.shelter());
        assertEquals(90, way.outside(), LATTICE);
        assertEquals(18, way.inside(), 1e-9);
        assertEquals(18 / WaysOut.WALK_SPEED + way.outside() / WaysOut.OUTSIDE_SPEED, way.seconds(), 1e-9);
        assertEquals(PAD, way.way().get(0));
        assertEquals(0, MOUTH.distance(way.way().get(way.way().size() - 1)), 1e-9);
    }

    /** A keep-out of 20 m by 80 m across the way: round its nearer corners, 40 m to the side. */
    @Test
    void keepOutsAreWalkedAround() {
        double near = MOUTH.east() - 40;
        Ring keepOut = new Ring(List.of(new Point(near - 20, 110), new Point(near, 110), new Point(near, 190),
                new Point(near - 20, 190)));
        WaysOut.WayToShelter way = from(ways(withPad(oneHull(CoverPlan.End.COVERED), PAD, keepOut)), "P");
        double around = Math.hypot(30, 40) + 20 + Math.hypot(40, 40);
        assertTrue(way.outside() > around - LATTICE && way.outside() < around * 1.03 + 3, way.outside() + " " + around);
        for (int i = 0; i + 1 < way.way().size(); i++) {
            Point a = way.way().get(i);
            Point b = way.way().get(i + 1);
            for (double t = 0; t <= 1; t += 0.05) {
                assertFalse(keepOut.contains(new Point(a.east() + t * (b.east() - a.east()),
                        a.north() + t * (b.north() - a.north()))));
            }
        }
    }

    /** The mound is too steep to walk over: from behind the covered end the way goes round it to the open one. */
    @Test
    void theMoundIsWalkedAroundAndSlopesCount() {
        Plan plan = withPad(oneHull(CoverPlan.End.COVERED), new Point(MOUTH.east() + 38 + 60, 150));
        double level = from(ways(plan), "P").outside();
        assertTrue(level > 98 + 10, level + "");
        double tilt = Math.tan(Math.toRadians(10));
        double sloping = from(ways(plan, SamplePlans.ground((e, n) -> e * tilt)), "P").outside();
        assertTrue(sloping > level, sloping + " " + level);
    }

    /** A ditch around the site with sides steeper than anybody walks. */
    @Test
    void groundTooSteepToWalkOnCutsOff() {
        ElevationGrid ditch = SamplePlans.ground((e, n) -> Math.abs(e - 40) < 10 ? -(10 - Math.abs(e - 40)) : 0);
        WaysOut ways = ways(withPad(oneHull(CoverPlan.End.COVERED), PAD), ditch);
        assertTrue(ways.shelters().stream().noneMatch(w -> w.from().equals("P")));
        Finding finding = ways.findings().stream().filter(f -> f.rule().id().equals("shelter-cut-off")).findFirst()
                .orElseThrow();
        assertEquals("P", finding.subject());
        assertTrue(finding.text().contains(String.format("%.0f degrees", FootWays.STEEPEST_DEG)));
    }

    /** Beside a hull with a shelter, one without: out by its own hatch, along the ground and in by the other's. */
    @Test
    void withoutATunnelTheWayToTheNextHullRunsOutside() {
        Hull shelter = hull("A", 130, CoverPlan.End.OPEN, CoverPlan.End.COVERED);
        Hull other = hull("B", 170, CoverPlan.End.OPEN, CoverPlan.End.COVERED);
        Hull bare = new Hull(other.id(), other.body(),
                other.massProperties(), other.placement(), other.lowering(), other.seat(), other.hatches(),
                List.of(new Station("desk", 10, 0, 0, 0.2, false, Annotations.NOTHING)), other.cover(),
                other.held(), other.annotations());
        WaysOut ways = ways(SamplePlans.plan(List.of(shelter, bare)));
        WaysOut.WayToShelter way = from(ways, "B/desk");
        assertEquals("A/bunks", way.shelter());
        assertEquals(10 + 18, way.inside(), 1e-9);
        assertTrue(way.outside() >= 40 && way.outside() < 80, way.outside() + "");
        assertTrue(ways.findings().stream().anyMatch(f -> f.rule().id().equals("shelter-unreachable")));
    }

    @Test
    void aPadFarAwayIsWarnedOf() {
        WaysOut ways = ways(withPad(oneHull(CoverPlan.End.OPEN), new Point(-2000, 150)));
        Finding far = ways.findings().stream().filter(f -> f.rule().id().equals("shelter-far")).findFirst()
                .orElseThrow();
        assertEquals("P", far.subject());
        assertTrue(far.measured().orElseThrow() > 30);
        assertEquals(2000 + MOUTH.east(), from(ways, "P").outside(), 1e-9);
    }
}
