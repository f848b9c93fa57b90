// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.nio.file.Path;

/** Files that stand beside another and share its name. */
final class BesideFile {
    private BesideFile() {
    }

    static Path withEnding(Path file, String ending) {
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return file.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + ending);
    }
}
