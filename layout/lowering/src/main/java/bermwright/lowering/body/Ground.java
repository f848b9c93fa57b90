// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.body;

import bermwright.foundation.Require;
import bermwright.foundation.Vec3;

/**
 * The ground the body is laid down on, as one plane.
 *
 * @param gravity     acceleration of free fall (m/s2), positive
 * @param slopeAlong  slope along the lay-down azimuth, positive where the ground falls that way (rad)
 * @param slopeAcross slope across it, positive where the ground falls to the left (rad)
 * @param friction    friction factor between pivot and ground (1), zero or more
 */
public record Ground(double gravity, double slopeAlong, double slopeAcross, double friction) {
    /** Refuses ground without gravity, or steeper than a wall. */
    public Ground {
        Require.positive("gravity", gravity, "m/s2");
        Require.within("slope along", slopeAlong, -Math.PI / 3, Math.PI / 3, "rad");
        Require.within("slope across", slopeAcross, -Math.PI / 3, Math.PI / 3, "rad");
        Require.notNegative("pivot friction", friction, "1");
    }

    /**
     * The way things fall, in the frame of the sloping ground: x along the azimuth, y to the left, z its normal.
     *
     * @return the direction, of length one
     */
    public Vec3 fall() {
        double along = Math.tan(slopeAlong);
        double across = Math.tan(slopeAcross);
        double normal = 1 / Math.sqrt(1 + along * along + across * across);
        return new Vec3(Math.sin(slopeAlong), across * Math.cos(slopeAlong) * normal, -normal);
    }

    /**
     * This ground with another slope across.
     *
     * @param changed slope across, positive where the ground falls to the left (rad)
     * @return the changed ground
     */
    public Ground withSlopeAcross(double changed) {
        return new Ground(gravity, slopeAlong, changed, friction);
    }
}
