// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

import bermwright.finding.Finding;
import bermwright.foundation.Progress;
import bermwright.site.plan.Plan;
import java.util.List;

/** Assesses a plan in full; the search proposes nothing that it refuses. */
@FunctionalInterface
public interface Judge {
    /**
     * Assesses a plan.
     *
     * @param plan     the plan
     * @param progress told how far it has come; may cancel it
     * @return what it finds
     */
    Verdict of(Plan plan, Progress progress);

    /**
     * What the full assessment says.
     *
     * @param plan     the plan that was assessed: the one asked about, or that under covers made thick enough
     * @param refusals findings that refuse the plan
     * @param figures  what is weighed
     */
    record Verdict(Plan plan, List<Finding> refusals, Figures figures) {
        /** Copies the list. */
        public Verdict {
            refusals = List.copyOf(refusals);
        }

        /**
         * Whether nothing refuses the plan.
         *
         * @return true where it may be proposed
         */
        public boolean isPassed() {
            return refusals.isEmpty();
        }
    }
}
