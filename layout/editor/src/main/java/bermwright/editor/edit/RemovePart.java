// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/**
 * Takes a part out, and all that makes no sense without it: tunnels, steps of work, hours of people.
 *
 * @param part the part
 */
public record RemovePart(Part part) implements PlanEdit {
    @Override
    public Plan applied(Plan plan) {
        if (part.kind().isSingle() || !part.isIn(plan)) {
            return plan;
        }
        List<String> paths = new ArrayList<>(PlanNames.gone(plan, part.path(plan)).stream()
                .map(PlanNames.Mention::goes).toList());
        paths.add(part.path(plan));
        return PlanNames.without(plan, paths);
    }

    /**
     * What else goes with the part.
     *
     * @param plan the plan
     * @return what people call each of it, such as {@code tunnel link}; none where nothing else goes
     */
    public List<String> alsoGone(Plan plan) {
        return part.kind().isSingle() || !part.isIn(plan) ? List.of() : PlanNames.gone(plan, part.path(plan)).stream()
                .map(PlanNames.Mention::words).distinct().toList();
    }

    @Override
    public String words() {
        return "Remove " + part.words();
    }
}
