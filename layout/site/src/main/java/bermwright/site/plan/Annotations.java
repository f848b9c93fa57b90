// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a plan object carries that no check reads, so that a round trip through the file loses nothing.
 *
 * @param note   free text of the key {@code note}
 * @param extras keys that begin with {@code x_}, in their order, each value as JSON text
 * @param given  names of the keys that stood in the file; a key not given takes its printed default
 */
public record Annotations(Optional<String> note, Map<String, String> extras, Set<String> given) {
    /** Nothing kept. */
    public static final Annotations NOTHING = new Annotations(Optional.empty(), Map.of(), Set.of());

    /** Copies what it is given and keeps the order of the extras. */
    public Annotations {
        note = note == null ? Optional.empty() : note;
        extras = Collections.unmodifiableMap(new LinkedHashMap<>(extras));
        given = Set.copyOf(given);
    }
}
