// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.thrust;

import bermwright.foundation.Require;

/**
 * Thrusters at one station along the hull, half on each side of the lay-down plane; the same set pushes over and
 * brakes, turned or doubled.
 *
 * @param count           how many act together (1), at least 1
 * @param thrustEach      thrust of each (N), positive
 * @param along           their station from the base plane (m), positive
 * @param cant            angle of each jet off the direction square to the hull in the lay-down plane (rad)
 * @param specificImpulse specific impulse (s), positive
 */
public record Thrusters(int count, double thrustEach, double along, double cant, double specificImpulse) {
    /** Refuses thrusters that push nothing. */
    public Thrusters {
        Require.atLeast("number of thrusters", count, 1, "1");
        Require.positive("thrust", thrustEach, "N");
        Require.positive("station of the thrusters", along, "m");
        Require.within("cant", cant, 0, Math.toRadians(80), "rad");
        Require.positive("specific impulse", specificImpulse, "s");
    }

    /**
     * What all together bring square to the hull.
     *
     * @return the thrust (N)
     */
    public double together() {
        return count * thrustEach * Math.cos(cant);
    }
}
