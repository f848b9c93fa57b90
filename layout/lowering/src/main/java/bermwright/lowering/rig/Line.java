// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import bermwright.foundation.Require;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A rope or strap.
 *
 * @param breakingLoad  least breaking load (N), positive; absent where it was not given
 * @param massPerLength mass per length (kg/m), zero or more
 * @param stiffness     EA, tension per strain (N), positive; absent where it was not given
 * @param diameter      diameter (m), positive; absent where it was not given
 * @param thermal        how warm and cold it gets
 */
public record Line(OptionalDouble breakingLoad, double massPerLength, OptionalDouble stiffness,
        OptionalDouble diameter, ThermalAction thermal) {
    /** A line of which nothing is known. */
    public static final Line NOT_GIVEN = new Line(OptionalDouble.empty(), 0, OptionalDouble.empty(),
            OptionalDouble.empty(), ThermalAction.USUAL);

    /** Refuses ratings that are not positive. */
    public Line {
        Objects.requireNonNull(breakingLoad, "breakingLoad");
        Objects.requireNonNull(stiffness, "stiffness");
        Objects.requireNonNull(diameter, "diameter");
        Objects.requireNonNull(thermal, "temper");
        breakingLoad.ifPresent(v -> Require.positive("breaking load", v, "N"));
        stiffness.ifPresent(v -> Require.positive("line stiffness", v, "N"));
        diameter.ifPresent(v -> Require.positive("line diameter", v, "m"));
        Require.notNegative("line mass", massPerLength, "kg/m");
    }
}
