// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.foundation.Progress;
import bermwright.shielding.dose.Responses;
import bermwright.site.exposure.DoseSources;
import bermwright.site.plan.Plan;
import bermwright.site.sizing.CoverSizing;
import bermwright.site.sizing.SizedCover;
import bermwright.site.stages.PreparedGround;

/** Asks for the least cover that meets a plan's limits. */
public final class CoverSearch {
    private CoverSearch() {
    }

    /**
     * Looks for the least cover.
     *
     * @param plan     the plan
     * @param ground   its ground
     * @param progress told how far the work has come; may cancel it
     * @return the least cover found, or the one that comes nearest
     */
    public static SizedCover least(Plan plan, SiteGround ground, Progress progress) {
        return CoverSizing.least(plan, ground.grid(), PreparedGround.of(plan, ground.grid()).surface(),
                new DoseSources(Responses.standard(), ground.directory()), progress);
    }
}
