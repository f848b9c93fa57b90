// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.site.exposure.SiteCover;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.WorkStep;
import bermwright.site.planfile.PlanValues;
import bermwright.site.pose.LyingPose;
import bermwright.site.stages.Stage;
import bermwright.site.stages.StagesResult;
import bermwright.terrain.earthworks.CutAndFill;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.gridfile.GroundFile;
import bermwright.terrain.gridfile.GroundFiles;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The ground as it was surveyed after a step, on the nodes of the plan's own.
 *
 * @param stage    the site as the plan has it after that step
 * @param surface  the surveyed ground; where the survey has no height, the ground before any soil was placed
 * @param known    nodes that the survey has a height for
 * @param measured hulls that lie by then, where they were surveyed and under the density that was measured
 * @param built    covers as surveyed
 * @param design   covers as planned by then
 * @param whole    ids of hulls whose cover is to stand whole by then
 */
record Surveyed(Stage stage, ElevationGrid surface, BitSet known, Plan measured, SiteCover built, SiteCover design,
        Set<String> whole) {
    private static final String FILE = "].as_built.elevation_file";

    /** Refuses surveys that are not there, before long work begins. */
    static void check(Plan plan, SiteGround ground) {
        plan.orderOfWork().forEach(step -> step.asBuilt().flatMap(WorkStep.AsBuilt::elevationFile)
                .ifPresent(survey -> file(step, survey, ground)));
    }

    private static Path file(WorkStep step, String survey, SiteGround ground) {
        InputException.Place place = new InputException.Place("", 0, "order_of_work[" + step.id() + FILE);
        Path file = InputException.beside(ground.directory(), survey, place);
        InputException.checkRegular(place, file,
                "an elevation file beside the plan (GeoTIFF, ESRI ASCII grid, PDS label)");
        return file;
    }

    /** What a survey is read beside. */
    record Beside(Plan plan, SiteGround ground, SiteCover cover, List<SurveyedHull> hulls) {
    }

    /** What was surveyed of the ground after the steps of the work, in their order. */
    static List<Surveyed> of(Beside site, StagesResult work, Progress progress) {
        List<Surveyed> all = new ArrayList<>();
        for (int i = 0; i < work.stages().size(); i++) {
            Stage stage = work.stages().get(i);
            Optional<String> survey = stage.step().asBuilt().flatMap(WorkStep.AsBuilt::elevationFile);
            if (survey.isPresent()) {
                progress.check();
                Set<String> done = new HashSet<>(work.stages().subList(0, i + 1).stream().map(s -> s.step().id())
                        .toList());
                all.add(of(new Beside(site.plan, site.ground, site.cover, site.hulls.stream()
                        .filter(h -> done.contains(h.step())).toList()), stage, survey.get(),
                        PartBuilt.whole(work, i)));
            }
        }
        return all;
    }

    private static Surveyed of(Beside site, Stage stage, String survey, Set<String> whole) {
        Plan plan = site.plan;
        GroundFiles.Knowledge knowledge = new GroundFiles.Knowledge(plan.ground().referenceSystem(),
                Optional.of(site.ground.grid().frame().centre()));
        GroundFile file = GroundFiles.read(file(stage.step(), survey, site.ground), knowledge, Progress.NONE);
        ElevationGrid before = site.cover.prepared().withPatches(List.of());
        BitSet known = new BitSet();
        ElevationGrid surface = onNodes(before, file.grid(), known);
        if (known.isEmpty()) {
            throw InputException.badValue(new InputException.Place("", 0, "order_of_work[" + stage.step().id() + FILE),
                    survey, "a survey that lies on the plan's ground");
        }
        Plan lying = lying(plan, stage);
        Plan measured = SurveyedHull.moved(lying(dense(plan, stage.step()), stage), site.hulls);
        return new Surveyed(stage, surface, known, measured,
                SiteCover.standing(measured, site.cover.natural(), site.cover.prepared(), surface),
                SiteCover.standing(lying, site.cover.natural(), site.cover.prepared(), stage.surface()), whole);
    }

    private static ElevationGrid onNodes(ElevationGrid before, ElevationGrid survey, BitSet known) {
        GridFrame frame = before.frame();
        double[] heights = before.heights();
        for (int node = 0; node < heights.length; node++) {
            Point place = place(frame, node);
            double height = survey.frame().contains(place) ? survey.height(place) : Double.NaN;
            if (Double.isFinite(height)) {
                heights[node] = height;
                known.set(node);
            }
        }
        return before.withHeights(heights);
    }

    static Point place(GridFrame frame, int node) {
        return new Point(frame.east(node % frame.columns()), frame.north(node / frame.columns()));
    }

    /** Share of the nodes of the ground that the survey has a height for (1). */
    double share() {
        return known.cardinality() / (double) surface.frame().nodes();
    }

    /** Ids of hulls over which the survey has no height, not even at the node nearest to their axis. */
    Set<String> unseen() {
        GridFrame frame = surface.frame();
        Set<String> unseen = new HashSet<>();
        for (Hull hull : measured.hulls()) {
            double reach = Math.max(hull.radius() / surface.metreScale(), frame.spacing());
            Optional<LyingPose> pose = LyingPose.of(hull, built.prepared());
            if (pose.isPresent() && known.stream().noneMatch(node ->
                    SurveyFindings.fromAxis(place(frame, node), pose.get()) <= reach)) {
                unseen.add(hull.id());
            }
        }
        return unseen;
    }

    /** Soil as surveyed, against the finished covers. */
    AsBuilt.Volumes volumes(SiteCover whole) {
        CutAndFill toDo = CutAndFill.between(surface, whole.finished().withPatches(List.of()));
        return new AsBuilt.Volumes(built.volume(), design.volume(), toDo.fill(), toDo.cut());
    }

    private static Plan lying(Plan plan, Stage stage) {
        return plan.withHulls(plan.hulls().stream().filter(h -> stage.lying().contains(h.id())).toList());
    }

    /** The plan with the density that was measured in its covers, where it was. */
    private static Plan dense(Plan plan, WorkStep step) {
        Plan dense = plan;
        Optional<String> density = step.asBuilt().filter(s -> s.placedDensity().isPresent())
                .map(s -> Double.toString(s.placedDensity().getAsDouble()));
        for (int i = 0; i < plan.hulls().size() && density.isPresent(); i++) {
            if (plan.hulls().get(i).cover().isPresent()) {
                dense = PlanValues.with(dense, "hulls[" + i + "].cover.density_kg_m3", density.get());
            }
        }
        return dense;
    }
}
