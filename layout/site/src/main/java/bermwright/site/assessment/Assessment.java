// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.finding.Finding;
import bermwright.foundation.ModelNote;
import bermwright.site.egress.WaysOut;
import bermwright.site.exposure.SiteCover;
import bermwright.site.exposure.SiteDose;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.hazard.SiteHazards;
import bermwright.site.plan.Plan;
import bermwright.site.stages.GearDigging;
import bermwright.site.stages.SettingOutPoint;
import bermwright.site.stages.SlopeChecks;
import bermwright.site.stages.StagesResult;
import java.util.List;
import java.util.Optional;

/**
 * All that is known about a plan, worked out once; command line, report and editor show it and compute nothing.
 *
 * @param plan     the plan
 * @param planName name of the plan file
 * @param version  version of the program
 * @param ground   the ground
 * @param cautions what is said beside every figure
 * @param models   models behind the figures, each once
 * @param findings what is wrong or worth knowing, the worst first
 * @param hulls    one entry for each hull, in the plan's order
 * @param shapes   the site as outlines, with the covers' toes
 * @param cover    the mound over all hulls; empty where the plan has no hull
 * @param dose     dose at every station and in the open; empty where it was not asked for
 * @param earthworks soil to be moved, from where to where, with what and how long
 * @param stages   the order of work and the site after each step; empty where the plan has no order of work
 * @param partBuilt cover and dose after each step that places soil; empty where the plan has no order of work
 * @param settingOut points to be staked out; none where the assessment was not asked for everything
 * @param waysOut  ways out of every hull and to the storm shelters
 * @param slopes   whether mounds, pits and prepared ground stand; empty where earthworks were not asked for
 * @param hazards  covers judged for all that they keep off
 * @param digging  what must be dug for the gear where the plan states no preparation for it
 * @param surveys  what was surveyed after steps of the work
 */
public record Assessment(Plan plan, String planName, String version, SiteGround ground, List<String> cautions,
        List<ModelNote> models, List<Finding> findings, List<HullAssessment> hulls, SiteShapes shapes,
        Optional<SiteCover> cover, Optional<SiteDose> dose, Optional<EarthworksResult> earthworks,
        Optional<StagesResult> stages, List<PartBuilt> partBuilt,
        List<SettingOutPoint> settingOut, WaysOut waysOut, Optional<SlopeChecks> slopes,
        SiteHazards hazards, GearDigging digging, Surveys surveys) {
    /** Copies the lists. */
    public Assessment {
        cautions = List.copyOf(cautions);
        models = List.copyOf(models);
        findings = List.copyOf(findings);
        hulls = List.copyOf(hulls);
        partBuilt = List.copyOf(partBuilt);
        settingOut = List.copyOf(settingOut);
    }

    /**
     * Whether the plan must not be carried out as it is.
     *
     * @return true where a finding has the level refuse
     */
    boolean isRefused() {
        return findings.stream().anyMatch(f -> f.level() == Finding.Level.REFUSE);
    }

    /**
     * The entry of a hull.
     *
     * @param id the hull's id
     * @return its entry, empty where there is no such hull
     */
    public Optional<HullAssessment> hull(String id) {
        return hulls.stream().filter(h -> h.hull().id().equals(id)).findFirst();
    }
}
