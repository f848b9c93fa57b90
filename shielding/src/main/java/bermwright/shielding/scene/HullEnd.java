// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.scene;

import bermwright.foundation.Require;
import java.util.Objects;

/**
 * How a hull ends: flat, half an ellipsoid of revolution, or a cone.
 *
 * @param shape the shape
 * @param depth how far the end reaches along the axis beyond the barrel (m); 0 for a flat end, positive for others
 */
public record HullEnd(Shape shape, double depth) {
    /** A flat end. */
    public static final HullEnd FLAT = new HullEnd(Shape.FLAT, 0);

    /** The shapes an end can have. */
    public enum Shape {
        /** A disc across the axis. */
        FLAT,
        /** Half an ellipsoid of revolution; half a ball where its depth is the radius. */
        DOME,
        /** A cone with its tip on the axis. */
        CONE
    }

    /** Refuses a flat end with depth and a dome or cone without. */
    public HullEnd {
        Objects.requireNonNull(shape, "shape");
        if (shape == Shape.FLAT) {
            Require.that(depth == 0, "depth of a flat end is %s m; accepted: 0 m", depth);
        } else {
            Require.positive("depth of an end", depth, "m");
        }
    }

    /**
     * A domed end.
     *
     * @param depth depth along the axis (m), positive
     * @return the end
     */
    public static HullEnd dome(double depth) {
        return new HullEnd(Shape.DOME, depth);
    }

    /**
     * A conical end.
     *
     * @param depth depth along the axis (m), positive
     * @return the end
     */
    public static HullEnd cone(double depth) {
        return new HullEnd(Shape.CONE, depth);
    }

    /**
     * The radius of the hull a way in from the tip of this end.
     *
     * @param inwards distance from the tip along the axis (m), 0 to the depth
     * @param radius  radius of the barrel (m)
     * @return the radius there (m), 0 to the barrel's
     */
    public double radiusAt(double inwards, double radius) {
        if (depth == 0 || inwards >= depth) {
            return radius;
        }
        double share = Math.max(0, inwards / depth);
        return shape == Shape.CONE ? radius * share : radius * Math.sqrt(share * (2 - share));
    }
}
