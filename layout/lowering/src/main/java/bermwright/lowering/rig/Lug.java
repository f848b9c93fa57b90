// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import bermwright.foundation.Require;

/**
 * Where lines are made fast to the hull.
 *
 * @param along      distance s from the base plane along the axis (m), positive
 * @param offAxis    distance n off the axis, positive to the lay-down side (m)
 * @param halfSpread half the distance between the outermost lugs across the lay-down plane (m), zero or more
 */
public record Lug(double along, double offAxis, double halfSpread) {
    /** Refuses lugs at or below the base plane. */
    public Lug {
        Require.positive("lug from the base", along, "m");
        Require.finite("lug off the axis", offAxis, "m");
        Require.notNegative("half-spread of the lugs", halfSpread, "m");
    }
}
