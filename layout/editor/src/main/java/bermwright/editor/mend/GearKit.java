// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.mend;

import bermwright.editor.edit.Part;
import bermwright.editor.edit.PlanEdit;
import bermwright.editor.edit.SetValue;
import bermwright.finding.Finding;
import bermwright.finding.LoweringRule;
import bermwright.finding.PairingRule;
import bermwright.foundation.InputException;
import bermwright.foundation.Progress;
import bermwright.lowering.choice.Suggestion;
import bermwright.site.assessment.LiveSite;
import bermwright.site.assessment.LoweringChoices;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanValues;
import bermwright.terrain.grid.ElevationGrid;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A kit of gear that lays a hull down where it stands: poles as {@code lower --suggest} finds them for the winches,
 * then every part of the load path strengthened until none refuses.
 *
 * @param edit  the edit that gives the hull the kit, in one step
 * @param words what the kit is, line by line
 * @param left  what still refuses the lowering with it; nothing where the kit will do
 */
public record GearKit(PlanEdit edit, List<String> words, List<Finding> left) {
    private static final int STEPS = 30;
    private static final double MOST_AT_ONCE = 3;
    /** What a part is given over what it lacks, so that the next load case does not refuse it again (1). */
    private static final double SPARE = 1.02;
    private static final List<String> KEPT = List.of("rate_deg_min", "wander_deg", "margin_m", "landing",
            "temperature");

    /** Copies the lists. */
    public GearKit {
        words = List.copyOf(words);
        left = List.copyOf(left);
    }

    /**
     * Looks for a kit.
     *
     * @param plan     the plan
     * @param id       id of the hull, which is in the plan
     * @param grid     the ground
     * @param progress told how far the search has come; may cancel it
     * @return the kit
     */
    public static GearKit of(Plan plan, String id, ElevationGrid grid, Progress progress) {
        Part part = Part.hull(id);
        String path = part.path(plan) + ".lowering";
        Hull hull = plan.hull(id).orElseThrow();
        progress.report(0, "taking usual proportions");
        ObjectNode pattern = new KitPattern(plan, hull).json();
        Plan now = PlanValues.with(plan, path, pattern.toString());
        for (String key : KEPT) {
            Optional<String> given = hull.lowering().isPresent() ? PlanValues.json(plan, path + "." + key)
                    : Optional.empty();
            if (given.isPresent()) {
                now = PlanValues.with(now, path + "." + key, given.get());
            }
        }
        progress.report(0.1, "looking for poles that fit the winches");
        now = suggested(now, id, path, grid);
        Set<String> hopeless = new HashSet<>();
        for (int i = 0; i < STEPS; i++) {
            progress.report(0.2 + 0.8 * i / STEPS, "strengthening what refuses");
            progress.check();
            List<Finding> weak = refusals(now, id, grid).stream().filter(f -> !hopeless.contains(f.id())).toList();
            if (weak.isEmpty()) {
                break;
            }
            for (Finding finding : weak) {
                Plan before = now;
                now = stronger(now, finding).or(() -> Remedies.of(before, grid, Optional.empty(), finding, progress)
                        .stream().findFirst().map(offer -> offer.edit().applied(before))).orElse(now);
                if (now == before) {
                    hopeless.add(finding.id());
                }
            }
        }
        String json = PlanValues.json(now, path).orElseThrow();
        return new GearKit(new SetValue(path, json, "Kit of gear for " + part.words()),
                words(now.hull(id).flatMap(Hull::lowering).orElseThrow()), refusals(now, id, grid));
    }

    /** The plan with the part that a finding is about stronger by what its factor of safety lacks. */
    private static Optional<Plan> stronger(Plan plan, Finding finding) {
        double measured = finding.measured().orElse(0);
        double limit = finding.limit().orElse(0);
        List<Lever> levers = Levers.of(plan, finding);
        if (finding.rule() != LoweringRule.LOWERING_FACTOR || levers.isEmpty() || !(measured > 0)) {
            return Optional.empty();
        }
        Figure figure = new Figure(plan, levers.get(0));
        double by = Math.min(MOST_AT_ONCE, Math.max(1, limit / measured) * SPARE);
        try {
            return figure.value().map(now -> figure.edit(figure.round(now * by)).applied(plan));
        } catch (InputException beyondRange) {
            return Optional.empty();
        }
    }

    private static List<Finding> refusals(Plan plan, String id, ElevationGrid grid) {
        List<Finding> refused = LiveSite.laydownAsPlanned(plan, plan.hull(id).orElseThrow(), grid).findings().stream()
                .filter(f -> f.level() == Finding.Level.REFUSE).toList();
        // Where the gear holds, it must also stand clear of the hull's own sweep.
        return !refused.isEmpty() ? refused : LiveSite.of(plan, Optional.of(grid), Map.of()).findings().stream()
                .filter(f -> f.rule() == PairingRule.GEAR_IN_OWN_SWEEP && f.subject().equals(id)).toList();
    }

    /** The plan with the lightest poles that keep the winch rating, where there are such. */
    private static Plan suggested(Plan plan, String id, String path, ElevationGrid grid) {
        Optional<Suggestion> best = LoweringChoices.of(plan, plan.hull(id).orElseThrow(), grid).suggestions()
                .flatMap(s -> s.of(Suggestion.Goal.LIGHTEST_POLES).or(() -> s.found().stream().findFirst()));
        if (best.isEmpty()) {
            return plan;
        }
        double shift = best.get().behindPivot() - number(plan, path + ".poles.behind_pivot_m");
        double winch = Math.max(best.get().behindPivot() + 1, number(plan, path + ".lines.winch.behind_pivot_m")
                + shift);
        try {
            return PlanValues.with(plan, Map.of(path + ".poles.behind_pivot_m",
                    up(best.get().behindPivot()), path + ".poles.height_m", up(best.get().height()),
                    path + ".poles.wall_mm", up(best.get().wall() * 1000), path + ".lines.winch.behind_pivot_m",
                    up(winch)));
        } catch (InputException beyond) {
            return plan;
        }
    }

    private static double number(Plan plan, String path) {
        return Double.parseDouble(PlanValues.json(plan, path).orElseThrow());
    }

    private static double up(double value) {
        return BigDecimal.valueOf(value).round(new MathContext(3, RoundingMode.CEILING)).doubleValue();
    }

    private static List<String> words(LoweringGear gear) {
        List<String> words = new ArrayList<>();
        gear.lines().ifPresent(l -> {
            words.add(l.count() + " lowering lines, breaking load " + kilo(l.line().breakingLoad().orElse(0))
                    + " kN, lugs " + Figure.number(l.lugFromBase()) + " m from the base");
            words.add("A winch for each, rated for " + kilo(l.winch().ratingEach().orElse(0)) + " kN, "
                    + Figure.number(l.winch().behindPivot()) + " m behind the pivot, with an anchor"
                    + l.winch().anchor().map(a -> " (" + a.kind().word() + ")").orElse(""));
        });
        gear.poles().ifPresent(p -> words.add("Poles " + Figure.number(p.height()) + " m high, "
                + Figure.number(p.behindPivot()) + " m behind the pivot, wall "
                + Figure.number(p.wall().orElse(0) * 1000) + " mm"));
        gear.stays().forEach(s -> words.add("Stays, breaking load " + kilo(s.breakingLoad().orElse(0)) + " kN"
                + s.anchor().map(a -> ", anchor: " + a.kind().word()).orElse("")));
        gear.pullOver().ifPresent(p -> words.add("A pull-over line with a winch of "
                + kilo(p.winchRating().orElse(0)) + " kN, anchored " + Figure.number(p.anchorAhead())
                + " m ahead"));
        gear.pivotHold().ifPresent(h -> words.add("A hold at the pivot: " + h.anchor().kind().word()));
        return words;
    }

    private static String kilo(double newton) {
        return Figure.number(newton / 1000);
    }
}
