// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.site.planfile.Key;
import bermwright.site.planfile.PlanKeys;
import bermwright.site.planfile.Unit;
import bermwright.site.planfile.ValueType;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What people call the keys of the plan file, and texts about keys in these words. */
final class FormWords {
    private static final Pattern PATH = Pattern.compile("(?:[a-z_]+\\[\\d+]\\.)*(?:[a-z_]+\\.)*"
            + "([A-Za-z]+(?:_[A-Za-z0-9]+)+)(?![A-Za-z0-9_])(?!\\.[a-z])");
    /** Where the key's own name says too little without the list that it stands in. */
    private static final Map<String, String> OWN = Map.ofEntries(Map.entry("tunnels.from", "from hatch"),
            Map.entry("tunnels.to", "to hatch"), Map.entry("exposure.limits.from", "what is counted"),
            Map.entry("exposure.limits.over", "counted over"), Map.entry("exposure.limits.published",
            "published limit"), Map.entry("order_of_work.of", "done to"), Map.entry("order_of_work.step",
            "what is done"), Map.entry("order_of_work.after", "waits for"), Map.entry("exposure.people.hours.at",
            "at station"), Map.entry("hulls.held", "held where it is"),
            Map.entry("hulls.lowering.temperature.light.in", "in sun or shade"),
            Map.entry("hulls.pivot.count", "number of legs"),
            Map.entry("hulls.lowering.rate_deg_min", "rate of turning"));
    private static final Map<String, String> LABELS = labels();

    private FormWords() {
    }

    private static Map<String, String> labels() {
        Map<String, String> labels = new HashMap<>();
        PlanKeys.objects().forEach(type -> PlanKeys.of(type).forEach(key -> labels.put(key.name(), plain(key))));
        return Map.copyOf(labels);
    }

    /** The words for the key at a path. */
    static String label(String path, Key key) {
        String own = OWN.get(NamesInPlan.plain(path));
        return own == null ? key.name().equals("id") ? "name" : plain(key) : own;
    }

    /** The key's name without its unit, in plain words. */
    static String plain(Key key) {
        String name = key.name();
        if (key.type() instanceof ValueType.Quantity quantity && quantity.unit() != Unit.ONE) {
            String ending = "_" + quantity.unit().word().replace('/', '_').replace(' ', '_');
            name = name.endsWith(ending) ? name.substring(0, name.length() - ending.length()) : name;
        } else if (key.type() instanceof ValueType.Direction && name.endsWith("_deg")) {
            name = name.substring(0, name.length() - 4);
        }
        return name.replace('_', ' ');
    }

    /** A text with the words for keys in place of their names in the file. */
    static String people(String text) {
        Matcher match = PATH.matcher(text);
        StringBuilder out = new StringBuilder();
        while (match.find()) {
            String label = LABELS.get(match.group(1));
            match.appendReplacement(out, Matcher.quoteReplacement(label == null ? match.group() : label));
        }
        return match.appendTail(out).toString();
    }

    /** What a key says, accepts and stands for when left out, in a person's words. */
    static String rule(Key key) {
        String left = key.required() ? "Must be given." : "Left out: " + key.standard()
                .filter(s -> !s.startsWith("{") && !s.startsWith("[")).map(s -> s.replace("\"", "") + " ("
                + key.source() + ")").orElse(key.source().isEmpty() ? "nothing" : key.source()) + ".";
        return people(key.doc()) + "\nAccepted: " + accepted(key) + ".\n" + people(left);
    }

    private static String accepted(Key key) {
        return people(key.type().accepted().replace("an object with east_m and north_m", "a place east and north"));
    }
}
