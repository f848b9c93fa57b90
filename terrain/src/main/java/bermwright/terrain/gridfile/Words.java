// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Reads a text word by word and knows the line; a word longer than any number is refused. */
final class Words {
    private static final int LONGEST = 80;

    private final InputStream in;
    private final FileTrouble trouble;
    private final byte[] buffer = new byte[1 << 16];
    private final byte[] word = new byte[LONGEST];
    private int at;
    private int end;
    private int line = 1;

    Words(InputStream in, FileTrouble trouble) {
        this.in = in;
        this.trouble = trouble;
    }

    /** The line of the word last read, from 1. */
    int line() {
        return line;
    }

    Optional<String> next() throws IOException {
        int c = read();
        while (c == ' ' || c == '\n' || c == '\r' || c == '\t') {
            if (c == '\n') {
                line++;
            }
            c = read();
        }
        int length = 0;
        while (c > ' ') {
            if (length == LONGEST) {
                throw trouble.badValue(line, "a word", "longer than " + LONGEST + " characters", "numbers");
            }
            word[length++] = (byte) c;
            c = read();
        }
        if (c >= 0) {
            at--;
        }
        if (length == 0 && c >= 0) {
            throw trouble.badValue(line, "a character", "of code " + c, "text");
        }
        return length == 0 ? Optional.empty()
                : Optional.of(new String(word, 0, length, StandardCharsets.ISO_8859_1));
    }

    private int read() throws IOException {
        if (at == end) {
            end = in.read(buffer);
            at = 0;
            if (end <= 0) {
                end = 0;
                return -1;
            }
        }
        return buffer[at++] & 255;
    }
}
