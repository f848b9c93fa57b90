// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import bermwright.foundation.Require;
import bermwright.lowering.body.PlanePoint;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A set of back stays, one from each pole head to the ground.
 *
 * @param anchorAt     where they reach the ground in the lay-down plane
 * @param halfSpread   half the distance between the outermost anchors (m), zero or more
 * @param breakingLoad breaking load of each (N), positive; absent where it was not given
 * @param anchor       what holds each; absent where it was not given
 */
public record Stay(PlanePoint anchorAt, double halfSpread, OptionalDouble breakingLoad, Optional<Anchor> anchor) {
    /** Refuses a breaking load that is not positive. */
    public Stay {
        Objects.requireNonNull(anchorAt, "anchorAt");
        Objects.requireNonNull(anchor, "anchor");
        Require.notNegative("half-spread of the stays", halfSpread, "m");
        breakingLoad.ifPresent(v -> Require.positive("breaking load of a stay", v, "N"));
    }
}
