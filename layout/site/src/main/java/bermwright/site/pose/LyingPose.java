// SPDX-License-Identifier: Apache-2.0
package bermwright.site.pose;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.lowering.rest.RestPose;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Pivot;
import bermwright.site.plan.Seat;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.FittedPlane;
import java.util.Optional;

/**
 * A lying hull on its ground: as it comes to rest on it ({@link bermwright.lowering.rest.RestPose}), touching and
 * nowhere inside it, then lifted by its cradle or sunk as the plan says.
 *
 * @param axisStart   middle of the base plane (m)
 * @param axisEnd     tip of the far end on the axis (m)
 * @param bed         plane that fits the ground under the lying hull
 * @param slopeAlong  slope of that plane along the lay-down azimuth (rad), positive where it falls
 * @param slopeAcross slope of that plane across it (rad), positive where it falls to the left
 */
public record LyingPose(Vec3 axisStart, Vec3 axisEnd, FittedPlane bed, double slopeAlong, double slopeAcross) {
    /**
     * The pose of a hull that is to lie.
     *
     * @param hull   the hull
     * @param ground the ground as it is when it comes to lie
     * @return the pose; empty for a hull that stays upright, and where the ground under it is missing or off the grid
     */
    public static Optional<LyingPose> of(Hull hull, ElevationGrid ground) {
        if (hull.arrival() == Hull.Arrival.STAYS_UPRIGHT) {
            return Optional.empty();
        }
        return ground.fittedPlane(hull.bed(ground.metres())).map(plane -> on(plane, hull, ground));
    }

    /**
     * How a hull comes to rest on the ground: its contacts, and whether it rocks or rolls.
     *
     * @param hull    the hull
     * @param ground  the ground as it is when it comes to lie
     * @param gravity gravity (m/s2), positive
     * @return the rest, from which the pose has its pitch; empty where the ground is not known or its centre of mass
     *     is not over it
     */
    public static Optional<RestPose> rest(Hull hull, ElevationGrid ground, double gravity) {
        return RestOfHull.of(hull, hull.lyingBase(ground.metres()), ground, gravity);
    }

    private static LyingPose on(FittedPlane plane, Hull hull, ElevationGrid ground) {
        Azimuth way = hull.layDownAzimuth();
        double across = plane.slopeAcross(way);
        double fall = plane.slopeAlong(way);
        double lift = hull.seat().cradleHeight() - hull.seat().sunk();
        Point base = hull.lyingBase(ground.metres());
        Vec3 foot = base.at(plane.height(base));
        boolean onPivot = standsOnPivot(hull);
        // Weight only tells how far it sinks, which the pose leaves out.
        double lies = RestOfHull.of(hull, base, ground, 1).map(RestPose::pitch).orElse(fall);
        Vec3 along = new Vec3(way.east() * Math.cos(lies), way.north() * Math.cos(lies), -Math.sin(lies));
        Vec3 normal = lies == fall ? plane.normal() : normal(way, lies, across);
        double baseRadius = onPivot ? Math.max(hull.radius(), hull.pivotAhead()) : hull.radius();
        Vec3 start = foot.plus(normal.times(baseRadius));
        double inGround = RestOfHull.deepest(hull, new RestOfHull.Lying(start, along, normal), ground);
        // On legs or shoes it stands on the ground under them at the least.
        double rise = onPivot ? Math.max(ground.height(base) - foot.z(), inGround) : inGround;
        Vec3 lying = start.plus(new Vec3(0, 0, rise)).plus(normal.times(lift));
        return new LyingPose(lying, lying.plus(along.times(hull.length())), plane, fall, across);
    }

    /** Upwards from a plane that falls along an azimuth and to its left. */
    private static Vec3 normal(Azimuth way, double along, double across) {
        double forth = Math.tan(along);
        double left = Math.tan(across);
        return new Vec3(forth * way.east() - left * way.north(), forth * way.north() + left * way.east(), 1)
                .direction();
    }

    /**
     * Legs and shoes stay under the base when nothing else carries it; its axis is then higher than at the tip.
     *
     * @param hull the hull
     * @return whether its base lies on what it turned over
     */
    public static boolean standsOnPivot(Hull hull) {
        return hull.arrival() == Hull.Arrival.LOWERED && hull.pivot().kind() != Pivot.Kind.RIM
                && hull.seat().kind() == Seat.Kind.GROUND && hull.seat().sunk() == 0;
    }

    /**
     * The unit direction from base to far end.
     *
     * @return the direction in the site frame
     */
    public Vec3 direction() {
        return axisEnd.minus(axisStart).direction();
    }

    /**
     * The unit direction away from the lay-down side, square to the axis.
     *
     * @return the direction in the site frame, mostly up
     */
    public Vec3 crown() {
        Vec3 along = direction();
        Vec3 up = Vec3.UP.minus(along.times(along.z()));
        return up.direction();
    }

    /**
     * The unit direction to the left looking from base to far end.
     *
     * @return the direction in the site frame, level
     */
    public Vec3 left() {
        return crown().cross(direction());
    }

    /**
     * A point given in body axes.
     *
     * @param along  distance from the base plane (m)
     * @param across distance to the left (m)
     * @param up     distance from the axis, away from the lay-down side (m)
     * @return the point in the site frame
     */
    public Vec3 place(double along, double across, double up) {
        return axisStart.plus(direction().times(along)).plus(left().times(across)).plus(crown().times(up));
    }
}
