// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.run.Background;
import bermwright.finding.Finding;
import bermwright.site.assessment.LiveSite;
import bermwright.site.laydown.Laydown;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Rules;
import bermwright.terrain.grid.ElevationGrid;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Lowering of each hull as the plan is now: as planned first, all landings inside the dispersion once the hand rests;
 * only hulls that changed are worked out again.
 */
final class LoweringAnswers {
    private final Background background;
    private final Runnable changed;
    private final Consumer<Throwable> failed;
    private Map<String, Laid> laid = Map.of();
    private Optional<Plan> waiting = Optional.empty();

    /** An answer about lowering, what it was worked out from, and whether landings beside the planned were tried. */
    private record Laid(Hull hull, GroundPlan soil, Rules rules, Laydown laydown, boolean isWhole) {
        private boolean holdsFor(Plan plan, Hull other) {
            return hull.equals(other) && soil.equals(plan.ground()) && rules.equals(plan.rules());
        }
    }

    LoweringAnswers(Background background, Runnable changed, Consumer<Throwable> failed) {
        this.background = background;
        this.changed = changed;
        this.failed = failed;
    }

    /** Forgets all answers, as another ground asks for. */
    void forget() {
        background.cancel(Answers.LOWERING);
        background.cancel(Answers.LANDINGS);
        laid = Map.of();
        waiting = Optional.empty();
    }

    /** Takes up a plan. */
    void follow(Plan plan, ElevationGrid grid) {
        if (isFresh(plan)) {
            waiting = Optional.empty();
            tryLandings(plan, grid);
            return;
        }
        background.cancel(Answers.LANDINGS);
        if (background.isBusy(Answers.LOWERING)) {
            // The newest plan is taken up when the running one is done, so that a drag sees answers on the way.
            waiting = Optional.of(plan);
            return;
        }
        waiting = Optional.empty();
        Map<String, Laid> known = laid;
        background.start(Answers.LOWERING, progress -> lowered(plan, grid, known), Background.Listener.of(answer -> {
            laid = answer;
            waiting.ifPresentOrElse(next -> follow(next, grid), () -> tryLandings(plan, grid));
            changed.run();
        }, failed));
    }

    /** Tries landings all over the dispersion of each hull for which only the planned one was tried. */
    private void tryLandings(Plan plan, ElevationGrid grid) {
        if (background.isBusy(Answers.LANDINGS) || laid.values().stream().allMatch(Laid::isWhole)) {
            return;
        }
        Map<String, Laid> known = laid;
        background.start(Answers.LANDINGS, progress -> {
            Map<String, Laid> all = new LinkedHashMap<>();
            for (Laid quick : known.values()) {
                progress.check();
                all.put(quick.hull.id(), quick.isWhole ? quick : new Laid(quick.hull, quick.soil, quick.rules,
                        LiveSite.laydown(plan, quick.hull, grid), true));
            }
            return all;
        }, Background.Listener.of(answer -> {
            if (laid == known) {
                laid = answer;
                changed.run();
            }
        }, failed));
    }

    private static Map<String, Laid> lowered(Plan plan, ElevationGrid grid, Map<String, Laid> known) {
        Map<String, Laid> all = new LinkedHashMap<>();
        for (Hull hull : plan.hulls()) {
            Laid before = known.get(hull.id());
            all.put(hull.id(), before != null && before.holdsFor(plan, hull) ? before
                    : new Laid(hull, plan.ground(), plan.rules(), LiveSite.laydownAsPlanned(plan, hull, grid),
                            hull.landingDispersion() == 0));
        }
        return all;
    }

    /** Whether the answers are of a plan. */
    boolean isFresh(Plan plan) {
        return laid.size() == plan.hulls().size() && plan.hulls().stream()
                .allMatch(h -> laid.containsKey(h.id()) && laid.get(h.id()).holdsFor(plan, h));
    }

    /** How a hull comes to lie; empty where there is no answer yet. */
    Optional<Laydown> laydown(String hull) {
        return Optional.ofNullable(laid.get(hull)).map(Laid::laydown);
    }

    /** What was found about lowering. */
    List<Finding> findings() {
        return laid.values().stream().flatMap(l -> l.laydown.findings().stream()).toList();
    }

    /** Whether a finding is of an earlier plan; empty where it is not one of these. */
    Optional<Boolean> isStale(Plan plan, Finding finding) {
        return laid.values().stream().filter(l -> l.laydown.findings().contains(finding)).findFirst()
                .map(l -> plan.hull(l.hull.id()).filter(h -> l.holdsFor(plan, h)).isEmpty());
    }
}
