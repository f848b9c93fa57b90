// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import bermwright.foundation.Point;
import java.util.List;

/**
 * A line of one height, with the higher ground on its left.
 *
 * @param level    its height (m)
 * @param isClosed true where it runs back into itself; the first point is not repeated
 * @param points   its points in order, at least two
 */
public record ContourLine(double level, boolean isClosed, List<Point> points) {
    /** Copies the points. */
    public ContourLine {
        points = List.copyOf(points);
    }
}
