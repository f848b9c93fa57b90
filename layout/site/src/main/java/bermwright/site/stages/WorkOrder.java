// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import bermwright.finding.Finding;
import bermwright.finding.Rule;
import bermwright.finding.WorkRule;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.Plan;
import bermwright.site.plan.WorkStep;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * The steps of the work in an order that lets every step come after those it needs.
 *
 * <p>Besides what a plan states, a hull lies before it is covered or closed, lifts rise one after another, and ground
 * is shaped before a hull is laid on it. Steps keep the plan's order where nothing forbids it.
 *
 * @param steps    the steps in order
 * @param before   ids of the steps that must come before each step, stated and implied
 * @param findings circles, unknown steps and steps that are missing
 */
record WorkOrder(List<WorkStep> steps, Map<String, Set<String>> before, List<Finding> findings) {
    static WorkOrder of(Plan plan, Map<String, Double> coverTops) {
        List<WorkStep> stated = plan.orderOfWork().isEmpty() ? usual(plan, coverTops) : plan.orderOfWork();
        List<Finding> findings = new ArrayList<>();
        Map<String, WorkStep> byId = new LinkedHashMap<>();
        for (WorkStep step : stated) {
            if (byId.putIfAbsent(step.id(), step) != null) {
                findings.add(finding(WorkRule.ORDER_STEP_TWICE, Finding.Level.REFUSE, step.id(),
                        "The order of work has two steps with the id %s.".formatted(step.id())));
            }
        }
        Map<String, Set<String>> before = new LinkedHashMap<>();
        for (WorkStep step : byId.values()) {
            before.put(step.id(), before(plan, byId, step, findings));
        }
        targets(plan, byId, findings);
        return new WorkOrder(sorted(byId, before, findings), before, findings);
    }

    /** The usual order where the plan states none: shape the ground, then lower and cover hull after hull. */
    private static List<WorkStep> usual(Plan plan, Map<String, Double> coverTops) {
        List<WorkStep> steps = new ArrayList<>();
        plan.preparations().forEach(p -> steps.add(step("prepare " + p.id(), WorkStep.Kind.PREPARE, p.id(),
                OptionalInt.empty(), OptionalDouble.empty())));
        for (Hull hull : plan.hulls()) {
            if (hull.arrival() == Hull.Arrival.LOWERED) {
                steps.add(step("lower " + hull.id(), WorkStep.Kind.LOWER, hull.id(), OptionalInt.empty(),
                        OptionalDouble.empty()));
            }
        }
        plan.walls().forEach(w -> steps.add(step("build " + w.id(), WorkStep.Kind.PREPARE, w.id(),
                OptionalInt.empty(), OptionalDouble.empty())));
        for (Hull hull : plan.hulls()) {
            double lift = hull.cover().map(CoverPlan::lift).orElse(1.0);
            double top = coverTops.getOrDefault(hull.id(), 0.0);
            int lifts = (int) Math.ceil(top / lift - 1e-9);
            for (int i = 1; i <= lifts; i++) {
                steps.add(step(String.format(Locale.ROOT, "cover %s lift %d", hull.id(), i),
                        WorkStep.Kind.COVER, hull.id(),
                        OptionalInt.of(i), OptionalDouble.of(Math.min(top, i * lift))));
            }
        }
        return steps;
    }

    private static WorkStep step(String id, WorkStep.Kind kind, String of, OptionalInt lift, OptionalDouble height) {
        return new WorkStep(id, kind, of, lift, height, Optional.empty(), List.of(), Optional.empty(),
                Annotations.NOTHING);
    }

    private static Set<String> before(Plan plan, Map<String, WorkStep> byId, WorkStep step, List<Finding> findings) {
        Set<String> before = new LinkedHashSet<>();
        for (String id : step.after()) {
            if (byId.containsKey(id)) {
                before.add(id);
            } else {
                findings.add(finding(WorkRule.ORDER_UNKNOWN_STEP, Finding.Level.REFUSE, step.id(),
                        "Step %s comes after step %s, but there is no such step.".formatted(step.id(), id)));
            }
        }
        for (WorkStep other : byId.values()) {
            if (!other.id().equals(step.id()) && comesBefore(plan, other, step)) {
                before.add(other.id());
            }
        }
        return before;
    }

    private static boolean comesBefore(Plan plan, WorkStep first, WorkStep then) {
        boolean same = first.of().equals(then.of());
        boolean soil = then.step() == WorkStep.Kind.COVER || then.step() == WorkStep.Kind.CLOSE;
        if (same && soil && first.step() == WorkStep.Kind.LOWER) {
            return true;
        }
        if (same && then.step() == WorkStep.Kind.COVER && first.step() == WorkStep.Kind.COVER) {
            return rank(first) < rank(then);
        }
        if (first.step() == WorkStep.Kind.PREPARE && then.step() == WorkStep.Kind.COVER) {
            return plan.hull(then.of()).map(h -> holds(h, first.of())).orElse(false);
        }
        return first.step() == WorkStep.Kind.PREPARE && then.step() == WorkStep.Kind.LOWER
                && plan.hull(then.of()).isPresent() && isBed(plan, first.of(), then.of());
    }

    /** Whether a wall holds the soil at an end of a hull's cover. */
    private static boolean holds(Hull hull, String wall) {
        return hull.cover().map(c -> c.baseEndWall().filter(wall::equals).isPresent()
                || c.farEndWall().filter(wall::equals).isPresent()).orElse(false);
    }

    private static double rank(WorkStep step) {
        return step.lift().isPresent() ? step.lift().getAsInt() : step.upToHeight().orElse(Double.MAX_VALUE);
    }

    /** Whether a preparation lies where a hull stands or lies. */
    private static boolean isBed(Plan plan, String preparation, String hullId) {
        Hull hull = plan.hull(hullId).orElseThrow();
        return plan.preparations().stream().filter(p -> p.id().equals(preparation))
                .anyMatch(p -> p.area().contains(hull.baseCentre()) || p.area().contains(
                        hull.lyingAt(TrueMetres.SAME, hull.length() / 2, 0)));
    }

    private static void targets(Plan plan, Map<String, WorkStep> byId, List<Finding> findings) {
        Set<String> known = new LinkedHashSet<>();
        plan.hulls().forEach(h -> known.add(h.id()));
        plan.preparations().forEach(p -> known.add(p.id()));
        plan.walls().forEach(w -> known.add(w.id()));
        byId.values().stream().filter(s -> !known.contains(s.of())).forEach(s -> findings.add(
                finding(WorkRule.ORDER_UNKNOWN_OBJECT, Finding.Level.REFUSE, s.id(),
                        "Step %s is about %s, but the plan has no such hull, preparation or wall."
                                .formatted(s.id(), s.of()))));
        byId.values().stream().filter(s -> s.machine().isPresent() && plan.machines().stream()
                .noneMatch(m -> m.id().equals(s.machine().get()))).forEach(s -> findings.add(
                        finding(WorkRule.ORDER_UNKNOWN_MACHINE, Finding.Level.REFUSE, s.id(),
                                "Step %s is done by machine %s, but the plan has no such machine."
                                        .formatted(s.id(), s.machine().get()))));
        plan.walls().stream().filter(w -> plan.hulls().stream().anyMatch(h -> holds(h, w.id()))
                && byId.values().stream().noneMatch(s -> s.of().equals(w.id()))).forEach(w -> findings.add(
                        finding(WorkRule.ORDER_MISSING_STEP, Finding.Level.WARN, w.id(), ("Wall %s holds the soil of a"
                                + " cover, but no step of the work builds it.").formatted(w.id()))));
        for (Hull hull : plan.hulls()) {
            boolean covered = byId.values().stream()
                    .anyMatch(s -> s.step() == WorkStep.Kind.COVER && s.of().equals(hull.id()));
            boolean lowered = byId.values().stream()
                    .anyMatch(s -> s.step() == WorkStep.Kind.LOWER && s.of().equals(hull.id()));
            if (hull.cover().isPresent() && !covered) {
                findings.add(finding(WorkRule.ORDER_MISSING_STEP, Finding.Level.WARN, hull.id(),
                        ("Hull %s has a cover, but no step of the work places it: doses under the whole cover do not"
                                + " hold for it.").formatted(hull.id())));
            }
            if (hull.arrival() == Hull.Arrival.LOWERED && !lowered) {
                findings.add(finding(WorkRule.ORDER_MISSING_STEP, Finding.Level.WARN, hull.id(),
                        "Hull %s is to be lowered, but no step of the work does it.".formatted(hull.id())));
            }
        }
    }

    /** Takes, time and again, the first step in the plan's order whose needs are done. */
    private static List<WorkStep> sorted(Map<String, WorkStep> byId, Map<String, Set<String>> before,
            List<Finding> findings) {
        List<WorkStep> sorted = new ArrayList<>();
        Set<String> done = new LinkedHashSet<>();
        List<WorkStep> left = new ArrayList<>(byId.values());
        while (!left.isEmpty()) {
            Optional<WorkStep> next = left.stream().filter(s -> done.containsAll(before.get(s.id()))).findFirst();
            if (next.isEmpty()) {
                List<String> circle = circle(left, before);
                findings.add(finding(WorkRule.ORDER_CIRCLE, Finding.Level.REFUSE, circle.get(0),
                        "The steps %s wait for each other in a circle; none of them can begin."
                                .formatted(String.join(", ", circle))));
                break;
            }
            sorted.add(next.get());
            done.add(next.get().id());
            left.remove(next.get());
        }
        return sorted;
    }

    private static List<String> circle(List<WorkStep> left, Map<String, Set<String>> before) {
        Set<String> open = new LinkedHashSet<>();
        left.forEach(s -> open.add(s.id()));
        List<String> walked = new ArrayList<>();
        String at = left.get(0).id();
        while (!walked.contains(at)) {
            walked.add(at);
            at = before.get(at).stream().filter(open::contains).findFirst().orElseThrow();
        }
        return walked.subList(walked.indexOf(at), walked.size());
    }

    private static Finding finding(Rule rule, Finding.Level level, String subject, String text) {
        return Finding.of(rule, level, subject, Finding.Figures.NONE, text).from("order of work in the plan");
    }
}
