// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import java.util.Objects;

/**
 * One figure of a place against its limit.
 *
 * @param criterion what is judged
 * @param measured  what was found, in the criterion's unit
 * @param limit     its limit in the same unit
 * @param margin    how far from the limit (1): 1 at best, 0 on it
 */
public record Reason(Criterion criterion, double measured, double limit, double margin) {
    /** Refuses nothing judged. */
    public Reason {
        Objects.requireNonNull(criterion, "criterion");
    }
}
