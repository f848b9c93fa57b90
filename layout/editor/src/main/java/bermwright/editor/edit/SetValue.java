// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanValues;

/**
 * Gives a key of the plan another value, or adds an item one past the end of a list.
 *
 * @param path path of the value, such as {@code hulls[0].length_m}
 * @param json the value as JSON, in the units of the plan file
 * @param words what people call the change
 */
public record SetValue(String path, String json, String words) implements PlanEdit {
    @Override
    public Plan applied(Plan plan) {
        return PlanValues.with(plan, path, json);
    }
}
