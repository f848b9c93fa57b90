// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.edit.Part;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/** Everything a plan holds, in the order in which lists show it. */
public final class Inventory {
    private Inventory() {
    }

    /**
     * All parts.
     *
     * @param plan the plan
     * @return the parts by kind, those a plan holds once last
     */
    public static List<Part> parts(Plan plan) {
        List<Part> parts = new ArrayList<>();
        for (Part.Kind kind : Part.Kind.values()) {
            parts.addAll(parts(plan, kind));
        }
        return parts;
    }

    /**
     * The parts of a kind.
     *
     * @param plan the plan
     * @param kind the kind
     * @return the parts
     */
    public static List<Part> parts(Plan plan, Part.Kind kind) {
        return kind.isSingle() ? List.of(new Part(kind, ""))
                : Part.ids(plan, kind).stream().map(id -> new Part(kind, id)).toList();
    }
}
