// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What comes of working a lowering out: the result, or why there is none.
 *
 * @param result   the result; absent where the case cannot be worked out at all
 * @param findings what is wrong, worst first
 */
public record Lowered(Optional<LoweringResult> result, List<Finding> findings) {
    /** Copies the findings. */
    public Lowered {
        Objects.requireNonNull(result, "result");
        findings = List.copyOf(findings);
    }

    /**
     * Whether any finding refuses the plan.
     *
     * @return true where one does
     */
    public boolean isRefused() {
        return findings.stream().anyMatch(t -> t.level() == Level.REFUSE);
    }
}
