// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import bermwright.foundation.Point;
import java.util.List;

/**
 * A wall that holds soil back.
 *
 * @param id        its id
 * @param line      its line in plan, two places or more
 * @param height    height (m), above zero
 * @param thickness thickness (m), above zero
 * @param annotations      note, own keys and the keys given
 */
public record Wall(String id, List<Point> line, double height, double thickness, Annotations annotations) {
    /** Copies the line. */
    public Wall {
        line = List.copyOf(line);
    }

    /**
     * Height that a stretch of the wall stands on: its lower end.
     *
     * @param ground height of the ground under one end (m), not a number where it is not known
     * @param other  height of the ground under the other end (m), the same
     * @return height of the foot (m), not a number where one end's ground is not known
     */
    public double foot(double ground, double other) {
        return Math.min(ground, other);
    }
}
