// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.body;

import bermwright.foundation.Require;

/**
 * The centre of mass in body axes.
 *
 * @param along   distance s from the base plane along the axis (m), positive
 * @param offAxis distance n off the axis, positive to the lay-down side (m)
 * @param spread  one standard deviation of the true centre along the axis (m), zero or more
 */
public record MassCentre(double along, double offAxis, double spread) {
    /** Refuses a centre at or below the base plane. */
    public MassCentre {
        Require.positive("centre of mass from the base", along, "m");
        Require.finite("centre of mass off the axis", offAxis, "m");
        Require.notNegative("spread of the centre of mass", spread, "m");
    }
}
