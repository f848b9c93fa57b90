// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Two variants of a plan, figure by figure. */
public final class Comparison {
    private Comparison() {
    }

    /**
     * One figure of both.
     *
     * @param subject what it is about
     * @param name    what it is
     * @param unit    its unit
     * @param mine    value of the first, in {@code unit}; {@code NaN} where it has none
     * @param other   value of the second, in {@code unit}; {@code NaN} where it has none
     */
    public record Row(String subject, String name, String unit, double mine, double other) {
        /**
         * How much the second has more.
         *
         * @return the difference, in {@code unit}; {@code NaN} where one has none
         */
        public double difference() {
            return other - mine;
        }

        /**
         * Whether both say the same.
         *
         * @return true where they do, also where neither has a value
         */
        public boolean isSame() {
            return mine == other || Double.isNaN(mine) && Double.isNaN(other);
        }
    }

    /**
     * Matches the figures of two assessments.
     *
     * @param mine  figures of the first
     * @param other figures of the second
     * @return one row for each figure that either has, in the order of the first, then what only the second has
     */
    public static List<Row> rows(List<Figure> mine, List<Figure> other) {
        Map<String, Figure> left = new LinkedHashMap<>();
        Map<String, Figure> right = new LinkedHashMap<>();
        mine.forEach(f -> left.putIfAbsent(f.key(), f));
        other.forEach(f -> right.putIfAbsent(f.key(), f));
        List<Row> rows = new ArrayList<>();
        left.forEach((key, f) -> rows.add(new Row(f.subject(), f.name(), f.unit(), f.value(),
                right.containsKey(key) ? right.get(key).value() : Double.NaN)));
        right.forEach((key, f) -> {
            if (!left.containsKey(key)) {
                rows.add(new Row(f.subject(), f.name(), f.unit(), Double.NaN, f.value()));
            }
        });
        return rows;
    }
}
