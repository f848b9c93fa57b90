// SPDX-License-Identifier: Apache-2.0
package bermwright.site.burial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.foundation.Point;
import bermwright.lowering.strength.SupportedBeam;
import bermwright.shielding.cover.DepthMap;
import bermwright.site.SamplePlans;
import bermwright.site.burial.HullSupports.Kind;
import bermwright.site.burial.HullSupports.Support;
import bermwright.site.exposure.SiteCover;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.HullPlacement;
import bermwright.site.plan.MassProperties;
import bermwright.site.plan.Pivot;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Seat;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class HullSupportsTest {
    private static final ElevationGrid GROUND = SamplePlans.ground((e, n) -> 0);
    private static final double ROUNDING = 1e-9;

    private static Seat cradle(int count, OptionalDouble fromEnd, double contactDeg) {
        return new Seat(Seat.Kind.CRADLE, 0, 0.4, count, fromEnd, Math.toRadians(contactDeg), 0.5, Annotations.NOTHING);
    }

    private static HullBurial burial(Seat seat, Optional<Pivot> pivot, double centre) {
        Plan plan = plan(seat, pivot, centre);
        return HullBurial.of(plan, SiteCover.raised(plan, GROUND, GROUND)).get(0);
    }

    private static Plan plan(Seat seat, Optional<Pivot> pivot, double centre) {
        return SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(120, 150), 90))).withHull("A",
                h -> new Hull(h.id(), h.body(),
                new MassProperties(h.mass(), centre, h.centreOfMassOffAxis(), h.centreOfMassSpread(),
                h.inertiaAboutCentre(), h.residualPropellant()), new HullPlacement(h.baseCentre(),
                h.landingDispersion(), h.layDownAzimuth(), h.placement().clocking(), pivot.orElse(h.pivot()),
                        h.arrival()),
                h.lowering(), seat, h.hatches(), h.stations(), h.cover(), h.held(), h.annotations()));
    }

    private static HullSupports on(Seat seat) {
        return burial(seat, Optional.empty(), 17).supports();
    }

    private static double borne(HullSupports supports) {
        return supports.supports().stream().mapToDouble(Support::reaction).sum();
    }

    private static Optional<Level> level(HullSupports supports, String rule) {
        return supports.findings().stream().filter(f -> f.rule().id().equals(rule)).map(Finding::level).findFirst();
    }

    @Test
    void aHullOnTheGroundIsCarriedAlongItsLength() {
        HullBurial burial = burial(Seat.usual(Seat.Kind.GROUND, 0, 0), Optional.empty(), 19);
        assertEquals(Kind.ALONG, burial.supports().kind());
        assertEquals(burial.seat().perLength() * 38, borne(burial.supports()), ROUNDING * borne(burial.supports()));
        Support whole = burial.supports().supports().get(0);
        // Over a parabola of contact the mean is two thirds of the greatest pressure; cells leave a centimetre.
        assertEquals(burial.seat().greatest() * 2 / 3, whole.pressure(), 6 * 0.01 / 38 * whole.pressure());
        assertTrue(burial.supports().findings().isEmpty());
        // Its own weight off the middle tilts the ground's push: 1 + 6 e / L at the heavier end.
        HullBurial heavy = burial(Seat.usual(Seat.Kind.GROUND, 0, 0), Optional.empty(), 12);
        double weight = 71e3 * 1.62;
        double off = weight * 7 / (heavy.seat().perLength() * 38);
        assertEquals(heavy.seat().greatest() * 2 / 3 * (1 + 6 * off / 38),
                heavy.supports().supports().get(0).pressure(), 6 * 0.01 / 38 * whole.pressure());
    }

    @Test
    void twoSaddlesShareWeightAndSoilByTheLeverRule() {
        HullBurial burial = burial(Seat.usual(Seat.Kind.CRADLE, 0, 0.4), Optional.empty(), 17);
        List<Support> saddles = burial.supports().supports();
        assertEquals(0.2 * 38, saddles.get(0).along(), ROUNDING);
        assertEquals(0.8 * 38, saddles.get(1).along(), ROUNDING);
        double all = burial.seat().perLength() * 38;
        assertEquals(all, borne(burial.supports()), ROUNDING * all);
        // The cover is alike at both ends, so the soil's centre is at half length; cells leave a centimetre of it.
        double weight = 71e3 * 1.62;
        double centre = (weight * 17 + (all - weight) * 19) / all;
        assertEquals(all * (0.8 * 38 - centre) / (0.6 * 38), saddles.get(0).reaction(), all * 0.01 / (0.6 * 38));
        assertEquals(Optional.of(Level.WARN), level(burial.supports(), "saddle-horn"));
        assertEquals(burial.findings().stream().filter(f -> f.rule().id().startsWith("saddle-")).toList(),
                burial.supports().findings());
    }

    /** The base third stands open and its own weight hangs at the far end: no straight spread has such a centre. */
    @Test
    void loadsOnOneEndAreBorneWhereTheyLie() {
        Plan plan = plan(Seat.usual(Seat.Kind.CRADLE, 0, 0.4), Optional.empty(), 34).withHull("A", h ->
                h.withCover(h.cover().map(c -> new CoverPlan(c.thickness(), c.crown(), c.flank(), c.baseEndThickness(),
                        c.farEndThickness(), CoverPlan.End.OPEN, c.farEnd(), c.baseEndWall(), c.farEndWall(),
                        c.crownWidth(), c.lift(), c.density(), c.passThroughs(), c.annotations()))));
        SiteCover cover = SiteCover.raised(plan, GROUND, GROUND);
        HullBurial burial = HullBurial.of(plan, cover).get(0);
        DepthMap depth = cover.hulls().get(0).depth();
        double soil = 0;
        double soilMoment = 0;
        double cell = 38.0 / depth.rows() * 3.8 * 2 * Math.PI / depth.columns() * 1650 * 1.62;
        for (int i = 0; i < depth.rows(); i++) {
            for (int j = 0; j < depth.columns(); j++) {
                double over = Math.abs(depth.aroundAt(j)) < Math.PI / 2
                        ? cell * depth.uprightDepth(i, j) * Math.cos(depth.aroundAt(j)) : 0;
                soil += over;
                soilMoment += over * depth.alongAt(i);
            }
        }
        double weight = 71e3 * 1.62;
        double centre = (soilMoment + weight * 34) / (soil + weight);
        assertTrue(soilMoment / soil > 19.5);
        List<Support> saddles = burial.supports().supports();
        assertEquals((soil + weight) * (centre - 7.6) / 22.8, saddles.get(1).reaction(), ROUNDING * (soil + weight));
        assertEquals((soil + weight) * (30.4 - centre) / 22.8, saddles.get(0).reaction(), ROUNDING * (soil + weight));
        SupportedBeam beam = burial.supports().beam().orElseThrow();
        assertEquals(0, beam.moment(38), ROUNDING * beam.hogging());
        // Beyond the far saddle lie its own weight as a triangle over 12 m and the soil there.
        assertTrue(beam.hogging() > weight * (34 - 30.4));
        assertTrue(burial.supports().findings().stream().noneMatch(f -> f.rule().id().equals("saddle-not-reckoned")));
    }

    @Test
    void moreAndWiderSaddlesHelp() {
        HullSupports two = on(cradle(2, OptionalDouble.empty(), 120));
        HullSupports six = on(cradle(6, OptionalDouble.of(3), 120));
        assertTrue(Math.max(six.hogging(), six.sagging()) < 0.2 * Math.max(two.hogging(), two.sagging()));
        HullSupports wide = on(cradle(2, OptionalDouble.empty(), 150));
        assertTrue(wide.shell().orElseThrow().horn().orElseThrow()
                < 0.7 * two.shell().orElseThrow().horn().orElseThrow());
        assertTrue(wide.supports().get(0).bearingFactor() > two.supports().get(0).bearingFactor());
        assertEquals(bermwright.foundation.ModelNote.Status.EXTRAPOLATED,
                on(cradle(2, OptionalDouble.empty(), 90)).note().status());
        assertEquals(bermwright.foundation.ModelNote.Status.COMPUTED, wide.note().status());
    }

    @Test
    void innerPressureHoldsThePressedSideAndLoadsThePulledOne() {
        HullSupports.Stresses shell = new HullSupports.Stresses(30e6, 45e6, 36e6, 25e6, Optional.empty(), 340e6);
        assertEquals(36.0 / 45, shell.bendingFactor(), ROUNDING);
        assertEquals(36.0 / 20, shell.pressurisedFactor(), ROUNDING);
        HullSupports.Stresses weak = new HullSupports.Stresses(30e6, 45e6, 36e6, 60e6, Optional.empty(), 90e6);
        assertEquals(90.0 / 105, weak.pressurisedFactor(), ROUNDING);
        HullSupports.Stresses made = on(cradle(2, OptionalDouble.empty(), 120)).shell().orElseThrow();
        // 70 kPa, radius 3.8 m, wall 5 mm: p R / (2 t).
        assertEquals(70e3 * 3.8 / 0.01, made.pull(), 1e-6);
    }

    @Test
    void saddlesAtTheWrongPlaceAreFound() {
        HullSupports close = on(cradle(2, OptionalDouble.of(18.97), 120));
        assertEquals(Optional.of(Level.REFUSE), level(close, "saddle-lifts"));
        HullSupports past = on(cradle(2, OptionalDouble.of(20), 120));
        assertEquals(Optional.of(Level.REFUSE), level(past, "saddle-place"));
        assertTrue(past.supports().isEmpty());
        HullSupports ends = on(cradle(2, OptionalDouble.of(0), 120));
        assertFalse(level(ends, "saddle-bending").isEmpty());
    }

    /** Three saddles crowd the middle: the hull rocks on two of them, as the lever rule says. */
    @Test
    void aSaddleTheHullRisesOffBearsNothing() {
        HullSupports three = burial(cradle(3, OptionalDouble.of(17), 120), Optional.empty(), 19).supports();
        assertEquals(0, three.supports().stream().mapToDouble(Support::reaction).min().orElseThrow(), 0);
        assertEquals(Optional.of(Level.WARN), level(three, "saddle-idle"));
        assertTrue(level(three, "saddle-lifts").isEmpty());
        double all = burial(cradle(2, OptionalDouble.empty(), 120), Optional.empty(), 19).seat().perLength() * 38;
        assertEquals(all, borne(three), ROUNDING * all);
        HullSupports even = burial(cradle(3, OptionalDouble.of(5), 120), Optional.empty(), 19).supports();
        assertTrue(level(even, "saddle-idle").isEmpty());
    }

    @Test
    void aHullOnItsLegsLeansOnItsNose() {
        Pivot legs = new Pivot(Pivot.Kind.LEGS, OptionalDouble.empty(), OptionalDouble.empty(), OptionalInt.of(4),
                OptionalDouble.of(6.5), OptionalDouble.of(2), Annotations.NOTHING);
        HullSupports supports = burial(Seat.usual(Seat.Kind.GROUND, 0, 0), Optional.of(legs), 17).supports();
        assertEquals(Kind.FEET_AND_NOSE, supports.kind());
        assertEquals(List.of("two leading legs", "nose"), supports.supports().stream().map(Support::name).toList());
        Support feet = supports.supports().get(0);
        assertEquals(feet.reaction() / 4, feet.pressure(), ROUNDING * feet.pressure());
        double all = borne(supports);
        // A nearly even load on both ends of a beam: q L2 / 8 between, nothing over the supports.
        assertEquals(all * 38 / 8, supports.sagging(), 0.02 * all * 38 / 8);
        assertEquals(0, supports.hogging(), ROUNDING * all);
        Pivot short4 = new Pivot(Pivot.Kind.LEGS, OptionalDouble.empty(), OptionalDouble.empty(), OptionalInt.of(4),
                OptionalDouble.of(5), OptionalDouble.of(2), Annotations.NOTHING);
        assertEquals(Kind.ALONG, burial(Seat.usual(Seat.Kind.GROUND, 0, 0), Optional.of(short4), 17).supports().kind());
    }

    @Test
    void theNoseIsTheSeatSummedAlongItsLean() {
        NoseLoad nose = NoseLoad.on(5e5, 4, 0.01, 820_000);
        double sum = 0;
        int n = 20_000;
        for (int i = 0; i < n; i++) {
            double depth = nose.sinking() * (i + 0.5) / n;
            sum += 4.0 / 3 * 820_000 * depth * Math.sqrt(2 * 4 * depth) * nose.reach() / n;
        }
        assertEquals(5e5, sum, 5e5 * 1e-6);
        assertEquals(5e5, nose.mean() * nose.width() * nose.reach(), 1e-6);
    }
}
