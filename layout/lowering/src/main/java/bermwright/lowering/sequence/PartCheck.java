// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

import bermwright.foundation.Require;

/**
 * One part held against what it is asked at its worst tilt.
 *
 * @param part     the part, in words
 * @param load     what loads it, in words
 * @param demand   what it is asked, in {@code unit}, positive
 * @param capacity what it bears, in {@code unit}
 * @param unit     unit of both
 * @param required the least ratio of capacity to demand asked (1)
 * @param tilt     the tilt at which the ratio is least (rad)
 * @param source   where capacity and required ratio are from
 */
public record PartCheck(String part, String load, double demand, double capacity, String unit, double required,
        double tilt, String source) {
    /** Refuses demands that are not numbers. */
    public PartCheck {
        Require.positive("demand on " + part, demand, unit);
        Require.finite("capacity of " + part, capacity, unit);
        Require.positive("required factor of " + part, required, "1");
    }

    /**
     * The ratio of capacity to demand.
     *
     * @return the ratio (1)
     */
    public double factor() {
        return capacity / demand;
    }

    /**
     * The ratio over what is asked; the part with the least governs.
     *
     * @return the ratio (1), below one where the part fails the check
     */
    public double margin() {
        return factor() / required;
    }

    /**
     * Whether the part bears enough.
     *
     * @return true where the ratio is at least the required one
     */
    public boolean holds() {
        return factor() >= required;
    }
}
