// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.Require;

/**
 * How far a dose may be off, as factors on the best value.
 *
 * @param low  factor of the 16th percentile (1), above 0 and at most 1
 * @param high factor of the 84th percentile (1), at least 1
 */
public record Band(double low, double high) {
    /** Nothing is off. */
    public static final Band NONE = new Band(1, 1);

    /** Refuses factors on the wrong side of one. */
    public Band {
        Require.positive("low factor", low, "1");
        Require.that(low <= 1, "low factor is %s; accepted: at most 1", low);
        Require.atLeast("high factor", high, 1, "1");
    }
}
