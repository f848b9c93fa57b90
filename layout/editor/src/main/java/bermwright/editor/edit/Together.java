// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.site.plan.Plan;
import java.util.List;

/**
 * Several edits as one step, one after the other.
 *
 * @param words what people call it
 * @param edits the edits
 */
public record Together(String words, List<PlanEdit> edits) implements PlanEdit {
    /** Copies the list. */
    public Together {
        edits = List.copyOf(edits);
    }

    @Override
    public Plan applied(Plan plan) {
        Plan changed = plan;
        for (PlanEdit edit : edits) {
            changed = edit.applied(changed);
        }
        return changed;
    }
}
