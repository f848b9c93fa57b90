// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.SampleSite;
import bermwright.editor.edit.Move;
import bermwright.editor.edit.Part;
import bermwright.editor.run.Background;
import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.foundation.Progress;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.LiveSite;
import bermwright.site.assessment.SiteGround;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanValues;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AnswersTest {
    private static final long PATIENCE_SECONDS = 60;

    /** Stands in for the screen thread: messages wait here until the test takes them. */
    private final LinkedBlockingQueue<Runnable> screen = new LinkedBlockingQueue<>();
    private final Background background = new Background(screen::add, 3);
    private final Answers answers = new Answers(background, Assessments.standard());
    private SiteGround ground;

    @BeforeEach
    void open(@TempDir Path folder) {
        Path file = SampleSite.write(folder);
        ground = SiteGround.read(SampleSite.plan(), file, Progress.NONE);
        answers.plan(SampleSite.plan(), false);
        answers.ground(ground);
    }

    @AfterEach
    void close() {
        background.close();
    }

    private void deliverUntil(BooleanSupplier holds) throws InterruptedException {
        while (!holds.getAsBoolean()) {
            Runnable message = screen.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
            assertTrue(message != null, "a message comes");
            message.run();
        }
    }

    private static Plan moved(double east, double north) {
        return new Move(Part.hull("A"), east, north).applied(SampleSite.plan());
    }

    @Test
    void aDragIsFollowedByTheNewestPlanWithoutWaitingForEachOnTheWay() throws InterruptedException {
        for (int i = 1; i <= 20; i++) {
            answers.plan(moved(9.0 * i, 4.0 * i), true);
            assertFalse(answers.isClearanceFresh(moved(9.0 * i, 4.0 * i)), "the hand does not wait for clearance");
        }
        Plan last = moved(180, 80);
        deliverUntil(() -> answers.isClearanceFresh(last));
        List<Finding> whole = LiveSite.of(last, Optional.of(ground.grid()), Map.of()).findings();
        assertTrue(whole.stream().anyMatch(f -> f.level() == Finding.Level.REFUSE), "the hull lies in the keep-out");
        List<Finding> shown = answers.findings().stream().map(Numbered::finding).toList();
        assertTrue(shown.containsAll(whole), "clearance of the last plan is shown");
        deliverUntil(() -> answers.isLoweringFresh(last));
        assertEquals(2, last.hulls().stream().filter(h -> answers.laydown(h.id()).isPresent()).count());
    }

    @Test
    void lettingGoShowsClearanceOfThePlanAtOnce() {
        answers.plan(moved(50, 0), true);
        answers.plan(SampleSite.plan(), false);
        assertTrue(answers.isClearanceFresh(SampleSite.plan()));
        screen.forEach(Runnable::run);
        assertTrue(answers.isClearanceFresh(SampleSite.plan()), "what was on its way is dropped");
    }

    @Test
    void loweringAsPlannedComesFirstAndOtherLandingsFollow() throws InterruptedException {
        Plan spread = PlanValues.with(SampleSite.plan(), "hulls[0].landing_dispersion_m", "1.5");
        answers.plan(spread, true);
        deliverUntil(() -> answers.isLoweringFresh(spread));
        assertTrue(answers.laydown("A").orElseThrow().lowering().isPresent());
        deliverUntil(() -> answers.laydown("A").orElseThrow().disc().isPresent());
        assertTrue(answers.findings().stream().anyMatch(f -> f.finding().rule().id()
                .startsWith("lowering-dispersion")));
    }

    @Test
    void untilAnAnswerIsThereItSaysThatItIsNot() throws InterruptedException {
        Answers fresh = new Answers(background, Assessments.standard());
        Plan plan = SampleSite.plan();
        fresh.readingGround();
        fresh.plan(plan, false);
        assertEquals("Not checked yet: the ground is being read", fresh.unchecked(plan).orElseThrow());
        assertEquals("not worked out yet: the ground is being read", fresh.standing(plan).orElseThrow());
        fresh.noGround("There is no such file.");
        assertEquals("not worked out: the ground could not be read", fresh.standing(plan).orElseThrow());
        assertTrue(fresh.unchecked(plan).orElseThrow().startsWith("Not checked: the ground could not be read"));
    }

    @Test
    void aFindingOfThePlanBeforeIsStaleUntilItIsLookedForAgainAlsoAfterStop() throws InterruptedException {
        deliverUntil(() -> answers.isAssessmentFresh(SampleSite.plan()));
        List<Finding> before = answers.findings().stream().map(Numbered::finding).toList();
        assertTrue(before.stream().noneMatch(f -> answers.isStale(SampleSite.plan(), f)));
        Plan changed = PlanValues.with(SampleSite.plan(), "hulls[0].cover.thickness_m", "2.2");
        answers.plan(changed, false);
        assertEquals("of the plan before; being worked out", answers.standing(changed).orElseThrow());
        List<Finding> stale = answers.findings().stream().map(Numbered::finding)
                .filter(f -> answers.isStale(changed, f)).toList();
        assertTrue(stale.stream().anyMatch(f -> f.rule().id().startsWith("dose")), "dose is of the plan before");
        answers.stop();
        assertEquals("of the plan before; the work was stopped", answers.standing(changed).orElseThrow());
        assertTrue(answers.findings().stream().map(Numbered::finding).anyMatch(f -> answers.isStale(changed, f)));
        assertTrue(answers.unchecked(changed).orElseThrow().contains("the work was stopped"));
    }
}
