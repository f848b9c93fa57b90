// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.scene;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Require;
import bermwright.foundation.Vec3;
import java.util.Objects;

/**
 * How a hull lies in the site frame.
 *
 * @param base  centre of the base plane
 * @param axis  unit direction from base to far end
 * @param crown unit direction across the axis, away from the lay-down side
 */
public record HullPose(Vec3 base, Vec3 axis, Vec3 crown) {
    private static final double SQUARE = 1e-6;

    /** Refuses axes that are not of length one and square to each other. */
    public HullPose {
        Objects.requireNonNull(base, "base");
        Require.that(Math.abs(axis.norm() - 1) < SQUARE, "the axis has length %s; accepted: 1", axis.norm());
        Require.that(Math.abs(crown.norm() - 1) < SQUARE, "the crown direction has length %s; accepted: 1",
                crown.norm());
        Require.that(Math.abs(axis.dot(crown)) < SQUARE, "axis and crown are not square to each other: %s",
                axis.dot(crown));
    }

    /**
     * A standing hull; its crown side looks away from the azimuth it would be laid along.
     *
     * @param base    centre of the base plane
     * @param azimuth the lay-down azimuth
     * @return the pose
     */
    public static HullPose upright(Vec3 base, Azimuth azimuth) {
        return new HullPose(base, Vec3.UP, new Vec3(-azimuth.east(), -azimuth.north(), 0));
    }

    /**
     * The direction to the left, looking from base to far end with the crown up.
     *
     * @return the unit direction
     */
    public Vec3 left() {
        return crown.cross(axis);
    }

    /**
     * A point given in body axes, in the site frame.
     *
     * @param along  from the base plane along the axis (m)
     * @param across to the left of the axis (m)
     * @param up     towards the crown (m)
     * @return the point
     */
    public Vec3 point(double along, double across, double up) {
        return base.plus(axis.times(along)).plus(left().times(across)).plus(crown.times(up));
    }

    /**
     * A point of the site frame in body axes.
     *
     * @param point the point
     * @return x along the axis from the base plane, y to the left, z to the crown (m)
     */
    public Vec3 local(Vec3 point) {
        return turned(point.minus(base));
    }

    /**
     * A direction of the site frame in body axes.
     *
     * @param direction the direction
     * @return x along the axis, y to the left, z to the crown (1)
     */
    public Vec3 turned(Vec3 direction) {
        return new Vec3(direction.dot(axis), direction.dot(left()), direction.dot(crown));
    }
}
