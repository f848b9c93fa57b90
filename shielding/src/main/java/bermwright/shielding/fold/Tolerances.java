// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import bermwright.foundation.Require;

/**
 * How far the cover that stands may be off from the one that was drawn.
 *
 * @param densityShare   one standard deviation of the soil's density, as a share (1), 0 to below 1
 * @param coverThickness one standard deviation of the cover's thickness, across it (m), zero or more
 */
public record Tolerances(double densityShare, double coverThickness) {
    /** Nothing is off. */
    public static final Tolerances NONE = new Tolerances(0, 0);

    /** Refuses a spread that leaves no soil. */
    public Tolerances {
        Require.that(densityShare >= 0 && densityShare < 1,
                "spread of density is %s; accepted: 0 up to but not including 1", densityShare);
        Require.notNegative("spread of cover thickness", coverThickness, "m");
    }
}
