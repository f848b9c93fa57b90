// SPDX-License-Identifier: Apache-2.0
package bermwright.report.page;

import bermwright.foundation.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A table, written to a file of comma-separated values and set into a page.
 *
 * @param name    file-safe name
 * @param title   title for people
 * @param columns columns in order
 * @param rows    cells in the columns' order, a dot for the decimals; an empty cell where a value is not known
 */
public record Table(String name, String title, List<Column> columns, List<List<String>> rows) {
    /** Copies the lists and refuses rows of another length than the columns. */
    public Table {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            Require.that(row.size() == columns.size(), "%s cells for %s columns.", row.size(), columns.size());
        }
    }

    /**
     * A column.
     *
     * @param key     its name in files, ending in its unit where it carries a quantity
     * @param heading its words in pages
     * @param kind    words or numbers
     * @param isShown whether pages show it; files always do
     */
    public record Column(String key, String heading, Kind kind, boolean isShown) {
        /**
         * A column of words.
         *
         * @param key     its name in files
         * @param heading its words in pages
         * @return the column
         */
        public static Column words(String key, String heading) {
            return new Column(key, heading, Kind.WORDS, true);
        }

        /**
         * A column of numbers.
         *
         * @param key     its name in files, ending in its unit
         * @param heading its words in pages
         * @return the column
         */
        public static Column number(String key, String heading) {
            return new Column(key, heading, Kind.NUMBER, true);
        }

        /**
         * The column where pages leave it out.
         *
         * @param shows whether pages show it
         * @return the changed copy
         */
        public Column shownIf(boolean shows) {
            return new Column(key, heading, kind, shows);
        }
    }

    /** What a column holds. */
    public enum Kind {
        /** Words, to the left. */
        WORDS,
        /** Numbers, to the right. */
        NUMBER
    }

    /**
     * The table as pages show it.
     *
     * @return the table without the columns that are for files alone
     */
    public Table shown() {
        int[] at = IntStream.range(0, columns.size()).filter(i -> columns.get(i).isShown).toArray();
        return new Table(name, title, IntStream.of(at).mapToObj(columns::get).toList(),
                rows.stream().map(r -> IntStream.of(at).mapToObj(r::get).toList()).toList());
    }

    /**
     * The table as comma-separated values with a head line, UTF-8, one number a cell.
     *
     * <p>Words that a spreadsheet would take for a formula get an apostrophe before them. Where a page shows several
     * numbers in a cell, the file has a column for each.
     *
     * @return the text
     */
    public String csv() {
        List<CsvCells> cells = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            int column = i;
            cells.add(CsvCells.of(columns.get(i).key, columns.get(i).kind == Kind.NUMBER,
                    rows.stream().map(r -> r.get(column)).toList()));
        }
        StringBuilder text = new StringBuilder(cells.stream().flatMap(c -> c.keys().stream())
                .collect(Collectors.joining(",")));
        text.append("\r\n");
        for (int row = 0; row < rows.size(); row++) {
            int at = row;
            text.append(cells.stream().flatMap(c -> c.rows().get(at).stream()).map(Table::quoted)
                    .collect(Collectors.joining(","))).append("\r\n");
        }
        return text.toString();
    }

    private static String quoted(String words) {
        return words.matches("(?s).*[\",\\r\\n].*") ? '"' + words.replace("\"", "\"\"") + '"' : words;
    }
}
