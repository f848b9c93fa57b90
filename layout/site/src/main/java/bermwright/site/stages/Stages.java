// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import bermwright.finding.Finding;
import bermwright.finding.WorkRule;
import bermwright.foundation.ModelNote;
import bermwright.foundation.Progress;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.haulage.Haul;
import bermwright.site.haulage.Hauler;
import bermwright.site.haulage.Ramp;
import bermwright.site.haulage.SoilNeed;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Machine;
import bermwright.site.plan.Plan;
import bermwright.site.plan.WorkStep;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The work step by step: what must come first, how the site stands after each step, how long it takes, and whether
 * each step is safe on the site as it then is.
 */
public final class Stages {
    private static final String CREW = "lowering crew";
    private static final double HOURS_A_DAY = 24;
    private static final double SECONDS = 3600;
    private static final int CURVE_POINTS = 40;
    /** How much higher one side of a cover may stand while it is placed (m); from memory. */
    private static final double SIDES_LEVEL_WITHIN = 0.5;
    private static final double LIFT_ROUNDING = 1e-6;

    private final StagesInput input;
    private final Plan plan;
    private final Map<String, LiftedCover> covers = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();
    private final Set<String> unfinished = new HashSet<>();

    private Stages(StagesInput input) {
        this.input = input;
        this.plan = input.plan();
        for (PlacedCover cover : input.covers()) {
            plan.hull(cover.hull()).flatMap(h -> LiftedCover.of(h, input.ground(), cover))
                    .ifPresent(l -> covers.put(cover.hull(), l));
        }
    }

    /**
     * The stages of the work.
     *
     * @param input    what they are made from
     * @param progress how far it has come
     * @return the stages, the schedule and what was found
     */
    public static StagesResult of(StagesInput input, Progress progress) {
        return new Stages(input).result(progress);
    }

    private StagesResult result(Progress progress) {
        Map<String, Double> tops = new LinkedHashMap<>();
        covers.forEach((hull, lifted) -> tops.put(hull, lifted.top()));
        WorkOrder order = WorkOrder.of(plan, tops);
        findings.addAll(order.findings());
        Map<String, Stage.Soil> soils = soils(order);
        Map<String, OptionalDouble> hours = new LinkedHashMap<>();
        order.steps().forEach(s -> hours.put(s.id(), hours(s, soils.get(s.id()))));
        WorkSchedule schedule = WorkSchedule.of(order.steps().stream().map(s -> new WorkSchedule.Task(s.id(),
                resource(s), days(s, hours.get(s.id())), order.before().get(s.id()))).toList());
        List<Stage> stages = stages(order, soils, hours, schedule, progress);
        unfinished(order);
        sides();
        reach();
        return new StagesResult(stages, schedule.days(), schedule.criticalChain(), unfinished, curves(),
                SettingOut.of(input),
                notes(), findings);
    }

    private List<Stage> stages(WorkOrder order, Map<String, Stage.Soil> soils, Map<String, OptionalDouble> hours,
            WorkSchedule schedule, Progress progress) {
        StageSafety safety = new StageSafety(input);
        List<Stage> stages = new ArrayList<>();
        Stage.State state = start();
        for (int i = 0; i < order.steps().size(); i++) {
            progress.check();
            progress.report((double) i / order.steps().size(), "stages of the work");
            WorkStep step = order.steps().get(i);
            if (step.step() == WorkStep.Kind.LOWER) {
                safety.lowering(step, state);
                for (int j = 0; j < order.steps().size(); j++) {
                    if (order.steps().get(j).step() == WorkStep.Kind.COVER
                            && schedule.bars().get(i).overlaps(schedule.bars().get(j))) {
                        safety.machines(step, order.steps().get(j));
                    }
                }
            }
            state = after(state, step, soils.get(step.id()));
            WorkSchedule.Bar bar = schedule.bars().get(i);
            stages.add(new Stage(step, new Stage.Bar(bar.resource(), hours.get(step.id()), bar.start(), bar.end(),
                    bar.critical()), soils.get(step.id()), state));
        }
        findings.addAll(safety.findings());
        return stages;
    }

    private Stage.State start() {
        Set<String> standing = new LinkedHashSet<>();
        Set<String> lying = new LinkedHashSet<>();
        for (Hull hull : plan.hulls()) {
            (hull.arrival() == Hull.Arrival.LANDS_LYING ? lying : standing).add(hull.id());
        }
        return new Stage.State(input.ground(), covers, Map.of(), standing, lying, Set.of());
    }

    private static Stage.State after(Stage.State before, WorkStep step, Stage.Soil soil) {
        Set<String> standing = new LinkedHashSet<>(before.standing());
        Set<String> lying = new LinkedHashSet<>(before.lying());
        Set<String> prepared = new LinkedHashSet<>(before.prepared());
        Map<String, Double> heights = new LinkedHashMap<>(before.heights());
        switch (step.step()) {
            case LOWER -> {
                standing.remove(step.of());
                lying.add(step.of());
            }
            case PREPARE -> prepared.add(step.of());
            case COVER -> heights.merge(step.of(), soil.height(), Math::max);
            case CLOSE -> {
            }
        }
        return new Stage.State(before.ground(), before.covers(), heights, standing, lying, prepared);
    }

    /** What each step places, given the lifts before it on the same hull. */
    private Map<String, Stage.Soil> soils(WorkOrder order) {
        Map<String, Stage.Soil> soils = new LinkedHashMap<>();
        Map<String, Double> reached = new LinkedHashMap<>();
        for (WorkStep step : order.steps()) {
            LiftedCover lifted = covers.get(step.of());
            if (step.step() != WorkStep.Kind.COVER || lifted == null) {
                soils.put(step.id(), Stage.Soil.NONE);
                continue;
            }
            double from = reached.getOrDefault(step.of(), lifted.bottom());
            double to = Math.min(lifted.top(), step.upToHeight().orElse(lifted.top()));
            if (!(to > from)) {
                findings.add(Finding.of(WorkRule.LIFT_PLACES_NOTHING, Finding.Level.WARN, step.id(),
                        Finding.Figures.of(to, from, "m"), ("Step %s reaches %s m, but the cover of hull %s stands %s"
                        + " m high before it.").formatted(step.id(), metres(to), step.of(), metres(from))));
                soils.put(step.id(), new Stage.Soil(from, 0, 0, List.of()));
                continue;
            }
            double placed = lifted.volume(to) - lifted.volume(from);
            soils.put(step.id(), new Stage.Soil(to, placed, Ramp.on(plan, step.of(), to).map(Ramp::volume).orElse(0.0),
                    lifts(step.of(), from, to)));
            reached.put(step.of(), to);
        }
        return soils;
    }

    /** Tops of the lifts in which a step is placed (m), none higher than the cover's lift. */
    private List<Double> lifts(String hull, double from, double to) {
        double lift = plan.hull(hull).flatMap(Hull::cover).map(CoverPlan::lift).orElse(to - from);
        int count = Math.max(1, (int) Math.ceil((to - from) / lift - LIFT_ROUNDING));
        List<Double> tops = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            tops.add(i == count ? to : from + i * lift);
        }
        return tops;
    }

    /** A side is placed before the other, so for a while it stands a whole lift higher. */
    private void sides() {
        for (Hull hull : plan.hulls()) {
            double lift = hull.cover().map(CoverPlan::lift).orElse(0.0);
            if (lift > SIDES_LEVEL_WITHIN + LIFT_ROUNDING) {
                findings.add(Finding.of(WorkRule.SIDES_NOT_LEVEL, Finding.Level.WARN, hull.id(),
                        Finding.Figures.of(lift, SIDES_LEVEL_WITHIN, "m"), ("The cover of hull %s is placed in lifts of"
                        + " %s m; one side can stand that much higher than the other and push the"
                        + " hull.").formatted(hull.id(), metres(lift))).at(hull.baseCentre())
                        .todo("Keep lifts to %s m.".formatted(metres(SIDES_LEVEL_WITHIN))));
            }
        }
    }

    /** Where the machine that places a cover cannot climb its side, and whether a ramp finds room on it. */
    private void reach() {
        double slope = plan.ground().regolith().stableSlope();
        covers.forEach((hull, lifted) -> Hauler.of(plan, hull).filter(m -> m.greatestGrade() < slope).ifPresent(m -> {
            Optional<Ramp> ramp = Ramp.on(plan, hull, lifted.top());
            double round = round(hull);
            boolean fits = ramp.isPresent() && ramp.get().run() <= round;
            String climbs = String.format(Locale.ROOT, "The sides of the cover of hull %s stand at %.1f deg; %s climb"
                    + " %.1f deg.", hull, Math.toDegrees(slope), m.id(), Math.toDegrees(m.greatestGrade()));
            String how = ramp.map(r -> String.format(Locale.ROOT, " Above the first lift soil goes up a ramp of %.0f m"
                    + " to the crown at %.1f m%s", r.run(), lifted.top(), fits ? "." : ", longer than once round the"
                    + " mound, " + Math.round(round) + " m. Take a machine that climbs more or throws.")).orElse(
                    " They cannot climb at all: nothing brings soil above the first lift.");
            findings.add(Finding.of(WorkRule.LIFT_BEYOND_MACHINE, fits ? Finding.Level.NOTE : Finding.Level.WARN, hull,
                    Finding.Figures.of(Math.toDegrees(slope), Math.toDegrees(m.greatestGrade()), "deg"), climbs + how)
                    .at(plan.hull(hull).orElseThrow().baseCentre()));
        }));
    }

    /** Length of the way round a mound along its toe (m). */
    private double round(String hull) {
        return input.covers().stream().filter(c -> c.hull().equals(hull)).flatMap(c -> c.toes().stream())
                .mapToDouble(toe -> {
                    double length = 0;
                    for (int i = 0; i < toe.corners().size(); i++) {
                        length += toe.corners().get(i).distance(toe.corners().get((i + 1) % toe.corners().size()));
                    }
                    return input.ground().metres().length(length);
                }).max().orElse(0);
    }

    private Optional<Machine> machine(WorkStep step) {
        return step.machine().flatMap(id -> plan.machines().stream().filter(m -> m.id().equals(id)).findFirst())
                .or(() -> Hauler.of(plan, step.of()));
    }

    private String resource(WorkStep step) {
        return switch (step.step()) {
            case LOWER -> CREW;
            case COVER, PREPARE -> machine(step).map(Machine::id).orElse("");
            case CLOSE -> "";
        };
    }

    /** Hours of the crew or machine hours, empty where they are not known. */
    private OptionalDouble hours(WorkStep step, Stage.Soil soil) {
        if (step.step() == WorkStep.Kind.LOWER) {
            return plan.hull(step.of()).flatMap(Hull::lowering)
                    .map(g -> OptionalDouble.of(Math.PI / 2 / g.rate() / SECONDS)).orElse(OptionalDouble.empty());
        }
        Optional<EarthworksResult> earthworks = input.earthworks();
        if (step.step() == WorkStep.Kind.CLOSE || earthworks.isEmpty()) {
            return OptionalDouble.empty();
        }
        List<Haul> hauls = earthworks.get().hauls().stream().filter(h -> h.to().equals(step.of())
                || h.from().equals(step.of()) && h.kind() == SoilNeed.Kind.RAMP_REMOVED).toList();
        double placed = hauls.stream().filter(h -> h.kind() == SoilNeed.Kind.COVER || h.kind() == SoilNeed.Kind.FILL)
                .mapToDouble(Haul::placed).sum();
        if (hauls.isEmpty() || hauls.stream().anyMatch(h -> h.machineHours().isEmpty()) || !(placed > 0)) {
            return OptionalDouble.empty();
        }
        double all = hauls.stream().mapToDouble(h -> h.machineHours().orElse(0)).sum();
        return OptionalDouble.of(step.step() == WorkStep.Kind.COVER ? all * soil.placed() / placed : all);
    }

    private double days(WorkStep step, OptionalDouble hours) {
        if (hours.isEmpty()) {
            return 0;
        }
        if (step.step() == WorkStep.Kind.LOWER) {
            return hours.getAsDouble() / HOURS_A_DAY;
        }
        return machine(step).map(m -> hours.getAsDouble() / (m.count() * m.hoursADay() * m.availabilityShare()))
                .orElse(0.0);
    }

    private void unfinished(WorkOrder order) {
        for (Map.Entry<String, LiftedCover> cover : covers.entrySet()) {
            double reached = order.steps().stream()
                    .filter(s -> s.step() == WorkStep.Kind.COVER && s.of().equals(cover.getKey()))
                    .mapToDouble(s -> s.upToHeight().orElse(Double.POSITIVE_INFINITY)).max().orElse(Double.NaN);
            double top = cover.getValue().top();
            if (reached < top - LIFT_ROUNDING) {
                unfinished.add(cover.getKey());
                findings.add(Finding.of(WorkRule.COVER_NOT_FINISHED, Finding.Level.WARN, cover.getKey(),
                        Finding.Figures.of(reached, top, "m"), ("The last lift over hull %s reaches %s m; the cover is"
                        + " %s m high. Doses under the whole cover do not hold for it.")
                        .formatted(cover.getKey(), metres(reached), metres(top))));
            }
        }
    }

    private List<StagesResult.LiftCurve> curves() {
        List<StagesResult.LiftCurve> curves = new ArrayList<>();
        covers.forEach((hull, lifted) -> {
            List<StagesResult.LiftCurve.Point> points = new ArrayList<>();
            for (int i = 0; i <= CURVE_POINTS; i++) {
                double height = lifted.bottom() + (lifted.top() - lifted.bottom()) * i / CURVE_POINTS;
                points.add(new StagesResult.LiftCurve.Point(height, lifted.volume(height)));
            }
            curves.add(new StagesResult.LiftCurve(hull, points));
        });
        return curves;
    }

    private static String metres(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    private static List<ModelNote> notes() {
        return List.of(new ModelNote("work-schedule", "each step begins when the steps before it are done and its"
                + " machines are free; one crew lowers one hull at a time", "steps whose hours are known; rigging,"
                + " closing and waiting for sun are not in it", "hours follow the haul; nothing is added for trouble",
                ModelNote.Status.COMPUTED, "common practice, no source"),
                new ModelNote("lifts", "lifts level across the hull and along its bed; soil of a lift is what lies"
                + " between two levels less the hull", "covers on known ground", "the sum is the cover's own volume;"
                + " a single lift within about 2 %", ModelNote.Status.COMPUTED, "geometry"),
                Ramp.note());
    }
}
