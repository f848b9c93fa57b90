// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import java.util.List;

/**
 * Motion over the whole lowering.
 *
 * @param states         by tilt, in steps of five degrees beyond hand-over; without snatch and stop where the lines
 *                       have no stiffness given
 * @param duration       time of the whole lowering at the set rate (s)
 * @param brakeHeat      heat of all brakes together (J)
 * @param meanBrakePower mean power of all brakes together (W)
 * @param contactSpeed   speed of the far end at contact at the set rate (m/s)
 * @param contactEnergy  energy of motion at contact at the set rate (J)
 * @param freeRate       tilting rate at rest of a free topple from balance (rad/s)
 * @param freeSpeed      speed of the far end then (m/s)
 * @param freeEnergy     energy of motion then (J)
 * @param freeTime       time of a free topple from one degree past balance (s)
 * @param runOnRate      tilting rate at which lines slack by a tenth of a metre at hand-over come taut (rad/s)
 */
public record MotionReview(List<MotionState> states, double duration, double brakeHeat, double meanBrakePower,
        double contactSpeed, double contactEnergy, double freeRate, double freeSpeed, double freeEnergy,
        double freeTime, double runOnRate) {
    /** Copies the states. */
    public MotionReview {
        states = List.copyOf(states);
    }
}
