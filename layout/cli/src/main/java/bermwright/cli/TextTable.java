// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.answer.AnswerTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** A table in plain text: words to the left, numbers to the right, units in the head. */
final class TextTable {
    private static final String MISSING = "-";

    private final List<String> heads;
    private final List<List<String>> rows = new ArrayList<>();
    private final List<Boolean> isNumber = new ArrayList<>();

    TextTable(String... heads) {
        this.heads = List.of(heads);
        for (int i = 0; i < heads.length; i++) {
            isNumber.add(false);
        }
    }

    /** The brief figures of a table, for each of some things. */
    static <T> TextTable of(AnswerTable<T> table, List<T> things) {
        TextTable made = new TextTable(table.brief().stream().map(f -> f.heading() + f.unit().map(u -> " "
                + u.symbol()).orElse("")).map(String::strip).toArray(String[]::new));
        things.forEach(t -> made.row(table.brief().stream().map(f -> f.unit().isEmpty() ? f.text(t)
                : new Cell(f.text(t).isEmpty() ? MISSING : f.text(t))).toArray()));
        return made;
    }

    /** Adds a row of texts and of figures made by {@code number}. */
    TextTable row(Object... cells) {
        List<String> row = new ArrayList<>();
        for (int i = 0; i < heads.size(); i++) {
            Object cell = i < cells.length ? cells[i] : "";
            if (cell instanceof Cell figure) {
                isNumber.set(i, true);
                row.add(figure.text);
            } else {
                row.add(cell.toString());
            }
        }
        rows.add(row);
        return this;
    }

    /** A figure of a table. */
    record Cell(String text) {
    }

    static Cell number(double value, int digits) {
        return new Cell(words(value, digits));
    }

    static Cell number(OptionalDouble value, int digits) {
        return number(value.orElse(Double.NaN), digits);
    }

    static String words(double value, int digits) {
        if (!Double.isFinite(value)) {
            return MISSING;
        }
        String text = String.format(Locale.ROOT, "%,." + digits + "f", value);
        return text.matches("-[0.,]*") ? text.substring(1) : text;
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    @Override
    public String toString() {
        int[] widths = new int[heads.size()];
        List<List<String>> all = new ArrayList<>();
        all.add(heads);
        all.addAll(rows);
        for (List<String> row : all) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        StringBuilder out = new StringBuilder();
        for (int r = 0; r < all.size(); r++) {
            out.append(line(all.get(r), widths)).append('\n');
            if (r == 0) {
                StringBuilder rule = new StringBuilder("  ");
                for (int width : widths) {
                    rule.append("-".repeat(width)).append("  ");
                }
                out.append(rule.toString().stripTrailing()).append('\n');
            }
        }
        return out.toString();
    }

    private String line(List<String> cells, int[] widths) {
        StringBuilder line = new StringBuilder("  ");
        for (int i = 0; i < widths.length; i++) {
            String pad = " ".repeat(widths[i] - cells.get(i).length());
            line.append(isNumber.get(i) ? pad + cells.get(i) : cells.get(i) + pad).append("  ");
        }
        return line.toString().stripTrailing();
    }
}
