// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/** The notes that stand in a plan, each with where it stands. */
public final class PlanNotes {
    private static final String NOTE = "note";

    private PlanNotes() {
    }

    /**
     * A note.
     *
     * @param of   what it stands at, such as {@code hulls[alder].cover}; empty for the plan itself
     * @param text its words
     */
    public record Note(String of, String text) {
    }

    /**
     * The notes of a plan.
     *
     * @param plan the plan
     * @return the notes, in the order of the file
     */
    public static List<Note> of(Plan plan) {
        List<Note> notes = new ArrayList<>();
        collect("", PlanFiles.tree(plan), notes);
        return notes;
    }

    private static void collect(String path, Json value, List<Note> notes) {
        if (value instanceof Json.Fields fields) {
            fields.members().forEach((key, member) -> {
                if (key.equals(NOTE) && member instanceof Json.Leaf leaf) {
                    notes.add(new Note(path, leaf.text()));
                } else if (!key.startsWith("x_")) {
                    collect(path.isEmpty() ? key : path + "." + key, member, notes);
                }
            });
        } else if (value instanceof Json.Items items) {
            for (int i = 0; i < items.items().size(); i++) {
                Json item = items.items().get(i);
                String name = item instanceof Json.Fields fields ? fields.member("id")
                        .filter(Json.Leaf.class::isInstance).map(id -> ((Json.Leaf) id).text())
                        .orElse(Integer.toString(i + 1)) : Integer.toString(i + 1);
                collect(path + "[" + name + "]", item, notes);
            }
        }
    }
}
