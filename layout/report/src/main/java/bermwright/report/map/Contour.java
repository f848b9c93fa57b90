// SPDX-License-Identifier: Apache-2.0
package bermwright.report.map;

import bermwright.foundation.Point;
import java.util.List;

/**
 * A contour line.
 *
 * @param level  its height (m)
 * @param places its places in order, two or more
 * @param index  whether it is drawn heavy and carries its height
 */
public record Contour(double level, List<Point> places, boolean index) {
    /** Copies the places. */
    public Contour {
        places = List.copyOf(places);
    }
}
