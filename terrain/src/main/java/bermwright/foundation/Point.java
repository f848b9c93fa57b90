// SPDX-License-Identifier: Apache-2.0
package bermwright.foundation;

/**
 * A place in plan.
 *
 * @param east  east (m), finite
 * @param north north (m), finite
 */
public record Point(double east, double north) {
    /** Refuses places that are not finite. */
    public Point {
        Require.finite("east", east, "m");
        Require.finite("north", north, "m");
    }

    /**
     * The distance in plan to another place.
     *
     * @param other the other place
     * @return the distance (m), zero or more
     */
    public double distance(Point other) {
        return Math.hypot(other.east - east, other.north - north);
    }

    /**
     * The distance in plan to the nearest place of a straight stretch.
     *
     * @param from one end of it
     * @param to   the other end, which may be the same
     * @return the distance (m), zero or more
     */
    public double distance(Point from, Point to) {
        double dx = to.east - from.east;
        double dy = to.north - from.north;
        double square = dx * dx + dy * dy;
        double share = square > 0 ? ((east - from.east) * dx + (north - from.north) * dy) / square : 0;
        double t = Math.max(0, Math.min(1, share));
        return Math.hypot(east - from.east - t * dx, north - from.north - t * dy);
    }

    /**
     * The place a way off along an azimuth and to its left.
     *
     * @param azimuth the direction of travel
     * @param along   distance along it (m), negative for behind
     * @param left    distance to the left of it (m), negative for the right
     * @return the place reached
     */
    public Point moved(Azimuth azimuth, double along, double left) {
        return new Point(east + along * azimuth.east() - left * azimuth.north(),
                north + along * azimuth.north() + left * azimuth.east());
    }

    /**
     * The point in space above or below this place.
     *
     * @param height height (m)
     * @return the point in space
     */
    public Vec3 at(double height) {
        return new Vec3(east, north, height);
    }
}
