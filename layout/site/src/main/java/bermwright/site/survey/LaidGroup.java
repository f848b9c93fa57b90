// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Require;
import bermwright.foundation.Ring;
import bermwright.site.clearance.Clearance;
import bermwright.site.footprint.GearRole;
import bermwright.site.footprint.HullShapes;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.gear.GearPlaces;
import bermwright.site.gear.Spot;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Seat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The hulls of a plan as one rigid group: they keep their places to each other, the group is moved and turned.
 *
 * <p>The group stands about the mean middle of its beds, and its heading is the lay-down azimuth of its first hull.
 */
final class LaidGroup {
    /** Steepest ground on which gear is set, as rise over run (1). */
    static final double GEAR_GRADE = Math.tan(Clearance.GEAR_SLOPE);
    private static final double ROUNDING = 1e-9;

    private final List<LaidHull> hulls;
    private final double radius;
    private final double bedRadius;

    private LaidGroup(List<LaidHull> hulls, double radius, double bedRadius) {
        this.hulls = List.copyOf(hulls);
        this.radius = radius;
        this.bedRadius = bedRadius;
    }

    /**
     * The group of a plan's hulls.
     *
     * @param plan       the plan, with at least one hull
     * @param metreScale true metres in one projected metre of the plan (1)
     */
    static LaidGroup of(Plan plan, double metreScale) {
        Require.that(!plan.hulls().isEmpty(), "the plan has no hull; a survey needs one.");
        Plan local = local(plan, metreScale);
        SiteShapes shapes = SiteShapes.of(local.withHulls(local.hulls()), Optional.empty(), Map.of());
        List<LaidHull> laid = new ArrayList<>();
        double reach = 0;
        double bed = 0;
        for (HullShapes outlines : shapes.hulls()) {
            LaidHull hull = laid(outlines, local);
            laid.add(hull);
            bed = Math.max(bed, Math.hypot(hull.bedAhead(), hull.bedLeft())
                    + Math.hypot(hull.length(), hull.width()) / 2);
            for (Shape shape : outlines.shapes()) {
                if (isOwnGround(shape.kind())) {
                    for (Point p : shape.outline().corners()) {
                        reach = Math.max(reach, Math.hypot(p.east(), p.north()));
                    }
                }
            }
        }
        return new LaidGroup(laid, Math.max(reach, bed), bed);
    }

    /** Outlines that two places may not share. */
    private static boolean isOwnGround(ShapeKind kind) {
        return switch (kind) {
            case STANDING, LYING, SWEEP, LINE, WINCH, POLE_FOOT, STAY, ANCHOR, ANCHOR_SOIL -> true;
            default -> false;
        };
    }

    /** The plan's hulls about the middle of their beds, turned so that the first lies down to the north. */
    private static Plan local(Plan plan, double scale) {
        double turn = -plan.hulls().get(0).layDownAzimuth().radians();
        List<Hull> turned = plan.hulls().stream().map(h -> {
            double e = h.baseCentre().east() * scale;
            double n = h.baseCentre().north() * scale;
            // Turned clockwise by an angle t, (e, n) becomes (e cos t + n sin t, n cos t - e sin t).
            return h.withBaseCentre(new Point(e * Math.cos(turn) + n * Math.sin(turn),
                    n * Math.cos(turn) - e * Math.sin(turn)))
                    .withLayDownAzimuth(new Azimuth(h == plan.hulls().get(0) ? 0 : h.layDownAzimuth().radians()
                            + turn));
        }).toList();
        double east = 0;
        double north = 0;
        for (Hull h : turned) {
            Point middle = bedMiddle(h);
            east += middle.east() / turned.size();
            north += middle.north() / turned.size();
        }
        double e = east;
        double n = north;
        return plan.withHulls(turned.stream().map(h -> h.withBaseCentre(new Point(h.baseCentre().east() - e,
                h.baseCentre().north() - n))).toList());
    }

    private static Point bedMiddle(Hull h) {
        return h.arrival() == Hull.Arrival.STAYS_UPRIGHT ? h.baseCentre()
                : h.baseCentre().moved(h.layDownAzimuth(), h.pivotAhead() + h.length() / 2, 0);
    }

    private static LaidHull laid(HullShapes shapes, Plan local) {
        Hull hull = shapes.hull();
        Point middle = bedMiddle(hull);
        boolean upright = hull.arrival() == Hull.Arrival.STAYS_UPRIGHT;
        boolean lowered = hull.arrival() == Hull.Arrival.LOWERED;
        double limit = hull.seat().kind() == Seat.Kind.BENCH ? GEAR_GRADE
                : Math.tan(local.rules().greatestSlopeUnderHull());
        double dead = lowered ? (hull.pivotAhead() - hull.centreOfMassOffAxis()) / hull.centreOfMassFromBase() : limit;
        Map<String, double[]> spots = new LinkedHashMap<>();
        for (Shape shape : shapes.shapes()) {
            boolean set = shape.kind() == ShapeKind.ANCHOR || shape.kind() == ShapeKind.WINCH
                    || shape.kind() == ShapeKind.POLE_FOOT;
            if (set && shape.role() != GearRole.PIVOT_HOLD) {
                Point at = shape.outline().centre();
                spots.put(Math.round(at.east() * 100) + "," + Math.round(at.north() * 100),
                        new double[] {at.north(), -at.east()});
            }
        }
        return new LaidHull(hull, upright ? hull.diameter() : hull.length(), hull.diameter(), rounded(middle.north()),
                rounded(-middle.east()), hull.layDownAzimuth().radians(),
                shapes.first(ShapeKind.SWEEP).map(Shape::outline), List.copyOf(spots.values()),
                lowered ? lines(hull) : List.of(), Math.min(limit, dead), limit);
    }

    private static double rounded(double value) {
        return Math.abs(value) < ROUNDING ? 0 : value;
    }

    private static List<LaidHull.Line> lines(Hull hull) {
        List<LaidHull.Line> lines = new ArrayList<>();
        LoweringGear gear = hull.lowering().orElse(null);
        if (gear == null) {
            return lines;
        }
        GearPlaces places = GearPlaces.of(gear);
        if (gear.means() == LoweringGear.Means.LINES && gear.lines().isPresent()) {
            LoweringGear.Lines given = gear.lines().get();
            double head = gear.poles().map(LoweringGear.Poles::height).orElse(0.0);
            for (GearPlaces.LinePlace line : places.lines()) {
                Spot lying = new Spot(given.lugFromBase(), line.lugLeft());
                Spot standing = new Spot(given.lugOffAxis() - hull.pivotAhead(), line.lugLeft());
                add(lines, hull, line.lead(), lying, head, hull.radius() - given.lugOffAxis());
                add(lines, hull, line.lead(), standing, head, given.lugFromBase());
                if (head > 0) {
                    add(lines, hull, line.winch(), line.lead(), 0, head);
                }
            }
            for (GearPlaces.StayPlace stay : places.stays()) {
                add(lines, hull, stay.anchor(), places.poles().get(stay.pole()).foot(), 0, head);
            }
        }
        places.pullOver().ifPresent(p -> add(lines, hull, new Spot(-hull.pivotAhead(), 0), p.winch(),
                p.lugFromBase(), 0));
        return lines;
    }

    private static void add(List<LaidHull.Line> lines, Hull hull, Spot from, Spot to, double... heights) {
        Point pivot = hull.baseCentre().moved(hull.layDownAzimuth(), hull.pivotAhead(), 0);
        Point a = pivot.moved(hull.layDownAzimuth(), from.ahead(), from.left());
        Point b = pivot.moved(hull.layDownAzimuth(), to.ahead(), to.left());
        if (a.distance(b) > 0) {
            lines.add(new LaidHull.Line(new double[] {a.north(), b.north()}, new double[] {-a.east(), -b.east()},
                    heights));
        }
    }

    List<LaidHull> hulls() {
        return hulls;
    }

    /** How far anything that is the group's own reaches from its middle (m). */
    double radius() {
        return radius;
    }

    /** How far the beds reach from the middle (m). */
    double bedRadius() {
        return bedRadius;
    }

    /** Distance between two groups at which they cannot overlap (m). */
    double apart(double spacing) {
        return 2 * radius + spacing;
    }

    double narrowest() {
        return hulls.stream().mapToDouble(LaidHull::width).min().orElseThrow();
    }

    /** Whether a group lies on the same nodes when turned by half a turn. */
    boolean isSymmetric() {
        return hulls.size() == 1 && hulls.get(0).bedAhead() == 0 && hulls.get(0).bedLeft() == 0;
    }

    /** A sweep as ahead and left of the group's middle. */
    static boolean holds(Ring sweep, double ahead, double left) {
        return sweep.contains(new Point(-left, ahead));
    }
}
