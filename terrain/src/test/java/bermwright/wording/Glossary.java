// SPDX-License-Identifier: Apache-2.0
package bermwright.wording;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** The words of the trade that readers meet, and the words of our own that they must not. */
public final class Glossary {
    private static final String FILE = "/wording/glossary.csv";

    private Glossary() {
    }

    /**
     * Words of our own in a text.
     *
     * @param text what a reader meets
     * @return each with the word of the trade for it
     */
    public static List<String> slips(String text) {
        List<String> slips = new ArrayList<>();
        try (InputStream in = Glossary.class.getResourceAsStream(FILE)) {
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1).toList()) {
                String[] words = line.split(",", 3);
                if (Pattern.compile("\\b" + words[1] + "\\b", Pattern.CASE_INSENSITIVE).matcher(text).find()) {
                    slips.add("'" + words[1] + "', say '" + words[0] + "': " + text);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(FILE, e);
        }
        return slips;
    }
}
