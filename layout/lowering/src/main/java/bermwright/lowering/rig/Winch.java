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
 * @param holding    pull its brake holds at a standstill (N), positive; absent where it was not given
 * @param spacing    distance between winches that share a pole (m), zero or more
 */
public record Winch(PlanePoint at, OptionalDouble rating, OptionalDouble brakeHeat, Optional<Anchor> anchor,
        OptionalDouble holding, double spacing) {
    /** Winches of three metres side by side (m); chosen here. */
    public static final double USUAL_SPACING = 4;

    /** Refuses ratings that are not positive. */
    public Winch {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(anchor, "anchor");
        Objects.requireNonNull(holding, "holding");
        Require.notNegative("distance between winches", spacing, "m");
        holding.ifPresent(v -> Require.positive("holding pull of a brake", v, "N"));
        rating.ifPresent(v -> Require.positive("winch rating", v, "N"));
        brakeHeat.ifPresent(v -> Require.positive("brake heat", v, "J"));
    }

    /**
     * A winch whose brake is not known.
     *
     * @param at         where it stands in the lay-down plane
     * @param rating     pull it is rated for (N)
     * @param brakeHeat  heat its brake can take in one lowering (J)
     * @param anchor     what holds it to the ground
     */
    public Winch(PlanePoint at, OptionalDouble rating, OptionalDouble brakeHeat, Optional<Anchor> anchor) {
        this(at, rating, brakeHeat, anchor, OptionalDouble.empty(), USUAL_SPACING);
    }
}
