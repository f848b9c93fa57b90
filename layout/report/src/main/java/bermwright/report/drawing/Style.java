// SPDX-License-Identifier: Apache-2.0
package bermwright.report.drawing;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How a figure is drawn: names and values in turn, by the names that SVG has for them. What is not said is handed down
 * from the group around it.
 *
 * @param words names and values in turn
 */
public record Style(List<String> words) {
    /** Copies the list. */
    public Style {
        words = List.copyOf(words);
    }

    static Style of(String... words) {
        return new Style(Arrays.asList(words));
    }

    /**
     * A value by its name.
     *
     * @param name the name
     * @return the value; empty where it is not said
     */
    public Optional<String> value(String name) {
        for (int i = 0; i + 1 < words.size(); i += 2) {
            if (words.get(i).equals(name)) {
                return Optional.of(words.get(i + 1));
            }
        }
        return Optional.empty();
    }

    /**
     * A number by its name.
     *
     * @param name      the name
     * @param otherwise what holds where it is not said
     * @return the number
     */
    public double number(String name, double otherwise) {
        return value(name).map(Double::parseDouble).orElse(otherwise);
    }

    /**
     * Lengths of dashes and gaps.
     *
     * @return the lengths (px); none for a whole line
     */
    public double[] dashes() {
        return value("stroke-dasharray").filter(d -> !d.equals("none")).map(Style::numbers).orElse(new double[0]);
    }

    /**
     * A turn about a place.
     *
     * @return angle clockwise (deg) and the place (px); empty where it is not turned
     */
    public Optional<double[]> turn() {
        return value("transform").map(t -> numbers(t.substring(t.indexOf('(') + 1, t.indexOf(')'))));
    }

    private static double[] numbers(String words) {
        return Arrays.stream(words.strip().split("[ ,]+")).mapToDouble(Double::parseDouble).toArray();
    }
}
