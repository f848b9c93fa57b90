// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.finding.DoseRule;
import bermwright.finding.Finding;
import bermwright.foundation.Progress;
import bermwright.site.arrangement.Arrangement;
import bermwright.site.arrangement.ArrangementSearch;
import bermwright.site.arrangement.Figures;
import bermwright.site.arrangement.Judge;
import bermwright.site.exposure.StationDose;
import bermwright.site.footprint.HatchPlace;
import bermwright.site.plan.HatchName;
import bermwright.site.plan.Plan;
import bermwright.site.stages.PreparedGround;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Arranges a plan's hulls anew, every answer passed by the full assessment.
 *
 * <p>While it searches, it leaves out doses of covers that are only part-built: half of an assessment's time, and no
 * finding on them refuses. What is handed over is assessed with them.
 */
public final class ArrangeSite {
    /** What covers are thickened by where the doses of a new arrangement do not meet a limit (m), how often at most. */
    private static final double THICKENED = 0.03;
    private static final int MOST_THICKENING = 5;
    /** More hulls than these are asked for shapes, clearance and lowering before the whole assessment. */
    private static final int FEW = 4;

    private final Assessments assessments;
    private final SiteGround ground;
    private final String planName;

    /**
     * Arrangements on one ground.
     *
     * @param assessments what assesses in full
     * @param ground      the ground
     * @param planName    name of the plan's file
     */
    public ArrangeSite(Assessments assessments, SiteGround ground, String planName) {
        this.assessments = assessments;
        this.ground = ground;
        this.planName = planName;
    }

    /**
     * Searches for arrangements, under the covers as planned or, where that is asked for, under covers sized on the
     * first arrangement found and thickened where another asks for it.
     *
     * @param plan     the plan
     * @param request  what may move, and the seed
     * @param course   how long it goes on
     * @param progress told how far it has come; may cancel it
     * @return what was found
     */
    public ArrangementSearch.Found run(Plan plan, Request request, ArrangementSearch.Course course,
            Progress progress) {
        if (!request.sized) {
            return whole(searched(plan, request, course, progress.part(0, 0.9)), progress.part(0.9, 1));
        }
        ArrangementSearch.Found first = searched(plan, new Request(request.only, request.seed, false),
                new OneStep(course), progress.part(0, 0.1));
        Plan start = first.arrangements().isEmpty() ? plan : first.arrangements().get(0).plan();
        Plan sized = CoverSearch.least(start, ground, progress.part(0.1, 0.3)).plan();
        ArrangementSearch.Found found = searched(sized, request, course, progress.part(0.3, 0.9));
        return whole(new ArrangementSearch.Found(found.arrangements(), first.planned(), found.steps(),
                found.refused()), progress.part(0.9, 1));
    }

    /**
     * What was found, with the doses of covers while they rise: they refuse nothing, so the search leaves them out, but
     * some of them warn. What another dominates then is left out.
     */
    private ArrangementSearch.Found whole(ArrangementSearch.Found found, Progress progress) {
        List<Arrangement> all = new ArrayList<>();
        double many = found.arrangements().size() + 1;
        for (Arrangement one : found.arrangements()) {
            progress.report(all.size() / many, "assessing what was found once more, with covers while they rise");
            Judge.Verdict verdict = whole(one.plan(), progress.part(all.size() / many, (all.size() + 1) / many));
            if (!verdict.isPassed()) {
                throw new IllegalStateException("covers while they rise refuse what the finished site passes: "
                        + verdict.refusals());
            }
            all.add(new Arrangement(one.plan(), verdict.figures(), one.step()));
        }
        List<Arrangement> best = all.stream().filter(a -> all.stream().noneMatch(o -> a.figures().isDominatedBy(
                o.figures()))).toList();
        return new ArrangementSearch.Found(best, whole(found.planned().plan(), progress.part(1 - 1 / many, 1)),
                found.steps(), found.refused());
    }

    private Judge.Verdict whole(Plan plan, Progress progress) {
        return verdict(assessments.run(plan, planName, ground, progress));
    }

    /** One step, told on to another course. */
    private record OneStep(ArrangementSearch.Course course) implements ArrangementSearch.Course {
        @Override
        public boolean goesOn(int steps, int found) {
            return steps < 1;
        }

        @Override
        public void found(Arrangement arrangement) {
            course.found(arrangement);
        }
    }

    private ArrangementSearch.Found searched(Plan plan, Request request, ArrangementSearch.Course course,
            Progress progress) {
        return ArrangementSearch.run(new ArrangementSearch.Task(plan, ground.grid(),
                ArrangementSearch.movable(plan, request.only), request.seed), (p, on) -> p == plan ? judged(p, on)
                        : judged(p, request, on),
                course, progress);
    }

    /**
     * What is asked for.
     *
     * @param only  ids of the hulls that may move; empty for all that are not held
     * @param seed  seed of all chance
     * @param sized whether covers are sized: they are thickened where an arrangement's doses ask for it
     */
    public record Request(Set<String> only, long seed, boolean sized) {
        /** Copies the set. */
        public Request {
            only = Set.copyOf(only);
        }
    }

    private Judge.Verdict judged(Plan asked, Request request, Progress progress) {
        Plan plan = asked;
        if (plan.hulls().size() > FEW) {
            // Doses of many hulls take far longer than all that may refuse their places.
            Judge.Verdict shapes = verdict(assessments.run(Assessments.Asked.SHAPES, new Assessments.Site(plan,
                    planName, ground), progress.part(0, 0.2)));
            if (!shapes.isPassed()) {
                return shapes;
            }
        }
        Judge.Verdict verdict = judged(plan, progress);
        for (int i = 0; i < MOST_THICKENING && request.sized && isTooThin(verdict); i++) {
            plan = thicker(plan);
            verdict = judged(plan, progress);
        }
        return verdict;
    }

    private static boolean isTooThin(Judge.Verdict verdict) {
        return !verdict.isPassed() && verdict.refusals().stream().allMatch(f -> f.rule() instanceof DoseRule);
    }

    private static Plan thicker(Plan plan) {
        return plan.withHulls(plan.hulls().stream().map(h -> h.withCover(h.cover().map(c ->
                c.withParts(c.crownThickness() + THICKENED, c.flankThickness() + THICKENED,
                        c.baseThickness() + THICKENED, c.farThickness() + THICKENED)))).toList());
    }

    private Judge.Verdict judged(Plan plan, Progress progress) {
        return verdict(assessments.run(Assessments.Asked.FINISHED, new Assessments.Site(plan, planName, ground),
                progress));
    }

    /**
     * What of an assessment is weighed.
     *
     * @param assessment the assessment
     * @return its refusals and figures
     */
    public static Judge.Verdict verdict(Assessment assessment) {
        List<Finding> refusals = assessment.findings().stream().filter(f -> f.level() == Finding.Level.REFUSE)
                .toList();
        int warnings = (int) assessment.findings().stream().filter(f -> f.level() == Finding.Level.WARN).count();
        Plan plan = assessment.plan();
        TrueMetres metres = assessment.ground().grid().metres();
        double tunnels = plan.tunnels().stream().filter(t -> !HatchName.of(t.from()).hull()
                .equals(HatchName.of(t.to()).hull())).mapToDouble(t -> HatchPlace.of(plan, t.from(), metres)
                        .flatMap(a -> HatchPlace.of(plan, t.to(), metres).map(b -> metres.distance(a, b)))
                        .orElse(0.0)).sum();
        double cut = PreparedGround.of(plan, assessment.ground().grid()).moved().stream()
                .mapToDouble(m -> m.volumes().cut()).sum();
        OptionalDouble dose = assessment.dose().map(d -> d.stations().stream().map(StationDose::covered)
                .mapToDouble(StationDose.Spread::high).max()).orElse(OptionalDouble.empty());
        return new Judge.Verdict(plan, refusals, new Figures(
                assessment.earthworks().map(e -> e.machineHours()).orElse(OptionalDouble.empty()),
                assessment.earthworks().map(e -> e.placed()).orElse(0.0), warnings, tunnels, cut, dose));
    }
}
