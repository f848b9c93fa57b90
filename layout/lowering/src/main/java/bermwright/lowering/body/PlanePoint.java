// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.body;

import bermwright.foundation.Require;
import bermwright.foundation.Vec3;

/**
 * A point or direction in the lay-down plane: origin on the pivot line, x along the fitted ground in the lay-down
 * azimuth, z along the ground's normal.
 *
 * @param x along the ground (m for a point, 1 for a direction), finite
 * @param z along the ground's normal (m for a point, 1 for a direction), finite
 */
public record PlanePoint(double x, double z) {
    /** The pivot line, seen along itself. */
    public static final PlanePoint PIVOT = new PlanePoint(0, 0);

    /** Refuses points that are not finite. */
    public PlanePoint {
        Require.finite("x in the lay-down plane", x, "m");
        Require.finite("z in the lay-down plane", z, "m");
    }

    /**
     * This point, so far to the left of the lay-down plane: x along, y to the left, z along the normal.
     *
     * @param left distance to the left (m), negative to the right
     * @return the point in space, in lay-down coordinates
     */
    public Vec3 leftBy(double left) {
        return new Vec3(x, left, z);
    }

    /**
     * This point less another.
     *
     * @param other the point to take away
     * @return the difference
     */
    public PlanePoint minus(PlanePoint other) {
        return new PlanePoint(x - other.x, z - other.z);
    }

    /**
     * The distance from the pivot line.
     *
     * @return the distance (m), zero or more
     */
    public double norm() {
        return Math.hypot(x, z);
    }

    /**
     * The distance to another point.
     *
     * @param other the other point
     * @return the distance (m), zero or more
     */
    public double distance(PlanePoint other) {
        return Math.hypot(other.x - x, other.z - z);
    }

    /**
     * The direction from here to another point.
     *
     * @param other the other point, another than this
     * @return the direction, of length one
     * @throws IllegalArgumentException if both are the same point
     */
    public PlanePoint directionTo(PlanePoint other) {
        double length = Require.positive("length of a line", distance(other), "m");
        return new PlanePoint((other.x - x) / length, (other.z - z) / length);
    }

    /**
     * The lever about the pivot line of a force that acts here along a direction, x u_z - z u_x; positive where the
     * force turns the body back towards standing.
     *
     * @param direction direction of the force, of length one
     * @return the lever (m)
     */
    public double lever(PlanePoint direction) {
        return x * direction.z - z * direction.x;
    }
}
