// SPDX-License-Identifier: Apache-2.0
package bermwright.demosite;

import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.assessment.SiteGround;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import bermwright.site.pose.LyingPose;
import bermwright.site.stages.Stage;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.gridfile.GeoTiffWriter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;

/**
 * Writes the demo's invented survey: the ground about a hull after a step of the work as the plan has it, with what a
 * survey scatters by and with a hollow in one flank of the cover, such as a hauler leaves that dumped too early.
 */
public final class WriteSurvey {
    private static final long SEED = 31;
    private static final double SCATTER = 0.02;
    private static final double STEP = 1.0 / 64;
    /** The survey reaches this far from the hull's axis (m). */
    private static final double BESIDE = 45;
    private static final double HOLLOW_DEPTH = 0.6;
    private static final double HOLLOW_RADIUS = 4;
    private static final double HOLLOW_ALONG = 15;
    /** To the left of the axis, in the flank (m). */
    private static final double HOLLOW_ACROSS = 7;

    private WriteSurvey() {
    }

    /**
     * Writes the file.
     *
     * @param arguments the plan file, without the survey; the step's id; the hull's id; the file to write
     * @throws IOException if it cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        Path planFile = Path.of(arguments[0]);
        Plan plan = PlanFiles.read(planFile);
        SiteGround ground = SiteGround.read(plan, planFile, Progress.NONE);
        Assessment assessment = Assessments.standard().run(Assessments.Asked.EARTHWORKS,
                new Assessments.Site(plan, planFile.toString(), ground), Progress.NONE);
        Stage stage = Stage.of(assessment.stages().orElseThrow().stages(), arguments[1]).orElseThrow();
        LyingPose pose = assessment.hull(arguments[2]).flatMap(HullAssessment::lying).orElseThrow();
        GeoTiffWriter.write(Path.of(arguments[3]), surveyed(stage.surface().withPatches(List.of()), pose),
                ground.file().referenceSystem(), Progress.NONE);
    }

    private static ElevationGrid surveyed(ElevationGrid built, LyingPose pose) {
        Point start = pose.axisStart().plan();
        Point end = pose.axisEnd().plan();
        Point hollow = pose.place(HOLLOW_ALONG, HOLLOW_ACROSS, 0).plan();
        double west = Math.floor(Math.min(start.east(), end.east()) - BESIDE);
        double south = Math.floor(Math.min(start.north(), end.north()) - BESIDE);
        double spacing = built.frame().spacing();
        int columns = (int) ((Math.max(start.east(), end.east()) + BESIDE - west) / spacing);
        int rows = (int) ((Math.max(start.north(), end.north()) + BESIDE - south) / spacing);
        GridFrame frame = new GridFrame(rows, columns, west, south, spacing);
        Random scatter = new Random(SEED);
        double[] heights = new double[columns * rows];
        for (int node = 0; node < heights.length; node++) {
            Point place = new Point(frame.east(node % columns), frame.north(node / columns));
            double far = Math.hypot(place.east() - hollow.east(), place.north() - hollow.north()) / HOLLOW_RADIUS;
            double height = built.height(place) + SCATTER * scatter.nextGaussian()
                    - HOLLOW_DEPTH * Math.exp(-far * far);
            heights[node] = STEP * Math.rint(height / STEP);
        }
        return ElevationGrid.of(frame, heights);
    }
}
