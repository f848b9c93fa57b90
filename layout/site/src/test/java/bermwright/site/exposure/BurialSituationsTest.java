// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.shielding.dose.Responses;
import bermwright.site.SamplePlans;
import bermwright.site.burial.HullBurial;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.HullBody;
import bermwright.site.plan.HullPlacement;
import bermwright.site.plan.MassProperties;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Seat;
import bermwright.site.plan.Station;
import bermwright.site.plan.Wall;
import bermwright.terrain.grid.ElevationGrid;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Hulls of radius 3.8 m under 2.5 m of soil: sunk, in a trench, by a scarp, lifted, upright, with other ends. */
class BurialSituationsTest {
    private static final ElevationGrid LEVEL = SamplePlans.ground((e, n) -> 0);
    private static final Point PLACE = new Point(120, 150);
    private static final double RADIUS = 3.8;
    private static final double WANTED = 2.5;
    private static final double SLOPE = Math.toRadians(33);
    /** Cells of one metre cut the round crest by up to a twentieth of a metre and smooth the toe (m). */
    private static final double CELL = 0.08;
    /** The same as a share of the section. */
    private static final double SECTION = 0.015;

    @TempDir
    Path directory;

    private static Hull hull(double length, Hull.Arrival arrival, Hull.End base, Hull.End far) {
        Hull h = SamplePlans.hull("A", PLACE, 90);
        return new Hull(h.id(),
                new HullBody(length, h.diameter(), base, far, h.skin(), h.stowage(), h.shell(),
                        h.innerPressure()),
                new MassProperties(h.mass(), length / 2, h.centreOfMassOffAxis(), h.centreOfMassSpread(),
                h.inertiaAboutCentre(), h.residualPropellant()), new HullPlacement(h.baseCentre(),
                h.landingDispersion(), h.layDownAzimuth(), h.placement().clocking(), h.pivot(), arrival), h.lowering(),
                h.seat(), List.of(),
                List.of(new Station("mid", length / 2, 0, 0, 1, true, Annotations.NOTHING)), h.cover(),
                h.held(), h.annotations());
    }

    private static Hull.End end(Hull.Shape shape, double depth) {
        return new Hull.End(shape, depth, Annotations.NOTHING);
    }

    private static Hull flat(double length) {
        return hull(length, Hull.Arrival.LANDS_LYING, end(Hull.Shape.FLAT, 0), end(Hull.Shape.FLAT, 0));
    }

    private static Hull seated(double length, Seat.Kind kind, double sunk, double cradle) {
        return flat(length).withSeat(Seat.usual(kind, sunk, cradle));
    }

    private static SiteCover cover(Hull hull, ElevationGrid ground) {
        return SiteCover.raised(SamplePlans.plan(List.of(hull)), ground, ground);
    }

    /** Soil placed on a metre of a long lying hull: what ten more metres of hull take. */
    private static double section(Seat.Kind kind, double sunk, double cradle) {
        return (cover(seated(48, kind, sunk, cradle), LEVEL).volume()
                - cover(seated(38, kind, sunk, cradle), LEVEL).volume()) / 10;
    }

    /** The section of the least cover over a long lying hull whose axis lies at a height above level ground. */
    private static double closed(double axis) {
        double outer = RADIUS + WANTED;
        double taken = axis < RADIUS ? RADIUS * RADIUS * (Math.PI - Math.acos(axis / RADIUS))
                + axis * Math.sqrt(RADIUS * RADIUS - axis * axis) : Math.PI * RADIUS * RADIUS;
        return 2 * axis * outer * Math.sin(SLOPE) + outer * outer * (Math.sin(SLOPE) * Math.cos(SLOPE) + SLOPE)
                + Math.pow(axis + outer * Math.cos(SLOPE), 2) / Math.tan(SLOPE) - taken;
    }

    @Test
    void sectionsOnTheGroundSunkAndOnACradleFollowTheClosedForm() {
        assertEquals(closed(3.8), section(Seat.Kind.GROUND, 0, 0), SECTION * closed(3.8));
        assertEquals(closed(1.9), section(Seat.Kind.GROUND, 1.9, 0), SECTION * closed(1.9));
        assertEquals(closed(0), section(Seat.Kind.GROUND, 3.8, 0), SECTION * closed(0));
        assertEquals(closed(4.8), section(Seat.Kind.CRADLE, 0, 1), SECTION * closed(4.8));
    }

    @Test
    void everyEndKeepsItsThickness() {
        for (Hull.End end : List.of(end(Hull.Shape.FLAT, 0), end(Hull.Shape.DOME, 2), end(Hull.Shape.CONE, 6))) {
            HullCover cover = cover(hull(38, Hull.Arrival.LANDS_LYING, end, end), LEVEL).hulls().get(0);
            assertEquals(WANTED, cover.least().depth(), CELL, end.shape().word());
            assertEquals(0, cover.shareBelowWanted(), end.shape().word());
        }
    }

    /** In a trench 4 m deep less soil stands over the ground, and no place is covered thinner. */
    @Test
    void aTrenchAndAScarpSpareSoilAndKeepTheThickness() {
        double level = cover(flat(38), LEVEL).volume();
        ElevationGrid trench = SamplePlans.ground((e, n) -> Math.max(-4, Math.min(0,
                (Math.max(Math.abs(n - 150) - 5, Math.abs(e - 142) - 24) - 4 / Math.tan(SLOPE)) * Math.tan(SLOPE))));
        SiteCover sunk = cover(flat(38), trench);
        assertTrue(sunk.volume() < 0.75 * level, sunk.volume() + " against " + level);
        assertEquals(WANTED, sunk.hulls().get(0).least().depth(), CELL);
        ElevationGrid scarp = SamplePlans.ground((e, n) -> Math.max(0, Math.min(8, (n - 154) * 1.5)));
        SiteCover against = cover(flat(38), scarp);
        assertTrue(against.volume() < 0.85 * level, against.volume() + " against " + level);
        assertTrue(against.hulls().get(0).least().depth() > WANTED - CELL);
        // Behind the hull the cover runs into the scarp and leaves it as it is.
        assertEquals(8, against.finished().height(new Point(142, 175)), 1e-9);
    }

    /** Straight up from the middle of a hull that stays upright: its skin and all the soil wanted over its top. */
    @Test
    void anUprightHullIsCoveredOverItsWholeTop() {
        Hull upright = hull(10, Hull.Arrival.STAYS_UPRIGHT, end(Hull.Shape.FLAT, 0), end(Hull.Shape.FLAT, 0));
        Plan plan = SamplePlans.plan(List.of(upright));
        SiteCover cover = SiteCover.raised(plan, LEVEL, LEVEL);
        assertEquals(WANTED, cover.hulls().get(0).least().depth(), CELL);
        StationDose dose = SiteDose.of(plan, cover, new DoseSources(new Responses(directory), directory),
                Progress.NONE).stations().get(0);
        double through = WANTED * 1650 + 39.5;
        double seen = dose.seen().leastArealDensity();
        assertTrue(seen > 0.95 * through, seen + " of " + through);
        assertTrue(HullBurial.notReckoned(plan, cover).stream()
                .anyMatch(f -> f.rule().id().equals("burial-upright") && f.subject().equals("A")));
    }

    /** Soil stands full at a wall, and falls back at its own slope from an open end. */
    @Test
    void aWallHoldsTheSoilThatAnOpenEndLetsFallBack() {
        Hull h = flat(38);
        CoverPlan c = h.cover().orElseThrow();
        Hull held = h.withCover(Optional.of(new CoverPlan(c.thickness(), c.crown(), c.flank(), c.baseEndThickness(),
                c.farEndThickness(), CoverPlan.End.WALL, c.farEnd(), Optional.of("W"), Optional.empty(), 0, c.lift(),
                OptionalDouble.empty(), List.of(), Annotations.NOTHING)));
        Hull open = h.withCover(Optional.of(new CoverPlan(c.thickness(), c.crown(), c.flank(), c.baseEndThickness(),
                c.farEndThickness(), CoverPlan.End.OPEN, c.farEnd(), Optional.empty(), Optional.empty(), 0, c.lift(),
                OptionalDouble.empty(), List.of(), Annotations.NOTHING)));
        Plan plain = SamplePlans.plan(List.of(held));
        Plan walled = new Plan(plain.title(), plain.ground(), plain.hulls(), List.of(new Wall("W", List.of(
                new Point(120, 130), new Point(120, 170)), 12, 0.5, Annotations.NOTHING)), plain.tunnels(),
                        plain.keepOuts(),
                plain.corridors(), plain.landingPads(), plain.preparations(), plain.borrowGrounds(),
                plain.stockpiles(), plain.machines(), plain.exposure(), plain.rules(), plain.orderOfWork(),
                plain.arrangeWithin(), plain.annotations());
        double full = 2 * RADIUS + WANTED;
        SiteCover atWall = SiteCover.raised(walled, LEVEL, LEVEL);
        assertEquals(full, atWall.finished().height(new Point(121, 150)), CELL);
        assertEquals(0, atWall.finished().height(new Point(119, 150)), 1e-9);
        SiteCover back = cover(open, LEVEL);
        double high = full / Math.tan(SLOPE);
        assertEquals(5 * Math.tan(SLOPE), back.finished().height(new Point(125, 155)), CELL);
        assertEquals(full, back.finished().height(new Point(121 + high, 150)), CELL);
    }

    /** The baseline of a hull that lands lying is the hull as it came down, on the ground and not yet sunk. */
    @Test
    void theBaselineIsTheHullBeforeAnySoilWasMoved() {
        DoseSources sources = new DoseSources(new Responses(directory), directory);
        double[] upright = new double[2];
        for (int i = 0; i < 2; i++) {
            Plan plan = SamplePlans.plan(List.of(seated(38, Seat.Kind.GROUND, 3.8 * i, 0)));
            upright[i] = SiteDose.of(plan, SiteCover.raised(plan, LEVEL, LEVEL), sources, Progress.NONE).stations()
                    .get(0).upright();
        }
        assertEquals(upright[0], upright[1], 1e-9 * upright[0]);
    }
}
