// SPDX-License-Identifier: Apache-2.0
package bermwright.foundation;

/**
 * A point or direction in the site frame: x east, y north, z up, right-handed.
 *
 * @param x east (m for a point, 1 for a direction)
 * @param y north (m for a point, 1 for a direction)
 * @param z up (m for a point, 1 for a direction)
 */
public record Vec3(double x, double y, double z) {
    /** The origin of the frame. */
    public static final Vec3 ZERO = new Vec3(0, 0, 0);
    /** Straight up. */
    public static final Vec3 UP = new Vec3(0, 0, 1);

    /**
     * The sum of this and another vector.
     *
     * @param other the vector to add
     * @return the sum
     */
    public Vec3 plus(Vec3 other) {
        return new Vec3(x + other.x, y + other.y, z + other.z);
    }

    /**
     * This vector less another.
     *
     * @param other the vector to take away
     * @return the difference
     */
    public Vec3 minus(Vec3 other) {
        return new Vec3(x - other.x, y - other.y, z - other.z);
    }

    /**
     * This vector stretched.
     *
     * @param factor stretch (1)
     * @return the stretched vector
     */
    public Vec3 times(double factor) {
        return new Vec3(x * factor, y * factor, z * factor);
    }

    /**
     * The scalar product.
     *
     * @param other the other vector
     * @return the scalar product, in the product of both units
     */
    public double dot(Vec3 other) {
        return x * other.x + y * other.y + z * other.z;
    }

    /**
     * The vector product, right-handed.
     *
     * @param other the other vector
     * @return the vector product, in the product of both units
     */
    public Vec3 cross(Vec3 other) {
        return new Vec3(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    /**
     * The length of this vector.
     *
     * @return the length, in the vector's own unit, zero or more
     */
    public double norm() {
        return Math.sqrt(dot(this));
    }

    /**
     * This vector at length one.
     *
     * @return the direction
     * @throws IllegalArgumentException if the length is zero or not finite
     */
    public Vec3 direction() {
        double length = norm();
        Require.positive("length of a direction", length, "m");
        return times(1 / length);
    }

    /**
     * The point seen from above.
     *
     * @return its place in plan
     */
    public Point plan() {
        return new Point(x, y);
    }
}
