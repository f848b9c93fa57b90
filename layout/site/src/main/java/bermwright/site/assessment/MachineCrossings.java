// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.foundation.ModelNote;
import bermwright.site.burial.MachineOverHull;
import java.util.List;

/** How much soil must lie over each hull before each machine may cross it. */
public final class MachineCrossings {
    private MachineCrossings() {
    }

    /**
     * The crossings of an assessment.
     *
     * @param assessment the assessment
     * @return one for each machine and covered hull
     */
    public static List<MachineOverHull> of(Assessment assessment) {
        return MachineOverHull.of(assessment.plan(), assessment.hulls().stream().flatMap(h -> h.burial().stream())
                .toList());
    }

    /**
     * What the depths rest on.
     *
     * @return the model's note
     */
    public static ModelNote note() {
        return MachineOverHull.note();
    }
}
