// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.finding.WorkRule;
import bermwright.foundation.ModelNote;
import bermwright.foundation.Point;
import bermwright.regolith.Strength;
import bermwright.site.exposure.SiteCover;
import bermwright.site.plan.BorrowGround;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.PlanSoil;
import bermwright.terrain.earthworks.SlopeStability;
import bermwright.terrain.earthworks.StandingSlopes;
import bermwright.terrain.earthworks.WorstSlip;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Whether mounds, pits and prepared ground stand.
 *
 * @param slopes   each mound, then each borrow ground
 * @param steepest steepest slope that preparations make (rad); zero where they make none
 * @param findings slopes that slide, or stand with little in hand, and made ground too steep for its soil
 */
public record SlopeChecks(List<Slope> slopes, double steepest, List<Finding> findings) {
    /** Least factor against a slide while work goes on (1). */
    public static final double WANTED = 1.3;
    private static final String SOURCE = "factor 1.3 at the end of construction, EM 1110-2-1902, from memory";
    private static final double UPRIGHT = Math.toRadians(80);
    /** A grid shows an edge steeper than it is by up to this (rad). */
    /** Steepest slope that can be asked about: a wall has none (rad). */
    private static final double STEEPEST = Math.PI / 2 - 1e-6;
    private static final double GRID = Math.toRadians(1);
    private static final double CHANGED = 0.01;

    /** Copies the lists. */
    public SlopeChecks {
        slopes = List.copyOf(slopes);
        findings = List.copyOf(findings);
    }

    /**
     * One slope against a slide.
     *
     * @param subject id of the hull or borrow ground
     * @param isMound true for a mound, false for a pit
     * @param height  height over its toe at most (m)
     * @param angle   angle of its sides (rad)
     * @param plane   factor along a plane in the face, cohesion left out (1)
     * @param circle  factor on the worst circle, with the plan's cohesion (1)
     * @param radius  radius of that circle (m)
     * @param where   middle of the mound or pit
     */
    public record Slope(String subject, boolean isMound, double height, double angle, double plane, double circle,
            double radius, Point where) {
        /**
         * What it is.
         *
         * @return mound or pit
         */
        public String kind() {
            return isMound ? "mound" : "pit";
        }
    }

    /**
     * Checks a plan's slopes.
     *
     * @param plan  the plan
     * @param cover its mound over prepared ground
     * @return the checks
     */
    public static SlopeChecks of(Plan plan, SiteCover cover) {
        GroundPlan.Regolith soil = plan.ground().regolith();
        List<Slope> slopes = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (PlacedCover placed : PlacedCovers.of(plan, cover)) {
            Hull hull = plan.hull(placed.hull()).orElseThrow();
            slope(plan, hull.id(), new Size(true, height(cover.prepared(), placed.finished()), soil.stableSlope(),
                    SiteCover.density(plan, hull), hull.lyingBase(cover.natural().metres()))).ifPresent(slopes::add);
        }
        for (BorrowGround borrow : plan.borrowGrounds()) {
            slope(plan, borrow.id(), new Size(false, borrow.greatestDepth(), borrow.sideSlope(),
                    PlanSoil.of(plan.ground()).bankDensity(borrow.greatestDepth()), borrow.area().centre()))
                    .ifPresent(slopes::add);
        }
        slopes.stream().filter(s -> s.circle() < WANTED).map(SlopeChecks::slides).forEach(findings::add);
        StandingSlopes made = standing(cover.natural(), cover.prepared(),
                Math.min(soil.stableSlope() + GRID, STEEPEST));
        if (!made.stands()) {
            findings.add(Finding.of(WorkRule.MADE_GROUND_STEEP, Level.WARN, "ground", Figures.of(
                    Math.toDegrees(made.steepest()), Math.toDegrees(soil.stableSlope()), "deg"), text("Preparations"
                    + " leave %.0f m2 steeper than the soil stands, up to %.1f deg.",
                    made.areaTooSteep(), Math.toDegrees(made.steepest()))).at(made.place().orElseThrow()));
        }
        return new SlopeChecks(slopes, made.steepest(), findings);
    }

    /** Changed ground on the finer nodes where there are some; all of it lies in patches then. */
    private static StandingSlopes standing(ElevationGrid before, ElevationGrid after, double limit) {
        if (after.patches().isEmpty()) {
            return StandingSlopes.of(before, after, limit);
        }
        List<StandingSlopes> parts = new ArrayList<>();
        for (int i = 0; i < after.patches().size(); i++) {
            parts.add(StandingSlopes.of(before.patches().get(i), after.patches().get(i), limit));
        }
        StandingSlopes worst = parts.stream().max(Comparator.comparingDouble(StandingSlopes::steepest)).orElseThrow();
        return new StandingSlopes(parts.stream().allMatch(StandingSlopes::stands), worst.steepest(), worst.place(),
                parts.stream().mapToDouble(StandingSlopes::areaTooSteep).sum());
    }

    /**
     * Where the model holds.
     *
     * @return the note
     */
    public static ModelNote note() {
        return WorstSlip.note();
    }

    private record Size(boolean isMound, double height, double angle, double density, Point where) {
    }

    private static Optional<Slope> slope(Plan plan, String id, Size size) {
        PlanSoil soil = PlanSoil.of(plan.ground());
        Strength strength = size.isMound ? soil.stated() : soil.inPlace().strength(size.height / 2);
        double gravity = plan.ground().gravity();
        if (!(size.height > 0 && size.angle > 0 && size.angle <= UPRIGHT && gravity > 0 && size.density > 0)) {
            return Optional.empty();
        }
        SlopeStability.Soil loose = new SlopeStability.Soil(new Strength(strength.frictionAngle(), 0), size.density,
                gravity);
        SlopeStability.Soil strong = new SlopeStability.Soil(strength, size.density, gravity);
        WorstSlip slip = WorstSlip.of(size.height, size.angle, strong);
        return Optional.of(new Slope(id, size.isMound, size.height, size.angle,
                SlopeStability.longSlope(loose, size.angle, size.height), slip.factor(), slip.circle().radius(),
                size.where));
    }

    private static Finding slides(Slope s) {
        return Finding.of(WorkRule.SLOPE_SLIDES, s.circle() < 1 ? Level.REFUSE : Level.WARN, s.subject(),
                Figures.of(s.circle(), WANTED, "1"), text("The %s, %.1f m high at %.1f deg, has a factor of safety"
                        + " of %.2f on its worst circle with the plan's soil, %.2f in its face without cohesion;"
                        + " %.1f required.", s.kind(), s.height(), Math.toDegrees(s.angle()),
                        s.circle(), s.plane(), WANTED)).at(s.where());
    }

    private static double height(ElevationGrid before, ElevationGrid after) {
        double most = rise(before, after);
        for (int i = 0; i < after.patches().size(); i++) {
            most = Math.max(most, rise(before.patches().get(i), after.patches().get(i)));
        }
        return most;
    }

    private static double rise(ElevationGrid before, ElevationGrid after) {
        double[] low = before.heights();
        double[] high = after.heights();
        double most = 0;
        for (int i = 0; i < low.length; i++) {
            double rise = high[i] - low[i];
            most = rise > most + CHANGED ? rise : most;
        }
        return most;
    }

    private static String text(String format, Object... parts) {
        return String.format(Locale.ROOT, format, parts);
    }
}
