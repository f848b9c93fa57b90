// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import java.nio.file.Path;
import java.util.Objects;

/**
 * Where files stand that plans name by a path beside themselves.
 *
 * @param from folder of the plan that was surveyed for
 * @param to   folder of the plans that are written
 */
public record PlanFolders(Path from, Path to) {
    /** Makes the paths absolute. */
    public PlanFolders {
        from = Objects.requireNonNull(from, "from").toAbsolutePath().normalize();
        to = Objects.requireNonNull(to, "to").toAbsolutePath().normalize();
    }

    /** A path beside the old plan as one beside the new. */
    String moved(String beside) {
        return beside(from.resolve(beside).normalize());
    }

    /** A file as a path beside the new plan. */
    String beside(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        return Objects.equals(whole.getRoot(), to.getRoot()) ? to.relativize(whole).toString().replace('\\', '/')
                : whole.toString();
    }
}
