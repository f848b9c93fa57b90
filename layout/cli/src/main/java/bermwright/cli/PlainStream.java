// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Text for a terminal: control characters of names and files are shown, never sent, for they could move the cursor,
 * change the window's title or turn the reading order; and numbers look the same in every language setting.
 */
final class PlainStream extends PrintStream {
    PlainStream(PrintStream out) {
        super(out, false, StandardCharsets.UTF_8);
    }

    @Override
    public void print(String text) {
        super.print(text == null ? "null" : plain(text));
    }

    @Override
    public PrintStream printf(String form, Object... parts) {
        return super.format(Locale.ROOT, form, parts);
    }

    @Override
    public PrintStream format(String form, Object... parts) {
        return super.format(Locale.ROOT, form, parts);
    }

    /** The text with control characters other than line ends and tabs written out as \\u and four digits. */
    static String plain(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean isKept = c == '\n' || c == '\t' || c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n'
                    || !isControl(c);
            plain.append(isKept ? String.valueOf(c) : escaped(c));
        }
        return plain.toString();
    }

    static String escaped(char c) {
        return "\\u" + String.format(Locale.ROOT, "%04x", (int) c);
    }

    /** C0, DEL and C1, the line and paragraph separators, and marks that turn the reading order. */
    static boolean isControl(char c) {
        return c < ' ' || c >= 0x7f && c <= 0x9f || c >= 0x2028 && c <= 0x202e || c >= 0x2066 && c <= 0x2069
                || c == 0x200e || c == 0x200f || c == 0xfeff;
    }
}
