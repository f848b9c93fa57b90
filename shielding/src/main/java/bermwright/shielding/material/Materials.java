// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.material;

import bermwright.foundation.Require;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The materials that plans may name: soils, metals, plastics, water, tissue and air, each with its source. */
public final class Materials {
    private static final Pattern OXIDE = Pattern.compile("([A-Z][a-z]?)(\\d?)O(\\d?)");
    private static final Map<String, Material> ALL = read();

    private Materials() {
    }

    /**
     * The material with a name.
     *
     * @param name name, such as {@code steel} or {@code highland}; capitals do not matter
     * @return the material
     * @throws IllegalArgumentException if the material is unknown; the message lists those known
     */
    public static Material named(String name) {
        Material found = ALL.get(name.toLowerCase(Locale.ROOT));
        Require.that(found != null, "material %s is unknown; accepted: %s", name, String.join(", ", names()));
        return found;
    }

    /**
     * Names of all materials.
     *
     * @return the names in the order of the table
     */
    public static List<String> names() {
        return List.copyOf(ALL.keySet());
    }

    private static Map<String, Material> read() {
        Map<String, Material> all = new LinkedHashMap<>();
        for (String[] row : Table.rows(Materials.class, "materials.csv", ";")) {
            Material.Kind kind = Material.Kind.valueOf(row[3].toUpperCase(Locale.ROOT));
            String source = String.join(";", List.of(row).subList(5, row.length));
            Material plain = Material.of(row[0], Double.parseDouble(row[1]), kind, shares(row[4]), source);
            OptionalDouble excitation = row[2].isEmpty() ? OptionalDouble.empty()
                    : OptionalDouble.of(Double.parseDouble(row[2]));
            all.put(row[0], new Material(plain.name(), plain.density(), kind, plain.parts(), excitation, source));
        }
        return all;
    }

    private static Map<String, Double> shares(String composition) {
        Map<String, Double> shares = new LinkedHashMap<>();
        for (String part : composition.split(",")) {
            String[] words = part.trim().split(" ");
            double weight = Double.parseDouble(words[1]);
            Matcher oxide = OXIDE.matcher(words[0]);
            if (oxide.matches()) {
                double metal = count(oxide.group(2)) * Element.of(oxide.group(1)).atomicWeight();
                double oxygen = count(oxide.group(3)) * Element.of("O").atomicWeight();
                shares.merge(oxide.group(1), weight * metal / (metal + oxygen), Double::sum);
                shares.merge("O", weight * oxygen / (metal + oxygen), Double::sum);
            } else {
                shares.merge(words[0], weight, Double::sum);
            }
        }
        return shares;
    }

    private static int count(String digits) {
        return digits.isEmpty() ? 1 : Integer.parseInt(digits);
    }
}
