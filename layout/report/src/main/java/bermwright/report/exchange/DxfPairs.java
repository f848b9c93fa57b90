// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import bermwright.foundation.Vec3;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** The lines of a drawing exchange file as they grow: group code and value, a line each; for one thread. */
final class DxfPairs {
    private static final int DECIMALS = 4;
    private static final int DELETE = 0x7F;

    private final StringBuilder text = new StringBuilder();

    private final boolean narrow;

    DxfPairs() {
        this(false);
    }

    /** Lines without blanks before codes, ended by a line feed alone, where there are very many of them. */
    DxfPairs(boolean narrow) {
        this.narrow = narrow;
    }

    DxfPairs pair(int code, String value) {
        String digits = Integer.toString(code);
        String end = narrow ? "\n" : "\r\n";
        text.append("   ", 0, narrow ? 0 : Math.max(0, 3 - digits.length())).append(digits).append(end).append(value)
                .append(end);
        return this;
    }

    /** A name or a sentence, in which no sign is taken for a command. */
    DxfPairs words(int code, String words) {
        return pair(code, ascii(words));
    }

    DxfPairs number(int code, double value) {
        return pair(code, Decimals.appendTrimmed(new StringBuilder(16), value, DECIMALS).toString());
    }

    /** A place under the codes 10, 20, 30; a height that is not known as 0. */
    DxfPairs place(Vec3 place) {
        return place(10, place);
    }

    /** A place under a code and the ones 10 and 20 beyond it; a height that is not known as 0. */
    DxfPairs place(int first, Vec3 place) {
        return number(first, place.x()).number(first + 10, place.y())
                .number(first + 20, Double.isNaN(place.z()) ? 0 : place.z());
    }

    void write(Path file) throws IOException {
        Files.write(file, text.toString().getBytes(StandardCharsets.US_ASCII));
    }

    /**
     * Words in the signs of these files: beyond ASCII, and for the signs that open a command there (backslash, percent,
     * caret), U+XXXX after a backslash, in four hexadecimal digits for each unit of UTF-16; controls as a blank.
     */
    static String ascii(String words) {
        StringBuilder safe = new StringBuilder();
        for (char sign : words.toCharArray()) {
            if (sign < ' ' || sign == DELETE) {
                safe.append(' ');
            } else if (sign > '~' || sign == '\\' || sign == '%' || sign == '^') {
                safe.append('\\').append('U').append('+').append(String.format(Locale.ROOT, "%04X", (int) sign));
            } else {
                safe.append(sign);
            }
        }
        return safe.toString().isBlank() ? "?" : safe.toString();
    }
}
