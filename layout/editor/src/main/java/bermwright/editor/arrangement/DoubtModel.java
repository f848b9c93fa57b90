// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.arrangement;

import bermwright.editor.model.Workbench;
import bermwright.editor.run.Background;
import bermwright.report.drawing.Drawing;
import bermwright.report.sheet.DoubtSheets;
import bermwright.site.assessment.Assessment;
import bermwright.site.doubt.DoubtWords;
import bermwright.site.doubt.Doubts;
import bermwright.site.doubt.FigureDoubt;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;

/** What is in doubt about the plan on the bench: a first answer, then the last one. */
public final class DoubtModel extends SearchModel {
    private static final Doubts.Asked ASKED = new Doubts.Asked(1000, 1, 10);

    private final Workbench bench;
    private Optional<Doubts> known = Optional.empty();

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
        known = Optional.empty();
        if (best.isEmpty() || !best.get().plan().equals(bench.plan())) {
            tell("The plan is still being assessed: ask again when it is.");
            return;
        }
        start((heard, progress) -> Doubts.of(best.get(), ASKED,
                first -> heard.execute(() -> known = Optional.of(first)), progress), last -> {
            known = Optional.of(last);
            tell(last.figures().isEmpty() ? "Nothing was sampled: the plan has no cover on known ground, or nothing in"
                    + " it has a spread." : last.samples() + " samples. For a file, or for the"
                    + " reports: bermwright doubts PLAN --out DIR.");
        }, "It could not be worked out: ", () -> known.isEmpty() ? "Stopped before the first answer."
                : "Stopped. This is what the first " + Doubts.FIRST + " samples say.");
    }

    /**
     * What is in doubt, a sentence for each limit.
     *
     * @return the sentences; none before a first answer
     */
    @Override
    public List<String> lines() {
        return known.map(DoubtWords::of).orElse(List.of());
    }

    /**
     * Figures that vary, of which pictures can be drawn.
     *
     * @return their names, the one whose limit is most in doubt first; none before a first answer
     */
    public List<String> figures() {
        return varying().stream().map(f -> f.figure().name()).toList();
    }

    private List<FigureDoubt> varying() {
        List<FigureDoubt> all = new ArrayList<>(known.map(Doubts::figures).orElse(List.of()).stream()
                .filter(FigureDoubt::varies).toList());
        DoubtWords.mostInDoubt(all).ifPresent(first -> {
            all.remove(first);
            all.add(0, first);
        });
        return all;
    }

    /**
     * Pictures of a figure: how it may come out against its limit, and what decides it.
     *
     * @param name the figure's name
     * @return both drawings; none where there is no such figure
     */
    public List<Drawing> pictures(String name) {
        return varying().stream().filter(f -> f.figure().name().equals(name)).findFirst().map(f -> {
            DoubtSheets sheets = new DoubtSheets(known.orElseThrow());
            return List.of(sheets.distribution(f), sheets.shares(f));
        }).orElse(List.of());
    }
}
