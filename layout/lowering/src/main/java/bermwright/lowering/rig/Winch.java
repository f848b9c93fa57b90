// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import bermwright.foundation.Require;
import bermwright.lowering.body.PlanePoint;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The winch of each line.
 *
 * @param at        where it stands in the lay-down plane
 * @param rating    pull it is rated for (N), positive; absent where it was not given
 * @param brakeHeat heat its brake can take in one lowering (J), positive; absent where it was not given
 * @param anchor    what holds it to the ground, one for each winch; absent where it was not given
 */
public record Winch(PlanePoint at, OptionalDouble rating, OptionalDouble brakeHeat, Optional<Anchor> anchor) {
    /** Refuses ratings that are not positive. */
    public Winch {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(anchor, "anchor");
        rating.ifPresent(v -> Require.positive("winch rating", v, "N"));
        brakeHeat.ifPresent(v -> Require.positive("brake heat", v, "J"));
    }
}
