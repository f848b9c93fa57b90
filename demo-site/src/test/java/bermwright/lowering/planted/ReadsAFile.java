// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.planted;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Planted: mechanics that read a file. */
final class ReadsAFile {
    private ReadsAFile() {
    }

    static String text(Path file) throws IOException {
        return Files.readString(file);
    }
}
