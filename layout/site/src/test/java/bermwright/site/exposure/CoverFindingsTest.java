// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.foundation.Point;
import bermwright.site.SamplePlans;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Tunnel;
import bermwright.site.plan.Wall;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class CoverFindingsTest {
    private static final Point PLACE = new Point(110, 150);
    private static final ElevationGrid GROUND = SamplePlans.ground((e, n) -> 0);
    /** Cells of one metre cut a crest of 2.5 m radius by up to a twentieth of a metre (m). */
    private static final double ROUNDED_CREST = 0.06;
    /** A hull laid down eastwards at PLACE: its base plane stands over the pivot line, a radius ahead. */
    private static final double BASE_EAST = 110 + 3.8;
    private static final double FAR_EAST = BASE_EAST + 38;

    private static CoverPlan cover(double thickness, CoverPlan.End base, CoverPlan.End far, Optional<String> farWall) {
        return new CoverPlan(thickness, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty(), base, far, Optional.empty(), farWall, 0, 0.5, OptionalDouble.empty(), List.of(),
                Annotations.NOTHING);
    }

    private static Hull hull(CoverPlan cover) {
        return SamplePlans.hull("A", PLACE, 90).withCover(Optional.of(cover));
    }

    private static Plan walled(Hull hull, List<Wall> walls) {
        Plan plan = SamplePlans.plan(List.of(hull));
        return new Plan(plan.title(), plan.ground(), plan.hulls(), walls, plan.tunnels(), plan.keepOuts(),
                plan.corridors(), plan.landingPads(), plan.preparations(), plan.borrowGrounds(), plan.stockpiles(),
                plan.machines(), plan.exposure(), plan.rules(), plan.orderOfWork(), plan.arrangeWithin(),
                plan.annotations());
    }

    private static List<Finding> raised(Plan plan) {
        return SiteCover.raised(plan, GROUND, GROUND).findings();
    }

    private static List<Finding> of(List<Finding> findings, String rule) {
        return findings.stream().filter(f -> f.rule().id().equals(rule)).toList();
    }

    private static Finding only(List<Finding> findings, String rule) {
        List<Finding> found = of(findings, rule);
        assertEquals(1, found.size(), rule + " in " + findings);
        return found.get(0);
    }

    @Test
    void theLeastCoverItselfIsNowhereThin() {
        List<Finding> findings = raised(SamplePlans.plan(List.of(hull(cover(2.5, CoverPlan.End.COVERED,
                CoverPlan.End.COVERED, Optional.empty())))));
        assertEquals(List.of(), of(findings, "cover-thin"));
        assertEquals(List.of(), of(findings, "cover-off-ground"));
        assertEquals(List.of(), of(findings, "hulls-cut-each-other"));
    }

    @Test
    void aHoleDugIntoTheCrownIsNamedByItsPlace() {
        Plan plan = SamplePlans.plan(List.of(hull(cover(2.5, CoverPlan.End.COVERED, CoverPlan.End.COVERED,
                Optional.empty()))));
        SiteCover whole = SiteCover.raised(plan, GROUND, GROUND);
        double east = BASE_EAST + 20;
        ElevationGrid dug = ElevationGrid.sampled(GROUND.frame(), (e, n) -> {
            double z = whole.finished().height(new Point(e, n));
            return Math.hypot(e - east, n - 150) < 3 ? Math.min(z, 7.6 + 1) : z;
        });
        SiteCover standing = SiteCover.standing(plan, GROUND, GROUND, dug);
        Finding thin = only(standing.findings(), "cover-thin");
        assertEquals(Level.WARN, thin.level());
        assertEquals("A", thin.subject());
        assertEquals(2.5, thin.limit().orElseThrow());
        assertEquals(1, thin.measured().orElseThrow(), 0.05);
        assertEquals(0, thin.place().orElseThrow().distance(new Point(east, 150)), 3.2);
        assertFalse(thin.text().startsWith("0 m2"), thin.text());
        assertTrue(whole.volume() > standing.volume());
    }

    /** One cell of the depth map alone: half a metre by five degrees of a hull of 7.6 m is 0.2 m2 or less. */
    @Test
    void aThinPlaceOfLessThanASquareMetreStillHasAnArea() {
        Plan plan = SamplePlans.plan(List.of(hull(cover(2.5, CoverPlan.End.COVERED, CoverPlan.End.COVERED,
                Optional.empty()))));
        SiteCover whole = SiteCover.raised(plan, GROUND, GROUND);
        ElevationGrid dug = ElevationGrid.sampled(GROUND.frame(), (e, n) -> whole.finished().height(new Point(e, n))
                - (e == 130 && n == 150 ? 0.12 : 0));
        Finding thin = only(SiteCover.standing(plan, GROUND, GROUND, dug).findings(), "cover-thin");
        assertFalse(thin.text().startsWith("0 m2") || thin.text().startsWith("0.0 m2"), thin.text());
    }

    @Test
    void aCoverThinnerThanACellSaysSo() {
        Finding thin = only(raised(SamplePlans.plan(List.of(hull(cover(0.6, CoverPlan.End.COVERED,
                CoverPlan.End.COVERED, Optional.empty()))))), "cover-thinner-than-cell");
        assertEquals(Level.WARN, thin.level());
        assertEquals(0.6, thin.measured().orElseThrow());
        assertEquals(1, thin.limit().orElseThrow());
    }

    @Test
    void soilOverAHatchIsRefusedAndAnOpenEndIsNot() {
        Finding buried = only(raised(SamplePlans.plan(List.of(hull(cover(2.5, CoverPlan.End.COVERED,
                CoverPlan.End.COVERED, Optional.empty()))))), "cover-hatch-buried");
        assertEquals(Level.REFUSE, buried.level());
        assertEquals("A/main", buried.subject());
        // A metre beyond the end the mound is round with the cover's own radius; the sill is 0.4 m up.
        assertEquals(7.6 + Math.sqrt(2.5 * 2.5 - 1) - 0.4, buried.measured().orElseThrow(), ROUNDED_CREST);
        assertEquals(List.of(), of(raised(SamplePlans.plan(List.of(hull(cover(2.5, CoverPlan.End.OPEN,
                CoverPlan.End.COVERED, Optional.empty()))))), "cover-hatch-buried"));
    }

    @Test
    void aWallThatIsMissingIsRefusedAndALowOneWarned() {
        CoverPlan held = cover(2.5, CoverPlan.End.OPEN, CoverPlan.End.WALL, Optional.of("W"));
        Finding missing = only(raised(walled(hull(held), List.of())), "cover-wall-missing");
        assertEquals(Level.REFUSE, missing.level());
        assertTrue(missing.text().endsWith("W."), missing.text());
        List<Finding> low = raised(walled(hull(held), List.of(wall(3))));
        assertEquals(List.of(), of(low, "cover-wall-missing"));
        Finding warned = only(low, "cover-wall-low");
        assertEquals(Level.WARN, warned.level());
        assertEquals(3, warned.measured().orElseThrow());
        assertTrue(warned.limit().orElseThrow() > 3 && warned.limit().orElseThrow() <= 7.6 + 2.5, warned.text());
        assertEquals(List.of(), of(raised(walled(hull(held), List.of(wall(11)))), "cover-wall-low"));
    }

    @Test
    void aWallThatStandsAwayFromTheEndIsWarned() {
        CoverPlan held = cover(2.5, CoverPlan.End.OPEN, CoverPlan.End.WALL, Optional.of("W"));
        assertEquals(List.of(), of(raised(walled(hull(held), List.of(wall(11)))), "cover-wall-away"));
        Finding away = only(raised(walled(hull(held), List.of(wall(11, 1.5)))), "cover-wall-away");
        assertEquals(1, away.measured().orElseThrow(), 1e-6);
        assertEquals(Level.WARN, away.level());
    }

    @Test
    void aHullThatStandsInItsWallIsRefusedByHowFar() {
        CoverPlan held = cover(2.5, CoverPlan.End.OPEN, CoverPlan.End.WALL, Optional.of("W"));
        assertEquals(List.of(), of(raised(walled(hull(held), List.of(wall(11)))), "hull-in-wall"));
        Finding inside = only(raised(walled(hull(held), List.of(wall(11, 0.1)))), "hull-in-wall");
        assertEquals(0.4, inside.measured().orElseThrow(), 1e-6);
        assertEquals(Level.REFUSE, inside.level());
        assertEquals(2, only(raised(walled(hull(held), List.of(wall(11, -1.5)))), "hull-in-wall").measured()
                .orElseThrow(), 1e-6);
    }

    private static Wall wall(double height) {
        return wall(height, 0.5);
    }

    private static Wall wall(double height, double beyond) {
        return new Wall("W", List.of(new Point(FAR_EAST + beyond, 130), new Point(FAR_EAST + beyond, 170)), height, 1,
                Annotations.NOTHING);
    }

    @Test
    void hullsInOnePlaceAreRefusedAndNeighboursAreNot() {
        CoverPlan cover = cover(2.5, CoverPlan.End.COVERED, CoverPlan.End.COVERED, Optional.empty());
        Hull one = hull(cover);
        Hull across = SamplePlans.hull("B", new Point(130, 130), 0).withCover(Optional.of(cover));
        Finding cut = only(raised(SamplePlans.plan(List.of(one, across))), "hulls-cut-each-other");
        assertEquals(Level.REFUSE, cut.level());
        assertEquals("A", cut.subject());
        assertTrue(cut.text().startsWith("Hulls A and B"), cut.text());
        Hull beside = SamplePlans.hull("B", new Point(110, 150 + 7.8), 90).withCover(Optional.of(cover));
        assertEquals(List.of(), of(raised(SamplePlans.plan(List.of(one, beside))), "hulls-cut-each-other"));
    }

    @Test
    void aTunnelToAHatchThatIsNotThereIsRefused() {
        Plan plan = SamplePlans.plan(List.of(hull(cover(2.5, CoverPlan.End.COVERED, CoverPlan.End.COVERED,
                Optional.empty()))));
        Plan joined = new Plan(plan.title(), plan.ground(), plan.hulls(), plan.walls(),
                List.of(new Tunnel("T", "A/main", "B/main", 2.4, List.of(), Annotations.NOTHING)), plan.keepOuts(),
                plan.corridors(), plan.landingPads(), plan.preparations(), plan.borrowGrounds(), plan.stockpiles(),
                plan.machines(), plan.exposure(), plan.rules(), plan.orderOfWork(), plan.arrangeWithin(),
                plan.annotations());
        assertEquals("T", only(raised(joined), "tunnel-unplaced").subject());
    }

    @Test
    void holesInTheGroundAreFoundUnderTheHullAndUnderTheMound() {
        Plan plan = SamplePlans.plan(List.of(hull(cover(2.5, CoverPlan.End.COVERED, CoverPlan.End.COVERED,
                Optional.empty()))));
        ElevationGrid under = SamplePlans.ground((e, n) -> Math.hypot(e - 120, n - 150) < 3 ? Double.NaN : 0);
        Finding unknown = only(SiteCover.raised(plan, under, under).findings(), "cover-ground-unknown");
        assertEquals(Level.REFUSE, unknown.level());
        ElevationGrid beside = SamplePlans.ground((e, n) -> Math.hypot(e - 130, n - 162) < 3 ? Double.NaN : 0);
        Finding off = only(SiteCover.raised(plan, beside, beside).findings(), "cover-off-ground");
        assertEquals(Level.REFUSE, off.level());
    }
}
