// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.SampleSite;
import bermwright.editor.run.Background;
import bermwright.site.assessment.Assessments;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.locks.LockSupport;

/** The sample plan, open on a workbench without a window. */
final class OpenSample implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofMinutes(2);

    private final Background background = new Background(this::deliver, 1);
    private final Workbench bench;

    OpenSample(Path folder) {
        bench = new Workbench(PlanDocument.open(SampleSite.write(folder)),
                new Answers(background, Assessments.standard()));
    }

    /** One message at a time, as a screen has it, so that nothing is taken for settled while a message still runs. */
    private synchronized void deliver(Runnable message) {
        message.run();
    }

    private synchronized boolean isBusy() {
        return background.isBusy();
    }

    Workbench bench() {
        return bench;
    }

    /** Waits until every answer of now is delivered: what is counted before may change while it is counted. */
    void settle() {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (isBusy()) {
            if (System.nanoTime() > end) {
                throw new IllegalStateException("the answers are not there after " + PATIENCE.toSeconds() + " s");
            }
            LockSupport.parkNanos(Duration.ofMillis(5).toNanos());
        }
    }

    @Override
    public void close() {
        background.close();
        bench.document().close();
    }
}
