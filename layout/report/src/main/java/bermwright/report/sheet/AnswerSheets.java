// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.report.page.Table.Column;
import bermwright.report.page.Table;
import bermwright.site.answer.AnswerTable;
import java.util.List;

/** Tables of pages and files, made from the table that says what results there are. */
final class AnswerSheets {
    private AnswerSheets() {
    }

    /** Every figure of a table, for each of some things. */
    static <T> Table table(String name, String title, AnswerTable<T> table, List<T> things) {
        return new Table(name, title, table.figures().stream().map(f -> f.unit().isEmpty()
                ? Column.words(f.column(), f.heading()) : Column.number(f.column(), f.head())).toList(),
                things.stream().map(t -> table.figures().stream().map(f -> f.text(t)).toList()).toList());
    }
}
