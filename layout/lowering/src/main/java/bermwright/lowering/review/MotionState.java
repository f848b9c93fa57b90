// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

/**
 * What motion does at one tilt.
 *
 * @param tilt           tilt (rad), beyond hand-over
 * @param stopFactor     tension while a winch stops dead over the still one (1)
 * @param stopEach       greatest tension of one line then (N)
 * @param startExtra     tension of one line on top while the rate is reached or lost evenly in two seconds (N)
 * @param snatchEach     greatest tension of one line where a tenth of a metre of slack comes taut (N)
 * @param runAwayRate    tilting rate at rest after the brakes fail here (rad/s)
 * @param runAwaySpeed   speed of the far end then (m/s)
 * @param runAwayEnergy  energy of motion then (J)
 */
public record MotionState(double tilt, double stopFactor, double stopEach, double startExtra, double snatchEach,
        double runAwayRate, double runAwaySpeed, double runAwayEnergy) {
}
