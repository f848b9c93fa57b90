// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.scene;

import bermwright.foundation.Vec3;
import java.util.Objects;

/**
 * A hull or tunnel that stands in the scene: a thin skin around an empty inside.
 *
 * @param id    its name in findings
 * @param shape its form
 * @param pose  where it lies
 */
public record HullSolid(String id, HullShape shape, HullPose pose) {
    /** Refuses missing parts. */
    public HullSolid {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(shape, "shape");
        Objects.requireNonNull(pose, "pose");
    }

    /**
     * Whether a point lies inside the skin.
     *
     * @param point the point
     * @return true inside or on the skin
     */
    public boolean contains(Vec3 point) {
        Vec3 local = pose.local(point);
        return local.x() >= 0 && local.x() <= shape.length()
                && Math.hypot(local.y(), local.z()) <= shape.radiusAt(local.x());
    }

    /**
     * The place on the skin of the barrel or an end at a station along the axis and an angle around it.
     *
     * @param along  distance from the base plane (m), 0 to the length
     * @param around angle from the crown, positive to the left (rad)
     * @return the point on the skin
     */
    public Vec3 skin(double along, double around) {
        double r = shape.radiusAt(along);
        return pose.point(along, r * Math.sin(around), r * Math.cos(around));
    }

    /**
     * The middle of the hull.
     *
     * @return the point on the axis at half length
     */
    public Vec3 middle() {
        return pose.point(shape.length() / 2, 0, 0);
    }

    /**
     * The radius of a ball around {@link #middle} that holds the hull.
     *
     * @return the radius (m)
     */
    public double reach() {
        return Math.hypot(shape.length() / 2, shape.radius());
    }
}
