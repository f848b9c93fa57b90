// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The keywords of a label of the Planetary Data System, version 3, by object: {@code IMAGE.LINES}.
 *
 * @see "Planetary Data System Standards Reference, version 3.8 (2009), JPL D-7669, chapter 12: Object Description
 *     Language"
 */
final class Pds3Label {
    private static final Pattern NUMBER = Pattern.compile(
            "\\(?\\s*([-+]?[0-9.][0-9.eE+-]*)\\s*(?:<\\s*([^>]*?)\\s*>)?.*",
            Pattern.DOTALL);
    private static final Pattern BASED = Pattern.compile("(\\d+)#([0-9A-Fa-f]+)#");

    private final Map<String, String> values = new HashMap<>();
    private final FileTrouble trouble;

    private Pds3Label(FileTrouble trouble) {
        this.trouble = trouble;
    }

    /** A number and the unit behind it, in capitals, empty where there is none. */
    record Quantity(double value, String unit) {
    }

    static Pds3Label of(String text, FileTrouble trouble) {
        Pds3Label label = new Pds3Label(trouble);
        label.read(text.replaceAll("(?s)/\\*.*?\\*/", " "));
        return label;
    }

    private void read(String text) {
        Deque<String> objects = new ArrayDeque<>();
        int at = 0;
        while (at < text.length()) {
            int end = endOfStatement(text, at);
            String statement = text.substring(at, end).strip();
            at = end + 1;
            int equals = statement.indexOf('=');
            if (statement.equals("END")) {
                return;
            }
            if (equals > 0) {
                String key = statement.substring(0, equals).strip().toUpperCase(Locale.ROOT);
                String value = statement.substring(equals + 1).strip();
                if (key.equals("OBJECT") || key.equals("GROUP")) {
                    objects.addLast(value.toUpperCase(Locale.ROOT));
                } else if (key.equals("END_OBJECT") || key.equals("END_GROUP")) {
                    objects.pollLast();
                } else {
                    values.putIfAbsent(objects.isEmpty() ? key : objects.peekLast() + "." + key, value);
                }
            } else if (statement.startsWith("END_OBJECT") || statement.startsWith("END_GROUP")) {
                objects.pollLast();
            }
        }
    }

    /** The end of a line, or of the line in which the quotes and brackets opened in it are closed. */
    private static int endOfStatement(String text, int from) {
        boolean quoted = false;
        int depth = 0;
        for (int i = from; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && (c == '(' || c == '{')) {
                depth++;
            } else if (!quoted && (c == ')' || c == '}')) {
                depth--;
            } else if ((c == '\n' || c == '\r') && !quoted && depth <= 0 && !endsWithEquals(text, from, i)) {
                return i;
            }
        }
        return text.length();
    }

    private static boolean endsWithEquals(String text, int from, int to) {
        return text.substring(from, to).stripTrailing().endsWith("=");
    }

    boolean has(String key) {
        return values.containsKey(key);
    }

    boolean hasObject(String object) {
        return values.keySet().stream().anyMatch(k -> k.startsWith(object + "."));
    }

    /** A value as written, without its quotes. */
    Optional<String> text(String key) {
        return Optional.ofNullable(values.get(key)).map(v -> v.replace("\"", "").replace("'", "").strip());
    }

    /** A value as written, quotes and all. */
    Optional<String> raw(String key) {
        return Optional.ofNullable(values.get(key));
    }

    Optional<Quantity> quantity(String key) {
        Optional<String> text = text(key);
        if (text.isEmpty() || text.get().equals("N/A") || text.get().equals("UNK") || text.get().equals("NULL")) {
            return Optional.empty();
        }
        Matcher number = NUMBER.matcher(text.get());
        if (number.matches()) {
            try {
                double value = Double.parseDouble(number.group(1));
                return Optional.of(new Quantity(value, number.group(2) == null ? ""
                        : number.group(2).toUpperCase(Locale.ROOT)));
            } catch (NumberFormatException e) {
                // said below
            }
        }
        throw trouble.badValue(key, text.get(), "a number, with its unit in <> where it has one");
    }

    double number(String key, double otherwise) {
        return quantity(key).map(Quantity::value).orElse(otherwise);
    }

    double wanted(String key) {
        return quantity(key).orElseThrow(() -> trouble.badValue(key, "not there", "a number")).value();
    }

    /** A whole number that counts something. */
    int count(String key) {
        double value = wanted(key);
        if (!(value >= 1 && value <= Integer.MAX_VALUE) || value != Math.rint(value)) {
            throw trouble.badValue(key, text(key).orElse(""), "a whole number, 1 to " + Integer.MAX_VALUE);
        }
        return (int) value;
    }

    /** A mark for missing numbers: a number, or the bits of one in another base. */
    Optional<Double> mark(String key, SampleKind kind) {
        Optional<String> text = text(key);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Matcher based = BASED.matcher(text.get());
        if (based.matches()) {
            try {
                long bits = Long.parseUnsignedLong(based.group(2), Integer.parseInt(based.group(1)));
                return Optional.of(switch (kind) {
                    case FLOAT32 -> (double) Float.intBitsToFloat((int) bits);
                    case FLOAT64 -> Double.longBitsToDouble(bits);
                    case INT16 -> (double) (short) bits;
                    case INT32 -> (double) (int) bits;
                    default -> (double) bits;
                });
            } catch (NumberFormatException e) {
                throw trouble.badValue(key, text.get(), "a number, or bits such as 16#FF7FFFFB#");
            }
        }
        return quantity(key).map(q -> kind.stored(q.value()));
    }
}
