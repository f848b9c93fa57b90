// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.shielding.dose.Responses;
import bermwright.site.SamplePlans;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.gridfile.GroundFile;
import bermwright.terrain.gridfile.GroundFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AssessmentsTest {
    /** Trials settle to 1 %, handed-out doses to half of that. */
    private static final double SETTLED = 0.015;

    @TempDir
    Path directory;

    @Test
    void answersForEveryHullInOneObject() throws Exception {
        Plan plan = SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(150, 100), 0)));
        Assessment all = assess(plan, (e, n) -> 3);
        HullAssessment hull = all.hull("A").orElseThrow();
        assertTrue(hull.lying().isPresent() && hull.laydown().isPresent() && hull.cover().isPresent());
        assertEquals(1, hull.stations().size());
        assertTrue(all.models().stream().map(m -> m.id()).distinct().count() == all.models().size());
        assertFalse(all.cautions().isEmpty());
        assertEquals("0.1.0", all.version());
        assertTrue(all.shapes().hulls().get(0).shapes().stream().anyMatch(s -> s.kind().name().equals("COVER_TOE")));
    }

    @Test
    void aPlanWithoutHullsIsAFindingAndNotAnError() throws Exception {
        Assessment all = assess(SamplePlans.plan(List.of()), (e, n) -> 3);
        assertTrue(all.isRefused());
        assertTrue(all.findings().stream().anyMatch(f -> f.rule().id().equals("no-hull")));
    }

    @Test
    void aHullOverMissingGroundIsAFindingAndTheOthersAreAnswered() throws Exception {
        Plan plan = SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(60, 60), 0),
                SamplePlans.hull("B", new Point(240, 200), 0)));
        Assessment all = assess(plan, (e, n) -> e > 235 && e < 245 && n > 215 && n < 225 ? Double.NaN : 3);
        assertTrue(all.hull("A").orElseThrow().cover().isPresent());
        assertTrue(all.hull("B").orElseThrow().lying().isEmpty());
        assertTrue(all.findings().stream().anyMatch(f -> f.subject().equals("B") && f.rule().id().contains("ground")),
                () -> all.findings().toString());
    }

    @Test
    void otherCoversThanThePlannedAreRaisedDugForAndFoldedAnew() throws Exception {
        Assessment all = assess(SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(150, 100), 0))),
                (e, n) -> 3);
        List<CoverTrade.Step> steps = CoverTrade.of(all, Progress.NONE).steps();
        CoverTrade.Step planned = steps.stream().filter(CoverTrade.Step::isPlanned).findFirst().orElseThrow();
        assertEquals(all.cover().orElseThrow().volume(), planned.volume());
        assertEquals(all.earthworks().orElseThrow().shortage(), planned.shortage());
        StationDose.Parts dose = all.hull("A").orElseThrow().stations().get(0).parts();
        assertEquals("A/bunks", planned.worst().orElseThrow().station());
        assertEquals(dose.cosmicAll().best() + dose.eventAll().best(), planned.worst().orElseThrow().dose().best(),
                SETTLED * planned.worst().orElseThrow().dose().best());
        for (int i = 1; i < steps.size(); i++) {
            CoverTrade.Step thin = steps.get(i - 1);
            CoverTrade.Step thick = steps.get(i);
            assertTrue(thick.share() > thin.share() && thick.volume() > thin.volume());
            assertTrue(thick.shortage() > thin.shortage(), "there is nothing to dig in");
            assertTrue(thick.worst().orElseThrow().dose().high() < thin.worst().orElseThrow().dose().high());
        }
        Assessment bare = assess(SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(150, 100), 0)
                .withCover(Optional.empty()))), (e, n) -> 3);
        assertEquals(List.of(), CoverTrade.of(bare, Progress.NONE).steps());
    }

    @Test
    void stopsWhenAsked() {
        Plan plan = SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(150, 100), 0)));
        Progress stopped = new Progress() {
            @Override
            public void report(double share, String step) {
            }

            @Override
            public boolean isCancelled() {
                return true;
            }
        };
        assertThrows(CancellationException.class, () -> new Assessments(new Responses(directory))
                .run(plan, "test.json", ground(SamplePlans.ground((e, n) -> 0)), stopped));
    }

    @Test
    void namesTheElevationFileThatIsNotThere() {
        Plan plan = SamplePlans.plan(List.of());
        InputException missing = assertThrows(InputException.class,
                () -> SiteGround.read(plan, directory.resolve("plan.json"), Progress.NONE));
        assertEquals("ground.elevation_file", missing.key());
    }

    private Assessment assess(Plan plan, java.util.function.DoubleBinaryOperator height) throws Exception {
        Assessment all = new Assessments(new Responses(directory)).run(plan, "test.json",
                ground(SamplePlans.ground(height)), Progress.NONE);
        all.findings().forEach(f -> assertFalse(f.source().isBlank(), f.toString()));
        return all;
    }

    private SiteGround ground(ElevationGrid grid) throws java.io.IOException {
        Path file = directory.resolve("ground.asc");
        StringBuilder text = new StringBuilder("ncols %d%nnrows %d%nxllcenter %s%nyllcenter %s%ncellsize 1%n"
                .formatted(grid.frame().columns(), grid.frame().rows(), grid.frame().west(), grid.frame().south()))
                .append("NODATA_value -9999\n");
        for (int row = grid.frame().rows() - 1; row >= 0; row--) {
            for (int column = 0; column < grid.frame().columns(); column++) {
                double h = grid.nodeHeight(row, column);
                text.append(Double.isNaN(h) ? "-9999" : Double.toString(h)).append(' ');
            }
            text.append('\n');
        }
        Files.writeString(file, text);
        GroundFile read = GroundFiles.read(file, GroundFiles.Knowledge.NONE, Progress.NONE);
        return new SiteGround(read, directory);
    }
}
