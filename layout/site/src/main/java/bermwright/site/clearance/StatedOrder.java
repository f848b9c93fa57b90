// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.site.plan.Plan;
import bermwright.site.plan.WorkStep;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** What the plan's order of work settles, so that two things in one place at different times are no finding. */
final class StatedOrder {
    private final Map<String, WorkStep> steps = new HashMap<>();
    private final Map<String, String> lowered = new HashMap<>();
    private final Map<String, Set<String>> covered = new HashMap<>();

    StatedOrder(Plan plan) {
        for (WorkStep step : plan.orderOfWork()) {
            steps.put(step.id(), step);
            if (step.step() == WorkStep.Kind.LOWER) {
                lowered.put(step.of(), step.id());
            } else if (step.step() == WorkStep.Kind.COVER) {
                covered.computeIfAbsent(step.of(), k -> new HashSet<>()).add(step.id());
            }
        }
    }

    /** Whether every lift over one hull waits, by what the plan states, for another hull to be lowered. */
    boolean lowersBeforeCovering(String lowering, String covering) {
        String lower = lowered.get(lowering);
        Set<String> lifts = covered.get(covering);
        return lower != null && lifts != null
                && lifts.stream().allMatch(lift -> waitsFor(lift, lower, new HashSet<>()));
    }

    /** Whether one hull is lowered, by what the plan states, before another. */
    boolean lowersBefore(String first, String then) {
        String lower = lowered.get(first);
        String later = lowered.get(then);
        return lower != null && later != null && waitsFor(later, lower, new HashSet<>());
    }

    private boolean waitsFor(String step, String other, Set<String> seen) {
        if (!steps.containsKey(step) || !seen.add(step)) {
            return false;
        }
        return steps.get(step).after().stream().anyMatch(b -> b.equals(other) || waitsFor(b, other, seen));
    }
}
