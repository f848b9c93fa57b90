// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.arrangement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.SampleSite;
import bermwright.editor.model.Answers;
import bermwright.editor.model.PlanDocument;
import bermwright.editor.model.Workbench;
import bermwright.editor.run.Background;
import bermwright.foundation.Progress;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.SiteGround;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanValues;
import java.nio.file.Path;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SearchModelsTest {
    private static final long PATIENCE_SECONDS = 60;

    /** Stands in for the screen thread: messages wait here until the test takes them. */
    private final LinkedBlockingQueue<Runnable> screen = new LinkedBlockingQueue<>();
    private final Background background = new Background(screen::add, 2);
    private Workbench bench;
    private Path file;
    private int shown;

    @BeforeEach
    void open(@TempDir Path folder) {
        file = SampleSite.write(folder);
        bench = new Workbench(PlanDocument.open(file), new Answers(background, Assessments.standard()));
    }

    @AfterEach
    void close() {
        background.close();
        bench.document().close();
    }

    private void ground() {
        bench.answers().ground(SiteGround.read(bench.plan(), file, Progress.NONE));
    }

    private ArrangeModel model() {
        return new ArrangeModel(bench, background, screen::add, () -> shown++);
    }

    @Test
    void saysWhyItCannotBegin() {
        ArrangeModel model = model();
        model.begin(false);
        assertEquals("There is no ground yet: hulls can't be arranged.", model.words());
        ground();
        Plan held = bench.plan();
        for (int i = 0; i < held.hulls().size(); i++) {
            held = PlanValues.with(held, "hulls[" + i + "].held", "true");
        }
        bench.make("hold all", held);
        model.begin(false);
        assertTrue(model.words().startsWith("No hull may move"), model.words());
        assertFalse(model.isBusy());
        DoubtModel doubts = new DoubtModel(bench, background, screen::add, () -> shown++);
        doubts.begin();
        assertEquals("The plan is still being assessed: ask again when it is.", doubts.words());
    }

    @Test
    void showsHowFarItHasComeAndStopsWhenAsked() throws InterruptedException {
        ground();
        ArrangeModel model = model();
        model.begin(false);
        while (model.share() <= 0) {
            Runnable message = screen.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
            assertTrue(message != null, "a message comes");
            message.run();
        }
        assertTrue(model.isBusy() && shown > 0);
        model.stop();
        assertFalse(model.isBusy());
        assertEquals("Stopped; nothing was found yet.", model.words());
        bench.make("another title", PlanValues.with(bench.plan(), "title", "\"changed\""));
        assertFalse(model.take(0));
        assertTrue(model.words().startsWith("The plan was changed since"), model.words());
    }
}
