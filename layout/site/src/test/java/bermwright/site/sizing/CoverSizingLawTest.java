// SPDX-License-Identifier: Apache-2.0
package bermwright.site.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Verdict;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.shielding.cover.CoverThickness;
import bermwright.shielding.dose.Responses;
import bermwright.site.SamplePlans;
import bermwright.site.exposure.CoverTrial;
import bermwright.site.exposure.CrewDose;
import bermwright.site.exposure.DoseSources;
import bermwright.site.exposure.SiteCover;
import bermwright.site.exposure.SiteDose;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The cover that is found is the least, by brute force, and the doses accept it with the hours outside. */
class CoverSizingLawTest {
    private static final ElevationGrid GROUND = SamplePlans.ground((e, n) -> 0.02 * e);
    private static final double HOURS_OUTSIDE = 1;
    private static final double LIMIT_SV = 0.06;
    /** What the finest step of the search, two centimetres of one part, may still win of a cover's volume (1). */
    private static final double STEP_SHARE = 0.01;
    private static final double[] CROWNS = {1.0, 1.5, 2.0, 2.5, 3.0, 3.5, 4.0, 5.0};
    private static final double[] FLANKS = {0.05, 0.3, 0.8, 1.5, 2.2, 3.0};
    private static final double[] ENDS = {0.05, 0.5, 1.5};

    @TempDir
    Path directory;

    private static Plan plan() {
        CoverPlan cover = new CoverPlan(2.5, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty(), CoverPlan.End.COVERED, CoverPlan.End.COVERED, Optional.empty(),
                Optional.empty(), 0, 0.5, OptionalDouble.empty(), List.of(), Annotations.NOTHING);
        Plan plan = SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(120, 120), 75)
                .withCover(Optional.of(cover))));
        ExposurePlan e = plan.exposure();
        ExposurePlan changed = new ExposurePlan(e.stayDays(), HOURS_OUTSIDE, e.timeToShelter(), e.solarActivity(),
                e.solarDate(),
                e.modulationW(), e.event(), e.eventSpectrumFile(), e.eventFit(), e.response(), e.moreResponses(),
                List.of(SamplePlans.limit(ExposurePlan.Over.STAY, LIMIT_SV)), e.people(), e.hazards(),
                e.annotations());
        return new Plan(plan.title(), plan.ground(), plan.hulls(), plan.walls(), plan.tunnels(), plan.keepOuts(),
                plan.corridors(), plan.landingPads(), plan.preparations(), plan.borrowGrounds(), plan.stockpiles(),
                plan.machines(), changed, plan.rules(), plan.orderOfWork(), plan.arrangeWithin(), plan.annotations());
    }

    @Test
    void noCoverOfARasterThatMeetsTheLimitTakesLessSoilAndTheDosesAcceptWhatIsFound() {
        Plan plan = plan();
        DoseSources sources = new DoseSources(new Responses(directory), directory);
        SizedCover sized = CoverSizing.least(plan, GROUND, GROUND, sources, Progress.NONE);
        assertTrue(sized.isMet(), sized.findings().toString());
        CoverTrial trial = CoverTrial.of(plan, GROUND, GROUND, sources, Progress.NONE);
        LimitUse use = new LimitUse(plan, trial.outside());
        int tried = 0;
        for (double crown : CROWNS) {
            for (double flank : FLANKS) {
                for (double end : ENDS) {
                    Map<String, CoverThickness> other = Map.of("A", new CoverThickness(crown, flank, end, end));
                    if (trial.volumes(other).get("A") < sized.volume() * (1 - STEP_SHARE)) {
                        tried++;
                        CoverTrial.Outcome outcome = trial.with(other, Set.of());
                        assertTrue(use.used("A", outcome) > 1, () -> other + " takes " + outcome.volume()
                                + " m3 and meets the limit; found was " + sized.thickness() + " with "
                                + sized.volume());
                    }
                }
            }
        }
        assertTrue(tried > 10, "the raster holds cheaper covers to try: " + tried);
        accepted(sized, sources);
    }

    private static void accepted(SizedCover sized, DoseSources sources) {
        SiteDose dose = SiteDose.of(sized.plan(), SiteCover.raised(sized.plan(), GROUND, GROUND), sources,
                Progress.NONE);
        dose.limits().forEach(l -> assertEquals(Verdict.MET, l.verdict(), l.toString()));
        CrewDose crew = dose.crew(sized.plan().exposure()).orElseThrow();
        assertEquals(dose.outside().cosmic().best() * HOURS_OUTSIDE / 24, crew.outside().best(),
                1e-12 * crew.outside().best());
        assertTrue(crew.outside().best() > 0.1 * crew.cosmic().best(), crew.toString());
    }
}
