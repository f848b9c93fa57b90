// SPDX-License-Identifier: Apache-2.0
package bermwright.site.doubt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.shielding.dose.Band;
import bermwright.site.SamplePlans;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.SiteGround;
import bermwright.site.burial.HullBurial;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import bermwright.site.planfile.PlanValues;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DoubtsTest {
    private static final int SAMPLES = 48;
    private static final Doubts.Asked ASKED = new Doubts.Asked(SAMPLES, 5, 0);

    @TempDir
    static Path folder;

    private static Doubts doubts;

    @BeforeAll
    static void sample() throws IOException {
        doubts = of(SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(60, 60), 90))));
    }

    private static Assessment assessed(Plan plan) throws IOException {
        StringBuilder ground = new StringBuilder("ncols 80\nnrows 80\nxllcenter 0\nyllcenter 0\ncellsize 2\n");
        ground.append(("0 ".repeat(80) + "\n").repeat(80));
        Files.writeString(folder.resolve("ground.asc"), ground);
        Plan placed = PlanValues.with(plan, "ground.elevation_file", "\"ground.asc\"");
        Path file = folder.resolve("plan.json");
        return Assessments.standard().run(Assessments.Asked.SHAPES, new Assessments.Site(placed, "plan",
                SiteGround.read(placed, file, Progress.NONE)), Progress.NONE);
    }

    private static Doubts of(Plan plan) throws IOException {
        return Doubts.of(assessed(plan), ASKED, first -> { }, Progress.NONE);
    }

    private static FigureDoubt figure(Doubts all, String id) {
        return all.figures().stream().filter(f -> f.figure().id().equals(id)).findFirst().orElseThrow();
    }

    private static double share(FigureDoubt figure, String group) {
        return figure.shares().stream().filter(s -> s.group().equals(group)).mapToDouble(FigureDoubt.GroupShare::total)
                .findFirst().orElse(0);
    }

    @Test
    void whatAnInputDoesNotTouchItHasNoShareIn() {
        FigureDoubt mound = figure(doubts, "mound-A");
        assertTrue(share(mound, "friction angle") > 0.3, mound.shares().toString());
        assertEquals(0, share(mound, "centre of mass of A"), 0.01);
        FigureDoubt lowering = figure(doubts, "lowering-A");
        assertTrue(share(lowering, "friction angle") > 0.3, lowering.shares().toString());
        assertEquals(0, share(lowering, "density in the haulers"), 0.01);
        FigureDoubt shell = figure(doubts, "shell-A");
        assertEquals(1, share(shell, "density of placed soil"), 0.02);
        assertTrue(shell.leftOut() < 0.01, "left out " + shell.leftOut());
        assertEquals(0, doubts.failed());
    }

    @Test
    void aSeedRepeatsItAndTheBestValueLiesAmongTheSamples() throws IOException {
        Doubts again = of(SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(60, 60), 90))));
        assertEquals(doubts.figures(), again.figures());
        assertEquals(doubts.findings(), again.findings());
        for (FigureDoubt figure : doubts.figures()) {
            assertTrue(figure.at(0) <= figure.best() + 1e-9 && figure.best() <= figure.at(1) + 1e-9,
                    figure.figure().id());
        }
    }

    @Test
    void aSpreadStatedBesideANumberIsAnInputAndNoneIsNone() throws IOException {
        String text = PlanFiles.text(SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(60, 60), 90))));
        Plan stated = PlanFiles.read(text.replaceFirst("\"mass_t\": 71", "\"mass_t\": 71, \"mass_spread_t\": 8"), "p");
        Plan sure = PlanValues.with(stated, Map.of("hulls[0].centre_of_mass_spread_m", 0.0));
        List<UncertainInput> inputs = InputsOfPlan.of(assessed(sure));
        assertTrue(inputs.stream().anyMatch(i -> i.group().equals("hulls[0].mass_t") && i.spread() == 8
                && i.source().equals("plan")), inputs.toString());
        assertFalse(inputs.stream().anyMatch(i -> i.group().startsWith("centre of mass")));
        SampledSite site = new SampledSite(assessed(sure), inputs);
        double[] heavier = new double[inputs.size()];
        heavier[0] = 2;
        assertEquals(87_000, site.plan(heavier).hulls().get(0).mass(), 1e-6);
        assertTrue(value(site.at(heavier), "lowering-A") < value(site.at(new double[inputs.size()]), "lowering-A"));
    }

    /** A thinner or thicker cover is built anew: one standard deviation off gives what the full assessment gives. */
    @Test
    void aSpreadOfWhatShapesTheSiteMovesFiguresByFullAssessments() throws IOException {
        String text = PlanFiles.text(SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(60, 60), 90))));
        Plan stated = PlanFiles.read(text.replaceFirst("\"thickness_m\": ([0-9.]+)",
                "\"thickness_m\": $1, \"thickness_spread_m\": 0.3"), "p");
        Assessment best = assessed(stated);
        List<UncertainInput> inputs = InputsOfPlan.of(best);
        assertEquals(UncertainInput.Kind.SHAPE, inputs.get(0).kind());
        SampledSite site = new SampledSite(best, inputs);
        site.learn(Progress.NONE);
        double[] thicker = new double[inputs.size()];
        thicker[0] = 1;
        SampledSite.Outcome none = site.at(new double[inputs.size()]);
        double shell = value(site.at(thicker), "shell-A");
        Assessment full = assessed(PlanValues.with(stated, Map.of("hulls[0].cover.thickness_m", inputs.get(0).value()
                + 0.3)));
        assertTrue(shell < 0.99 * value(none, "shell-A"), shell + " against " + value(none, "shell-A"));
        assertEquals(HullBurial.of(full.plan(), full.cover().orElseThrow()).get(0).shellFactor(), shell, 1e-3 * shell);
        assertEquals(2, new FullResponse.Sides(4, 2, 1).moved(4, 1), 1e-12);
        assertEquals(16, new FullResponse.Sides(4, 2, 1).moved(4, -2), 1e-12);
        assertEquals(3, new FullResponse.Sides(0, 0, 1.5).moved(0, 2), 1e-12);
    }

    private static double value(SampledSite.Outcome outcome, String id) {
        return outcome.figures().entrySet().stream().filter(e -> e.getKey().id().equals(id)).findFirst().orElseThrow()
                .getValue();
    }

    /** What hardly hangs on heights is the same in full: nothing was lost by what quick samples keep. */
    @Test
    void samplesAssessedInFullAgreeWithQuickOnes() throws IOException {
        Doubts some = Doubts.of(assessed(SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(60, 60), 90)))),
                new Doubts.Asked(20, 5, 2), first -> { }, Progress.NONE);
        assertEquals(2, some.inFull().samples());
        assertEquals(0, difference(some, "shell-A"), 1e-3);
        assertTrue(difference(some, "lowering-A") < 0.05, "lowering " + difference(some, "lowering-A"));
    }

    private static double difference(Doubts doubts, String figure) {
        return doubts.inFull().confirmed().stream().filter(c -> c.figure().id().equals(figure)).findFirst()
                .orElseThrow().greatest();
    }

    @Test
    void itStopsWhenAsked() throws IOException {
        Assessment best = assessed(SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(60, 60), 90))));
        assertThrows(CancellationException.class, () -> Doubts.of(best, ASKED, first -> { }, new Progress() {
            @Override
            public void report(double share, String step) {
            }

            @Override
            public boolean isCancelled() {
                return true;
            }
        }));
    }

    /** A dose that one band alone makes uncertain has that band's ends as its 16th and 84th percentile. */
    @Test
    void lowAndHighAgreeWithTheBandWhereOnlyItVaries() {
        Band band = new Band(0.7, 1.9);
        double[] doses = Arrays.stream(QuasiRandom.normal(1, 4000, 9)).mapToDouble(z -> 20
                * DoseSample.factor(band, z[0])).toArray();
        FigureDoubt dose = new Decider(List.of(input("dose model", false)), QuasiRandom.normal(1, 4000, 9), 9).of(
                new Figure("dose", "dose", "mSv", OptionalDouble.empty(), false), 20, doses);
        assertEquals(20 * 0.7, dose.at(0.1587), 0.05);
        assertEquals(20 * 1.9, dose.at(0.8413), 0.15);
        assertEquals(20, dose.at(0.5), 0.05);
        assertEquals(1, dose.shares().get(0).first(), 1e-9);
    }

    /** Of x + 2 y > 0 the sign of x tells the right verdict in 1/2 + atan(1/2) / pi of all cases, that of y more. */
    @Test
    void findingOutIsWorthWhatTheClosedFormSays() {
        double[][] off = QuasiRandom.normal(2, 600, 4);
        double[] sums = Arrays.stream(off).mapToDouble(z -> z[0] + 2 * z[1]).toArray();
        FigureDoubt sum = new Decider(List.of(input("x", false), input("y", false)), off, 4).of(new Figure("sum", "sum",
                "1", OptionalDouble.of(0), true), 0, sums);
        assertEquals(0.5, sum.kept(), 0.02);
        assertEquals(0.8, share(sum, "y"), 1e-6);
        assertEquals(0.5 + Math.atan(2) / Math.PI, worth(sum, "measuring y"), 0.03);
        assertEquals(0.5 + Math.atan(0.5) / Math.PI, worth(sum, "measuring x"), 0.03);
        String words = DoubtWords.of(sum);
        assertTrue(words.startsWith("The chance that the requirement of at least 0 on sum is kept is 0."), words);
        assertTrue(words.contains("80 % (\u00b1 1) from y, 20 % (\u00b1 1) from x"), words);
    }

    private static double worth(FigureDoubt figure, String finding) {
        return figure.worth().stream().filter(w -> w.finding().equals(finding)).findFirst().orElseThrow().then();
    }

    private static UncertainInput input(String name, boolean sampled) {
        return new UncertainInput(name, UncertainInput.Kind.COSMIC_MODEL, 1, 0, "1", "invented for this test",
                new UncertainInput.FindingOut("measuring " + name, sampled), List.of());
    }
}
