// SPDX-License-Identifier: Apache-2.0
package bermwright.published;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Writes each comparison with a printed figure to {@code target/published.tsv}, so that the whole list can be read. */
final class PublishedRecord {
    private static final String HEAD = "test\twork\tplace\tprinted\tours\tunit\ttolerance\tremembered\tinside\n";

    private PublishedRecord() {
    }

    record Line(String work, String place, double printed, double ours, String unit, double tolerance,
            boolean remembered, boolean inside) {
    }

    static synchronized void write(String test, Line line) {
        String target = System.getProperty("bermwright.target");
        if (target == null) {
            return;
        }
        Path file = Path.of(target, "published.tsv");
        try {
            Files.createDirectories(file.getParent());
            if (Files.notExists(file)) {
                Files.writeString(file, HEAD, StandardOpenOption.CREATE);
            }
            Files.writeString(file, String.join("\t", test, line.work, line.place, "" + line.printed, "" + line.ours,
                    line.unit, "" + line.tolerance, "" + line.remembered, "" + line.inside) + "\n",
                    StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write " + file, e);
        }
    }
}
