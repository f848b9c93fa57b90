// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import bermwright.report.drawing.Drawing;
import bermwright.report.page.Html;
import bermwright.report.page.Table;
import java.util.ArrayList;
import java.util.List;

/** The page as it grows, with the drawings and tables that go into files of their own; for one thread. */
final class Pack {
    final Html page = new Html();
    final List<Drawing> drawings = new ArrayList<>();
    final List<Table> tables = new ArrayList<>();

    /** Sets a drawing into the page and keeps it for its own file. */
    Pack figure(Drawing drawing, String words) {
        page.figure(drawing, words);
        drawings.add(drawing);
        return this;
    }

    /** Sets a table into the page and keeps it for its own file. */
    Pack table(Table table) {
        page.table(table);
        tables.add(table);
        return this;
    }

    /** Keeps a table for its own file only. */
    Pack file(Table table) {
        tables.add(table);
        return this;
    }
}
