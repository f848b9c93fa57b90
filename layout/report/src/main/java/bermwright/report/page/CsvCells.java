// SPDX-License-Identifier: Apache-2.0
package bermwright.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column of a table as files hold it: one number a cell. Where pages show several together, such as {@code -49 to
 * +99}, the file has a column for each.
 *
 * @param keys its names
 * @param rows its cells, in each row as many as names
 */
record CsvCells(List<String> keys, List<List<String>> rows) {
    private static final String NUMBER = "[-+]?\\d+(\\.\\d+)?([eE][-+]?\\d+)?";
    private static final Pattern NUMBERS = Pattern.compile(NUMBER + "(( to |, | and | )" + NUMBER + ")*");
    private static final Pattern EACH = Pattern.compile(NUMBER);
    private static final Pattern UNIT = Pattern.compile("_(m|mm|m2|m3|kg|t|kN|N|deg|percent|h|s|days|mSv|kPa|MPa|MJ"
            + "|g_cm2|kg_m2|kg_m3|m_s|deg_min)$");

    /** A column by its name, whether pages show its cells as numbers, and what they show. */
    static CsvCells of(String key, boolean isNumber, List<String> shown) {
        int most = 0;
        boolean spans = true;
        for (String cell : shown) {
            int count = numbers(cell).size();
            if (!cell.isEmpty() && count == 0) {
                most = 0;
                break;
            }
            most = Math.max(most, count);
            spans &= count == 0 || count == 2 && cell.contains(" to ");
        }
        if (most < 2) {
            return new CsvCells(List.of(key), shown.stream().map(c -> List.of(isNumber
                    && EACH.matcher(c).matches() ? c : safe(c))).toList());
        }
        List<String> keys = new ArrayList<>();
        for (int i = 0; i < most; i++) {
            keys.add(named(key, spans ? i == 0 ? "low" : "high" : String.valueOf(i + 1)));
        }
        List<List<String>> rows = new ArrayList<>();
        for (String cell : shown) {
            List<String> row = new ArrayList<>(numbers(cell));
            while (row.size() < most) {
                row.add("");
            }
            rows.add(row);
        }
        return new CsvCells(keys, rows);
    }

    /** The numbers of a cell that holds numbers alone; none for words. */
    private static List<String> numbers(String cell) {
        List<String> found = new ArrayList<>();
        if (NUMBERS.matcher(cell).matches()) {
            Matcher each = EACH.matcher(cell);
            while (each.find()) {
                found.add(each.group().startsWith("+") ? each.group().substring(1) : each.group());
            }
        }
        return found;
    }

    /** A name with a word before its unit. */
    private static String named(String key, String word) {
        Matcher unit = UNIT.matcher(key);
        return unit.find() ? key.substring(0, unit.start()) + "_" + word + unit.group() : key + "_" + word;
    }

    /** Words that no spreadsheet takes for a formula. */
    private static String safe(String words) {
        return words.matches("(?s)[=+@\\-\\t\\r\\n].*") ? "'" + words : words;
    }
}
