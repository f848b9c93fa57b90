// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.foundation.Progress;
import bermwright.shielding.dose.Responses;
import bermwright.site.exposure.DoseAgainstCover;
import bermwright.site.exposure.DoseSources;
import java.util.List;

/** Asks for dose against areal density with a plan's materials, sun and event. */
public final class DoseCurves {
    private DoseCurves() {
    }

    /**
     * The curves of a plan.
     *
     * @param assessment the assessment
     * @param progress   told how far the work has come; may cancel it
     * @return one entry for each kind of skin, in the plan's order
     */
    public static List<DoseAgainstCover> of(Assessment assessment, Progress progress) {
        return new DoseSources(Responses.standard(), assessment.ground().directory())
                .curves(assessment.plan(), progress);
    }
}
