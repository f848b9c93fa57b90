// SPDX-License-Identifier: Apache-2.0
package bermwright.report.paper;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/**
 * A font whose letters stay as they are written: pairs such as {@code fi} are not set as one sign, which a search in
 * the file would not find as two letters.
 *
 * @see "OpenType specification, font file: table directory of 16-byte records after 12 bytes; GSUB, glyph substitution"
 */
public final class PlainFont {
    private static final int HEAD = 12;
    private static final int RECORD = 16;
    private static final byte[] SUBSTITUTIONS = "GSUB".getBytes(StandardCharsets.US_ASCII);
    /** A tag that no reader knows, so that the table is passed over. */
    private static final byte[] PASSED_OVER = "gsub".getBytes(StandardCharsets.US_ASCII);

    private PlainFont() {
    }

    /**
     * Opens a font without its table of substitutions.
     *
     * @param beside   the class that the font's library has
     * @param resource the font's resource, a TrueType file
     * @return its bytes
     */
    public static InputStream open(Class<?> beside, String resource) {
        try (InputStream in = Objects.requireNonNull(beside.getResourceAsStream(resource), resource)) {
            byte[] font = in.readAllBytes();
            int tables = ByteBuffer.wrap(font).getShort(4);
            for (int i = 0; i < tables; i++) {
                int at = HEAD + i * RECORD;
                if (ByteBuffer.wrap(font, at, 4).equals(ByteBuffer.wrap(SUBSTITUTIONS))) {
                    System.arraycopy(PASSED_OVER, 0, font, at, 4);
                }
            }
            return new ByteArrayInputStream(font);
        } catch (IOException e) {
            throw new UncheckedIOException("font " + resource + " cannot be read", e);
        }
    }
}
