// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanValues;

/**
 * Gives a key of the plan another value, or adds an item one past the end of a list. A new id reaches all that names
 * the thing: tunnels, steps of work, walls, pads, machines and people.
 *
 * @param path path of the value, such as {@code hulls[0].length_m}
 * @param json the value as JSON, in the units of the plan file
 * @param words what people call the change
 */
public record SetValue(String path, String json, String words) implements PlanEdit {
    private static final String ID = ".id";

    @Override
    public Plan applied(Plan plan) {
        Plan changed = PlanValues.with(plan, path, json);
        if (!path.endsWith(ID)) {
            return changed;
        }
        // What named it by its old id names it by the new one.
        String item = path.substring(0, path.length() - ID.length());
        return PlanValues.json(changed, path).map(id -> PlanNames.renamed(changed, PlanNames.of(plan, item),
                id.substring(1, id.length() - 1))).orElse(changed);
    }
}
