// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.site.answer.AnswerTable;
import bermwright.site.answer.Unit;
import java.util.ArrayList;
import java.util.List;

/** Tables of pages and files, made from the table that says what results there are. */
final class AnswerSheets {
    private AnswerSheets() {
    }

    /** Every figure of a table, for each of some things. */
    static <T> Table table(String name, String title, AnswerTable<T> table, List<T> things) {
        return new Table(name, title, table.figures().stream().map(f -> (f.unit().isEmpty()
                ? Column.words(f.column(), f.heading()) : Column.number(f.column(), f.head())).shownIf(f.isShown()))
                .toList(),
                things.stream().map(t -> table.figures().stream().map(f -> f.text(t)).toList()).toList());
    }

    /** The single figures of a thing and of what belongs to it, a row each: figure, value, unit. */
    static <T> Table figures(String name, String title, AnswerTable<T> table, T of) {
        List<List<String>> rows = new ArrayList<>();
        addTo(rows, table, of);
        return new Table(name, title, List.of(Column.words("figure", "figure"), Column.number("value", "value"),
                Column.words("unit", "unit")), rows);
    }

    private static <T> void addTo(List<List<String>> rows, AnswerTable<T> table, T of) {
        table.figures().stream().filter(f -> !f.text(of).isEmpty()).forEach(f -> rows.add(List.of(f.heading(),
                f.text(of), f.unit().map(Unit::symbol).orElse(""))));
        table.parts().stream().filter(p -> !p.many()).forEach(p -> addTo(rows, p, of));
    }

    private static <T, U> void addTo(List<List<String>> rows, AnswerTable.Part<T, U> part, T of) {
        part.of().apply(of).forEach(u -> addTo(rows, part.table(), u));
    }
}
