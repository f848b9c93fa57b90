// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanValues;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * Adds a copy of a part under another id, a way off.
 *
 * @param part  the part
 * @param copy  id of the copy, not taken
 * @param east  how far east the copy lies (m)
 * @param north how far north the copy lies (m)
 */
public record CopyPart(Part part, String copy, double east, double north) implements PlanEdit {
    private static final ObjectMapper JSON = new ObjectMapper();

    @Override
    public Plan applied(Plan plan) {
        if (part.kind().isSingle() || !part.isIn(plan)) {
            return plan;
        }
        try {
            String json = PlanValues.json(plan, part.path(plan)).orElseThrow();
            ObjectNode fields = (ObjectNode) JSON.readTree(json);
            fields.put("id", copy);
            Part added = new Part(part.kind(), copy);
            Plan changed = new AddItem(added, JSON.writeValueAsString(fields)).applied(plan);
            return new Move(added, east, north).applied(changed);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("the plan wrote text that is not JSON: " + impossible.getMessage(),
                    impossible);
        }
    }

    @Override
    public String words() {
        return "Copy " + part.words() + " as " + copy;
    }
}
