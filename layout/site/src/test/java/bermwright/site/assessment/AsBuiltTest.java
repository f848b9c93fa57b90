// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.finding.LoweringRule;
import bermwright.finding.Rule;
import bermwright.finding.WorkRule;
import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.foundation.Vec3;
import bermwright.shielding.dose.Responses;
import bermwright.site.SamplePlans;
import bermwright.site.answer.AnswerTable;
import bermwright.site.answer.AsBuiltAnswers;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.WorkStep;
import bermwright.site.pose.LyingPose;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.gridfile.GroundFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
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

    private OptionalDouble density = OptionalDouble.empty();
    private Optional<List<Vec3>> ends = Optional.empty();
    private OptionalDouble upTo = OptionalDouble.empty();

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

    @Test
    void whatIsNotAsPlannedIsAFinding() throws IOException {
        ElevationGrid design = assess("").stages().orElseThrow().stages().get(1).surface();
        write("as-planned.asc", design, 1);
        write("thin.asc", design, 0.8);
        write("high.asc", design, 1.2);
        writePart("part.asc", design);
        assertEquals(List.of(), found("as-planned.asc"));
        assertEquals(List.of(WorkRule.AS_BUILT_HIGH), rules(found("high.asc")));
        Finding low = found("thin.asc").get(0);
        assertEquals(WorkRule.AS_BUILT_LOW, low.rule());
        assertEquals(Finding.Level.REFUSE, low.level(), "the last lift is placed and the cover is too thin");
        assertEquals("A", low.subject());
        Point deepest = low.place().orElseThrow();
        double lacking = 0.2 * (design.height(deepest) - LEVEL);
        assertEquals(lacking, low.measured().orElseThrow(), 1e-4, "what lacks is that at the place named");
        assertTrue(low.text().contains("required: the cover is not whole"), low.text());
        List<Finding> part = found("part.asc");
        assertEquals(List.of(WorkRule.AS_BUILT_NOT_SURVEYED), rules(part));
    }

    @Test
    void soilLighterThanItsSpreadAllowsIsAFinding() throws IOException {
        ElevationGrid design = assess("").stages().orElseThrow().stages().get(1).surface();
        write("as-planned.asc", design, 1);
        double stated = assess("").plan().ground().regolith().placedDensity();
        density = OptionalDouble.of(0.91 * stated);
        assertEquals(List.of(), found("as-planned.asc"));
        density = OptionalDouble.of(0.89 * stated);
        assertEquals(List.of(WorkRule.AS_BUILT_DENSITY_LOW), rules(found("as-planned.asc")));
    }

    @Test
    void aHullThatLiesElsewhereIsAFindingThatSaysWhatToEnter() throws IOException {
        LyingPose pose = assess("").hulls().get(0).lying().orElseThrow();
        ends = Optional.of(List.of(pose.axisStart(), pose.axisEnd()));
        assertEquals(List.of(), found(""));
        Vec3 aside = new Vec3(0.3, 0.4, 0);
        ends = Optional.of(List.of(pose.axisStart().plus(aside), pose.axisEnd().plus(aside)));
        Finding elsewhere = found("").get(0);
        assertEquals(LoweringRule.AS_BUILT_HULL_ELSEWHERE, elsewhere.rule());
        assertEquals(0.5, elsewhere.measured().orElseThrow(), 1e-9);
        Point entered = assess("").surveys().hulls().get(0).as().orElseThrow().baseCentre();
        assertEquals(150.3, entered.east(), 1e-6);
        assertEquals(100.4, entered.north(), 1e-6);
        Vec3 below = new Vec3(0, 0, -0.25);
        ends = Optional.of(List.of(pose.axisStart(), pose.axisEnd().plus(below)));
        assertEquals(0.25, found("").get(0).measured().orElseThrow(), 1e-9);
        Vec3 turned = new Vec3(0, -1, 0);
        ends = Optional.of(List.of(pose.axisStart(), pose.axisEnd().plus(turned)));
        Hull as = assess("").surveys().hulls().get(0).as().orElseThrow();
        LyingPose lies = LyingPose.of(as, SamplePlans.ground((e, n) -> LEVEL)).orElseThrow();
        Vec3 wanted = pose.axisEnd().plus(turned).minus(pose.axisStart());
        assertEquals(Math.atan2(wanted.x(), wanted.y()), as.layDownAzimuth().radians(), 1e-9);
        assertEquals(0, lies.axisStart().minus(pose.axisStart()).norm(), 1e-6, "turned about its base end");
    }

    @Test
    void whatOfAHullWasNotSurveyedIsNotTakenToLieAsPlanned() throws IOException {
        LyingPose pose = assess("").hulls().get(0).lying().orElseThrow();
        ends = Optional.of(List.of(pose.axisStart()));
        Finding half = found("").get(0);
        assertEquals(LoweringRule.AS_BUILT_HULL_NOT_SURVEYED, half.rule());
        assertTrue(half.text().contains("Not surveyed: the far end."), half.text());
        Vec3 end = pose.axisEnd();
        ends = Optional.of(List.of(pose.axisStart(), new Vec3(end.x(), end.y(), Double.NaN)));
        assertTrue(found("").get(0).text().contains("Not surveyed: the height of the far end."), found("").toString());
    }

    /** The hull's base plane lies at north 103.8; soil of the first lift lies before it and beside it. */
    @Test
    void soilThatLacksBeforeAnEndIsAFindingAndInTheTable() throws IOException {
        upTo = OptionalDouble.of(2.5);
        ElevationGrid design = assess("").stages().orElseThrow().stages().get(1).surface();
        assertTrue(design.height(new Point(150, 102)) > LEVEL + 2, "soil is planned there");
        write("as-planned.asc", design, 1);
        assertEquals(List.of(), found("as-planned.asc"));
        assertEquals(List.of("as planned or thicker"), words(AsBuiltAnswers.COVERS,
                AsBuiltAnswers.covers(built("as-planned.asc"))));
        ElevationGrid level = SamplePlans.ground((e, n) -> Math.abs(e - 150) < 2 && n > 100.5 && n < 103.2 ? LEVEL
                : design.height(new Point(e, n)));
        write("hole.asc", level, 1);
        Finding low = found("hole.asc").get(0);
        assertEquals(WorkRule.AS_BUILT_LOW, low.rule());
        assertTrue(low.measured().orElseThrow() > 2, low.text());
        assertEquals(List.of("LOWER than planned in places"), words(AsBuiltAnswers.COVERS,
                AsBuiltAnswers.covers(built("hole.asc"))));
    }

    private List<Finding> found(String survey) throws IOException {
        return assess(survey).findings().stream().filter(f -> f.rule().id().startsWith("as-built")).toList();
    }

    private static List<Rule> rules(List<Finding> findings) {
        List<Rule> rules = new ArrayList<>();
        findings.forEach(f -> rules.add(f.rule()));
        return rules;
    }

    @Test
    void aHullThatTheSurveyDoesNotReachIsNotSaidToBeAsPlanned() throws IOException {
        ElevationGrid design = assess("").stages().orElseThrow().stages().get(1).surface();
        writePart("part.asc", design);
        writePart("beside.asc", design, 4);
        AsBuilt part = built("part.asc");
        assertEquals(Set.of(), part.unseen());
        assertEquals(List.of("not judged: no dose of the plan after this step"), doses(part));
        assertEquals(List.of("within 2 % of planned"), doses(planned(part)));
        AsBuilt beside = built("beside.asc");
        assertTrue(beside.surveyed() > 0);
        assertEquals(List.of("not surveyed"), doses(planned(beside)));
        assertEquals(List.of("not surveyed"), words(AsBuiltAnswers.COVERS, AsBuiltAnswers.covers(beside)));
    }

    /** The same survey where the plan has the doses that were found. */
    private static AsBuilt planned(AsBuilt survey) {
        return new AsBuilt(survey.step(), survey.surveyed(), survey.built(), survey.design(), survey.stations(),
                survey.stations(), survey.volumes(), survey.unseen(), survey.apart(), survey.findings());
    }

    private static List<String> doses(AsBuilt survey) {
        return words(AsBuiltAnswers.DOSES, AsBuiltAnswers.doses(survey));
    }

    /** What is said against the plan, each word once. */
    private static <T> List<String> words(AnswerTable<T> table, List<T> rows) {
        return rows.stream().map(table.only("against_plan").figures().get(0)::text).distinct().toList();
    }

    /** The western part of a surface alone. */
    private void writePart(String name, ElevationGrid grid) throws IOException {
        writePart(name, grid, 2);
    }

    /** One of so many parts of a surface, the westernmost. */
    private void writePart(String name, ElevationGrid grid, int parts) throws IOException {
        write("whole.asc", grid, 1);
        List<String> lines = Files.readAllLines(directory.resolve("whole.asc"));
        StringBuilder text = new StringBuilder();
        for (String line : lines) {
            String[] cells = line.split(" ");
            for (int i = cells.length / parts; cells.length > 2 && i < cells.length; i++) {
                cells[i] = "-9999";
            }
            text.append(String.join(" ", cells)).append('\n');
        }
        Files.writeString(directory.resolve(name), text);
    }

    private AsBuilt built(String survey) throws IOException {
        return AsBuilt.of(assess(survey), Progress.NONE).get(0);
    }

    private Assessment assess(String survey) throws IOException {
        ElevationGrid level = SamplePlans.ground((e, n) -> LEVEL);
        write("ground.asc", level, 1);
        Optional<WorkStep.AsBuilt> asBuilt = survey.isEmpty() ? Optional.empty() : Optional.of(new WorkStep.AsBuilt(
                Optional.of(survey), Optional.empty(), density, Optional.empty(),
                Optional.empty(), Annotations.NOTHING));
        Optional<WorkStep.AsBuilt> lies = ends.map(e -> new WorkStep.AsBuilt(Optional.empty(), Optional.empty(),
                OptionalDouble.empty(), Optional.of(end(e.get(0))), e.size() < 2 ? Optional.empty()
                        : Optional.of(end(e.get(1))), Annotations.NOTHING));
        Plan plan = SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(150, 100), 0))).withOrderOfWork(List.of(
                new WorkStep("lower", WorkStep.Kind.LOWER, "A", OptionalInt.empty(), OptionalDouble.empty(),
                        Optional.empty(), List.of(), lies, Annotations.NOTHING),
                new WorkStep("cover", WorkStep.Kind.COVER, "A", OptionalInt.empty(), upTo,
                        Optional.empty(), List.of("lower"), asBuilt, Annotations.NOTHING)));
        SiteGround ground = new SiteGround(GroundFiles.read(directory.resolve("ground.asc"),
                GroundFiles.Knowledge.NONE, Progress.NONE), directory);
        return new Assessments(new Responses(directory)).run(Assessments.Asked.EARTHWORKS,
                new Assessments.Site(plan, "test.json", ground), Progress.NONE);
    }

    private static WorkStep.SurveyedEnd end(Vec3 place) {
        return new WorkStep.SurveyedEnd(place.x(), place.y(), Double.isNaN(place.z()) ? OptionalDouble.empty()
                : OptionalDouble.of(place.z()), Annotations.NOTHING);
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
