// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.body;

import bermwright.foundation.Require;

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
     * Level ground.
     *
     * @param gravity  acceleration of free fall (m/s2), positive
     * @param friction friction factor at the pivot (1), zero or more
     * @return the ground
     */
    public static Ground level(double gravity, double friction) {
        return new Ground(gravity, 0, 0, friction);
    }
}
