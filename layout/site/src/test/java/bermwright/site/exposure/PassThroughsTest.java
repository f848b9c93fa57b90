// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.shielding.dose.Response;
import bermwright.shielding.dose.Responses;
import bermwright.site.SamplePlans;
import bermwright.site.clearance.Clearance;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.PassThrough;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Wall;
import bermwright.terrain.grid.ElevationGrid;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A hull of radius 3.8 m on level ground, laid down eastwards, its base at 113.8 m east, under 2.5 m of soil. */
class PassThroughsTest {
    private static final ElevationGrid GROUND = SamplePlans.ground((e, n) -> 0);
    private static final double BASE_EAST = 110 + 3.8;
    /** Cells of one metre cut the round crest by up to a twentieth of a metre (m). */
    private static final double ROUNDED_CREST = 0.06;
    private static final double SKIN = 39.5;
    /** What a station's dose settles to. */
    private static final double SETTLED = 0.005;

    @TempDir
    Path directory;

    private static PassThrough thing(PassThrough.Kind kind, double along, double aroundDeg, OptionalDouble clear) {
        return new PassThrough("P", kind, along, Math.toRadians(aroundDeg), 1, 1, clear, true, Annotations.NOTHING);
    }

    private static Plan plan(PassThrough... things) {
        Hull hull = SamplePlans.hull("A", new Point(110, 150), 90);
        return SamplePlans.plan(List.of(hull.withCover(hull.cover().map(c -> new bermwright.site.plan.CoverPlan(
                c.thickness(), c.crown(), c.flank(), c.baseEndThickness(), c.farEndThickness(), c.baseEnd(),
                c.farEnd(), c.baseEndWall(), c.farEndWall(), c.crownWidth(), c.lift(), c.density(), List.of(things),
                c.annotations())))));
    }

    private static SiteCover cover(PassThrough... things) {
        return SiteCover.raised(plan(things), GROUND, GROUND);
    }

    private static List<Finding> about(SiteCover cover) {
        return cover.findings().stream().filter(f -> f.subject().equals("A/P")).toList();
    }

    private static Finding only(SiteCover cover, String rule) {
        List<Finding> found = about(cover);
        assertEquals(List.of(rule), found.stream().map(f -> f.rule().id()).toList());
        return found.get(0);
    }

    @Test
    void aRadiatorUnderTheCrownIsRefusedWithItsDepth() {
        Finding buried = only(cover(thing(PassThrough.Kind.RADIATOR, 18, 0, OptionalDouble.empty())),
                "pass-through-buried");
        assertEquals(Level.REFUSE, buried.level());
        // At its edges, half a metre off the crown, the round skin lies 3.8 - (3.8^2 - 0.5^2)^0.5 lower.
        double lower = 3.8 * (1 - Math.cos(0.5 / 3.8));
        assertEquals(2.5 + lower, buried.measured().orElseThrow(), ROUNDED_CREST);
        assertEquals(0, buried.place().orElseThrow().distance(new Point(BASE_EAST + 18, 150)), 1e-6);
    }

    @Test
    void aStripKeptClearLeavesRadiatorsFreeOnCrownAndFlanks() {
        for (double aroundDeg : new double[] {0, 40, -40, 75, 110}) {
            SiteCover cover = cover(thing(PassThrough.Kind.RADIATOR, 18, aroundDeg, OptionalDouble.of(0.5)));
            assertEquals(List.of(), about(cover), "at " + aroundDeg);
            assertTrue(cover.volume() < cover().volume(), "soil is left out at " + aroundDeg);
            assertTrue(cover.volume() > 0.5 * cover().volume(), "and only there at " + aroundDeg);
            assertTrue(cover.findings().stream().anyMatch(f -> f.rule().id().equals("cover-thin")),
                    "what it costs is said at " + aroundDeg);
        }
    }

    /** The soil beside a strip on the crown stands back at the stable slope from the skin, never steeper. */
    @Test
    void soilStandsBackFromAStripAtItsOwnSlope() {
        SiteCover cover = cover(thing(PassThrough.Kind.THERMAL_KEEP_OUT, 18, 0, OptionalDouble.of(0)));
        double crown = 7.6;
        double before = cover.finished().height(new Point(BASE_EAST + 18, 150));
        assertTrue(before <= crown, "no soil on the crown");
        for (int i = 2; i < 12; i++) {
            double rise = cover.finished().height(new Point(BASE_EAST + 18 + i + 1, 150))
                    - cover.finished().height(new Point(BASE_EAST + 18 + i, 150));
            assertTrue(rise <= Math.tan(Math.toRadians(33)) + 1e-9, "rise " + rise + " at " + i);
        }
        assertEquals(crown + 2.5, cover.finished().height(new Point(BASE_EAST + 30, 150)), ROUNDED_CREST);
    }

    @Test
    void aCableUnderSoilIsANoteAndAThingPastTheEndIsRefused() {
        assertEquals(Level.NOTE, only(cover(thing(PassThrough.Kind.CABLE, 18, 60, OptionalDouble.empty())),
                "pass-through-under-soil").level());
        Finding off = only(cover(thing(PassThrough.Kind.CABLE, 40, 0, OptionalDouble.empty())),
                "pass-through-off-hull");
        assertEquals(Level.REFUSE, off.level());
        assertEquals(38, off.limit().orElseThrow());
    }

    /**
     * A shaft of 1 m2 over the station shows it the sky through the skin alone: the event's dose rises by the dose a
     * steradian gives behind the skin, times the solid angle of the shaft's mouth.
     */
    @Test
    void aShaftOverAStationLetsTheSkyIn() {
        SiteCover closed = cover();
        PassThrough shaft = thing(PassThrough.Kind.SHAFT, 18, 0, OptionalDouble.empty());
        SiteCover pierced = cover(shaft);
        assertEquals(Level.WARN, only(pierced, "cover-pierced").level());
        DoseSources sources = new DoseSources(new Responses(directory), directory);
        StationDose without = SiteDose.of(plan(), closed, sources, Progress.NONE).stations().get(0);
        StationDose with = SiteDose.of(plan(shaft), pierced, sources, Progress.NONE).stations().get(0);
        DoseSources.OfHull responses = sources.of(plan(), plan().hulls().get(0));
        double skin = SKIN * responses.cosmic().skinEquivalence();
        assertEquals(skin, with.seen().leastArealDensity(), 0.01 * skin);
        assertTrue(without.seen().leastArealDensity() > 10 * skin);
        Response event = responses.event().orElseThrow();
        double behindSkin = event.isotropicDose(SKIN * event.skinEquivalence()) / (4 * Math.PI);
        // All that the top mouth shows is seen through skin alone; past its edge the soil is thin at first.
        double top = cone(3.8 + 2.5 - 1);
        double foot = cone(3.8 - 1);
        double more = with.parts().event() - without.parts().event();
        assertTrue(more > (1 - SETTLED) * top * behindSkin && more < foot * behindSkin,
                more + " Sv against " + top * behindSkin + " to " + foot * behindSkin);
    }

    /** Solid angle of a round mouth of 1 m2 seen from a distance on its axis (sr). */
    private static double cone(double distance) {
        return 2 * Math.PI * (1 - Math.cos(Math.atan(Math.sqrt(1 / Math.PI) / distance)));
    }

    @Test
    void aClosedFeedThroughLetsNothingIn() {
        PassThrough closed = new PassThrough("P", PassThrough.Kind.FEED_THROUGH, 18, 0, 1, 1, OptionalDouble.empty(),
                false, Annotations.NOTHING);
        only(cover(closed), "pass-through-under-soil");
        assertEquals(Level.WARN, only(cover(thing(PassThrough.Kind.FEED_THROUGH, 18, 70, OptionalDouble.empty())),
                "cover-pierced").level());
    }

    /** A shaft of 1 m2 takes 2.5 m of soil off the crown, and so much off the soil to be hauled. */
    @Test
    void theSoilAShaftTakesUpIsNotHauled() {
        SiteCover closed = cover();
        SiteCover pierced = cover(thing(PassThrough.Kind.SHAFT, 18, 0, OptionalDouble.empty()));
        PassedThrough shaft = pierced.passing().get(0);
        assertEquals(2.5, shaft.displaced(), ROUNDED_CREST);
        assertEquals("open through the soil", shaft.state());
        assertEquals(shaft.displaced(), closed.volume() - pierced.volume(), 1e-9 * closed.volume());
        assertEquals(shaft.displaced(), closed.hulls().get(0).volume() - pierced.hulls().get(0).volume(),
                1e-9 * closed.volume());
    }

    @Test
    void itsStateIsSaid() {
        PassedThrough cable = cover(thing(PassThrough.Kind.CABLE, 18, 60, OptionalDouble.empty())).passing().get(0);
        assertEquals("under soil", cable.state());
        assertEquals(1, cable.shareUnderSoil());
        assertTrue(cable.deepest() > 2.5, "straight up it is deeper than square to the skin");
        assertEquals("spoilt by soil", cover(thing(PassThrough.Kind.RADIATOR, 18, 0, OptionalDouble.empty()))
                .passing().get(0).state());
        assertEquals("free of soil", cover(thing(PassThrough.Kind.RADIATOR, 18, 0, OptionalDouble.of(0.5)))
                .passing().get(0).state());
        assertEquals(List.of(), cover(thing(PassThrough.Kind.CABLE, 40, 0, OptionalDouble.empty())).passing());
    }

    /** The strip of a radiator on the left flank lies left of the axis, as wide as its chord and half a metre more. */
    @Test
    void itsStripStandsOnThePlanAndNothingMayBeBuiltOnIt() {
        Plan plan = plan(thing(PassThrough.Kind.RADIATOR, 18, 60, OptionalDouble.of(0.5)));
        SiteShapes shapes = SiteShapes.of(plan, Optional.of(GROUND), Map.of());
        Shape strip = shapes.hulls().get(0).of(ShapeKind.KEPT_CLEAR).get(0);
        double turn = 1.0 / 3.8;
        double[] norths = {150 + 3.8 * Math.sin(Math.PI / 3 - turn), 150 + 3.8 * Math.sin(Math.PI / 3 + turn)};
        assertEquals(norths[0], strip.outline().corners().stream().mapToDouble(Point::north).min().orElseThrow(), 2e-3);
        assertEquals(norths[1], strip.outline().corners().stream().mapToDouble(Point::north).max().orElseThrow(), 2e-3);
        assertEquals(BASE_EAST + 17, strip.outline().corners().stream().mapToDouble(Point::east).min().orElseThrow(),
                2e-3);
        assertEquals(2 * (norths[1] - norths[0]), strip.outline().area(), 0.02);
        Plan built = new Plan(plan.title(), plan.ground(), plan.hulls(), List.of(new Wall("W", List.of(
                new Point(BASE_EAST + 10, norths[1]), new Point(BASE_EAST + 30, norths[1])), 2, 0.5,
                        Annotations.NOTHING)),
                plan.tunnels(), plan.keepOuts(), plan.corridors(), plan.landingPads(), plan.preparations(),
                plan.borrowGrounds(), plan.stockpiles(), plan.machines(), plan.exposure(), plan.rules(),
                plan.orderOfWork(), plan.arrangeWithin(), plan.annotations());
        assertTrue(Clearance.of(shapes, Optional.of(GROUND)).findings().stream()
                .noneMatch(f -> f.rule().id().equals("kept-clear-built-on")));
        Finding on = Clearance.of(SiteShapes.of(built, Optional.of(GROUND), Map.of()),
                Optional.of(GROUND)).findings().stream()
                .filter(f -> f.rule().id().equals("kept-clear-built-on")).findFirst().orElseThrow();
        assertEquals(Level.REFUSE, on.level());
        assertEquals("A", on.subject());
    }
}
