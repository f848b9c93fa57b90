// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import bermwright.foundation.Point;
import java.util.List;

/**
 * A way kept free.
 *
 * @param id            its id
 * @param width         width (m), above zero
 * @param greatestGrade steepest grade along it (rad)
 * @param line          its middle line, two places or more
 * @param annotations          note, own keys and the keys given
 */
public record Corridor(String id, double width, double greatestGrade, List<Point> line, Annotations annotations) {
    /** Copies the line. */
    public Corridor {
        line = List.copyOf(line);
    }
}
