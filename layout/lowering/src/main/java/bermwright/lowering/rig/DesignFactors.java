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
 * @param shock     any part in a stop or snatch (1), at least 1; where its own factor is less, that
 * @param afterLoss any part after one thing is lost (1), at least 1; where its own factor is less, that
 */
public record DesignFactors(double line, double anchor, double pole, double pivotHold, double shock,
        double afterLoss) {
    /** Least factor against a stop or a snatch; common practice, no source. */
    public static final double USUAL_SHOCK = 1.5;
    /** Least factor after one thing is lost: an accidental design situation, EN 1990:2002, 6.4.3.3, from memory. */
    public static final double USUAL_AFTER_LOSS = 1;
    /** The house's defaults: 3 for lines, 2 for anchors and poles, 1.5 for the pivot; common practice, no source. */
    public static final DesignFactors COMMON_PRACTICE = new DesignFactors(3, 2, 2, 1.5);

    /** Refuses factors below one. */
    public DesignFactors {
        Require.atLeast("design factor of lines", line, 1, "1");
        Require.atLeast("design factor of anchors", anchor, 1, "1");
        Require.atLeast("design factor of poles", pole, 1, "1");
        Require.atLeast("hold factor of the pivot", pivotHold, 1, "1");
        Require.atLeast("design factor against a shock", shock, 1, "1");
        Require.atLeast("design factor after a loss", afterLoss, 1, "1");
    }

    /**
     * Factors with the usual ones for shocks and losses.
     *
     * @param line      lines and stays against breaking (1), at least 1
     * @param anchor    anchors against their capacity (1), at least 1
     * @param pole      poles against the lower of their column checks (1), at least 1
     * @param pivotHold the hold along the ground at the pivot (1), at least 1
     */
    public DesignFactors(double line, double anchor, double pole, double pivotHold) {
        this(line, anchor, pole, pivotHold, USUAL_SHOCK, USUAL_AFTER_LOSS);
    }
}
