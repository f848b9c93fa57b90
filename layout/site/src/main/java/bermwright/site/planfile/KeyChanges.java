// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What two plan files state differently, key by key. */
public final class KeyChanges {
    private static final String NOTHING = "not stated";

    private KeyChanges() {
    }

    /**
     * A key that says something else.
     *
     * @param key    where it stands, such as {@code hulls[alder].cover.crown_m}; objects with an id are found by it
     * @param before what the older plan states there, as JSON; "not stated" where it does not
     * @param after  what the newer plan states there
     */
    public record Change(String key, String before, String after) {
    }

    /**
     * The differences of two plans.
     *
     * @param before the older plan
     * @param after  the newer plan
     * @return the keys that differ, in the newer plan's order, those that are gone last
     */
    public static List<Change> of(Plan before, Plan after) {
        List<Change> changes = new ArrayList<>();
        compare("", Optional.of(PlanFiles.tree(before)), Optional.of(PlanFiles.tree(after)), changes);
        return changes;
    }

    private static void compare(String path, Optional<Json> before, Optional<Json> after, List<Change> changes) {
        Map<String, Json> old = members(before, path);
        Map<String, Json> now = members(after, path);
        if (old.isEmpty() && now.isEmpty()) {
            String was = before.map(JsonText::compact).orElse(NOTHING);
            String is = after.map(JsonText::compact).orElse(NOTHING);
            if (!was.equals(is)) {
                changes.add(new Change(path, was, is));
            }
            return;
        }
        Set<String> keys = new LinkedHashSet<>(now.keySet());
        keys.addAll(old.keySet());
        keys.forEach(key -> compare(key, Optional.ofNullable(old.get(key)), Optional.ofNullable(now.get(key)),
                changes));
    }

    /** The members of an object, or of a list whose objects have ids, by their whole path; none of anything else. */
    private static Map<String, Json> members(Optional<Json> value, String path) {
        Map<String, Json> members = new LinkedHashMap<>();
        if (value.isPresent() && value.get() instanceof Json.Fields fields) {
            fields.members().forEach((key, member) -> members.put(path.isEmpty() ? key : path + "." + key, member));
        } else if (value.isPresent() && value.get() instanceof Json.Items items) {
            for (Json item : items.items()) {
                Optional<Json> id = item instanceof Json.Fields fields ? fields.member("id") : Optional.empty();
                if (id.isEmpty() || !(id.get() instanceof Json.Leaf leaf)) {
                    return Map.of();
                }
                members.put(path + "[" + leaf.text() + "]", item);
            }
        }
        return members;
    }
}
