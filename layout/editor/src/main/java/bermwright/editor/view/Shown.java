// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** Shows folders and files with the desktop's own programs. */
final class Shown {
    private Shown() {
    }

    /** Opens a file or folder; what stands in the way, in words, where it cannot be. */
    static Optional<String> open(Path path) {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        String program = system.startsWith("windows") ? "explorer" : system.startsWith("mac") ? "open" : "xdg-open";
        try {
            new ProcessBuilder(program, path.toAbsolutePath().toString()).redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
            return Optional.empty();
        } catch (IOException none) {
            return Optional.of("This desktop has no " + program + " to open it with; it is at "
                    + path.toAbsolutePath() + ".");
        }
    }
}
