// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import bermwright.foundation.Require;
import bermwright.lowering.body.PlanePoint;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The line that pulls the standing hull over its balance.
 *
 * @param lug      where it is made fast to the hull
 * @param anchorAt where its winch and anchor are, ahead of the hull
 * @param rating   pull its winch is rated for (N), positive; absent where it was not given
 * @param anchor   what holds it; absent where it was not given
 * @param line     the line
 * @param ends     its termination and lug
 */
public record PullOver(Lug lug, PlanePoint anchorAt, OptionalDouble rating, Optional<Anchor> anchor,
        Line line, Ends ends) {
    /** Refuses a rating that is not positive. */
    public PullOver {
        Objects.requireNonNull(lug, "lug");
        Objects.requireNonNull(anchorAt, "anchorAt");
        Objects.requireNonNull(anchor, "anchor");
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(ends, "ends");
        rating.ifPresent(v -> Require.positive("pull-over winch rating", v, "N"));
    }

    /**
     * A pull-over line of which nothing is known but its place and its winch.
     *
     * @param lug      where it is made fast to the hull
     * @param anchorAt where its winch and anchor are
     * @param rating   pull its winch is rated for (N)
     * @param anchor   what holds it
     */
    public PullOver(Lug lug, PlanePoint anchorAt, OptionalDouble rating, Optional<Anchor> anchor) {
        this(lug, anchorAt, rating, anchor, Line.NOT_GIVEN, Ends.USUAL);
    }
}
