// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.site.laydown.Alternatives;
import bermwright.site.laydown.Laydown;
import bermwright.site.laydown.LoweringWords;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;

/** Lowering in words, and what else could be done with a plan's hulls; asked for on demand, for it takes longer. */
public final class LoweringChoices {
    private LoweringChoices() {
    }

    /**
     * Means side by side, poles that fit the winches, and the load against the payload, for each hull that is to lie.
     *
     * @param assessment the assessment
     * @return one answer for each such hull, in the plan's order
     */
    public static List<Alternatives> of(Assessment assessment) {
        return Alternatives.all(assessment.plan(), assessment.ground().grid());
    }

    /**
     * What else could be done with one hull, before any assessment.
     *
     * @param plan   the plan
     * @param hull   the hull
     * @param ground its ground
     * @return the answer; it says where nothing can be worked out
     */
    public static Alternatives of(Plan plan, Hull hull, ElevationGrid ground) {
        return Alternatives.of(plan, hull, ground);
    }

    /**
     * How a hull comes to lie, in plain words.
     *
     * @param laydown the laying down
     * @return sequence, hold points, what governs and what motion brings
     */
    public static LoweringWords words(Laydown laydown) {
        return LoweringWords.of(laydown);
    }
}
