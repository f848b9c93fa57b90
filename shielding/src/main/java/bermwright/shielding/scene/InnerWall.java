// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.scene;

import bermwright.foundation.Require;

/**
 * Mass that stands against a hull's skin from inside over a part of it: between two stations along the axis and two
 * angles around it.
 *
 * @param fromAlong    where it begins (m), from the base plane
 * @param toAlong      where it ends (m), more than {@code fromAlong}
 * @param fromAround   angle from the crown at which it begins (rad), positive to the left
 * @param toAround     angle at which it ends (rad), more than {@code fromAround} by at most a turn
 * @param arealDensity what it adds to the skin, counted as skin, square to it (kg/m2), zero or more
 */
public record InnerWall(double fromAlong, double toAlong, double fromAround, double toAround, double arealDensity) {
    private static final double TURN = 2 * Math.PI;
    private static final double ROUNDING = 1e-9;

    /** Refuses one without extent, or of more than a turn. */
    public InnerWall {
        Require.that(toAlong > fromAlong, "an inner wall ends at %s m; accepted: more than where it begins, %s m",
                toAlong, fromAlong);
        Require.that(toAround > fromAround && toAround - fromAround <= TURN + ROUNDING,
                "an inner wall goes from %s to %s rad; accepted: onwards by at most a turn", fromAround, toAround);
        Require.notNegative("areal density of an inner wall", arealDensity, "kg/m2");
    }

    boolean holds(double along, double across, double up) {
        if (!(along >= fromAlong - ROUNDING && along <= toAlong + ROUNDING)) {
            return false;
        }
        double on = (Math.atan2(across, up) - fromAround) % TURN;
        return (on < 0 ? on + TURN : on) <= toAround - fromAround;
    }
}
