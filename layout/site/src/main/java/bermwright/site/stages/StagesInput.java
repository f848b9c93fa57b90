// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import bermwright.site.exposure.SiteCover;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import java.util.Optional;

/**
 * What the stages of the work are made from.
 *
 * @param plan       the plan
 * @param ground     the ground as the hulls meet it, preparations made
 * @param covers     the finished covers; hulls without one stay bare
 * @param earthworks hauls and hours; without them the hours of covering are not known
 */
public record StagesInput(Plan plan, ElevationGrid ground, List<PlacedCover> covers,
        Optional<EarthworksResult> earthworks) {
    /** Copies the covers. */
    public StagesInput {
        covers = List.copyOf(covers);
    }

    /**
     * Stages under the cover of a plan; where covers run together, soil belongs to the hull whose axis is nearest.
     *
     * @param plan       the plan
     * @param cover      its cover
     * @param earthworks hauls and hours; without them the hours of covering are not known
     * @return the input
     */
    public static StagesInput under(Plan plan, SiteCover cover, Optional<EarthworksResult> earthworks) {
        return new StagesInput(plan, cover.prepared(), PlacedCovers.of(plan, cover), earthworks);
    }
}
