// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.edit.Part;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.PartBuilt;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.WorkStep;
import bermwright.site.stages.Stage;
import bermwright.site.stages.StagesResult;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The site as it stands after each step of the work, for the map and its slider. */
public final class WorkStages {
    private final Plan plan;
    private final List<WorkStep> steps;
    private final List<Stage> stages;
    private final List<PartBuilt> partBuilt;

    private WorkStages(Plan plan, List<WorkStep> steps, List<Stage> stages, List<PartBuilt> partBuilt) {
        this.plan = plan;
        this.steps = steps;
        this.stages = stages;
        this.partBuilt = partBuilt;
    }

    /**
     * The stages of a plan as they were worked out, with soil and days; the bare order of its steps where the
     * assessment is not of these steps.
     *
     * @param plan       the plan
     * @param assessment the latest assessment, perhaps of an earlier plan
     * @return the stages
     */
    public static WorkStages of(Plan plan, Optional<Assessment> assessment) {
        List<Stage> worked = assessment.flatMap(Assessment::stages).map(StagesResult::stages).orElse(List.of());
        List<WorkStep> steps = worked.stream().map(Stage::step).toList();
        boolean isOfPlan = steps.size() == plan.orderOfWork().size() && steps.containsAll(plan.orderOfWork());
        return isOfPlan ? assessment.map(a -> new WorkStages(plan, steps, worked, a.partBuilt()))
                .orElseGet(() -> of(plan)) : of(plan);
    }

    /**
     * The stages of a plan.
     *
     * @param plan the plan
     * @return the stages, steps in the plan's order but never before one they wait for
     */
    public static WorkStages of(Plan plan) {
        List<WorkStep> left = new ArrayList<>(plan.orderOfWork());
        List<WorkStep> ordered = new ArrayList<>();
        Set<String> done = new HashSet<>();
        boolean moved = true;
        while (moved) {
            moved = false;
            for (WorkStep step : List.copyOf(left)) {
                boolean isReady = step.after().stream()
                        .allMatch(id -> done.contains(id) || left.stream().noneMatch(s -> s.id().equals(id)));
                if (isReady) {
                    left.remove(step);
                    ordered.add(step);
                    done.add(step.id());
                    moved = true;
                    break;
                }
            }
        }
        // Steps that wait for each other come last, so that none is hidden.
        ordered.addAll(left);
        return new WorkStages(plan, List.copyOf(ordered), List.of(), List.of());
    }

    /**
     * The steps in order.
     *
     * @return the steps
     */
    public List<WorkStep> steps() {
        return steps;
    }

    /**
     * What a step is called.
     *
     * @param done how many steps are done (1), 0 for the site before any work
     * @return the words
     */
    public String words(int done) {
        if (done == 0) {
            return "Before any work";
        }
        WorkStep step = steps.get(done - 1);
        String lift = step.lift().isPresent() ? ", lift " + step.lift().getAsInt() : "";
        String height = step.upToHeight().isPresent() ? " up to " + step.upToHeight().getAsDouble() + " m" : "";
        return "Step " + step.id() + " done: " + step.step().word() + " " + step.of() + lift + height;
    }

    /**
     * Whether a figure is on the site at a stage.
     *
     * @param figure the figure
     * @param done   how many steps are done (1)
     * @return true where it stands or lies there then, or is in use for the step just done
     */
    public boolean shows(MapFigure figure, int done) {
        if (figure.part().isEmpty()) {
            return true;
        }
        Part part = figure.part().get();
        if (part.kind() == Part.Kind.PREPARATION) {
            return done(WorkStep.Kind.PREPARE, done).contains(part.id())
                    || !isPlanned(WorkStep.Kind.PREPARE, part.id());
        }
        if (part.kind() != Part.Kind.HULL) {
            return true;
        }
        boolean isLowered = isLying(part.id(), done);
        boolean isNow = done > 0 && steps.get(done - 1).step() == WorkStep.Kind.LOWER
                && steps.get(done - 1).of().equals(part.id());
        return switch (figure.look()) {
            case STANDING, LANDING_SPREAD -> !isLowered || isNow;
            case LYING, STATION, HATCH, PASS_THROUGH, KEPT_CLEAR -> isLowered;
            case COVER_TOE -> done(WorkStep.Kind.COVER, done).contains(part.id())
                    || !isPlanned(WorkStep.Kind.COVER, part.id()) && done == steps.size();
            default -> isNow;
        };
    }

    private boolean isLying(String hull, int done) {
        return stage(done).map(stage -> stage.lying().contains(hull))
                .orElseGet(() -> done(WorkStep.Kind.LOWER, done).contains(hull) || isNeverLowered(hull));
    }

    /**
     * The stage as it was worked out.
     *
     * @param done how many steps are done (1)
     * @return the stage, empty before any work and where it was not worked out
     */
    public Optional<Stage> stage(int done) {
        return done > 0 && done <= stages.size() ? Optional.of(stages.get(done - 1)) : Optional.empty();
    }

    /**
     * Dose at each station as the cover stands after a step.
     *
     * @param done how many steps are done (1)
     * @return the doses; empty for steps that place no soil
     */
    public List<StationDose> doses(int done) {
        return stage(done).flatMap(stage -> partBuilt.stream().filter(p -> p.step().equals(stage.step().id()))
                .findFirst()).map(PartBuilt::stations).orElse(List.of());
    }

    private Set<String> done(WorkStep.Kind kind, int done) {
        Set<String> ids = new LinkedHashSet<>();
        steps.subList(0, Math.min(done, steps.size())).stream().filter(s -> s.step() == kind)
                .forEach(s -> ids.add(s.of()));
        return ids;
    }

    private boolean isPlanned(WorkStep.Kind kind, String of) {
        return steps.stream().anyMatch(s -> s.step() == kind && s.of().equals(of));
    }

    private boolean isNeverLowered(String hull) {
        return plan.hull(hull).filter(h -> h.arrival() == Hull.Arrival.LANDS_LYING).isPresent();
    }
}
