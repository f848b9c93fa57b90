// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.finding.Finding;
import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.WorkRule;
import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.SiteCover;
import bermwright.site.footprint.BodyProfile;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.pose.LyingPose;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where surveyed ground is not as the plan has it by then: soil lower, soil higher than it shall ever be, soil beside
 * its toe, soil not surveyed, soil too light.
 *
 * <p>A node belongs to the covered hull whose axis is nearest. Over a hull that no soil covers yet a survey sees its
 * skin: such nodes are left out.
 */
final class SurveyFindings {
    /** Thinner soil than this is none (m). */
    private static final double SOIL = 0.01;
    /** A survey is looked at this far beyond the toe (m); our own choice. */
    private static final double BESIDE_TOE = 5;

    private final Surveyed survey;
    private final Plan plan;
    private final GridFrame frame;
    private final double[] prepared;
    private final double[] planned;
    private final double[] finished;
    private final double[] seen;
    private final Map<String, LyingPose> poses = new LinkedHashMap<>();
    private final Map<String, Map<WorkRule, Off>> off = new LinkedHashMap<>();

    private SurveyFindings(Plan plan, SiteCover cover, Surveyed survey) {
        this.plan = plan;
        this.survey = survey;
        this.frame = survey.surface().frame();
        this.prepared = cover.prepared().withPatches(List.of()).heights();
        this.planned = survey.stage().surface().withPatches(List.of()).heights();
        this.finished = cover.finished().withPatches(List.of()).heights();
        this.seen = survey.surface().heights();
        survey.measured().hulls().stream().filter(h -> h.cover().isPresent()).forEach(h ->
                LyingPose.of(h, cover.prepared()).ifPresent(p -> poses.put(h.id(), p)));
    }

    /** Nodes off in one manner. */
    private static final class Off {
        private int nodes;
        private double most;
        private double sum;
        private Optional<Point> place = Optional.empty();

        private void add(double by, Point where) {
            nodes++;
            sum += by;
            if (by > most) {
                most = by;
                place = Optional.of(where);
            }
        }
    }

    static List<Finding> of(Plan plan, SiteCover cover, Surveyed survey) {
        SurveyFindings made = new SurveyFindings(plan, cover, survey);
        made.look();
        List<Finding> findings = new ArrayList<>();
        made.off.forEach((hull, by) -> by.forEach((rule, nodes) -> made.finding(hull, rule, nodes)
                .ifPresent(findings::add)));
        made.density().forEach(findings::add);
        return findings;
    }

    /**
     * How much higher the ground was surveyed than the plan has it after the step (m), by node; NaN where it was not
     * surveyed, or where a hull stands out of the planned soil, which a survey from above sees in its place.
     */
    static ElevationGrid apart(Plan plan, SiteCover cover, Surveyed survey) {
        SurveyFindings made = new SurveyFindings(plan, cover, survey);
        double[] apart = new double[made.seen.length];
        Arrays.fill(apart, Double.NaN);
        survey.known().stream().forEach(node -> {
            Point place = Surveyed.place(made.frame, node);
            boolean isSoil = made.poses.isEmpty() || made.planned[node] > made.skin(place, made.nearest(place));
            if (isSoil) {
                apart[node] = made.seen[node] - made.planned[node];
            }
        });
        return survey.surface().withHeights(apart);
    }

    private void look() {
        double level = plan.rules().asBuiltLevel();
        double beside = Math.max(level, 2 * plan.ground().elevationSpread());
        for (int node = 0; node < seen.length && !poses.isEmpty(); node++) {
            boolean isPlaced = planned[node] > prepared[node] + SOIL;
            boolean isKnown = survey.known().get(node);
            if (!isPlaced && !isKnown) {
                continue;
            }
            Point place = Surveyed.place(frame, node);
            String hull = nearest(place);
            double skin = skin(place, hull);
            if (isPlaced && planned[node] > skin) {
                add(hull, WorkRule.AS_BUILT_NOT_SURVEYED, !isKnown, 1, place);
                add(hull, WorkRule.AS_BUILT_LOW, isKnown && seen[node] < planned[node] - level,
                        planned[node] - seen[node], place);
            }
            if (isKnown && finished[node] > prepared[node] + SOIL && finished[node] > skin) {
                add(hull, WorkRule.AS_BUILT_HIGH, seen[node] > finished[node] + level, seen[node] - finished[node],
                        place);
            } else if (isKnown && Double.isInfinite(skin) && seen[node] > finished[node] + beside
                    && isBesideSoil(node)) {
                add(hull, WorkRule.AS_BUILT_BEYOND_TOE, true, seen[node] - finished[node], place);
            }
        }
    }

    private void add(String hull, WorkRule rule, boolean isOff, double by, Point place) {
        if (isOff) {
            off.computeIfAbsent(hull, h -> new LinkedHashMap<>()).computeIfAbsent(rule, r -> new Off()).add(by, place);
        }
    }

    private String nearest(Point place) {
        String nearest = "";
        double least = Double.POSITIVE_INFINITY;
        for (Map.Entry<String, LyingPose> each : poses.entrySet()) {
            double distance = fromAxis(place, each.getValue());
            if (distance < least) {
                least = distance;
                nearest = each.getKey();
            }
        }
        return nearest;
    }

    /** How far a place lies from the axis of a hull, in plan (m of the grid). */
    static double fromAxis(Point place, LyingPose pose) {
        Vec3 way = pose.axisEnd().minus(pose.axisStart());
        double east = place.east() - pose.axisStart().x();
        double north = place.north() - pose.axisStart().y();
        double share = Math.max(0, Math.min(1, (east * way.x() + north * way.y())
                / (way.x() * way.x() + way.y() * way.y())));
        return Math.hypot(east - share * way.x(), north - share * way.y());
    }

    /** Height of the upper skin of a hull over a place (m); below everything beside the hull and before its ends. */
    private double skin(Point place, String id) {
        LyingPose pose = poses.get(id);
        Hull hull = plan.hull(id).orElseThrow();
        Vec3 way = pose.axisEnd().minus(pose.axisStart());
        double level = Math.hypot(way.x(), way.y());
        double east = place.east() - pose.axisStart().x();
        double north = place.north() - pose.axisStart().y();
        double share = (east * way.x() + north * way.y()) / (level * level);
        double aside = Math.abs(north * way.x() - east * way.y()) / level * survey.surface().metreScale();
        double radius = share < 0 || share > 1 ? 0 : BodyProfile.radiusAt(hull, share * hull.length());
        return aside >= radius ? Double.NEGATIVE_INFINITY : pose.axisStart().z() + share * way.z()
                + Math.sqrt(radius * radius - aside * aside);
    }

    private boolean isBesideSoil(int node) {
        int reach = (int) Math.ceil(BESIDE_TOE / frame.spacing());
        int column = node % frame.columns();
        int row = node / frame.columns();
        for (int r = Math.max(0, row - reach); r <= Math.min(frame.rows() - 1, row + reach); r++) {
            for (int c = Math.max(0, column - reach); c <= Math.min(frame.columns() - 1, column + reach); c++) {
                int other = r * frame.columns() + c;
                if (finished[other] > prepared[other] + SOIL) {
                    return true;
                }
            }
        }
        return false;
    }

    private Optional<Finding> finding(String hull, WorkRule rule, Off by) {
        double cell = Math.pow(frame.spacing() * survey.surface().metreScale(), 2);
        String after = String.format(Locale.ROOT, "Surveyed after step %s, ", survey.stage().step().id());
        double level = plan.rules().asBuiltLevel();
        String where = String.format(Locale.ROOT, "over %.0f m2, by up to %.2f m (%.1f m3)", by.nodes * cell, by.most,
                by.sum * cell);
        Finding made = switch (rule) {
            case AS_BUILT_NOT_SURVEYED -> Finding.of(rule, Level.WARN, hull, Figures.of(by.nodes * cell, 0, "m2"),
                    after + String.format(Locale.ROOT, "%.0f m2 of the soil of hull %s have no height.",
                    by.nodes * cell, hull));
            case AS_BUILT_LOW -> low(hull, by, after + "the soil of hull " + hull + " stands lower than planned by"
                    + " then " + where);
            case AS_BUILT_HIGH -> Finding.of(rule, Level.WARN, hull, Figures.of(by.most, level, "m"), after
                    + "the soil of hull " + hull + " stands higher than its finished cover " + where
                    + ": hull and supports carry more than was judged.");
            case AS_BUILT_BEYOND_TOE -> Finding.of(rule, Level.WARN, hull, Figures.of(by.most, Math.max(level,
                    2 * plan.ground().elevationSpread()), "m"), after + "the ground beside the toe of hull " + hull
                    + " stands higher than planned " + where + ".");
            default -> throw new AssertionError(rule);
        };
        return Optional.of(made.at(by.place.orElseThrow()).with(survey.stage().step().id()));
    }

    /** Soil that lacks: refused where people may take the cover for whole and it is not. */
    private Finding low(String hull, Off by, String text) {
        double level = plan.rules().asBuiltLevel();
        Optional<HullCover> built = survey.built().hull(hull);
        Optional<HullCover> design = survey.design().hull(hull);
        boolean isThin = survey.whole().contains(hull) && built.isPresent()
                && built.get().least().depth() < built.get().least().wanted() - level;
        boolean isBare = built.isEmpty() || design.isEmpty() || design.get().least().depth() < level;
        String least = isBare ? "" : String.format(Locale.ROOT, "; the least cover is"
                + " %.2f m as surveyed and %.2f m as planned by then%s", built.get().least().depth(),
                design.get().least().depth(), isThin ? String.format(Locale.ROOT, ", %.2f m required: the cover is not"
                + " whole", built.get().least().wanted()) : "");
        return Finding.of(WorkRule.AS_BUILT_LOW, isThin ? Level.REFUSE : Level.WARN, hull,
                Figures.of(by.most, level, "m"), text + least + ".");
    }

    private List<Finding> density() {
        List<Finding> findings = new ArrayList<>();
        double measured = survey.stage().step().asBuilt().map(s -> s.placedDensity().orElse(Double.NaN))
                .orElse(Double.NaN);
        for (Hull hull : plan.hulls()) {
            double stated = hull.cover().map(CoverPlan::density).orElse(OptionalDouble.empty())
                    .orElse(plan.ground().regolith().placedDensity());
            double least = stated * (1 - plan.ground().regolith().densitySpreadShare());
            if (poses.containsKey(hull.id()) && survey.stage().coverHeights().containsKey(hull.id())
                    && measured < least) {
                findings.add(Finding.of(WorkRule.AS_BUILT_DENSITY_LOW, Level.WARN, hull.id(), Figures.of(measured,
                        least, "kg/m3"), String.format(Locale.ROOT, "Measured after step %s, the placed soil of hull %s"
                        + " has %.0f kg/m3; the plan's %.0f kg/m3 and their spread allow %.0f. For the same areal"
                        + " density the cover must be %.2f times as deep.", survey.stage().step().id(), hull.id(),
                        measured, stated, least, stated / measured)).with(survey.stage().step().id()));
            }
        }
        return findings;
    }
}
