// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import java.util.List;
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
 * @param lateralAtHead    pull of lines and stays across the lay-down plane at one pole head (N)
 * @param cooling          how much colder a line in shade is than one in sun (K)
 * @param coolingGain      tension gained by one line that cools by so much while the hull cannot follow, chocked or
 *                         lying (N); absent without a stiffness
 * @param coolingShortening how much shorter one line gets that cools by so much (m): a hull that hangs free follows
 *                         it; of two lines, one in sun and one in shade differ by so much
 * @param lightChanges     where the lines pass between sun and shade at the set rate without stops
 * @param lightUnknownFrom first tilt at which no window says sun or shade (rad); absent where all do, or none is given
 * @param mismatch         what unequal pay-out does
 */
public record LineReview(double sag, double sagAtHandOver, double pretension, OptionalDouble stretch,
        OptionalDouble stiffnessShare, double paidOut, double longest, double sheaveLoad, double lateralAtHead,
        double cooling, OptionalDouble coolingGain, double coolingShortening, List<LightChange> lightChanges,
        OptionalDouble lightUnknownFrom, Mismatch mismatch) {
    /** Copies the changes of light. */
    public LineReview {
        lightChanges = List.copyOf(lightChanges);
    }

    /**
     * The lines pass from sun into shade, or out of it.
     *
     * @param time       when, from the first pull on (s)
     * @param tilt       tilt then (rad)
     * @param intoShade  true into shade: the lines shorten; false out of it: they lengthen
     * @param shortening change in length of one line from winch to lug (m)
     * @param held       tension of one line then (N)
     * @param gain       what it gains if the hull is held fast as it passes into shade (N); absent without a stiffness
     */
    public record LightChange(double time, double tilt, boolean intoShade, double shortening, double held,
            OptionalDouble gain) {
    }

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
