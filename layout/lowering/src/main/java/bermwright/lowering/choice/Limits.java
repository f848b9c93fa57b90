// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.choice;

import bermwright.foundation.Require;

/**
 * Within what poles are looked for.
 *
 * @param winchRating    rating of one winch (N), positive
 * @param leastBehind    least distance of the poles behind the pivot line (m), zero or more
 * @param greatestBehind greatest distance (m), more than the least
 * @param greatestHeight greatest height of the poles (m), positive
 */
public record Limits(double winchRating, double leastBehind, double greatestBehind, double greatestHeight) {
    /** Refuses empty ranges. */
    public Limits {
        Require.positive("winch rating", winchRating, "N");
        Require.notNegative("least distance behind the pivot", leastBehind, "m");
        Require.that(greatestBehind > leastBehind, "poles are looked for from %s m to %s m behind the pivot;"
                + " accepted: a rising range.", leastBehind, greatestBehind);
        Require.positive("greatest pole height", greatestHeight, "m");
    }

    /**
     * Limits for a hull: from the back of the standing hull and a metre on to its length behind the pivot, up to one
     * and a half times its length high.
     *
     * @param winchRating rating of one winch (N), positive
     * @param length      length of the hull (m), positive
     * @param back        how far the sweep reaches behind the pivot (m), zero or more
     * @return the limits
     */
    public static Limits of(double winchRating, double length, double back) {
        return new Limits(winchRating, back + 1, back + 1 + length, 1.5 * length);
    }
}
