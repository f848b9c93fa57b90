// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import bermwright.foundation.Require;
import java.util.Objects;

/**
 * The lines that hold the hull back while it goes down.
 *
 * @param count            number of lines (1), at least 1, spread evenly between the outermost lugs
 * @param lug              where they are made fast to the hull
 * @param line             the line
 * @param winch            the winch of each line
 * @param payOutMismatch   how far the lines may differ in length paid out (m), zero or more
 * @param sheaveEfficiency share of the tension that gets over the pole head (1), above 0 up to 1
 * @param ends             termination and lug of each line
 * @param slack            slack that may be in all lines together at hand-over (m), zero or more
 */
public record LoweringLines(int count, Lug lug, Line line, Winch winch, double payOutMismatch,
        double sheaveEfficiency, Ends ends, double slack) {
    /** Slack looked at where nobody says how much (m); common practice, no source. */
    public static final double USUAL_SLACK = 0.1;

    /** Refuses no lines at all, or a sheave that makes force. */
    public LoweringLines {
        Require.atLeast("number of lowering lines", count, 1, "1");
        Objects.requireNonNull(lug, "lug");
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(winch, "winch");
        Require.notNegative("pay-out mismatch", payOutMismatch, "m");
        Require.within("sheave efficiency", sheaveEfficiency, 0.1, 1, "1");
        Objects.requireNonNull(ends, "ends");
        Require.notNegative("slack at hand-over", slack, "m");
    }

    /**
     * Half the distance between the outermost lugs that are in use.
     *
     * @return the half-spread (m), zero for a single line
     */
    public double halfSpread() {
        return count == 1 ? 0 : lug.halfSpread();
    }
}
