// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.shielding.dose.Responses;
import bermwright.site.SamplePlans;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.Plan;
import bermwright.site.plan.WorkStep;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.gridfile.GroundFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A survey equal to the plan gives the plan's figures, bare ground gives none, and thinner soil gives more dose. */
class AsBuiltTest {
    private static final double LEVEL = 3;
    /** Heights are written to a hundredth of a millimetre; depths are found on a map of half metres. */
    private static final double SAME_DEPTH = 0.02;
    private static final double SAME_SHARE = 0.01;
    /** Spacing of the nodes of what is built (m). */
    private static final double FINE = 0.25;

    @TempDir
    Path directory;

    @Test
    void aSurveyIsHeldAgainstThePlan() throws IOException {
        Assessment planned = assess("");
        ElevationGrid design = planned.stages().orElseThrow().stages().get(1).surface();
        write("as-planned.asc", design, 1);
        write("bare.asc", design, 0);
        write("thin.asc", design, 0.8);
        AsBuilt same = built("as-planned.asc");
        assertEquals(1, same.surveyed(), 1e-9);
        assertTrue(same.volumes().planned() > 100, "the plan places soil");
        assertEquals(same.volumes().planned(), same.volumes().placed(), SAME_SHARE * same.volumes().planned());
        assertEquals(same.design().get(0).least().depth(), same.built().get(0).least().depth(), SAME_DEPTH);
        AsBuilt bare = built("bare.asc");
        assertEquals(0, bare.volumes().placed(), SAME_SHARE * same.volumes().planned());
        assertEquals(0, bare.built().get(0).least().depth(), SAME_DEPTH);
        assertTrue(bare.volumes().left() > same.volumes().left() + 0.9 * same.volumes().planned());
        AsBuilt thin = built("thin.asc");
        assertTrue(thin.built().get(0).least().depth() < same.built().get(0).least().depth() - 0.3);
        double asPlanned = same.stations().get(0).covered().high();
        assertTrue(thin.stations().get(0).covered().high() > 1.05 * asPlanned);
        assertTrue(bare.stations().get(0).covered().high() > 2 * asPlanned);
    }

    @Test
    void aSurveyThatIsNotThereIsRefusedBeforeTheWork() {
        InputException missing = assertThrows(InputException.class, () -> assess("nowhere.asc"));
        assertEquals("order_of_work[cover].as_built.elevation_file", missing.key());
    }

    private AsBuilt built(String survey) throws IOException {
        return AsBuilt.of(assess(survey), Progress.NONE).get(0);
    }

    private Assessment assess(String survey) throws IOException {
        ElevationGrid level = SamplePlans.ground((e, n) -> LEVEL);
        write("ground.asc", level, 1);
        Optional<WorkStep.AsBuilt> asBuilt = survey.isEmpty() ? Optional.empty() : Optional.of(new WorkStep.AsBuilt(
                survey, Optional.empty(), OptionalDouble.empty(), Annotations.NOTHING));
        Plan plan = SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(150, 100), 0))).withOrderOfWork(List.of(
                new WorkStep("lower", WorkStep.Kind.LOWER, "A", OptionalInt.empty(), OptionalDouble.empty(),
                        Optional.empty(), List.of(), Optional.empty(), Annotations.NOTHING),
                new WorkStep("cover", WorkStep.Kind.COVER, "A", OptionalInt.empty(), OptionalDouble.empty(),
                        Optional.empty(), List.of("lower"), asBuilt, Annotations.NOTHING)));
        SiteGround ground = new SiteGround(GroundFiles.read(directory.resolve("ground.asc"),
                GroundFiles.Knowledge.NONE, Progress.NONE), directory);
        return new Assessments(new Responses(directory)).run(Assessments.Asked.EARTHWORKS,
                new Assessments.Site(plan, "test.json", ground), Progress.NONE);
    }

    /** Writes a surface whose heights over the level ground are scaled by a share, on fine nodes. */
    private void write(String name, ElevationGrid grid, double share) throws IOException {
        GridFrame frame = grid.frame();
        int parts = (int) Math.round(frame.spacing() / FINE);
        int columns = (frame.columns() - 1) * parts + 1;
        int rows = (frame.rows() - 1) * parts + 1;
        StringBuilder text = new StringBuilder("ncols %d%nnrows %d%nxllcenter %s%nyllcenter %s%ncellsize %s%n"
                .formatted(columns, rows, frame.west(), frame.south(), FINE)).append("NODATA_value -9999\n");
        for (int row = rows - 1; row >= 0; row--) {
            for (int column = 0; column < columns; column++) {
                double height = grid.height(new Point(frame.west() + column * FINE, frame.south() + row * FINE));
                text.append(String.format(java.util.Locale.ROOT, "%.5f ", LEVEL + share * (height - LEVEL)));
            }
            text.append('\n');
        }
        Files.writeString(directory.resolve(name), text);
    }
}
