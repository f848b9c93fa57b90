// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.material;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads the tables of published figures that are shipped beside the classes that use them. */
public final class Table {
    private Table() {
    }

    /**
     * The rows of a shipped table, without notes (lines that begin with {@code #}) and without the head.
     *
     * @param beside    class in whose package the table stands
     * @param name      file name of the table
     * @param separator separator of the columns
     * @return the cells, row by row, trimmed
     */
    public static List<String[]> rows(Class<?> beside, String name, String separator) {
        try (InputStream stream = beside.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException("the table " + name + " is missing beside " + beside.getName());
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
            return reader.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).skip(1)
                    .map(line -> trimmed(line.split(separator, -1))).toList();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the table " + name, e);
        }
    }

    /**
     * The rows of a shipped table of numbers.
     *
     * @param beside class in whose package the table stands
     * @param name   file name of the table, columns parted by commas
     * @return the numbers, rows x columns
     */
    public static double[][] numbers(Class<?> beside, String name) {
        return rows(beside, name, ",").stream()
                .map(row -> java.util.Arrays.stream(row).mapToDouble(Double::parseDouble).toArray())
                .toArray(double[][]::new);
    }

    private static String[] trimmed(String[] cells) {
        for (int i = 0; i < cells.length; i++) {
            cells[i] = cells[i].trim();
        }
        return cells;
    }
}
