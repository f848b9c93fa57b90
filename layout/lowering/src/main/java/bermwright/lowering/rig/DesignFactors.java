// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import bermwright.foundation.Require;

/**
 * The least ratio of what a part bears to what it is asked, by part.
 *
 * @param line      lines and stays against breaking (1), at least 1
 * @param anchor    anchors against their capacity (1), at least 1
 * @param pole      poles against the lower of their column checks (1), at least 1
 * @param pivotHold the hold along the ground at the pivot (1), at least 1
 */
public record DesignFactors(double line, double anchor, double pole, double pivotHold) {
    /** The house's defaults: 3 for lines, 2 for anchors and poles, 1.5 for the pivot; common practice, no source. */
    public static final DesignFactors COMMON_PRACTICE = new DesignFactors(3, 2, 2, 1.5);

    /** Refuses factors below one. */
    public DesignFactors {
        Require.atLeast("design factor of lines", line, 1, "1");
        Require.atLeast("design factor of anchors", anchor, 1, "1");
        Require.atLeast("design factor of poles", pole, 1, "1");
        Require.atLeast("hold factor of the pivot", pivotHold, 1, "1");
    }
}
