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
public final class DoubtModel {
    private static final String LANE = "doubts";
    private static final Doubts.Asked ASKED = new Doubts.Asked(1000, 1, 10);

    private final Workbench bench;
    private final Background background;
    private final Executor screen;
    private final Runnable changed;
    private List<String> lines = List.of();
    private double share;
    private String words = "";
    private int run;

    /**
     * Doubts that were not asked yet.
     *
     * @param bench      holds the plan and its assessment
     * @param background where it runs
     * @param screen     what tells the first answer, the same thread that {@code background} tells on
     * @param changed    run whenever something is to be shown anew
     */
    public DoubtModel(Workbench bench, Background background, Executor screen, Runnable changed) {
        this.bench = bench;
        this.background = background;
        this.screen = screen;
        this.changed = changed;
    }

    /** Begins, for the plan as it was assessed last; what runs is given up. */
    public void begin() {
        Optional<Assessment> best = bench.answers().assessment();
        lines = List.of();
        share = 0;
        if (best.isEmpty() || !best.get().plan().equals(bench.plan())) {
            tell("The plan is still being assessed: ask again when it is.");
            return;
        }
        int mine = ++run;
        background.start(LANE, progress -> Doubts.of(best.get(), ASKED, first -> screen.execute(() -> {
            if (mine == run && background.isBusy(LANE)) {
                lines = DoubtWords.of(first);
                changed.run();
            }
        }), progress), new Background.Listener<>(last -> {
            lines = DoubtWords.of(last);
            tell(last.figures().isEmpty() ? "Nothing was sampled: the plan has no cover on known ground, or nothing in"
                    + " it has a spread." : last.samples() + " samples. Shares and drawings: bermwright doubts PLAN"
                    + " --out DIR.");
        }, failure -> tell("It could not be worked out: " + failure.getMessage()), step -> {
            share = step.share();
            tell(step.words());
        }, () -> tell(lines.isEmpty() ? "Stopped before the first answer."
                : "Stopped. This is what the first " + Doubts.FIRST + " samples say.")));
    }

    /** Stops; a first answer is kept. */
    public void stop() {
        background.cancel(LANE);
    }

    /**
     * Whether it runs.
     *
     * @return true until it ended or was stopped
     */
    public boolean isBusy() {
        return background.isBusy(LANE);
    }

    /**
     * How far it has come.
     *
     * @return share done (1), 0 to 1
     */
    public double share() {
        return share;
    }

    /**
     * What it does, or how it ended.
     *
     * @return in words; nothing before it began
     */
    public String words() {
        return words;
    }

    /**
     * What is in doubt, a sentence for each limit.
     *
     * @return the sentences; none before a first answer
     */
    public List<String> lines() {
        return lines;
    }

    private void tell(String text) {
        words = text;
        changed.run();
    }
}
