// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.foundation.InputException;
import java.util.Locale;
import java.util.StringJoiner;

/** Text typed into a field, as JSON of the plan file. */
final class FieldText {
    private FieldText() {
    }

    /**
     * The JSON of a text.
     *
     * @throws InputException if the text is not of the field's kind at all
     */
    static String json(FormEntry.Field field, String text) {
        return switch (field.kind()) {
            case NUMBER -> number(field, text);
            case TEXT, CHOICE, FILE -> quoted(text);
            case FLAG -> text;
            case CORNERS -> corners(field, text);
            case WORDS -> words(text);
        };
    }

    private static String number(FormEntry.Field field, String text) {
        String plain = text.replace('\u2212', '-').replace(',', '.').replace(" ", "");
        try {
            double value = Double.parseDouble(plain);
            if (Double.isFinite(value) && plain.matches("[-+0-9.eE]+")) {
                return value == Math.rint(value) && Math.abs(value) < 1e15 ? String.valueOf((long) value)
                        : String.valueOf(value);
            }
        } catch (NumberFormatException notANumber) {
            throw refused(field, text);
        }
        throw refused(field, text);
    }

    private static InputException refused(FormEntry.Field field, String text) {
        String accepted = field.rule().lines().filter(line -> line.startsWith("Accepted: ")).findFirst()
                .map(line -> line.substring("Accepted: ".length()).replaceAll("\\.$", "")).orElse("a number");
        return InputException.badValue(new InputException.Place("", 0, field.path()), quoted(text),
                accepted.startsWith("an object") ? "a number, in m" : accepted);
    }

    private static String corners(FormEntry.Field field, String text) {
        StringJoiner list = new StringJoiner(",", "[", "]");
        for (String line : text.split("\n")) {
            if (!line.isBlank()) {
                String[] sides = line.strip().split("[\\s;]+");
                if (sides.length != 2) {
                    throw refused(field, line.strip());
                }
                list.add("[" + number(field, sides[0]) + "," + number(field, sides[1]) + "]");
            }
        }
        return list.toString();
    }

    private static String words(String text) {
        StringJoiner list = new StringJoiner(",", "[", "]");
        for (String word : text.split(",")) {
            if (!word.isBlank()) {
                list.add(quoted(word.strip()));
            }
        }
        return list.toString();
    }

    /** A text as JSON. */
    static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        for (char c : text.toCharArray()) {
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c < ' ') {
                out.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            } else {
                out.append(c);
            }
        }
        return out.append('"').toString();
    }
}
