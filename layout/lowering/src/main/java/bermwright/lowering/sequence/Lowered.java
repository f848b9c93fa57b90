// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What comes of working a lowering out: the result, or why there is none.
 *
 * @param result   the result; absent where the case cannot be worked out at all
 * @param troubles what is wrong, worst first
 */
public record Lowered(Optional<LoweringResult> result, List<Trouble> troubles) {
    /** Copies the troubles. */
    public Lowered {
        Objects.requireNonNull(result, "result");
        troubles = List.copyOf(troubles);
    }

    /**
     * Whether any trouble refuses the plan.
     *
     * @return true where one does
     */
    public boolean isRefused() {
        return troubles.stream().anyMatch(t -> t.level() == Trouble.Level.REFUSE);
    }
}
