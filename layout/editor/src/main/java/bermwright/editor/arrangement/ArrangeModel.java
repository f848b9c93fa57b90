// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.arrangement;

import bermwright.editor.model.Workbench;
import bermwright.editor.run.Background;
import bermwright.site.arrangement.Arrangement;
import bermwright.site.arrangement.ArrangementSearch;
import bermwright.site.arrangement.Figures;
import bermwright.site.assessment.ArrangeSite;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.SiteGround;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;

/** A search for arrangements of the plan on the bench: what it found so far, how far it has come, and taking one. */
public final class ArrangeModel extends SearchModel {
    private static final int ENOUGH = 5;
    private static final int LEAST_STEPS = 6;
    private static final int MOST_STEPS = 40;

    private final Workbench bench;
    private final List<Arrangement> found = new ArrayList<>();
    private Optional<Plan> searched = Optional.empty();

    /**
     * A search that has not begun.
     *
     * @param bench      holds the plan and its ground
     * @param background where it runs
     * @param screen     what tells of arrangements as they are found, the same thread that {@code background} tells on
     * @param changed    run whenever something is to be shown anew
     */
    public ArrangeModel(Workbench bench, Background background, Executor screen, Runnable changed) {
        super("arrange", background, screen, changed);
        this.bench = bench;
    }

    /**
     * Begins, for the plan as it is now; a search that runs is given up.
     *
     * @param sizes whether covers are sized too
     */
    public void begin(boolean sizes) {
        Plan plan = bench.plan();
        Optional<SiteGround> ground = bench.answers().ground();
        found.clear();
        searched = Optional.empty();
        if (ground.isEmpty()) {
            tell("There is no ground yet: hulls can't be arranged.");
            return;
        } else if (ArrangementSearch.movable(plan, Set.of()).isEmpty()) {
            tell("No hull may move: all are held, or land on a pad of their own, or there is none.");
            return;
        }
        searched = Optional.of(plan);
        ArrangeSite site = new ArrangeSite(Assessments.standard(), ground.get(), "plan");
        start((heard, progress) -> site.run(plan, new ArrangeSite.Request(Set.of(), 1, sizes), new Told(heard),
                progress), all -> {
                    found.clear();
                    found.addAll(all.arrangements());
                    tell(found.isEmpty() ? "No arrangement without refusal was found. Widen the plan's area"
                            + " to arrange within, or free a held hull."
                            : found.size() + " found, none better in all than another.");
                }, "It could not be searched: ", () -> found.isEmpty() ? "Stopped; nothing was found yet."
                        : "Stopped. What was found until then can be taken; warnings of covers"
                                + " while they rise are not counted yet.");
    }

    /** Ends by number, and hands what it finds to the screen. */
    private final class Told implements ArrangementSearch.Course {
        private final Executor heard;

        Told(Executor heard) {
            this.heard = heard;
        }

        @Override
        public boolean goesOn(int steps, int known) {
            return steps < LEAST_STEPS || known < ENOUGH && steps < MOST_STEPS;
        }

        @Override
        public void found(Arrangement arrangement) {
            heard.execute(() -> {
                found.removeIf(f -> f.figures().isDominatedBy(arrangement.figures()));
                if (found.stream().noneMatch(f -> arrangement.figures().isDominatedBy(f.figures()))) {
                    found.add(arrangement);
                }
            });
        }
    }

    /**
     * What was found, a line each, with what it gives up against the best of the others.
     *
     * @return the lines, in the order of {@link #take}
     */
    @Override
    public List<String> lines() {
        List<Figures> all = found.stream().map(Arrangement::figures).toList();
        return all.stream().map(f -> String.format(Locale.ROOT, "%s%.0f m\u00b3 of soil, %d warning%s%s. Gives up: %s.",
                f.hours().isPresent() ? String.format(Locale.ROOT, "%.0f machine hours, ", f.hours().getAsDouble())
                        : "", f.soil(), f.warnings(), f.warnings() == 1 ? "" : "s", f.tunnels() > 0
                        ? String.format(Locale.ROOT, ", %.1f m of tunnels", f.tunnels()) : "", f.givenUp(all)))
                .toList();
    }

    /**
     * Takes an arrangement as one step that can be undone. Not where the plan was changed since it was searched for.
     *
     * @param place its place among the lines
     * @return whether it was taken
     */
    public boolean take(int place) {
        if (searched.isEmpty() || !searched.get().equals(bench.plan())) {
            tell("The plan was changed since: search again, or undo the change first.");
            return false;
        }
        Plan taken = found.get(place).plan();
        boolean made = bench.make("Arrange the hulls", taken);
        searched = made ? Optional.of(bench.plan()) : searched;
        return made;
    }
}
