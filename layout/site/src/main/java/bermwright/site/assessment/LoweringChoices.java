// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.site.laydown.Alternatives;
import bermwright.site.laydown.Laydown;
import bermwright.site.laydown.LoweringWords;
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
     * How a hull comes to lie, in plain words.
     *
     * @param laydown the laying down
     * @return sequence, hold points, what governs and what motion brings
     */
    public static LoweringWords words(Laydown laydown) {
        return LoweringWords.of(laydown);
    }
}
