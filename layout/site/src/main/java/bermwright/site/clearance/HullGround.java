// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.finding.Finding;
import bermwright.finding.SiteRule;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.footprint.GearRole;
import bermwright.site.footprint.HullShapes;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Preparation;
import bermwright.site.plan.Seat;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.FittedPlane;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The ground under one hull and its gear: whether it is known, how steep it is, and what stands up under the belly.
 *
 * <p>A slope is that of the least-squares plane. Heights with a spread s at N nodes under a length l leave the slope
 * along it with a spread of s sqrt(12 / N) / l; a slope nearer to its limit than twice that is not known to be clear.
 * What is smaller than a cell or lower than twice the spread of the heights cannot be seen in them and is not known.
 */
final class HullGround {
    private static final double SPREADS = 2;
    private static final double CELLS_FOR_A_SLOPE = 2.5;

    private final Plan plan;
    private final Hull hull;
    private final HullShapes shapes;
    private final ElevationGrid ground;
    private final List<Finding> findings = new ArrayList<>();

    private HullGround(Plan plan, HullShapes shapes, ElevationGrid ground) {
        this.plan = plan;
        this.hull = shapes.hull();
        this.shapes = shapes;
        this.ground = ground;
    }

    static List<Finding> check(Plan plan, HullShapes shapes, ElevationGrid ground) {
        HullGround check = new HullGround(plan, shapes, ground);
        check.sunk();
        if (check.isKnown()) {
            FittedPlane plane = ground.fittedPlane(check.bed()).orElseThrow();
            check.slope(plane);
            if (shapes.hull().arrival() != Hull.Arrival.STAYS_UPRIGHT) {
                check.belly(plane);
            }
        }
        check.gear();
        return List.copyOf(check.findings);
    }

    /** A body whose crown lies no higher than the ground is in a pit, which nothing here works out. */
    private void sunk() {
        double below = hull.seat().sunk() - hull.seat().cradleHeight();
        if (hull.arrival() == Hull.Arrival.STAYS_UPRIGHT || !(below >= hull.diameter())) {
            return;
        }
        add(Finding.of(SiteRule.HULL_UNDER_GROUND, Finding.Level.REFUSE, hull.id(),
                Finding.Figures.of(below, hull.diameter(), "m"), ("Hull %s is to lie with its lower side %s m below the"
                + " ground, no less than its diameter of %s m: all of it lies in a pit. The pit's sides, the way down"
                + " to its hatches and the lowering into it are not worked out.").formatted(hull.id(),
                SitePairs.number(below),
                SitePairs.number(hull.diameter()))).at(hull.baseCentre()));
    }

    private Ring bed() {
        return hull.arrival() == Hull.Arrival.STAYS_UPRIGHT
                ? shapes.first(ShapeKind.STANDING).orElseThrow().outline()
                : hull.bed(ground.metres());
    }

    /** Whether the body stands and lies on known ground; says where not. */
    private boolean isKnown() {
        boolean known = true;
        for (ShapeKind kind : List.of(ShapeKind.STANDING, ShapeKind.LYING, ShapeKind.SWEEP)) {
            Optional<Shape> shape = shapes.first(kind);
            if (shape.isEmpty() || !known) {
                continue;
            }
            Optional<Point> outside = outside(shape.get().outline(), ground.frame());
            Finding.Level level = kind == ShapeKind.SWEEP ? Finding.Level.WARN : Finding.Level.REFUSE;
            if (outside.isPresent()) {
                known = kind == ShapeKind.SWEEP;
                add(Finding.of(kind == ShapeKind.SWEEP ? SiteRule.SWEEP_OFF_GRID : SiteRule.HULL_OFF_GRID, level,
                        hull.id(),
                        Finding.Figures.NONE, ("The %s outline of hull %s leaves the elevation file. What lies"
                        + " beyond is not known.").formatted(kind.word(), hull.id())).at(outside.get())
                        .from("edge of the elevation file"));
            } else if (ground.isMissing(shape.get().outline())) {
                known = kind == ShapeKind.SWEEP;
                add(Finding.of(kind == ShapeKind.SWEEP ? SiteRule.SWEEP_GROUND_UNKNOWN : SiteRule.GROUND_UNKNOWN,
                        level, hull.id(),
                        Finding.Figures.NONE, ("The elevation file has no data under part of the %s outline of"
                        + " hull %s. Slope and belly are not known there.").formatted(kind.word(), hull.id()))
                        .at(shape.get().outline().centre()).from("elevation file"));
            }
        }
        return known;
    }

    private static Optional<Point> outside(Ring ring, GridFrame frame) {
        return ring.corners().stream().filter(p -> !frame.contains(p)).findFirst();
    }

    private void slope(FittedPlane plane) {
        Ring bed = bed();
        double nodes = Math.max(1, ground.metres().area(bed.area()) / Math.pow(ground.surveyedSpacing(), 2));
        double noise = plan.ground().elevationSpread() * Math.sqrt(12 / nodes);
        if (hull.arrival() == Hull.Arrival.STAYS_UPRIGHT) {
            slope("under it", plane.slope(), noise / hull.diameter(), plane.centre());
            return;
        }
        slope("along it", plane.slopeAlong(hull.layDownAzimuth()), noise / hull.length(), plane.centre());
        slope("across it", plane.slopeAcross(hull.layDownAzimuth()), noise / hull.diameter(), plane.centre());
        if (hull.diameter() < CELLS_FOR_A_SLOPE * ground.surveyedSpacing()) {
            add(Finding.of(SiteRule.SLOPE_NOT_KNOWN, Finding.Level.WARN, hull.id(),
                    Finding.Figures.of(ground.surveyedSpacing(), hull.diameter() / CELLS_FOR_A_SLOPE, "m"),
                    ("The elevation file's cells of %s m are too wide to show the slope across hull %s, %s m wide."
                    + " It is not known.").formatted(SitePairs.number(ground.surveyedSpacing()), hull.id(),
                    SitePairs.number(hull.diameter()))).at(plane.centre()));
        }
    }

    private void slope(String where, double slope, double spread, Point place) {
        double limit = plan.rules().greatestSlopeUnderHull();
        double steep = Math.abs(slope);
        if (!(steep + SPREADS * spread > limit)) {
            return;
        }
        boolean over = steep > limit;
        Finding.Level level = over && hull.seat().kind() != Seat.Kind.BENCH ? Finding.Level.REFUSE
                : Finding.Level.WARN;
        String help = isBenchPlanned() ? " A bench is planned; it has to take this up." : "";
        String text = over ? "The ground of hull %s slopes %s deg %s; %s deg is allowed.%s"
                : "The ground of hull %s slopes %s deg %s, which the spread of the heights cannot tell from more than"
                + " the allowed %s deg.%s";
        add(Finding.of(SiteRule.SLOPE_UNDER_HULL, level, hull.id(),
                Finding.Figures.of(Math.toDegrees(steep), Math.toDegrees(limit), "deg"),
                text.formatted(hull.id(), degrees(steep), where, degrees(limit), help)).at(place));
    }

    private boolean isBenchPlanned() {
        return hull.seat().kind() == Seat.Kind.BENCH || plan.preparations().stream().anyMatch(p ->
                p.kind() == Preparation.Kind.BENCH && p.area().contains(hull.lyingAt(ground.metres(),
                        hull.length() / 2, 0)));
    }

    private void belly(FittedPlane plane) {
        double allowance = Clearance.BELLY_ALLOWANCE + hull.seat().sunk() + hull.seat().cradleHeight();
        double unseen = SPREADS * plan.ground().elevationSpread();
        BellyLine belly = BellyLine.of(hull, plane, ground);
        if (belly.highest() > allowance) {
            add(Finding.of(SiteRule.BELLY_HIGH_SPOT, Finding.Level.WARN, hull.id(),
                    Finding.Figures.of(belly.highest(), allowance, "m"),
                    ("The ground under hull %s stands up to %s m above its bed's plane at the belly; %s m is allowed."
                    + " The hull would rest on the ground at %s m and %s m from its base, pitched %s deg against the"
                    + " plane.").formatted(hull.id(), SitePairs.number(belly.highest()),
                    SitePairs.number(allowance), SitePairs.number(belly.firstContact()),
                    SitePairs.number(belly.lastContact()), degrees(belly.pitch()))).at(belly.place())
                    .todo(isBenchPlanned() ? "Lower or widen the bench planned here: it does not take this away."
                            : SiteRule.BELLY_HIGH_SPOT.entry().todo()));
        }
        if (ground.surveyedSpacing() > Clearance.BELLY_ALLOWANCE || unseen > Clearance.BELLY_ALLOWANCE) {
            add(Finding.of(SiteRule.BELLY_NOT_KNOWN, Finding.Level.WARN, hull.id(),
                    Finding.Figures.of(Math.max(ground.surveyedSpacing(), unseen), Clearance.BELLY_ALLOWANCE, "m"),
                    ("Under the belly of hull %s, stones and steps narrower than the cell of %s m or lower than twice"
                    + " the spread of the heights, %s m, are not known.")
                    .formatted(hull.id(), SitePairs.number(ground.surveyedSpacing()), SitePairs.number(unseen)))
                    .at(bed().centre()));
        }
    }

    private void gear() {
        for (Shape shape : shapes.shapes()) {
            boolean set = shape.kind() == ShapeKind.ANCHOR || shape.kind() == ShapeKind.WINCH
                    || shape.kind() == ShapeKind.POLE_FOOT;
            if (set && shape.role() != GearRole.PIVOT_HOLD) {
                gear(shape);
            }
        }
    }

    private void gear(Shape shape) {
        Point at = shape.outline().centre();
        Ring around = baseline(shape.outline(), at);
        if (ground.isMissing(around)) {
            boolean off = !ground.frame().contains(at);
            add(Finding.of(off ? SiteRule.GEAR_OFF_GRID : SiteRule.GEAR_GROUND_UNKNOWN, Finding.Level.WARN, hull.id(),
                    Finding.Figures.NONE, "The ground at the %s is not in the elevation file.".formatted(shape.title()))
                    .at(at).from("elevation file"));
            return;
        }
        double slope = ground.fittedPlane(around).orElseThrow().slope();
        if (slope > Clearance.GEAR_SLOPE) {
            add(Finding.of(SiteRule.GEAR_ON_STEEP_GROUND, Finding.Level.WARN, hull.id(),
                    Finding.Figures.of(Math.toDegrees(slope), Math.toDegrees(Clearance.GEAR_SLOPE), "deg"),
                    "The ground at the %s slopes %s deg; %s deg is regarded as safe to work on."
                    .formatted(shape.title(), degrees(slope), degrees(Clearance.GEAR_SLOPE))).at(at));
        }
    }

    /** A square about a place, no smaller than the outline and wide enough for the cells to show a slope. */
    private Ring baseline(Ring outline, Point at) {
        double half = Math.max(Math.sqrt(outline.area()), CELLS_FOR_A_SLOPE * ground.frame().spacing()) / 2;
        return new Ring(List.of(new Point(at.east() - half, at.north() - half),
                new Point(at.east() + half, at.north() - half), new Point(at.east() + half, at.north() + half),
                new Point(at.east() - half, at.north() + half)));
    }

    private static String degrees(double angle) {
        return SitePairs.number(Math.toDegrees(Math.abs(angle)));
    }

    private void add(Finding finding) {
        findings.add(finding);
    }
}
