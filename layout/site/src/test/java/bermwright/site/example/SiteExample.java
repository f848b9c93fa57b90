// SPDX-License-Identifier: Apache-2.0
package bermwright.site.example;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.plan.Anchor;
import bermwright.site.plan.BorrowGround;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.HazardPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.HullBody;
import bermwright.site.plan.HullPlacement;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.Machine;
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

/** Plans for tests: hulls 40 m long and 8 m wide on ground of 600 m by 600 m. */
public final class SiteExample {
    /** Length of the hulls (m). */
    public static final double LENGTH = 40;
    /** Radius of the hulls (m). */
    public static final double RADIUS = 4;
    private static final Annotations NOTHING = Annotations.NOTHING;

    private SiteExample() {
    }

    public static ElevationGrid ground(DoubleBinaryOperator height) {
        return ElevationGrid.sampled(new GridFrame(601, 601, 0, 0, 1), height);
    }

    public static ElevationGrid level() {
        return ground((e, n) -> 0);
    }

    public static Ring square(double east, double north, double side) {
        double h = side / 2;
        return new Ring(List.of(new Point(east - h, north - h), new Point(east + h, north - h),
                new Point(east + h, north + h), new Point(east - h, north + h)));
    }

    public static Anchor plate() {
        return new Anchor(Anchor.Kind.PLATE, OptionalDouble.of(2), OptionalDouble.of(1), OptionalDouble.empty(),
                OptionalDouble.of(1.5), OptionalDouble.empty(), OptionalInt.empty(), OptionalDouble.empty(), NOTHING);
    }

    public static LoweringGear gear() {
        OptionalDouble none = OptionalDouble.empty();
        LoweringGear.Line line = new LoweringGear.Line(OptionalDouble.of(9e5), none, none, none, NOTHING);
        LoweringGear.Winch winch = new LoweringGear.Winch(OptionalDouble.of(2.5e5), none, 45, Optional.of(plate()),
                NOTHING);
        return new LoweringGear(LoweringGear.Means.LINES, Math.toRadians(2) / 60, Math.toRadians(3), 2,
                Optional.of(new LoweringGear.Lines(2, 32, 0, 4, line, winch, 0.05, 0.96,
                        LoweringGear.Ends.USUAL, 0.1, NOTHING)),
                Optional.of(new LoweringGear.Poles(28, 10, 6, none, none, none, none, OptionalDouble.of(2),
                        OptionalInt.empty(), LoweringGear.Head.NOT_GIVEN, NOTHING)),
                List.of(new LoweringGear.Stay(28, 6, none, Optional.of(plate()), NOTHING)),
                Optional.of(new LoweringGear.PullOver(32, 60, none, Optional.of(plate()), NOTHING)),
                Optional.of(new LoweringGear.PivotHold(plate(), NOTHING)), Optional.empty(), Optional.empty(),
                LoweringGear.Temperature.USUAL, NOTHING);
    }

    public static Hull hull(String id, double east, double north, double azimuthDeg) {
        Hull.End flat = new Hull.End(Hull.Shape.FLAT, 0, NOTHING);
        Pivot rim = new Pivot(Pivot.Kind.RIM, OptionalDouble.empty(), OptionalDouble.empty(), OptionalInt.empty(),
                OptionalDouble.empty(), OptionalDouble.empty(), NOTHING);
        return new Hull(id,
                new HullBody(LENGTH, 2 * RADIUS, flat, flat, List.of(), List.of(), Optional.empty(), 70e3),
                new MassProperties(80e3, 22, 0, 0.5, OptionalDouble.empty(), 0),
                new HullPlacement(new Point(east, north), 0, Azimuth.ofDegrees(azimuthDeg), 0, rim,
                Hull.Arrival.LOWERED), Optional.of(gear()), Seat.usual(Seat.Kind.GROUND, 0, 0), List.of(),
                List.of(), Optional.of(cover()), false, NOTHING);
    }

    public static CoverPlan cover() {
        OptionalDouble none = OptionalDouble.empty();
        return new CoverPlan(2.5, none, none, none, none, CoverPlan.End.OPEN, CoverPlan.End.COVERED,
                Optional.empty(), Optional.empty(), 0, 0.5, none, List.of(), NOTHING);
    }

    public static Hull with(Hull h, Hull.Arrival arrival, double dispersion, List<Station> stations) {
        return new Hull(h.id(), h.body(), h.massProperties(),
                new HullPlacement(h.baseCentre(), dispersion, h.layDownAzimuth(), h.placement().clocking(), h.pivot(),
                arrival), h.lowering(), h.seat(), h.hatches(), stations, h.cover(), h.held(), h.annotations());
    }

    public static BorrowGround borrow(String id, Ring area, double depth) {
        return new BorrowGround(id, area, depth, Math.toRadians(30), 0.9, 5, NOTHING);
    }

    public static Machine machine() {
        return new Machine("hauler", "scoop hauler", 2, 2000, 0.6, Math.toRadians(15), 3, 300, 120, 16, 0.8,
                OptionalDouble.empty(), OptionalDouble.empty(), NOTHING);
    }

    public static GroundPlan groundPlan() {
        return new GroundPlan("ground.tif", Optional.empty(), 0.1, 30, 1.62, 0.4,
                new GroundPlan.Regolith("highland", 1650, 1800, 1450, 0.1, List.of(), Math.toRadians(33),
                        Math.toRadians(42), 500, Math.toRadians(2), 150, List.of(), NOTHING), NOTHING);
    }

    public static Plan plan(Hull... hulls) {
        ExposurePlan exposure = new ExposurePlan(180, 1, OptionalDouble.empty(), Optional.empty(), Optional.empty(),
                OptionalDouble.empty(), Optional.empty(), Optional.empty(), Optional.empty(), "built in", List.of(),
                List.of(), List.of(), HazardPlan.USUAL, NOTHING);
        return new Plan("test", groundPlan(), List.of(hulls), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of(), List.of(machine()), exposure,
                new Rules(Math.toRadians(5), 8, 3, 2, 2, 1.5, 1.5, 1, Optional.empty(), 0, 0.1, 0.2,
                        NOTHING),
                List.of(), Optional.empty(), NOTHING);
    }

    /** A builder of changed copies for the parts that tests change. */
    public static Plan with(Plan p, Change change) {
        return new Plan(p.title(), p.ground(), p.hulls(), p.walls(),
                change.tunnels == null ? p.tunnels() : change.tunnels,
                change.keepOuts == null ? p.keepOuts() : change.keepOuts,
                change.corridors == null ? p.corridors() : change.corridors,
                change.pads == null ? p.landingPads() : change.pads,
                change.preparations == null ? p.preparations() : change.preparations,
                change.borrow == null ? p.borrowGrounds() : change.borrow,
                change.stockpiles == null ? p.stockpiles() : change.stockpiles,
                change.machines == null ? p.machines() : change.machines, p.exposure(), p.rules(),
                change.order == null ? p.orderOfWork() : change.order, p.arrangeWithin(), p.annotations());
    }

    /** Parts of a plan to change; what is left alone stays. */
    public static final class Change {
        public List<bermwright.site.plan.KeepOut> keepOuts;
        public List<bermwright.site.plan.Corridor> corridors;
        public List<bermwright.site.plan.LandingPad> pads;
        public List<BorrowGround> borrow;
        public List<bermwright.site.plan.Preparation> preparations;
        public List<bermwright.site.plan.Stockpile> stockpiles;
        public List<bermwright.site.plan.Tunnel> tunnels;
        public List<Machine> machines;
        public List<bermwright.site.plan.WorkStep> order;
    }
}
