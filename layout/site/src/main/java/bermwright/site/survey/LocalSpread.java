// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.foundation.Progress;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/** Scores blocks on the processors of this machine; memory is that of one block with its margin for each. */
public final class LocalSpread implements BlockSpread {
    @Override
    public void score(SurveyOrder order, Consumer<ScoredBlock> sink, Progress progress) {
        int workers = Math.min(Runtime.getRuntime().availableProcessors(), order.blocks());
        AtomicInteger next = new AtomicInteger();
        AtomicInteger done = new AtomicInteger();
        try (SurveySetup setup = SurveySetup.open(order, Progress.NONE)) {
            IntStream.range(0, workers).parallel().forEach(w -> {
                BlockWorker worker = BlockWorker.of(order, setup);
                for (int i = next.getAndIncrement(); i < order.blocks(); i = next.getAndIncrement()) {
                    progress.check();
                    ScoredBlock block = worker.score(i);
                    synchronized (sink) {
                        sink.accept(block);
                    }
                    progress.report((double) done.incrementAndGet() / order.blocks(), "scoring cells and headings");
                }
            });
        }
    }

    @Override
    public String words() {
        return Runtime.getRuntime().availableProcessors() + " processors of this machine";
    }
}
