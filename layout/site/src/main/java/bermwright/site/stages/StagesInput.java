// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import bermwright.site.exposure.SiteCover;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.haulage.Ramp;
import bermwright.site.haulage.SoilNeed;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
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

    /**
     * The soil that covers want, and after each the soil of the ramp by which machines reach its crown.
     *
     * @param plan  the plan
     * @param cover its cover
     * @param needs the covers' soil
     * @return the needs with their ramps; none for a cover whose slope the machine climbs
     */
    public static List<SoilNeed> withRamps(Plan plan, SiteCover cover, List<SoilNeed> needs) {
        List<SoilNeed> all = new ArrayList<>();
        List<PlacedCover> covers = PlacedCovers.of(plan, cover);
        for (SoilNeed need : needs) {
            all.add(need);
            covers.stream().filter(c -> c.hull().equals(need.to())).findFirst()
                    .flatMap(c -> plan.hull(c.hull()).flatMap(h -> LiftedCover.of(h, cover.prepared(), c)))
                    .flatMap(lifted -> Ramp.on(plan, need.to(), lifted.top()))
                    .ifPresent(ramp -> all.add(need.forRamp(ramp)));
        }
        return all;
    }
}
