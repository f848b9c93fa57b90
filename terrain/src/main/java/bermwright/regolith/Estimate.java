// SPDX-License-Identifier: Apache-2.0
package bermwright.regolith;

import bermwright.foundation.Require;

/**
 * A quantity with its spread.
 *
 * @param best best value, in the unit of its maker
 * @param low  best less one standard deviation
 * @param high best plus one standard deviation
 */
public record Estimate(double best, double low, double high) {
    /** Refuses bounds on the wrong side. */
    public Estimate {
        Require.that(low <= best && best <= high, "an estimate of %s between %s and %s.", best, low, high);
    }

    /**
     * An estimate known to a share of itself.
     *
     * @param best  best value
     * @param share one standard deviation as a share of it (1), zero or more
     * @return the estimate
     */
    static Estimate of(double best, double share) {
        double spread = Math.abs(best) * share;
        return new Estimate(best, best - spread, best + spread);
    }
}
