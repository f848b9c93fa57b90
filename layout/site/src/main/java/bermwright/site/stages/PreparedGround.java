// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.finding.Finding;
import bermwright.site.finding.Finding.Figures;
import bermwright.site.finding.Finding.Level;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Preparation;
import bermwright.terrain.earthworks.BenchFit;
import bermwright.terrain.earthworks.CutAndFill;
import bermwright.terrain.earthworks.GradePlane;
import bermwright.terrain.earthworks.Grading;
import bermwright.terrain.earthworks.ShapedGround;
import bermwright.terrain.earthworks.SideSlopes;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The ground once the plan's preparations are made, in the plan's order, and the soil each of them moves.
 *
 * <p>A preparation with a level gets a level floor there; one without gets the plane within its grade that moves least
 * soil, with as much cut as its fill needs. Spoil grounds are left as they are.
 *
 * @param natural  the ground before
 * @param surface  the ground after
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
     * What one preparation moves.
     *
     * @param preparation the preparation
     * @param volumes     cut in place and fill once placed
     */
    public record Moved(Preparation preparation, CutAndFill volumes) {
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
            Optional<ShapedGround> shaped = shaped(plan, preparation, surface);
            if (shaped.isEmpty()) {
                findings.add(finding("preparation-no-ground", Level.REFUSE, preparation,
                        "lies over missing ground or leaves the elevation file; it is not made"));
                continue;
            }
            if (!shaped.get().meetsGround()) {
                findings.add(finding("preparation-side-open", Level.WARN, preparation,
                        "has a side that never meets known ground; its volume is not complete"));
            }
            CutAndFill volumes = shaped.get().moved();
            moved.add(new Moved(preparation, volumes));
            if (volumes.moved() > DUST) {
                surface = shaped.get().after();
            }
        }
        return new PreparedGround(natural, surface, moved, findings);
    }

    private static Optional<ShapedGround> shaped(Plan plan, Preparation preparation, ElevationGrid ground) {
        Ring area = preparation.area();
        if (ground.isMissing(area) || !(preparation.sideSlope() > 0)) {
            return Optional.empty();
        }
        Optional<GradePlane> floor = preparation.level().isPresent()
                ? Optional.of(GradePlane.level(preparation.level().getAsDouble()))
                : BenchFit.leastMoved(ground, area, new BenchFit.Limits(preparation.greatestGrade(),
                        OptionalDouble.of(fillFromCut(plan))));
        return floor.map(f -> Grading.shaped(ground, area, f::height, SideSlopes.of(preparation.sideSlope())));
    }

    /** Fill that one volume of cut makes, soil keeping its mass (1). */
    private static double fillFromCut(Plan plan) {
        return plan.ground().regolith().bankDensity() / plan.ground().regolith().placedDensity();
    }

    private static Finding finding(String rule, Level level, Preparation preparation, String trouble) {
        Point place = preparation.area().centre();
        return Finding.of(rule, level, preparation.id(), Figures.NONE, String.format(Locale.ROOT,
                "Preparation %s (%s) %s.", preparation.id(), preparation.kind().word(), trouble)).at(place)
                .from("elevation file");
    }
}
