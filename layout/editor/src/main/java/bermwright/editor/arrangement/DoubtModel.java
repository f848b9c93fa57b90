// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.arrangement;

import bermwright.editor.model.Workbench;
import bermwright.editor.run.Background;
import bermwright.site.assessment.Assessment;
import bermwright.site.doubt.DoubtWords;
import bermwright.site.doubt.Doubts;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;

/** What is in doubt about the plan on the bench: a first answer, then the last one. */
public final class DoubtModel extends SearchModel {
    private static final Doubts.Asked ASKED = new Doubts.Asked(1000, 1, 10);

    private final Workbench bench;
    private List<String> lines = List.of();

    /**
     * Doubts that were not asked yet.
     *
     * @param bench      holds the plan and its assessment
     * @param background where it runs
     * @param screen     what tells the first answer, the same thread that {@code background} tells on
     * @param changed    run whenever something is to be shown anew
     */
    public DoubtModel(Workbench bench, Background background, Executor screen, Runnable changed) {
        super("doubts", background, screen, changed);
        this.bench = bench;
    }

    /** Begins, for the plan as it was assessed last; what runs is given up. */
    public void begin() {
        Optional<Assessment> best = bench.answers().assessment();
        lines = List.of();
        if (best.isEmpty() || !best.get().plan().equals(bench.plan())) {
            tell("The plan is still being assessed: ask again when it is.");
            return;
        }
        start((heard, progress) -> Doubts.of(best.get(), ASKED,
                first -> heard.execute(() -> lines = DoubtWords.of(first)), progress), last -> {
            lines = DoubtWords.of(last);
            tell(last.figures().isEmpty() ? "Nothing was sampled: the plan has no cover on known ground, or nothing in"
                    + " it has a spread." : last.samples() + " samples. Shares and drawings: bermwright doubts PLAN"
                    + " --out DIR.");
        }, "It could not be worked out: ", () -> lines.isEmpty() ? "Stopped before the first answer."
                : "Stopped. This is what the first " + Doubts.FIRST + " samples say.");
    }

    /**
     * What is in doubt, a sentence for each limit.
     *
     * @return the sentences; none before a first answer
     */
    @Override
    public List<String> lines() {
        return lines;
    }
}
