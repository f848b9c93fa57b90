// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.foundation.Progress;
import bermwright.site.exposure.DoseSources;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.SiteCover;
import bermwright.site.exposure.SiteDose;
import bermwright.site.exposure.StationDose;
import bermwright.site.finding.Finding;
import bermwright.site.plan.Plan;
import bermwright.site.plan.WorkStep;
import bermwright.site.stages.Stage;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Cover and dose once a step of the work is done, so that a half-buried hull is never taken for a safe one.
 *
 * @param step     id of the step
 * @param covers   what covers each hull by then
 * @param stations dose at the stations of hulls that lie by then, for the whole stay as if work stopped here
 */
public record PartBuilt(String step, List<HullCover> covers, List<StationDose> stations) {
    private static final double MILLI = 1000;

    /** Copies the lists. */
    public PartBuilt {
        covers = List.copyOf(covers);
        stations = List.copyOf(stations);
    }

    /** Cover and dose after each step that places soil. */
    static List<PartBuilt> of(Plan plan, SiteCover whole, List<Stage> stages, DoseSources sources, Progress progress) {
        List<PartBuilt> built = new ArrayList<>();
        for (int i = 0; i < stages.size(); i++) {
            Stage stage = stages.get(i);
            if (stage.step().step() != WorkStep.Kind.COVER) {
                continue;
            }
            progress.check();
            Plan lying = plan.withHulls(plan.hulls().stream().filter(h -> stage.lying().contains(h.id())).toList());
            ElevationGrid surface = stage.surface();
            SiteCover cover = SiteCover.standing(lying, whole.natural(), whole.prepared(), surface);
            SiteDose dose = SiteDose.of(lying, cover, sources,
                    progress.part((double) i / stages.size(), (i + 1.0) / stages.size()));
            built.add(new PartBuilt(stage.step().id(), cover.hulls(), dose.stations()));
        }
        return built;
    }

    /** One note for each hull whose cover is placed in several steps: what the last but one leaves open. */
    static List<Finding> findings(Plan plan, List<Stage> stages, List<PartBuilt> built) {
        List<Finding> findings = new ArrayList<>();
        for (PartBuilt part : built) {
            Optional<WorkStep> step = plan.orderOfWork().stream().filter(s -> s.id().equals(part.step)).findFirst();
            if (step.isEmpty() || isLast(stages, step.get())) {
                continue;
            }
            part.stations.stream().filter(s -> s.hull().equals(step.get().of()))
                    .max((a, b) -> Double.compare(a.covered().high(), b.covered().high()))
                    .ifPresent(worst -> findings.add(finding(step.get(), worst)));
        }
        return findings;
    }

    private static boolean isLast(List<Stage> stages, WorkStep step) {
        boolean after = false;
        for (Stage stage : stages) {
            if (after && stage.step().step() == WorkStep.Kind.COVER && stage.step().of().equals(step.of())) {
                return false;
            }
            after |= stage.step().id().equals(step.id());
        }
        return true;
    }

    private static Finding finding(WorkStep step, StationDose worst) {
        String text = String.format(Locale.ROOT, "After step %s the cover of hull %s is not finished: a stay would "
                + "give %.0f mSv at station %s (high %.0f mSv). Nobody should count on it before the last step.",
                step.id(), step.of(), worst.covered().best() * MILLI, worst.station(),
                worst.covered().high() * MILLI);
        return Finding.of("cover-part-built", Finding.Level.NOTE, step.of(),
                Finding.Figures.measured(worst.covered().high() * MILLI, "mSv"), text)
                .from("order of work in the plan");
    }
}
