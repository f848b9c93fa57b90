// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanValues;

/**
 * Adds a part at the end of its list.
 *
 * @param part the part, under an id that is not taken
 * @param json the part as JSON, in the units of the plan file
 */
public record AddItem(Part part, String json) implements PlanEdit {
    @Override
    public Plan applied(Plan plan) {
        int end = Part.ids(plan, part.kind()).size();
        return PlanValues.with(plan, part.kind().key() + "[" + end + "]", json);
    }

    @Override
    public String words() {
        return "Add " + part.words();
    }
}
