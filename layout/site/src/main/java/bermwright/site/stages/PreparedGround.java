// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.finding.Rule;
import bermwright.finding.SiteRule;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.clearance.CorridorGrade;
import bermwright.site.plan.Corridor;
import bermwright.site.plan.Plan;
import bermwright.site.plan.PlanSoil;
import bermwright.site.plan.Preparation;
import bermwright.terrain.earthworks.BenchFit;
import bermwright.terrain.earthworks.BuiltGround;
import bermwright.terrain.earthworks.CutAndFill;
import bermwright.terrain.earthworks.GradePlane;
import bermwright.terrain.earthworks.GradedWay;
import bermwright.terrain.earthworks.Grading;
import bermwright.terrain.earthworks.SideSlopes;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The ground once the plan's preparations are made, in the plan's order, and the soil each of them moves.
 *
 * <p>A preparation with a level gets a level floor there; one without gets the plane within its grade that moves least
 * soil, with as much cut as its fill needs. Spoil grounds are left as they are. After them each corridor that is
 * steeper than it may be is cut and filled down to its grade, level across, with as much cut as its fill needs.
 *
 * @param natural  the ground before
 * @param surface  the ground after, with finer patches where something is made
 * @param moved    what each preparation moves, in the plan's order
 * @param findings preparations that cannot be made, and sides that never meet the ground
 */
public record PreparedGround(ElevationGrid natural, ElevationGrid surface, List<Moved> moved,
        List<Finding> findings) {
    /** Volumes below this are rounding of the grid's heights (m3). */
    private static final double DUST = 1e-6;

    /** Copies the lists. */
    public PreparedGround {
        moved = List.copyOf(moved);
        findings = List.copyOf(findings);
    }

    /**
     * What one preparation or corridor moves.
     *
     * @param id      id of the preparation or corridor
     * @param area    where soil is dug and placed
     * @param volumes cut in place and fill once placed
     */
    public record Moved(String id, Ring area, CutAndFill volumes) {
    }

    /**
     * Makes the preparations of a plan.
     *
     * @param plan    the plan
     * @param natural the ground before
     * @return the ground after, and what was moved
     */
    public static PreparedGround of(Plan plan, ElevationGrid natural) {
        ElevationGrid surface = natural;
        List<Moved> moved = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (Preparation preparation : plan.preparations()) {
            if (preparation.kind() == Preparation.Kind.SPOIL) {
                continue;
            }
            Optional<BuiltGround> shaped = shaped(plan, preparation, surface);
            if (shaped.isEmpty()) {
                findings.add(finding(SiteRule.PREPARATION_NO_GROUND, Level.REFUSE, preparation,
                        "lies over missing ground or leaves the elevation file; it is not made"));
                continue;
            }
            if (!shaped.get().meetsGround()) {
                findings.add(finding(SiteRule.PREPARATION_SIDE_OPEN, Level.WARN, preparation,
                        "has a side that never meets known ground; its volume is not complete"));
            }
            CutAndFill volumes = shaped.get().moved();
            moved.add(new Moved(preparation.id(), preparation.area(), volumes));
            if (volumes.moved() > DUST) {
                surface = shaped.get().after();
            }
        }
        for (Corridor corridor : plan.corridors()) {
            Optional<BuiltGround> cut = cutToGrade(plan, corridor, surface, findings);
            if (cut.isPresent()) {
                moved.add(new Moved(corridor.id(), band(corridor, surface.metres()), cut.get().moved()));
                surface = cut.get().after();
            }
        }
        return new PreparedGround(natural, surface, moved, findings);
    }

    /** A corridor cut to its grade; empty where it is no steeper, or cannot be made. */
    private static Optional<BuiltGround> cutToGrade(Plan plan, Corridor corridor, ElevationGrid ground,
            List<Finding> findings) {
        List<Point> line = line(corridor);
        double sides = plan.ground().regolith().stableSlope();
        if (line.size() < 2 || !(corridor.greatestGrade() > 0 && corridor.width() > 0 && sides > 0)
                || !(CorridorGrade.steepest(corridor, ground).grade() > corridor.greatestGrade())) {
            return Optional.empty();
        }
        GradedWay.Way way = new GradedWay.Way(line, corridor.width(),
                corridor.greatestGrade(), SideSlopes.of(sides), new GradedWay.Ends(OptionalDouble.empty(),
                OptionalDouble.empty(), OptionalDouble.of(fillFromCut(plan))));
        Optional<GradedWay.Profile> made = GradedWay.profile(ground, way);
        Point place = line.get(line.size() / 2);
        if (made.isEmpty()) {
            findings.add(Finding.of(SiteRule.CORRIDOR_NOT_CUT, Level.WARN, corridor.id(), Figures.NONE,
                    "Corridor %s cannot be cut to its grade: it lies over missing ground.".formatted(corridor.id()))
                    .at(place));
            return Optional.empty();
        }
        BuiltGround built = BuiltGround.of(ground, band(corridor, ground.metres()),
                g -> GradedWay.shaped(g, way, made.get()));
        CutAndFill volumes = built.moved();
        findings.add(Finding.of(SiteRule.CORRIDOR_CUT, Level.NOTE, corridor.id(), Figures.measured(volumes.moved(),
                "m3"),
                String.format(Locale.ROOT, "Corridor %s is cut and filled down to %.1f deg: %.0f m3 cut, %.0f m3 fill;"
                        + " its ends move up to %.1f m from the ground they meet.", corridor.id(),
                        Math.toDegrees(corridor.greatestGrade()), volumes.cut(), volumes.fill(),
                        ends(made.get(), ground))).at(place));
        return Optional.of(built);
    }

    private static double ends(GradedWay.Profile made, ElevationGrid ground) {
        int last = made.places().size() - 1;
        return Math.max(Math.abs(made.heights().get(0) - ground.height(made.places().get(0))),
                Math.abs(made.heights().get(last) - ground.height(made.places().get(last))));
    }

    /** The middle line without repeated places. */
    private static List<Point> line(Corridor corridor) {
        List<Point> line = new ArrayList<>();
        for (Point place : corridor.line()) {
            if (line.isEmpty() || line.get(line.size() - 1).distance(place) > 0) {
                line.add(place);
            }
        }
        return line;
    }

    /** Where the corridor's soil comes from and goes to: the stretch at its middle, as wide as it is. */
    private static Ring band(Corridor corridor, TrueMetres metres) {
        List<Point> line = line(corridor);
        Point a = line.get((line.size() - 1) / 2);
        Point b = line.get((line.size() - 1) / 2 + 1);
        double half = metres.onPlan(corridor.width() / 2) / a.distance(b);
        double east = -(b.north() - a.north()) * half;
        double north = (b.east() - a.east()) * half;
        return new Ring(List.of(new Point(a.east() - east, a.north() - north),
                new Point(b.east() - east, b.north() - north), new Point(b.east() + east, b.north() + north),
                new Point(a.east() + east, a.north() + north)));
    }

    private static Optional<BuiltGround> shaped(Plan plan, Preparation preparation, ElevationGrid ground) {
        Ring area = preparation.area();
        if (ground.isMissing(area) || !(preparation.sideSlope() > 0)) {
            return Optional.empty();
        }
        Optional<GradePlane> floor = preparation.level().isPresent()
                ? Optional.of(GradePlane.level(preparation.level().getAsDouble()))
                : BenchFit.leastMoved(ground, area, new BenchFit.Limits(preparation.greatestGrade(),
                        OptionalDouble.of(fillFromCut(plan))));
        return floor.map(f -> BuiltGround.of(ground, area,
                g -> Grading.shaped(g, area, f::height, SideSlopes.of(preparation.sideSlope()))));
    }

    /** Fill that one volume of cut makes, soil keeping its mass (1). */
    private static double fillFromCut(Plan plan) {
        return PlanSoil.of(plan.ground()).states().placedFromBank(1).best();
    }

    private static Finding finding(Rule rule, Level level, Preparation preparation, String trouble) {
        Point place = preparation.area().centre();
        return Finding.of(rule, level, preparation.id(), Figures.NONE, String.format(Locale.ROOT,
                "Preparation %s (%s) %s.", preparation.id(), preparation.kind().word(), trouble)).at(place)
                .from("elevation file");
    }
}
