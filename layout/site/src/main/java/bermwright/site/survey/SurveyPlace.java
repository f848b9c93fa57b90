// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.plan.Plan;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * A place where the group can lie.
 *
 * @param rank     1 for the best
 * @param centre   mean middle of the beds (projected metres)
 * @param heading  lay-down azimuth of the first hull
 * @param score    least of the margins (1), 0 to 1
 * @param reasons  every figure that was judged
 * @param outlines lying and standing hulls and the sweep of each (projected metres)
 * @param plan     the plan with its hulls there
 */
public record SurveyPlace(int rank, Point centre, Azimuth heading, double score, List<Reason> reasons,
        List<Ring> outlines, Plan plan) {
    /** Copies the lists. */
    public SurveyPlace {
        Objects.requireNonNull(centre, "centre");
        Objects.requireNonNull(heading, "heading");
        reasons = List.copyOf(reasons);
        outlines = List.copyOf(outlines);
        Objects.requireNonNull(plan, "plan");
    }

    /**
     * The figure that holds the score down.
     *
     * @return the reason with the least margin
     */
    public Reason tightest() {
        return reasons.stream().min(Comparator.comparingDouble(Reason::margin)).orElseThrow();
    }
}
