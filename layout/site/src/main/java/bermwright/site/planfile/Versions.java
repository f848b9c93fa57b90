// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Versions of the plan file: a lower one is carried up step by step, a higher one is refused.
 *
 * @param steps the first turns a file of version 1 into one of version 2, and so on
 */
record Versions(List<UnaryOperator<Json.Fields>> steps) {
    /** The key that names the version. */
    static final String KEY = "bermwright_plan";
    /** No version has been followed by another yet. */
    static final Versions RELEASED = new Versions(List.of());

    Versions {
        steps = List.copyOf(steps);
    }

    /** The version this program writes. */
    int newest() {
        return steps.size() + 1;
    }

    /** The file as the newest version would have it, without the key that names the version. */
    Json.Fields migrated(Json.Fields file, At at) {
        At here = at.key(KEY);
        String accepted = newest() == 1 ? "1" : "a whole number 1 to " + newest();
        Json found = file.member(KEY).orElseThrow(() -> here.refuse(file.line(), "missing", accepted));
        if (!(found instanceof Json.Leaf leaf && leaf.kind() == Json.Kind.NUMBER
                && leaf.text().matches("-?\\d{1,9}"))) {
            throw here.refuse(found, accepted);
        }
        int version = Integer.parseInt(((Json.Leaf) found).text());
        if (version > newest()) {
            throw here.refuse(found.line(), version + ", written by a later version of this program", accepted);
        } else if (version < 1) {
            throw here.refuse(found, accepted);
        }
        Json.Fields carried = file.without(KEY);
        for (UnaryOperator<Json.Fields> step : steps.subList(version - 1, steps.size())) {
            carried = step.apply(carried);
        }
        return carried;
    }
}
