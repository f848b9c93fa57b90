// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.run.Background;
import bermwright.site.assessment.LiveSite;
import bermwright.site.finding.Finding;
import bermwright.site.laydown.Laydown;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Rules;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Answers to the plan as it is now: clearance at once, lowering a blink later, cover, dose and soil when they are
 * worked out; until then the earlier ones are shown and said to be of an earlier plan.
 */
public final class Answers {
    /** The lane of lowering. */
    public static final String LOWERING = "lowering";

    private final Background background;
    private final Signal changed = new Signal();
    private Optional<SiteGround> ground = Optional.empty();
    private Optional<Live> live = Optional.empty();
    private Map<String, Laid> laid = Map.of();
    private Optional<Plan> waiting = Optional.empty();
    private List<NumberedFinding> findings = List.of();

    private record Live(Plan plan, LiveSite site, MapFigures figures) {
    }

    /** An answer about lowering and what it was worked out from. */
    private record Laid(Hull hull, GroundPlan soil, Rules rules, Laydown laydown) {
        private boolean holdsFor(Plan plan, Hull other) {
            return hull.equals(other) && soil.equals(plan.ground()) && rules.equals(plan.rules());
        }
    }

    /**
     * Answers worked out in the background.
     *
     * @param background where
     */
    public Answers(Background background) {
        this.background = background;
    }

    /**
     * Raised when an answer came in.
     *
     * @return the signal
     */
    public Signal changed() {
        return changed;
    }

    /**
     * Takes the ground.
     *
     * @param site the ground
     */
    public void ground(SiteGround site) {
        ground = Optional.of(site);
        Optional<Plan> plan = live.map(Live::plan);
        live = Optional.empty();
        laid = Map.of();
        plan.ifPresent(p -> plan(p, false));
        changed.raise();
    }

    /**
     * The ground.
     *
     * @return the ground, empty until it was read
     */
    public Optional<SiteGround> ground() {
        return ground;
    }

    /**
     * Takes the plan to answer for.
     *
     * @param plan    the plan
     * @param isTrial whether the hand still holds it
     */
    public void plan(Plan plan, boolean isTrial) {
        if (live.filter(l -> l.plan.equals(plan)).isEmpty()) {
            Optional<ElevationGrid> grid = ground.map(SiteGround::grid);
            LiveSite site = live.map(l -> l.site.with(plan)).orElseGet(() -> LiveSite.of(plan, grid, Map.of()));
            MapFigures figures = live.map(l -> l.figures.with(site)).orElseGet(() -> MapFigures.of(site));
            live = Optional.of(new Live(plan, site, figures));
        }
        ground.ifPresent(site -> lower(plan, site.grid()));
        gather();
    }

    private void lower(Plan plan, ElevationGrid grid) {
        if (isLoweringFresh(plan)) {
            background.cancel(LOWERING);
            waiting = Optional.empty();
            return;
        }
        if (background.isBusy(LOWERING)) {
            // The newest plan is taken up when the running one is done, so that a drag sees answers on the way.
            waiting = Optional.of(plan);
            return;
        }
        waiting = Optional.empty();
        Map<String, Laid> known = laid;
        background.start(LOWERING, progress -> lowered(plan, grid, known), Background.Listener.of(answer -> {
            laid = answer;
            gather();
            changed.raise();
            waiting.ifPresent(next -> lower(next, grid));
        }, failure -> {
            laid = Map.of();
            failed("Lowering could not be worked out", failure);
        }));
    }

    private static Map<String, Laid> lowered(Plan plan, ElevationGrid grid, Map<String, Laid> known) {
        Map<String, Laid> all = new LinkedHashMap<>();
        for (Hull hull : plan.hulls()) {
            Laid before = known.get(hull.id());
            all.put(hull.id(), before != null && before.holdsFor(plan, hull) ? before
                    : new Laid(hull, plan.ground(), plan.rules(), LiveSite.laydown(plan, hull, grid)));
        }
        return all;
    }

    private void failed(String what, Throwable failure) {
        failures.put(what, String.valueOf(failure.getMessage()));
        changed.raise();
    }

    private final Map<String, String> failures = new LinkedHashMap<>();

    private void gather() {
        List<Finding> all = new ArrayList<>();
        live.ifPresent(l -> all.addAll(l.site.findings()));
        laid.values().forEach(l -> all.addAll(l.laydown.findings()));
        findings = NumberedFinding.of(all);
    }

    /**
     * Whether the answers about lowering are of a plan.
     *
     * @param plan the plan
     * @return true where they are
     */
    public boolean isLoweringFresh(Plan plan) {
        return laid.size() == plan.hulls().size() && plan.hulls().stream()
                .allMatch(h -> laid.containsKey(h.id()) && laid.get(h.id()).holdsFor(plan, h));
    }

    /**
     * How a hull comes to lie.
     *
     * @param hull its id
     * @return the answer, empty where there is none yet
     */
    public Optional<Laydown> laydown(String hull) {
        return Optional.ofNullable(laid.get(hull)).map(Laid::laydown);
    }

    /**
     * The findings, the worst first, numbered.
     *
     * @return the findings
     */
    public List<NumberedFinding> findings() {
        return findings;
    }

    /**
     * What the map draws.
     *
     * @return the figures in the order they are drawn
     */
    public List<MapFigure> figures() {
        return live.map(l -> l.figures.figures()).orElse(List.of());
    }

    /**
     * What could not be worked out.
     *
     * @return what failed and why
     */
    public Map<String, String> failures() {
        return Map.copyOf(failures);
    }
}
