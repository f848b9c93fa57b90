// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.site.plan.HatchName;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Tunnel;
import bermwright.site.plan.WorkStep;
import bermwright.site.planfile.PlanValues;
import java.util.List;

/**
 * Takes a part out, and with a hull or preparation the tunnels and steps of work that name it.
 *
 * @param part the part
 */
public record RemovePart(Part part) implements PlanEdit {
    @Override
    public Plan applied(Plan plan) {
        if (part.kind().isSingle() || !part.isIn(plan)) {
            return plan;
        }
        Plan without = PlanValues.without(plan, part.path(plan));
        if (part.kind() != Part.Kind.HULL && part.kind() != Part.Kind.PREPARATION) {
            return without;
        }
        List<Tunnel> tunnels = without.tunnels().stream()
                .filter(t -> part.kind() != Part.Kind.HULL || !names(t.from()) && !names(t.to())).toList();
        List<WorkStep> gone = without.orderOfWork().stream().filter(s -> s.of().equals(part.id())).toList();
        List<String> ids = gone.stream().map(WorkStep::id).toList();
        List<WorkStep> steps = without.orderOfWork().stream().filter(s -> !gone.contains(s))
                .map(s -> new WorkStep(s.id(), s.step(), s.of(), s.lift(), s.upToHeight(), s.machine(),
                        s.after().stream().filter(id -> !ids.contains(id)).toList(), s.asBuilt(),
                        s.annotations())).toList();
        return PlanParts.withWork(without, tunnels, steps);
    }

    private boolean names(String hatch) {
        return HatchName.of(hatch).hull().equals(part.id());
    }

    @Override
    public String words() {
        return "Remove " + part.words();
    }
}
