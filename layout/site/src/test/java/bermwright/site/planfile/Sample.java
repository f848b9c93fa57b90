// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** Plan files of the tests. */
final class Sample {
    static final String EVERY_KEY = text("every-key.json");
    static final String LEAST = text("least.json");

    private Sample() {
    }

    static String text(String name) {
        try (InputStream in = Sample.class.getResourceAsStream(name)) {
            return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
