// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.statics;

import java.util.OptionalDouble;

/**
 * Every force at one tilt, held still.
 *
 * @param tilt         tilt (rad), 0 standing
 * @param lineTotal    pull of all lowering lines together in the lay-down plane (N), zero before balance
 * @param lineEach     tension of the hardest pulled lowering line with its lateral spread, between lug and head (N)
 * @param handBalance  the vertical balance people do by hand, W s_cg / (s_lug sin phi) (N); absent where the line
 *                     does not rise from the lug
 * @param pullOver     tension of the pull-over line (N), zero from balance on
 * @param pivotUp      reaction of the ground on the pivot along the ground's normal, V (N)
 * @param pivotAlong   reaction of the ground on the pivot along the lay-down azimuth, H (N); below zero while the
 *                     base is pulled forward, above zero while it is pushed back
 * @param holdNeeded   what the anchor at the pivot must take, f |H| - mu V (N), zero where friction is enough
 * @param lever        lever of the lines at work about the pivot (m): lowering lines from balance on, else pull-over
 * @param lineAngle    angle of the lowering lines to the ground at the lug (rad), positive where they rise
 * @param lineLength   distance from lug to head of one line (m)
 * @param head         forces at one pole head; all zero without poles
 */
public record TiltState(double tilt, double lineTotal, double lineEach, OptionalDouble handBalance, double pullOver,
        double pivotUp, double pivotAlong, double holdNeeded, double lever, double lineAngle, double lineLength,
        HeadForces head) {

    /**
     * Thrust of one pole along its axis.
     *
     * @return the thrust (N), zero without poles
     */
    public double poleEach() {
        return head.thrust();
    }
}
