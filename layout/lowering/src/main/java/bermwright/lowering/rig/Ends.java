// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import bermwright.foundation.Require;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * How a line ends: its termination, and the lug on the hull that it is made fast to.
 *
 * @param termination share of the line's breaking load that its termination keeps (1), above 0 up to 1
 * @param lugCapacity what each lug and the hull round it bear (N), positive; absent where it was not given
 */
public record Ends(double termination, OptionalDouble lugCapacity) {
    /** A ferrule-secured eye keeps 0.9; EN 13414-1, factor KT. The lug is not given. */
    public static final Ends USUAL = new Ends(0.9, OptionalDouble.empty());

    /** Refuses terminations stronger than the line. */
    public Ends {
        Require.within("termination efficiency", termination, 1e-3, 1, "1");
        Objects.requireNonNull(lugCapacity, "lugCapacity");
        lugCapacity.ifPresent(v -> Require.positive("lug capacity", v, "N"));
    }
}
