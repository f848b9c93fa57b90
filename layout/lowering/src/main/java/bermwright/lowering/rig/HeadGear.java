// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import bermwright.foundation.Require;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What sits at a pole head.
 *
 * @param sheaveDiameter diameter of each sheave in its groove (m), positive; absent where it was not given
 * @param sheaveCapacity load that each sheave with its pin bears (N), positive; absent where it was not given
 * @param tieCapacity    what the tie or strut between neighbouring heads bears across the lay-down plane (N),
 *                       positive; absent where it was not given
 */
public record HeadGear(OptionalDouble sheaveDiameter, OptionalDouble sheaveCapacity, OptionalDouble tieCapacity) {
    /** Nothing is known of it. */
    public static final HeadGear NOT_GIVEN = new HeadGear(OptionalDouble.empty(), OptionalDouble.empty(),
            OptionalDouble.empty());

    /** Refuses sizes that are not positive. */
    public HeadGear {
        Objects.requireNonNull(sheaveDiameter, "sheaveDiameter");
        Objects.requireNonNull(sheaveCapacity, "sheaveCapacity");
        Objects.requireNonNull(tieCapacity, "tieCapacity");
        sheaveDiameter.ifPresent(v -> Require.positive("sheave diameter", v, "m"));
        sheaveCapacity.ifPresent(v -> Require.positive("sheave capacity", v, "N"));
        tieCapacity.ifPresent(v -> Require.positive("capacity of the tie between the heads", v, "N"));
    }
}
