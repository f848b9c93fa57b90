// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;

/**
 * What earthworks are planned from.
 *
 * @param plan      the plan
 * @param ground    the ground before the work
 * @param needs     soil wanted: covers, fills, ramps
 * @param offers    soil that comes free beside the borrow grounds, such as cuts of preparations
 * @param objective what is to be least
 */
public record EarthworksInput(Plan plan, ElevationGrid ground, List<SoilNeed> needs, List<SoilOffer> offers,
        Objective objective) {
    /** Copies the lists. */
    public EarthworksInput {
        needs = List.copyOf(needs);
        offers = List.copyOf(offers);
    }

    /** What the allocation of soil makes least. */
    public enum Objective {
        /** Machine hours. */
        MACHINE_HOURS,
        /** Energy for driving. */
        ENERGY
    }
}
