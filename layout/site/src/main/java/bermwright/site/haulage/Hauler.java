// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.site.plan.Machine;
import bermwright.site.plan.Plan;
import bermwright.site.plan.WorkStep;
import java.util.Optional;

/** Which machine of a plan carries the soil of a hull or preparation. */
public final class Hauler {
    private Hauler() {
    }

    /**
     * The machine for an object of the plan.
     *
     * @param plan the plan
     * @param to   id of the hull or preparation
     * @return the machine that a step of the work names for it, else the plan's first; empty where there is none
     */
    public static Optional<Machine> of(Plan plan, String to) {
        Optional<String> named = plan.orderOfWork().stream()
                .filter(s -> s.step() != WorkStep.Kind.LOWER && s.of().equals(to))
                .flatMap(s -> s.machine().stream()).findFirst();
        return named.flatMap(id -> plan.machines().stream().filter(m -> m.id().equals(id)).findFirst())
                .or(() -> plan.machines().stream().findFirst());
    }
}
