// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The program's version, as the build wrote it. */
public final class Version {
    private Version() {
    }

    /**
     * The version.
     *
     * @return the version, such as {@code 0.1.0}
     */
    public static String text() {
        return properties().getProperty("version");
    }

    /**
     * The version with the commit it was built from, and whether the sources were changed after it.
     *
     * @return such as {@code 0.1.0 (commit 74d5f58a0c1e)}; {@code 0.1.0 (commit not known)} where the build saw no
     *     repository
     */
    public static String whole() {
        return whole(properties());
    }

    static String whole(Properties built) {
        String commit = built.getProperty("commit", "");
        boolean isKnown = commit.matches("[0-9a-f]+");
        boolean isChanged = built.getProperty("changed", "").equals("true");
        return built.getProperty("version") + (isKnown ? " (commit " + commit
                + (isChanged ? ", sources changed since)" : ")") : " (commit not known)");
    }

    private static Properties properties() {
        Properties properties = new Properties();
        try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
            properties.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the program's own version", e);
        }
        return properties;
    }
}
