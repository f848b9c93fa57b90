// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Limits and design factors of a plan.
 *
 * @param greatestSlopeUnderHull steepest ground under a lying hull (rad)
 * @param hullSpacing            least distance between hulls (m)
 * @param lineDesignFactor       least breaking load over greatest tension (1)
 * @param anchorDesignFactor     least anchor capacity over its load (1)
 * @param poleDesignFactor       least pole capacity over its thrust (1)
 * @param pivotHoldFactor        factor f on the pivot's load along the ground (1)
 * @param shockDesignFactor      least capacity of any part over its load in a stop or snatch (1)
 * @param afterLossDesignFactor  least capacity of any part over its load after one thing is lost (1)
 * @param workStart              first day of the work; empty where the work has no dates
 * @param nightWorkShare         share of a day's work that is done while the sun is down (1), 0 to 1
 * @param asBuiltLevel           how far a surveyed surface may lie from the plan's (m)
 * @param asBuiltPlace           how far a surveyed hull may lie from the plan's (m)
 * @param annotations                   note, own keys and the keys given
 */
public record Rules(double greatestSlopeUnderHull, double hullSpacing, double lineDesignFactor,
        double anchorDesignFactor, double poleDesignFactor, double pivotHoldFactor, double shockDesignFactor,
        double afterLossDesignFactor, Optional<LocalDate> workStart, double nightWorkShare,
        double asBuiltLevel, double asBuiltPlace, Annotations annotations) {
}
