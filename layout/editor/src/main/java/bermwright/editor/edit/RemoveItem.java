// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanValues;

/**
 * Takes out an item of a list, a block that may be left out, or a value so that it takes its default again.
 *
 * @param path  path of what goes
 * @param words what people call the change
 */
public record RemoveItem(String path, String words) implements PlanEdit {
    @Override
    public Plan applied(Plan plan) {
        return PlanValues.without(plan, path);
    }
}
