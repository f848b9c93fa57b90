// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.site.SamplePlans;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.HullPlacement;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.FittedPlane;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class LaydownTest {
    private static final Point PLACE = new Point(150, 120);
    private static final ElevationGrid LEVEL = SamplePlans.ground((e, n) -> 3);

    private static Laydown laydown(Hull hull, ElevationGrid ground) {
        return LaydownOfHull.of(SamplePlans.plan(List.of(hull)), hull, ground);
    }

    private static boolean finds(Laydown laydown, Finding.Level level, String rule) {
        return laydown.findings().stream().anyMatch(f -> f.level() == level && f.rule().id().equals(rule));
    }

    private static Hull hull() {
        return SamplePlans.hull("A", PLACE, 0);
    }

    private static LoweringGear gear(LoweringGear.Lines lines, Optional<LoweringGear.Poles> poles) {
        LoweringGear g = SamplePlans.gear();
        return new LoweringGear(g.means(), g.rate(), g.wander(), g.margin(), Optional.of(lines), poles, g.stays(),
                g.pullOver(), g.pivotHold(), g.sideThrusters(), g.landing(), g.temperature(), g.annotations());
    }

    private static LoweringGear.Lines lugAt(double along) {
        LoweringGear.Lines l = SamplePlans.gear().lines().orElseThrow();
        return new LoweringGear.Lines(l.count(), along, l.lugOffAxis(), l.lugHalfSpread(), l.line(), l.winch(),
                l.payOutMismatch(), l.sheaveEfficiency(), l.ends(), l.slack(), l.annotations());
    }

    /** The same by hand: lug (30, 3.8), head (-10, 26), weight at (17, 3.8). */
    @Test
    void laysASampleHullDownAsByHand() {
        LoweringResult result = laydown(hull(), LEVEL).lowering().orElseThrow();
        double weight = 71_000 * 1.62;
        double run = 40;
        double rise = 22.2;
        double lever = (30 * rise + 3.8 * run) / Math.hypot(run, rise);
        double lateral = Math.asin((6 - 3.8) / Math.hypot(Math.hypot(run, rise), 2.2));
        assertEquals(weight * 17 / lever / 2 / Math.cos(lateral), result.greatestLineTension(), 1e-6);
        assertEquals(Math.atan2(rise, run), result.lineAngleAtRest(), 1e-12);
        assertEquals(Math.atan(3.8 / 17), result.balanceTilt(), 1e-12);
        assertTrue(result.handOverTilt() > result.balanceTilt());
    }

    @Test
    void givesEverythingForASoundHull() {
        Laydown laydown = laydown(hull(), LEVEL);
        assertTrue(laydown.review().isPresent() && laydown.rest().isPresent() && laydown.plane().isPresent());
        assertTrue(laydown.thrusters().isEmpty() && laydown.landing().isEmpty());
        assertFalse(laydown.notes().isEmpty());
        LoweringWords words = LoweringWords.of(laydown);
        assertFalse(words.sequence().isEmpty() || words.holdPoints().isEmpty() || words.governing().isEmpty());
        assertTrue(words.balances().contains("full balance"), words.balances());
        assertTrue(words.motion().size() >= 4);
        assertEquals(LoweringResult.CAUTION, words.caution());
    }

    @Test
    void refusesALugBeyondTheHull() {
        Hull hull = hull().withLowering(Optional.of(gear(lugAt(39), SamplePlans.gear().poles())));
        assertTrue(finds(laydown(hull, LEVEL), Finding.Level.REFUSE, "lowering-lug-beyond-hull"));
    }

    @Test
    void namesTheDeadPointOfLinesWithoutPoles() {
        Hull hull = hull().withLowering(Optional.of(gear(SamplePlans.gear().lines().orElseThrow(),
                Optional.empty())));
        Laydown laydown = laydown(hull, LEVEL);
        assertTrue(finds(laydown, Finding.Level.REFUSE, "lowering-dead-point"), laydown.findings().toString());
    }

    @Test
    void refusesAPoleInsideTheSweep() {
        LoweringGear.Poles p = SamplePlans.gear().poles().orElseThrow();
        LoweringGear.Poles near = new LoweringGear.Poles(p.height(), 4, 1, p.diameter(), p.wall(), p.yield(),
                p.modulus(), p.footArea(), p.count(), p.head(), p.annotations());
        Hull hull = hull().withLowering(Optional.of(gear(SamplePlans.gear().lines().orElseThrow(),
                Optional.of(near))));
        assertTrue(finds(laydown(hull, LEVEL), Finding.Level.REFUSE, "lowering-pole-in-sweep"));
    }

    @Test
    void refusesGroundThatTipsTheStandingHull() {
        ElevationGrid steep = SamplePlans.ground((e, n) -> 100 - n * Math.tan(Math.toRadians(13)));
        Laydown laydown = laydown(hull(), steep);
        assertTrue(finds(laydown, Finding.Level.REFUSE, "lowering-falls-while-standing"));
        assertTrue(laydown.lowering().isEmpty());
    }

    @Test
    void warnsWhereRatingsAreMissing() {
        LoweringGear.Lines l = SamplePlans.gear().lines().orElseThrow();
        LoweringGear.Line bare = new LoweringGear.Line(OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty(), OptionalDouble.empty(), Annotations.NOTHING);
        LoweringGear.Lines lines = new LoweringGear.Lines(l.count(), l.lugFromBase(), l.lugOffAxis(),
                l.lugHalfSpread(), bare, l.winch(), l.payOutMismatch(), l.sheaveEfficiency(), l.ends(),
                l.slack(), l.annotations());
        Laydown laydown = laydown(hull().withLowering(Optional.of(gear(lines, SamplePlans.gear().poles()))), LEVEL);
        assertTrue(finds(laydown, Finding.Level.WARN, "lowering-rating-missing"));
        assertTrue(laydown.lowering().orElseThrow().factors().line().isEmpty());
    }

    @Test
    void refusesAHullOffTheGround() {
        Laydown laydown = laydown(SamplePlans.hull("A", new Point(150, 290), 0), LEVEL);
        assertTrue(finds(laydown, Finding.Level.REFUSE, "lowering-no-ground"));
        assertTrue(laydown.plane().isEmpty() && laydown.rest().isEmpty());
    }

    @Test
    void aHullWithoutGearIsAFinding() {
        assertTrue(finds(laydown(hull().withLowering(Optional.empty()), LEVEL), Finding.Level.REFUSE,
                "lowering-no-gear"));
    }

    @Test
    void sidewaysSlopeRollsTheLyingHull() {
        ElevationGrid slope = SamplePlans.ground((e, n) -> e * Math.tan(Math.toRadians(5)));
        Laydown laydown = laydown(hull(), slope);
        assertTrue(finds(laydown, Finding.Level.WARN, "rest-rolls-away"));
        assertTrue(finds(laydown, Finding.Level.NOTE, "lowering-rim-rolls"));
    }

    @Test
    void thrustersThatAreTooWeakAreRefused() {
        LoweringGear g = SamplePlans.gear();
        LoweringGear.SideThrusters weak = new LoweringGear.SideThrusters(4, 5e3, 34, 0, 320, 50, Annotations.NOTHING);
        LoweringGear gear = new LoweringGear(LoweringGear.Means.SIDE_THRUSTERS, Math.toRadians(1), g.wander(),
                g.margin(), Optional.empty(), Optional.empty(), List.of(), Optional.empty(), Optional.empty(),
                Optional.of(weak), Optional.empty(), g.temperature(), g.annotations());
        Laydown laydown = laydown(hull().withLowering(Optional.of(gear)), LEVEL);
        assertTrue(finds(laydown, Finding.Level.REFUSE, "thruster-margin"));
        double peak = 71_000 * 1.62 * 17 / 34;
        assertEquals(peak, laydown.thrusters().orElseThrow().greatestBrake(), 1e-6);
        assertTrue(laydown.lowering().isEmpty());
    }

    @Test
    void landingDispersionMovesTheHullAndNotTheGear() {
        LoweringGear.Poles p = SamplePlans.gear().poles().orElseThrow();
        LoweringGear.Poles near = new LoweringGear.Poles(p.height(), 9, 1, p.diameter(), p.wall(), p.yield(),
                p.modulus(), p.footArea(), p.count(), p.head(), p.annotations());
        Hull still = hull().withLowering(Optional.of(gear(SamplePlans.gear().lines().orElseThrow(),
                Optional.of(near))));
        assertFalse(finds(laydown(still, LEVEL), Finding.Level.REFUSE, "lowering-dispersion"));
        assertFalse(finds(laydown(still, LEVEL), Finding.Level.REFUSE, "lowering-pole-in-sweep"));
        assertTrue(finds(laydown(dispersed(still, 3), LEVEL), Finding.Level.REFUSE, "lowering-dispersion"));
    }

    private static Hull dispersed(Hull h, double off) {
        return new Hull(h.id(), h.body(), h.massProperties(),
                new HullPlacement(h.baseCentre(), off, h.layDownAzimuth(), h.placement().clocking(), h.pivot(),
                h.arrival()), h.lowering(), h.seat(), h.hatches(), h.stations(), h.cover(), h.held(),
                h.annotations());
    }

    @Test
    void higherGroundBehindRaisesTheHeads() {
        ElevationGrid bank = SamplePlans.ground((e, n) -> n < 116 ? 5 : 3);
        double raised = laydown(hull(), bank).lowering().orElseThrow().greatestLineTension();
        double level = laydown(hull(), LEVEL).lowering().orElseThrow().greatestLineTension();
        assertTrue(raised < level);
    }

    @Test
    void planeAndSiteAreTheSamePlace() {
        FittedPlane bed = SamplePlans.ground((e, n) -> 50 - 0.1 * n)
                .fittedPlane(new bermwright.foundation.Ring(List.of(new Point(140, 100), new Point(160, 100),
                        new Point(160, 160), new Point(140, 160)))).orElseThrow();
        LayPlane plane = LayPlane.of(hull(), bed, SamplePlans.ground((e, n) -> 50 - 0.1 * n));
        assertEquals(Math.atan(0.1), plane.slopeAlong(), 1e-9);
        Vec3 site = plane.site(new PlanePoint(-7, 20), 2);
        double along = site.y() - plane.pivot().north();
        PlanePoint back = plane.at(along, site.z());
        assertEquals(-7, back.x(), 1e-9);
        assertEquals(20, back.z(), 1e-9);
        assertEquals(148, site.x(), 1e-9);
    }

    @Test
    void alternativesPutMeansAndPolesSideBySide() {
        Plan plan = SamplePlans.plan(List.of(hull()));
        Alternatives found = Alternatives.of(plan, hull(), LEVEL);
        assertEquals("", found.unusable());
        assertEquals(3, found.comparison().size());
        assertEquals(11, found.byMass().size());
        assertEquals(11, found.byCentre().size());
        assertFalse(found.suggestions().orElseThrow().found().isEmpty());
        assertEquals(1, Alternatives.all(plan, LEVEL).size());
    }

    @Test
    void landingOnTheSideNamesWhatIsMissing() {
        Hull h = hull();
        Hull lying = new Hull(h.id(), h.body(), h.massProperties(),
                new HullPlacement(h.baseCentre(), 0, h.layDownAzimuth(), h.placement().clocking(), h.pivot(),
                Hull.Arrival.LANDS_LYING), Optional.empty(), h.seat(), h.hatches(), h.stations(), h.cover(),
                h.held(), h.annotations());
        Laydown laydown = laydown(lying, LEVEL);
        assertTrue(laydown.landing().isPresent() && laydown.lowering().isEmpty());
        assertTrue(finds(laydown, Finding.Level.WARN, "landing-no-pad"));
        assertTrue(finds(laydown, Finding.Level.WARN, "landing-not-stated"));
    }

    /** Ground and azimuth turned about together leave every force as it was. */
    @Test
    void mirrorImagesAgree() {
        java.util.function.DoubleBinaryOperator rolling = (e, n) -> 0.6 * Math.sin(e / 31) * Math.cos(n / 23)
                + 0.02 * n;
        ElevationGrid one = SamplePlans.ground(rolling);
        ElevationGrid other = SamplePlans.ground((e, n) -> rolling.applyAsDouble(e, 300 - n));
        LoweringResult a = laydown(SamplePlans.hull("A", new Point(150, 120), 0), one).lowering().orElseThrow();
        LoweringResult b = laydown(SamplePlans.hull("A", new Point(150, 180), 180), other).lowering().orElseThrow();
        assertEquals(a.greatestLineTension(), b.greatestLineTension(), 1e-6);
        assertEquals(a.balanceTilt(), b.balanceTilt(), 1e-12);
        assertEquals(a.greatestPullOver(), b.greatestPullOver(), 1e-6);
    }

    @Test
    void shadeWithinTheLiftIsFoundAndWindowsThatEndBeforeTheyBeginAreNot() {
        LoweringGear g = SamplePlans.gear();
        LoweringGear.Temperature changing = new LoweringGear.Temperature(250, 1.2e-5, List.of(
                new LoweringGear.Light(0, 0.5, LoweringGear.Shade.SUN, Annotations.NOTHING),
                new LoweringGear.Light(0.5, 2, LoweringGear.Shade.SHADE, Annotations.NOTHING),
                new LoweringGear.Light(3, 1, LoweringGear.Shade.SUN, Annotations.NOTHING)), Annotations.NOTHING);
        Laydown laydown = laydown(hull().withLowering(Optional.of(new LoweringGear(g.means(), g.rate(), g.wander(),
                g.margin(), g.lines(), g.poles(), g.stays(), g.pullOver(), g.pivotHold(), g.sideThrusters(),
                g.landing(), changing, g.annotations()))), LEVEL);
        assertTrue(finds(laydown, Finding.Level.WARN, "lowering-light-changes"));
        assertTrue(finds(laydown, Finding.Level.WARN, "lowering-light-backwards"));
        assertFalse(finds(laydown, Finding.Level.NOTE, "lowering-light-not-stated"));
        assertEquals(Math.toRadians(60), laydown.review().orElseThrow().lines().lightChanges().get(0).tilt(), 1e-9);
        assertFalse(finds(laydown(hull(), LEVEL), Finding.Level.NOTE, "lowering-light-changes"));
    }

    @Test
    void anchorsOnGroundThatFallsTowardsTheHullHoldLess() {
        double level = winchAnchor(LEVEL);
        double mu = Math.tan(Math.toRadians(42 * 2 / 3.0));
        double slope = Math.atan(0.06);
        double falls = winchAnchor(SamplePlans.ground((e, n) -> 20 - 0.06 * n));
        assertEquals((mu * Math.cos(slope) - Math.sin(slope)) / mu, falls / level, 0.01);
        assertEquals(level, winchAnchor(SamplePlans.ground((e, n) -> 0.06 * n)), 0.01 * level);
    }

    private static double winchAnchor(ElevationGrid ground) {
        return laydown(hull(), ground).lowering().orElseThrow().chain()
                .governing(bermwright.lowering.chain.Part.WINCH_ANCHOR).orElseThrow().capacity().orElseThrow();
    }

    /** Lug (x, z) to head (-10, 26): at hand-over the lines are shortest in plan, so a sideways landing turns most. */
    @Test
    void aSidewaysLandingLeadsTheLinesOutOfThePlane() {
        Laydown laydown = laydown(dispersed(hull(), 2), LEVEL);
        Finding sideways = laydown.findings().stream().filter(f -> f.rule().id().equals("lowering-dispersion-sideways"))
                .findFirst().orElseThrow();
        double tilt = laydown.lowering().orElseThrow().handOverTilt();
        double lug = 30 * Math.sin(tilt) - 3.8 * Math.cos(tilt);
        double most = 0;
        for (int i = 0; i < 12; i++) {
            double way = Math.toRadians(30 * i);
            most = Math.max(most, Math.atan2(2 * Math.abs(Math.sin(way)), 10 + lug + 2 * Math.cos(way)));
        }
        assertEquals(Math.toDegrees(most), sideways.measured().orElseThrow(), 1e-9);
        assertTrue(sideways.text().contains("2.0 m to the"), sideways.text());
        assertEquals(Finding.Level.WARN, sideways.level());
        assertFalse(laydown(hull(), LEVEL).findings().stream()
                .anyMatch(f -> f.rule().id().equals("lowering-dispersion-sideways")));
    }

    /** A ring of twelve at the edge, six half way, the planned place; the same on level ground to both sides. */
    @Test
    void landingsAllOverTheDispersionAreTried() {
        LandingDisc disc = laydown(dispersed(hull(), 2), LEVEL).disc().orElseThrow();
        assertEquals(19, disc.spots().size());
        assertEquals("at the planned place", disc.spots().get(0).where());
        double planned = laydown(hull(), LEVEL).lowering().orElseThrow().greatestLineTension();
        assertEquals(planned, disc.spots().get(0).eased().tension(), 1e-9 * planned);
        for (LandingDisc.Spot s : disc.spots()) {
            assertTrue(s.worst().tension() >= s.eased().tension());
            LandingDisc.Spot mirror = disc.spots().stream().filter(m -> Math.abs(m.ahead() - s.ahead()) < 1e-9
                    && Math.abs(m.left() + s.left()) < 1e-9).findFirst().orElseThrow();
            assertEquals(s.eased().tension(), mirror.eased().tension(), 1e-9 * planned);
            assertEquals(s.worst().tension(), mirror.worst().tension(), 1e-9 * planned);
        }
        assertTrue(disc.worst().ahead() > 0, "further from the poles the lines lie flatter: " + disc.worst());
        assertTrue(laydown(hull(), LEVEL).disc().isEmpty());
    }

    /** The far side of the disc lies lower: gear set out on the planned side then stands higher over the hull. */
    @Test
    void everyLandingIsOnItsOwnGround() {
        ElevationGrid step = SamplePlans.ground((e, n) -> 0.02 * (e - PLACE.east()));
        LandingDisc disc = laydown(dispersed(hull(), 2), step).disc().orElseThrow();
        double right = disc.spots().stream().filter(s -> s.left() < -1.9).findFirst().orElseThrow().worst().tension();
        double left = disc.spots().stream().filter(s -> s.left() > 1.9).findFirst().orElseThrow().worst().tension();
        assertTrue(Math.abs(right - left) > 1e-3 * left, right + " " + left);
    }

    /** A bare rim on ground that falls two degrees across: side lines, and where it would roll without them. */
    @Test
    void aRimOnACrossSlopeSaysWhatHoldsItAndWhereItRolls() {
        Laydown laydown = laydown(hull(), SamplePlans.ground((e, n) -> 20 - 0.035 * e));
        Finding line = finding(laydown, "lowering-side-line");
        double weight = 71e3 * 1.62 / 1000;
        assertTrue(line.measured().orElseThrow() > 0.005 * weight && line.measured().orElseThrow() < 0.1 * weight);
        Finding sways = finding(laydown, "lowering-sways");
        assertEquals(Finding.Level.WARN, sways.level());
        assertTrue(sways.text().contains("rolling away") || sways.text().contains("rolls on its rim"), sways.text());
        assertFalse(finds(laydown(hull(), LEVEL), Finding.Level.NOTE, "lowering-side-line"));
        assertEquals(1, LoweringWords.of(laydown).motion().stream().filter(w -> w.startsWith("The cross slope pulls"))
                .count());
    }

    private static Finding finding(Laydown laydown, String rule) {
        return laydown.findings().stream().filter(f -> f.rule().id().equals(rule)).findFirst().orElseThrow();
    }
}
