// SPDX-License-Identifier: Apache-2.0
package bermwright.site.space;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Vec3;
import bermwright.site.plan.Hull;
import bermwright.terrain.grid.TrueMetres;

/**
 * A hull on its way down: it turns about its pivot line, which lies in the plane fitted to its bed.
 *
 * <p>At a tilt t a point at s along the axis and n off it stands at x = s sin t + (n - d) cos t along the bed and
 * z = s cos t - (n - d) sin t off it. The body may swing out of its plane to both sides, about the middle of the
 * pivot line.
 */
public final class FallingHull {
    private final Hull hull;
    private final Vec3 pivot;
    private final Vec3 ahead;
    private final Vec3 left;
    private final Vec3 up;
    private final Revolved body;

    /**
     * A hull on its bed.
     *
     * @param hull   the hull
     * @param height height of the bed at the pivot line (m)
     * @param normal unit normal of the bed
     * @param metres true metres against those of the plan
     */
    public FallingHull(Hull hull, double height, Vec3 normal, TrueMetres metres) {
        this.hull = hull;
        Azimuth way = hull.layDownAzimuth();
        this.pivot = metres.at(hull.lyingBase(metres), height);
        this.up = normal;
        Vec3 level = new Vec3(way.east(), way.north(), 0);
        // Along the bed in the upright plane of the azimuth, so that the pivot line leans with the cross slope.
        double rise = -(normal.x() * level.x() + normal.y() * level.y()) / normal.z();
        this.ahead = new Vec3(level.x(), level.y(), rise).direction();
        this.left = up.cross(ahead);
        this.body = Revolved.of(hull, Vec3.ZERO, Vec3.UP);
    }

    /**
     * The hull.
     *
     * @return the hull
     */
    public Hull hull() {
        return hull;
    }

    /**
     * The middle of the pivot line.
     *
     * @return the place
     */
    public Vec3 pivot() {
        return pivot;
    }

    /**
     * The tilt at which the hull lies: a quarter turn, and more where the pivot stands ahead of the rim.
     *
     * @return the tilt (rad), at least pi/2
     */
    public double restTilt() {
        return Math.PI / 2 + Math.atan(Math.max(0, hull.pivotAhead() - hull.radius()) / hull.length());
    }

    /**
     * How far the body may swing to either side.
     *
     * @return the angle (rad), zero or more
     */
    public double wander() {
        return hull.lowering().map(g -> g.wander()).orElse(0.0);
    }

    /**
     * The distance to keep around the sweep.
     *
     * @return the margin (m), zero or more
     */
    public double margin() {
        return hull.lowering().map(g -> g.margin()).orElse(0.0);
    }

    /**
     * A point of the body.
     *
     * @param point where it is on the body
     * @param tilt  tilt (rad)
     * @param swing how far the body has swung to the left (rad)
     * @return the place
     */
    public Vec3 place(BodyPoint point, double tilt, double swing) {
        double n = point.off - hull.pivotAhead();
        double x = point.along * Math.sin(tilt) + n * Math.cos(tilt);
        double z = point.along * Math.cos(tilt) - n * Math.sin(tilt);
        return at(x * Math.cos(swing) - point.left * Math.sin(swing),
                x * Math.sin(swing) + point.left * Math.cos(swing), z);
    }

    /**
     * A point of a hull.
     *
     * @param along distance from the base plane (m)
     * @param off   distance off the axis, positive to the lay-down side (m)
     * @param left  distance to the left of the lay-down plane (m)
     */
    public record BodyPoint(double along, double off, double left) {
    }

    /**
     * A place seen from the middle of the pivot line.
     *
     * @param x distance along the bed (m)
     * @param y distance to the left (m)
     * @param z distance off the bed (m)
     * @return the place
     */
    public Vec3 at(double x, double y, double z) {
        return pivot.plus(ahead.times(x)).plus(left.times(y)).plus(up.times(z));
    }

    /**
     * A place as seen from the pivot line.
     *
     * @param place the place
     * @return how far along the bed, to the left, and off the bed (m)
     */
    public Vec3 seen(Vec3 place) {
        Vec3 from = place.minus(pivot);
        return new Vec3(from.dot(ahead), from.dot(left), from.dot(up));
    }

    /**
     * The body at a tilt.
     *
     * @param tilt  tilt (rad), 0 standing
     * @param swing how far it has swung to the left (rad)
     * @return the body
     */
    public Revolved body(double tilt, double swing) {
        Vec3 base = place(new BodyPoint(0, 0, 0), tilt, swing);
        return body.moved(base, place(new BodyPoint(1, 0, 0), tilt, swing).minus(base));
    }

    /** Height of the bed at a place, carried on where there is no ground (m). */
    double onBed(Vec3 at) {
        return pivot.z() - (up.x() * (at.x() - pivot.x()) + up.y() * (at.y() - pivot.y())) / up.z();
    }

    /** Radius of a ball about the pivot that holds the body at every tilt (m). */
    double reach() {
        return Math.hypot(hull.length(), hull.pivotAhead() + hull.radius());
    }
}
