// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.foundation.Point;
import bermwright.foundation.Require;
import java.util.OptionalDouble;

/**
 * A straight strip that no soil may lie on, such as the way to a hatch; soil beside it stands back at its own slope.
 *
 * @param from  start of its middle line
 * @param to    end of its middle line, another place
 * @param width width (m), positive
 * @param floor height up to which soil may lie in it (m), such as the skin of a hull under it; empty: the ground
 */
public record KeptClear(Point from, Point to, double width, OptionalDouble floor) {
    /**
     * A strip that is clear down to the ground.
     *
     * @param from  start of its middle line
     * @param to    end of its middle line, another place
     * @param width width (m), positive
     */
    public KeptClear(Point from, Point to, double width) {
        this(from, to, width, OptionalDouble.empty());
    }

    /** Refuses a strip without length or width. */
    public KeptClear {
        Require.positive("length of a strip kept clear", from.distance(to), "m");
        Require.positive("width of a strip kept clear", width, "m");
    }

    /** The nearest point of the middle line. */
    Point nearest(double east, double north) {
        double ex = to.east() - from.east();
        double ny = to.north() - from.north();
        double share = ((east - from.east()) * ex + (north - from.north()) * ny) / (ex * ex + ny * ny);
        double s = Math.max(0, Math.min(1, share));
        return new Point(from.east() + s * ex, from.north() + s * ny);
    }
}
