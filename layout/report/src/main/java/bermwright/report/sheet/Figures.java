// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.report.page.Table.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Single figures as rows of a table: what, value, unit. */
final class Figures {
    /** The columns. */
    static final List<Column> COLUMNS = List.of(Column.words("what", "what"), Column.number("value", "value"),
            Column.words("unit", "unit"));
    final List<List<String>> rows = new ArrayList<>();

    void add(String label, double value, int decimals, String unit) {
        rows.add(List.of(label, Double.isFinite(value) ? Words.fixed(value, decimals) : "",
                "1".equals(unit) ? "" : unit));
    }

    void add(String label, OptionalDouble value, int decimals, String unit) {
        add(label, value.orElse(Double.NaN), decimals, unit);
    }
}
