// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import java.util.OptionalDouble;

/**
 * The lowering lines in space, with their own weight, stretch and temper; at rest unless said otherwise.
 *
 * @param sag              upright sag between lug and head (m)
 * @param sagAtHandOver    the same at hand-over, where the tension is least (m)
 * @param pretension       tension of one line that keeps its sag under a fiftieth of the chord at hand-over (N)
 * @param stretch          stretch of one line from winch to lug (m); absent without a stiffness
 * @param stiffnessShare   share of its stiffness one line keeps at hand-over for its sag (1); absent without one
 * @param paidOut          line paid out from balance to rest (m)
 * @param longest          length of one line from winch to lug at rest, three wraps on the drum not counted (m)
 * @param sheaveLoad       load of one head sheave (N), zero without poles
 * @param lateralAtHead    pull of one line across the lay-down plane (N)
 * @param coolingGain      tension gained by one line that cools by 100 K while the hull cannot follow, chocked or lying
 *                         (N); absent without a stiffness
 * @param coolingShortening how much shorter one line gets that cools by 100 K, as steel does (m): a hull that hangs
 *                         free follows it; of two lines, one in sun and one in shade differ by so much
 * @param mismatch         what unequal pay-out does
 */
public record LineReview(double sag, double sagAtHandOver, double pretension, OptionalDouble stretch,
        OptionalDouble stiffnessShare, double paidOut, double longest, double sheaveLoad, double lateralAtHead,
        OptionalDouble coolingGain, double coolingShortening, Mismatch mismatch) {

    /**
     * What the stated mismatch of two outer lines does on a pivot that does not turn: an upper bound.
     *
     * @param mismatch   difference in length paid out (m)
     * @param difference difference of tension (N); zero for one line or without a stiffness
     * @param hardest    tension of the harder line (N)
     * @param slack      whether the other line hangs slack
     * @param yawMoment  moment about the ground's normal on the pivot (N m)
     * @param rollMoment moment about the lay-down direction on the pivot (N m)
     * @param sidePull   pull along the ground across the plane that a pivot of this half-width feels as a couple (N);
     *                   absent for a point contact, which cannot take it
     */
    public record Mismatch(double mismatch, double difference, double hardest, boolean slack, double yawMoment,
            double rollMoment, OptionalDouble sidePull) {
    }
}
