// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.shielding.dose.Responses;
import bermwright.site.exposure.DoseSources;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.SiteCover;
import bermwright.site.exposure.SiteDose;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.Plan;
import bermwright.site.plan.WorkStep;
import bermwright.site.planfile.PlanValues;
import bermwright.site.stages.Stage;
import bermwright.terrain.earthworks.CutAndFill;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.gridfile.GroundFile;
import bermwright.terrain.gridfile.GroundFiles;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The site as it was surveyed after a step, beside the site as the plan has it then.
 *
 * <p>Where the survey has no height the ground counts as it was before any soil was placed: what was not surveyed
 * shields nobody.
 *
 * @param step       the step, with what was surveyed
 * @param surveyed   share of the nodes of the ground that the survey has a height for (1)
 * @param built      covers as surveyed, by hull
 * @param design     covers as the plan has them after that step, by hull
 * @param stations   dose at the stations as surveyed, for a whole stay as if work stopped here
 * @param planned    dose at the stations as the plan has them after that step
 * @param volumes    soil placed and left
 */
public record AsBuilt(WorkStep step, double surveyed, List<HullCover> built, List<HullCover> design,
        List<StationDose> stations, List<StationDose> planned, Volumes volumes) {
    /** Copies the lists. */
    public AsBuilt {
        built = List.copyOf(built);
        design = List.copyOf(design);
        stations = List.copyOf(stations);
        planned = List.copyOf(planned);
    }

    /**
     * Soil as surveyed.
     *
     * @param placed  soil that stands there, less what hulls take up (m3)
     * @param planned soil that the plan has placed by then (m3)
     * @param left    soil still to be placed up to the finished covers (m3)
     * @param over    soil that stands higher than the finished covers (m3)
     */
    public record Volumes(double placed, double planned, double left, double over) {
    }

    /**
     * Refuses surveys that are not there, before long work begins.
     *
     * @param plan   the plan
     * @param ground its ground
     * @throws InputException if a file is not there or cannot be read
     */
    static void check(Plan plan, SiteGround ground) {
        plan.orderOfWork().forEach(step -> step.asBuilt().ifPresent(survey -> file(step, survey, ground)));
    }

    private static Path file(WorkStep step, WorkStep.AsBuilt survey, SiteGround ground) {
        InputException.Place place = new InputException.Place("", 0, "order_of_work[" + step.id()
                + "].as_built.elevation_file");
        Path file = InputException.beside(ground.directory(), survey.elevationFile(), place);
        InputException.checkRegular(place, file,
                "an elevation file beside the plan (GeoTIFF, ESRI ASCII grid, PDS label)");
        return file;
    }

    /**
     * What was surveyed after the steps of an assessment.
     *
     * @param assessment the assessment
     * @param progress   told how far the work has come; may cancel it
     * @return one for each step with a survey, in the order of the work; none where nothing was surveyed
     * @throws InputException if a survey cannot be read or lies elsewhere
     */
    public static List<AsBuilt> of(Assessment assessment, Progress progress) {
        List<Stage> stages = assessment.stages().map(s -> s.stages()).orElse(List.of()).stream()
                .filter(s -> s.step().asBuilt().isPresent()).toList();
        List<AsBuilt> all = new ArrayList<>();
        for (int i = 0; i < stages.size() && assessment.cover().isPresent(); i++) {
            progress.check();
            all.add(of(assessment, stages.get(i), progress.part((double) i / stages.size(),
                    (i + 1.0) / stages.size())));
        }
        return all;
    }

    private static AsBuilt of(Assessment assessment, Stage stage, Progress progress) {
        WorkStep step = stage.step();
        WorkStep.AsBuilt survey = step.asBuilt().orElseThrow();
        SiteCover whole = assessment.cover().orElseThrow();
        GroundFiles.Knowledge known = new GroundFiles.Knowledge(assessment.plan().ground().referenceSystem(),
                Optional.of(assessment.ground().grid().frame().centre()));
        GroundFile file = GroundFiles.read(file(step, survey, assessment.ground()), known, progress.part(0, 0.1));
        ElevationGrid before = whole.prepared().withPatches(List.of());
        Surface surface = Surface.of(before, file.grid());
        if (surface.known == 0) {
            throw InputException.badValue(new InputException.Place("", 0, "order_of_work[" + step.id()
                    + "].as_built.elevation_file"), survey.elevationFile(), "a survey that lies on the plan's ground");
        }
        Plan lying = lying(assessment.plan(), stage);
        Plan measured = lying(survey.placedDensity().isPresent() ? dense(assessment.plan(),
                survey.placedDensity().getAsDouble()) : assessment.plan(), stage);
        DoseSources sources = new DoseSources(Responses.standard(), assessment.ground().directory());
        SiteCover built = SiteCover.standing(measured, whole.natural(), whole.prepared(), surface.grid);
        SiteCover design = SiteCover.standing(lying, whole.natural(), whole.prepared(), stage.surface());
        List<StationDose> stations = SiteDose.of(measured, built, sources, progress.part(0.1, 0.9)).stations();
        List<StationDose> planned = assessment.partBuilt().stream().filter(p -> p.step().equals(step.id())).findFirst()
                .map(PartBuilt::stations).orElse(List.of());
        CutAndFill toDo = CutAndFill.between(surface.grid, whole.finished().withPatches(List.of()));
        return new AsBuilt(step, surface.known / (double) before.frame().nodes(), built.hulls(), design.hulls(),
                stations, planned, new Volumes(built.volume(), design.volume(), toDo.fill(), toDo.cut()));
    }

    private static Plan lying(Plan plan, Stage stage) {
        return plan.withHulls(plan.hulls().stream().filter(h -> stage.lying().contains(h.id())).toList());
    }

    /** The plan with the density that was measured in its covers (kg/m3). */
    private static Plan dense(Plan plan, double density) {
        Plan dense = plan;
        for (int i = 0; i < plan.hulls().size(); i++) {
            if (plan.hulls().get(i).cover().isPresent()) {
                dense = PlanValues.with(dense, "hulls[" + i + "].cover.density_kg_m3", Double.toString(density));
            }
        }
        return dense;
    }

    /** A survey on the nodes of the ground. */
    private record Surface(ElevationGrid grid, long known) {
        static Surface of(ElevationGrid before, ElevationGrid survey) {
            GridFrame frame = before.frame();
            double[] heights = before.heights();
            long known = 0;
            for (int row = 0; row < frame.rows(); row++) {
                for (int column = 0; column < frame.columns(); column++) {
                    Point place = new Point(frame.east(column), frame.north(row));
                    double height = survey.frame().contains(place) ? survey.height(place) : Double.NaN;
                    if (Double.isFinite(height)) {
                        heights[row * frame.columns() + column] = height;
                        known++;
                    }
                }
            }
            return new Surface(before.withHeights(heights), known);
        }
    }
}
