// SPDX-License-Identifier: Apache-2.0
package bermwright.site;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.site.plan.Anchor;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.HazardPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.HullBody;
import bermwright.site.plan.HullPlacement;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.MassProperties;
import bermwright.site.plan.Pivot;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Rules;
import bermwright.site.plan.Seat;
import bermwright.site.plan.Station;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoubleBinaryOperator;

/** Small sound plans for tests; invented figures. */
public final class SamplePlans {
    private static final Annotations K = Annotations.NOTHING;

    private SamplePlans() {
    }

    /** A plan of hulls on highland soil, without machines, areas or steps. */
    public static Plan plan(List<Hull> hulls) {
        GroundPlan.Regolith soil = new GroundPlan.Regolith("highland", 1650, 1800, 1450, 0.1, List.of(),
                Math.toRadians(33), Math.toRadians(42), 500, Math.toRadians(2), 150, List.of(), K);
        GroundPlan ground = new GroundPlan("ground.tif", Optional.empty(), 0.1, 30, 1.62, 0.4, soil, K);
        ExposurePlan exposure = new ExposurePlan(180, 1, OptionalDouble.empty(),
                Optional.of(ExposurePlan.SolarActivity.MINIMUM),
                Optional.empty(), OptionalDouble.empty(), Optional.of("august 1972"), Optional.empty(),
                Optional.empty(),
                "built in", List.of(), List.of(limit(ExposurePlan.Over.STAY, 0.15)), List.of(),
                HazardPlan.USUAL, K);
        Rules rules = new Rules(Math.toRadians(5), 8, 3, 2, 2, 1.5, 1.5, 1, Optional.empty(), 0, 0.1, 0.2, K);
        return new Plan("Test plan", ground, hulls, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of(), exposure, rules, List.of(), Optional.empty(), K);
    }

    /** A limit of the plan's own on the effective dose from all sources (Sv). */
    public static ExposurePlan.Limit limit(ExposurePlan.Over over, double limit) {
        return new ExposurePlan.Limit(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(over),
                OptionalDouble.of(limit), Optional.of("invented for this test"), K);
    }

    /** A hull of 38 m by 7.6 m and 71 t, laid down by two lines over poles. */
    public static Hull hull(String id, Point place, double azimuthDeg) {
        Hull.End flat = new Hull.End(Hull.Shape.FLAT, 0, K);
        return new Hull(id, new HullBody(38, 7.6, flat, flat,
                List.of(new Hull.SkinLayer("steel", 39.5, K)), List.of(),
                Optional.of(new Hull.Shell(0.005, 200e9, 350e6,
                0.29, K)), 70e3), new MassProperties(71e3, 17, 0, 0.4, OptionalDouble.empty(), 0),
                new HullPlacement(place, 0, Azimuth.ofDegrees(azimuthDeg), 0, new Pivot(Pivot.Kind.RIM,
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalInt.empty(), OptionalDouble.empty(),
                OptionalDouble.empty(), K), Hull.Arrival.LOWERED), Optional.of(gear()),
                Seat.usual(Seat.Kind.GROUND, 0, 0),
                List.of(new Hatch("main", Hatch.End.BASE, 0, 0, 1.2, 2, 0.4, K)),
                List.of(new Station("bunks", 18, 0, 1, 0.5, true, K)), Optional.of(new CoverPlan(2.5,
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
                CoverPlan.End.COVERED, CoverPlan.End.COVERED, Optional.empty(), Optional.empty(), 0, 0.5,
                OptionalDouble.empty(), List.of(), K)), false, K);
    }

    /** Two lines over poles with stays, a pull-over line and a pivot hold. */
    public static LoweringGear gear() {
        Anchor ballast = new Anchor(Anchor.Kind.BALLAST, OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(120e3), OptionalInt.empty(),
                OptionalDouble.empty(), K);
        LoweringGear.Line line = new LoweringGear.Line(OptionalDouble.of(900e3), OptionalDouble.of(5.3),
                OptionalDouble.of(81e6), OptionalDouble.of(0.036), K);
        LoweringGear.Lines lines = new LoweringGear.Lines(2, 30, 0, 3.8, line, new LoweringGear.Winch(
                OptionalDouble.of(250e3), OptionalDouble.of(5e6), 45, Optional.of(ballast), K), 0.05, 0.96,
                LoweringGear.Ends.USUAL, 0.1, K);
        LoweringGear.Poles poles = new LoweringGear.Poles(26, 10, 6, OptionalDouble.of(0.5),
                OptionalDouble.of(0.016), OptionalDouble.of(355e6), OptionalDouble.of(210e9), OptionalDouble.of(2),
                OptionalInt.empty(), LoweringGear.Head.NOT_GIVEN, K);
        return new LoweringGear(LoweringGear.Means.LINES, Math.toRadians(2) / 60, Math.toRadians(3), 2,
                Optional.of(lines), Optional.of(poles),
                List.of(new LoweringGear.Stay(28, 6, OptionalDouble.of(900e3), Optional.of(ballast), K)),
                Optional.of(new LoweringGear.PullOver(30, 60, OptionalDouble.of(60e3), Optional.of(ballast), K)),
                Optional.of(new LoweringGear.PivotHold(ballast, K)), Optional.empty(), Optional.empty(),
                LoweringGear.Temperature.USUAL, K);
    }

    /** Ground of 301 x 301 nodes at 1 m with its south-west corner at 0, 0. */
    public static ElevationGrid ground(DoubleBinaryOperator height) {
        return ElevationGrid.sampled(new GridFrame(301, 301, 0, 0, 1), height);
    }
}
