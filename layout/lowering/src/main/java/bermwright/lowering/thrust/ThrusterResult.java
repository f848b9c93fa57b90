// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.thrust;

import bermwright.foundation.ModelNote;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A whole laying down by side thrusters at a constant rate; all in SI.
 *
 * @param balanceTilt       balance tilt (rad)
 * @param states            thrust by tilt in steps of one degree and at rest
 * @param greatestPush      greatest thrust to push over (N)
 * @param greatestBrake     greatest thrust to brake (N)
 * @param atTilt            tilt of the greatest brake (rad)
 * @param impulse           thrust over time, both phases, cant counted (N s)
 * @param propellant        propellant (kg)
 * @param time              time from standing to lying (s)
 * @param leastCount        least number of thrusters of this size, a quarter in hand (1)
 * @param thrustMargin      thrust there over greatest thrust needed (1)
 * @param oneOutMargin      the same with one thruster out, its counterpart shut off against yaw (1)
 * @param abortTilt         tilt beyond which one side lost at the set rate can no longer be arrested by the other
 *                          (rad); absent where it can be held all the way
 * @param frictionNeeded    greatest friction factor needed at the pivot (1); endless where the thrust lifts it
 * @param touchdownSpeed    speed of the far end at contact (m/s)
 * @param touchdownEnergy   energy of motion at contact (J)
 * @param freeFallSpeed     speed of the far end if thrust fails at balance and nothing holds (m/s)
 * @param note              model, range and spread
 */
public record ThrusterResult(double balanceTilt, List<ThrustState> states, double greatestPush, double greatestBrake,
        double atTilt, double impulse, double propellant, double time, int leastCount, double thrustMargin,
        double oneOutMargin, OptionalDouble abortTilt, double frictionNeeded, double touchdownSpeed,
        double touchdownEnergy, double freeFallSpeed, Profiled profiled,
        ModelNote note) {
    /**
     * A lowering with its rate reached in the first degrees and lost before contact; inertia counts.
     *
     * @param profile       the rates
     * @param greatestPush  greatest thrust to push over (N)
     * @param greatestBrake greatest thrust to brake (N)
     * @param propellant    propellant (kg)
     * @param time          time from standing to lying (s)
     * @param contactSpeed  speed of the far end at contact (m/s)
     * @param contactEnergy energy of motion at contact (J)
     */
    public record Profiled(RateProfile profile, double greatestPush, double greatestBrake, double propellant,
            double time, double contactSpeed, double contactEnergy) {
    }

    /** Copies the states. */
    public ThrusterResult {
        states = List.copyOf(states);
    }
}
