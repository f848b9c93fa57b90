// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.finding.Finding;
import bermwright.foundation.Progress;
import bermwright.site.exposure.SiteCover;
import bermwright.site.plan.Plan;
import bermwright.site.stages.StagesResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was surveyed of hulls and ground after steps of the work, and where it is not as planned. */
public final class Surveys {
    private final List<SurveyedHull> hulls;
    private final List<Surveyed> grounds;
    private final Plan plan;
    private final Optional<SiteCover> cover;

    private Surveys(List<SurveyedHull> hulls, List<Surveyed> grounds, Plan plan, Optional<SiteCover> cover) {
        this.hulls = List.copyOf(hulls);
        this.grounds = List.copyOf(grounds);
        this.plan = plan;
        this.cover = cover;
    }

    /** The surveys of a plan; those of the ground only where the order of work was worked out. */
    static Surveys of(Plan plan, SiteGround ground, SiteCover cover, Optional<StagesResult> work, Progress progress) {
        List<SurveyedHull> hulls = SurveyedHull.of(plan, cover.prepared());
        List<Surveyed> grounds = work.map(w -> Surveyed.of(new Surveyed.Beside(plan, ground, cover, hulls), w,
                progress)).orElse(List.of());
        return new Surveys(hulls, grounds, plan, Optional.of(cover));
    }

    /**
     * Hulls as they were surveyed.
     *
     * @return in the order of the work
     */
    public List<SurveyedHull> hulls() {
        return hulls;
    }

    List<Surveyed> grounds() {
        return grounds;
    }

    /** What is not as planned. */
    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        hulls.forEach(h -> h.finding(plan.rules().asBuiltPlace()).ifPresent(findings::add));
        for (Surveyed survey : grounds) {
            findings.addAll(SurveyFindings.of(plan, cover.orElseThrow(), survey));
        }
        return findings;
    }
}
