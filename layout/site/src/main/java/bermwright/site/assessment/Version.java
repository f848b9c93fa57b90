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
        Properties properties = new Properties();
        try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
            properties.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the program's own version", e);
        }
        return properties.getProperty("version");
    }
}
