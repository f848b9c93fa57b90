// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.site.plan.Anchor;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.Pivot;
import bermwright.site.plan.Seat;
import bermwright.site.plan.WorkStep;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Which keys things of a kind have: an anchor of ballast has a mass and no width. */
final class KindFields {
    private static final Map<Class<? extends Record>, List<Choice>> CHOICES = Map.of(
            Anchor.class, List.of(new Choice("kind", Arrays.stream(Anchor.Kind.values()).collect(Collectors.toMap(
                    Anchor.Kind::word, k -> k.sizes().stream().map(Anchor.Size::key).collect(Collectors.toSet()))))),
            Pivot.class, List.of(new Choice("kind", Map.of("rim", Set.of(),
                    "shoes", Set.of("ahead_m", "half_spread_m", "foot_area_m2"),
                    "legs", Set.of("count", "footprint_radius_m", "foot_area_m2")))),
            Seat.class, List.of(new Choice("kind", Map.of("ground", Set.of("sunk_m"), "bench", Set.of("sunk_m"),
                    "cradle", Set.of("cradle_height_m", "saddle_count", "saddle_from_end_m", "saddle_contact_deg",
                    "saddle_width_m")))),
            Hull.End.class, List.of(new Choice("shape", Map.of("flat", Set.of(), "dome", Set.of("depth_m"), "cone",
                    Set.of("depth_m")))),
            LoweringGear.class, List.of(new Choice("means", Map.of("lines", Set.of("lines", "poles", "stays",
                    "pull_over", "temperature"), "side thrusters", Set.of("side_thrusters")))),
            CoverPlan.class, List.of(new Choice("base_end", Map.of("covered", Set.of("base_end_m"), "open", Set.of(),
                    "wall", Set.of("base_end_wall"))), new Choice("far_end", Map.of("covered", Set.of("far_end_m"),
                    "open", Set.of(), "wall", Set.of("far_end_wall")))),
            WorkStep.class, List.of(new Choice("step", Map.of("prepare", Set.of(), "lower", Set.of(), "close",
                    Set.of(), "cover", Set.of("lift", "up_to_height_m")))));

    private KindFields() {
    }

    /** A key whose word says which other keys there are. */
    private record Choice(String key, Map<String, Set<String>> keys) {
        private boolean isOther(String name, String word) {
            return keys.containsKey(word) && !keys.get(word).contains(name)
                    && keys.values().stream().anyMatch(of -> of.contains(name));
        }
    }

    /**
     * Whether a thing of its kind has a key.
     *
     * @param type what it is
     * @param name the key
     * @param word the word at another key of the same thing, its default where it is left out
     */
    static boolean has(Class<? extends Record> type, String name, Function<String, String> word) {
        return CHOICES.getOrDefault(type, List.of()).stream().noneMatch(c -> c.isOther(name, word.apply(c.key)));
    }
}
