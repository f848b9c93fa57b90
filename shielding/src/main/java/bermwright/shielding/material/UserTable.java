// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.material;

import bermwright.foundation.InputException;
import bermwright.foundation.InputException.Place;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads a table of numbers that a user hands over as CSV: columns named with their units, first column rising. */
public final class UserTable {
    private static final long GREATEST_SIZE = 5_000_000;
    private static final int LEAST_ROWS = 2;

    private final Path file;
    private final List<double[]> rows = new ArrayList<>();
    private final List<Integer> places = new ArrayList<>();
    private final Map<String, List<Note>> notes = new HashMap<>();
    private int head;

    private UserTable(Path file) {
        this.file = file;
    }

    private record Note(String words, int line) {
    }

    /**
     * A column that the table must have.
     *
     * @param name     head of the column, ending in its unit
     * @param least    least value accepted
     * @param greatest greatest value accepted
     */
    public record Column(String name, double least, double greatest) {
    }

    /**
     * Reads a table; lines that begin with {@code #} are notes of the form {@code # key: words}.
     *
     * @param file    the file
     * @param columns columns in order; the first one must rise from row to row
     * @return the table, at least two rows
     * @throws InputException if the file cannot be read, a column is missing or a value is out of order or range
     */
    public static UserTable read(Path file, List<Column> columns) {
        List<String> lines = lines(file);
        UserTable table = new UserTable(file);
        for (int i = 0; i < lines.size(); i++) {
            table.line(lines.get(i).strip(), i + 1, columns);
        }
        if (table.rows.size() < LEAST_ROWS) {
            throw InputException.unreadable(new Place(file.toString(), Math.max(1, lines.size()), ""),
                    "holds " + table.rows.size() + " rows of numbers",
                    "a head with the columns " + head(columns) + " and at least two rows", Optional.empty());
        }
        return table;
    }

    private void line(String line, int number, List<Column> columns) {
        if (line.startsWith("#")) {
            String[] parts = line.substring(1).split(":", 2);
            if (parts.length == 2) {
                notes.computeIfAbsent(parts[0].trim(), key -> new ArrayList<>())
                        .add(new Note(parts[1].trim(), number));
            }
        } else if (!line.isEmpty()) {
            String[] cells = Arrays.stream(line.split(",", -1)).map(String::strip).toArray(String[]::new);
            if (head == 0) {
                checkHead(file, number, cells, columns);
                head = number;
            } else {
                rows.add(row(new Place(file.toString(), number, ""), cells, columns,
                        rows.isEmpty() ? Double.NEGATIVE_INFINITY : rows.get(rows.size() - 1)[0]));
                places.add(number);
            }
        }
    }

    /**
     * The words of a note.
     *
     * @param key key of the note
     * @return the words, absent where the file has no such note
     * @throws InputException if the note stands twice with different words
     */
    public Optional<String> note(String key) {
        List<Note> all = notes.getOrDefault(key, List.of());
        for (Note other : all) {
            if (!other.words.equals(all.get(0).words)) {
                throw InputException.badValue(new Place(file.toString(), other.line, key), other.words,
                        "one line of it, and line " + all.get(0).line + " has " + all.get(0).words);
            }
        }
        return all.stream().findFirst().map(Note::words);
    }

    /**
     * Where a note stands, or where it is missing.
     *
     * @param key key of the note
     * @return its line; the line of the column heads, above which it belongs, where the file has no such note
     */
    public Place place(String key) {
        return new Place(file.toString(), notes.getOrDefault(key, List.of()).stream().findFirst().map(Note::line)
                .orElse(head), key);
    }

    /**
     * One column.
     *
     * @param index index of the column, from 0
     * @return its numbers from top to bottom
     */
    public double[] column(int index) {
        return rows.stream().mapToDouble(row -> row[index]).toArray();
    }

    /**
     * Where a row stands in the file.
     *
     * @param row index of the row, from 0
     * @return line in the file, from 1
     */
    public int line(int row) {
        return places.get(row);
    }

    private static List<String> lines(Path file) {
        Place place = Place.of(file.toString());
        InputException.checkRegular(place, file, "a CSV table of numbers");
        try {
            if (Files.size(file) > GREATEST_SIZE) {
                throw InputException.unreadable(place, "is larger than 5 MB", "a CSV table of numbers",
                        Optional.empty());
            }
            return Files.readAllLines(file, StandardCharsets.UTF_8);
        } catch (MalformedInputException e) {
            throw InputException.unreadable(place, "is not text", "a CSV table in UTF-8", Optional.of(e));
        } catch (IOException e) {
            throw InputException.unreadable(place, "cannot be read", "a readable CSV file", Optional.of(e));
        }
    }

    private static void checkHead(Path file, int line, String[] cells, List<Column> columns) {
        if (!Arrays.asList(cells).equals(columns.stream().map(Column::name).toList())) {
            throw InputException.badValue(new Place(file.toString(), line, "head"), String.join(",", cells),
                    head(columns));
        }
    }

    private static String head(List<Column> columns) {
        return columns.stream().map(Column::name).collect(Collectors.joining(","));
    }

    private static double[] row(Place place, String[] cells, List<Column> columns, double before) {
        if (cells.length != columns.size()) {
            throw InputException.badValue(place, cells.length + " cells", columns.size() + " cells");
        }
        double[] numbers = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            Column column = columns.get(i);
            Place cell = new Place(place.file(), place.line(), column.name());
            numbers[i] = number(cells[i]);
            if (!(numbers[i] >= column.least() && numbers[i] <= column.greatest())) {
                throw InputException.badValue(cell, cells[i].isEmpty() ? "empty" : cells[i],
                        "a number from " + column.least() + " to " + column.greatest());
            }
            if (i == 0 && !(numbers[0] > before)) {
                throw InputException.badValue(cell, cells[0], "greater than " + before + " of the row before");
            }
        }
        return numbers;
    }

    private static double number(String cell) {
        try {
            return Double.parseDouble(cell);
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }
}
