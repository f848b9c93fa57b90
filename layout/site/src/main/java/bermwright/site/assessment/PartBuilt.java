// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.finding.Finding;
import bermwright.finding.StayRule;
import bermwright.foundation.Progress;
import bermwright.shielding.cover.DepthMaps;
import bermwright.site.exposure.CrewDose;
import bermwright.site.exposure.DoseSources;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.SiteCover;
import bermwright.site.exposure.SiteDose;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.LimitInForce;
import bermwright.site.plan.Plan;
import bermwright.site.plan.WorkStep;
import bermwright.site.stages.Stage;
import bermwright.site.stages.StagesResult;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Cover and dose once a step of the work is done, so that a half-buried hull is never taken for a safe one.
 *
 * @param step     id of the step
 * @param covers   what covers each hull by then
 * @param stations dose at the stations of hulls that lie by then, for the whole stay as if work stopped here
 * @param whole    hulls whose cover stands whole by then; every other is not safe to stay in, whatever its dose
 */
public record PartBuilt(String step, List<HullCover> covers, List<StationDose> stations, Set<String> whole) {
    private static final double MILLI = 1000;

    /** Copies the lists. */
    public PartBuilt {
        covers = List.copyOf(covers);
        stations = List.copyOf(stations);
        whole = Set.copyOf(whole);
    }

    /**
     * The site as it stands in the end.
     *
     * @param plan  the plan
     * @param cover its cover
     * @param dose  the doses under it
     * @param known depths of covers that were measured before
     */
    record Finished(Plan plan, SiteCover cover, SiteDose dose, DepthMaps known) {
    }

    /** Cover and dose after each step that places soil. */
    static List<PartBuilt> of(Finished whole, StagesResult work, DoseSources sources, Progress progress) {
        Plan plan = whole.plan;
        List<Stage> stages = work.stages();
        List<PartBuilt> built = new ArrayList<>();
        for (int i = 0; i < stages.size(); i++) {
            Stage stage = stages.get(i);
            if (stage.step().step() != WorkStep.Kind.COVER) {
                continue;
            }
            progress.check();
            Plan lying = plan.withHulls(plan.hulls().stream().filter(h -> stage.lying().contains(h.id())).toList());
            ElevationGrid surface = stage.surface();
            SiteCover cover = SiteCover.standing(lying, whole.cover.natural(), whole.cover.prepared(), surface,
                    whole.known);
            List<StationDose> stations = whole.dose.underPart(lying, cover, sources,
                    progress.part((double) i / stages.size(), (i + 1.0) / stages.size()));
            built.add(new PartBuilt(stage.step().id(), cover.hulls(), stations, whole(work, i)));
        }
        return built;
    }

    /** Hulls whose last covering step is done, where the order of work brings their cover to its full height. */
    static Set<String> whole(StagesResult work, int done) {
        Set<String> whole = new HashSet<>();
        work.stages().subList(0, done + 1).stream().map(Stage::step).filter(s -> s.step() == WorkStep.Kind.COVER
                && !work.unfinished().contains(s.of())).forEach(s -> whole.add(s.of()));
        work.stages().subList(done + 1, work.stages().size()).stream().map(Stage::step)
                .filter(s -> s.step() == WorkStep.Kind.COVER).forEach(s -> whole.remove(s.of()));
        return whole;
    }

    /**
     * The greatest share of the plan's limits that somebody uses who never leaves a station, were work to stop here.
     *
     * @param exposure the plan's stay and limits
     * @param station  one of the stations
     * @return 84th percentile over the limit (1); zero where the plan states none
     */
    public static double used(ExposurePlan exposure, StationDose station) {
        return exposure.judgedLimits().stream()
                .mapToDouble(l -> CrewDose.alone(exposure, station, l).high() / l.limit()).max().orElse(0);
    }

    /** The limit that a station uses the greatest share of. */
    private static Optional<LimitInForce> narrowest(ExposurePlan exposure, StationDose station) {
        return exposure.judgedLimits().stream().max(Comparator.comparingDouble(l ->
                CrewDose.alone(exposure, station, l).high() / l.limit()));
    }

    /** One finding for each step that leaves a hull's cover part-built: a warning where a limit is passed then. */
    static List<Finding> findings(Plan plan, List<Stage> stages, List<PartBuilt> built) {
        List<Finding> findings = new ArrayList<>();
        for (PartBuilt part : built) {
            Optional<WorkStep> step = plan.orderOfWork().stream().filter(s -> s.id().equals(part.step)).findFirst();
            if (step.isEmpty() || isLast(stages, step.get())) {
                continue;
            }
            part.stations.stream().filter(s -> s.hull().equals(step.get().of()))
                    .max((a, b) -> Double.compare(a.covered().high(), b.covered().high()))
                    .ifPresent(worst -> findings.add(finding(step.get(), worst, plan.exposure())));
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

    private static Finding finding(WorkStep step, StationDose worst, ExposurePlan exposure) {
        double used = used(exposure, worst);
        boolean isKept = used <= 1 && !exposure.limits().isEmpty()
                && exposure.judgedLimits().size() == exposure.limits().size()
                && exposure.judgedLimits().stream().noneMatch(l -> l.countsEvent()
                        && worst.parts().uncertainties().event().isEmpty());
        String text = String.format(Locale.ROOT, "After step %s the cover of hull %s is not at its full depth: a"
                + " whole stay under it gives %.0f mSv at station %s (high %.0f mSv)%s.",
                step.id(), step.of(), worst.covered().best() * MILLI, worst.station(),
                worst.covered().high() * MILLI,
                used > 1 ? narrowest(exposure, worst).map(l -> String.format(Locale.ROOT, "; against the"
                        + " limit on %s, %.0f mSv, stand %.0f mSv (high)", l.words(), l.limit() * MILLI,
                        used * l.limit() * MILLI)).orElse("") : "");
        return Finding.of(StayRule.COVER_PART_BUILT, isKept ? Finding.Level.NOTE : Finding.Level.WARN, step.of(),
                Finding.Figures.measured(worst.covered().high() * MILLI, "mSv"), text).with(step.id());
    }
}
