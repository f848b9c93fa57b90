// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.finding.Finding;
import bermwright.finding.WorkRule;
import bermwright.foundation.Progress;
import bermwright.shielding.dose.Responses;
import bermwright.site.exposure.DoseSources;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.SiteCover;
import bermwright.site.exposure.SiteDose;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.WorkStep;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The site as it was surveyed after a step, beside the site as the plan has it then.
 *
 * <p>Where the survey has no height the ground counts as it was before any soil was placed: what was not surveyed
 * shields nobody.
 *
 * @param step       the step, with what was surveyed
 * @param surveyed   share of the nodes of the ground that the survey has a height for (1)
 * @param built      covers as surveyed, by hull
 * @param design     covers as the plan has them after that step, by hull
 * @param stations   dose at the stations as surveyed, for a whole stay as if work stopped here
 * @param planned    dose at the stations as the plan has them after that step
 * @param volumes    soil placed and left
 * @param unseen     ids of hulls that lie by then and that the survey has no height over: nothing about them is judged
 * @param apart      surveyed less planned height after the step (m), on the nodes of the ground; {@code NaN} where it
 *                   was not surveyed or a hull stands bare
 * @param findings   what was found of this survey
 */
public record AsBuilt(WorkStep step, double surveyed, List<HullCover> built, List<HullCover> design,
        List<StationDose> stations, List<StationDose> planned, Volumes volumes, Set<String> unseen,
        ElevationGrid apart, List<Finding> findings) {
    /** Copies the lists. */
    public AsBuilt {
        built = List.copyOf(built);
        design = List.copyOf(design);
        stations = List.copyOf(stations);
        planned = List.copyOf(planned);
        unseen = Set.copyOf(unseen);
        findings = List.copyOf(findings);
    }

    /**
     * Soil as surveyed.
     *
     * @param placed  soil that stands there, less what hulls take up (m3)
     * @param planned soil that the plan has placed by then (m3)
     * @param left    soil still to be placed up to the finished covers (m3)
     * @param over    soil that stands higher than the finished covers (m3)
     */
    public record Volumes(double placed, double planned, double left, double over) {
    }

    /**
     * Whether something was found of the soil of a hull.
     *
     * @param rule what
     * @param hull the hull's id
     * @return whether this survey has such a finding
     */
    public boolean has(WorkRule rule, String hull) {
        return findings().stream().anyMatch(f -> f.rule() == rule && f.subject().equals(hull));
    }

    /**
     * What was surveyed after the steps of an assessment.
     *
     * @param assessment the assessment
     * @param progress   told how far the work has come; may cancel it
     * @return one for each step with a survey, in the order of the work; none where nothing was surveyed
     */
    public static List<AsBuilt> of(Assessment assessment, Progress progress) {
        List<Surveyed> surveys = assessment.surveys().grounds();
        List<AsBuilt> all = new ArrayList<>();
        for (int i = 0; i < surveys.size(); i++) {
            progress.check();
            all.add(of(assessment, surveys.get(i), progress.part((double) i / surveys.size(),
                    (i + 1.0) / surveys.size())));
        }
        return all;
    }

    private static AsBuilt of(Assessment assessment, Surveyed survey, Progress progress) {
        DoseSources sources = new DoseSources(Responses.standard(), assessment.ground().directory());
        WorkStep step = survey.stage().step();
        List<StationDose> stations = SiteDose.of(survey.measured(), survey.built(), sources, progress).stations();
        List<StationDose> planned = assessment.partBuilt().stream().filter(p -> p.step().equals(step.id())).findFirst()
                .map(PartBuilt::stations).orElse(List.of());
        SiteCover cover = assessment.cover().orElseThrow();
        return new AsBuilt(step, survey.share(), survey.built().hulls(), survey.design().hulls(), stations, planned,
                survey.volumes(cover), survey.unseen(), SurveyFindings.apart(assessment.plan(), cover, survey),
                assessment.findings().stream().filter(f -> f.rule() instanceof WorkRule
                        && f.parts().contains(step.id())).toList());
    }
}
