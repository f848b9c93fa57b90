// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.thrust;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Require;

/**
 * Landing on the side: what touchdown brings, without any lowering gear.
 *
 * @param hoverThrust      thrust to hover (N)
 * @param thrustInHand     thrust with a quarter in hand (N)
 * @param hoverPropellant  propellant for a hover of 20 s (kg)
 * @param touchdownEnergy  energy of motion at touchdown (J)
 * @param equivalentDrop   height of a fall to the same speed (m)
 * @param endRise          how high the far end stands when the base touches first (m)
 * @param slapSpeed        speed of the far end when it comes down after the base, held by nothing (m/s)
 * @param note             model, range and spread
 */
public record LyingLanding(double hoverThrust, double thrustInHand, double hoverPropellant, double touchdownEnergy,
        double equivalentDrop, double endRise, double slapSpeed, ModelNote note) {
    private static final double HOVER = 20;
    private static final double USUAL_IMPULSE = 340;

    /**
     * What comes down.
     *
     * @param mass   mass (kg), positive
     * @param length length (m), positive
     * @param centre centre of mass from the end that touches first (m), positive
     */
    public record Lander(double mass, double length, double centre) {
        /** Refuses landers without mass or length. */
        public Lander {
            Require.positive("mass", mass, "kg");
            Require.positive("length", length, "m");
            Require.within("centre of mass", centre, 0, length, "m");
        }
    }

    /**
     * A touchdown.
     *
     * @param lander  what comes down
     * @param gravity acceleration of free fall (m/s2), positive
     * @param speed   speed of descent at touchdown (m/s), zero or more
     * @param pitch   pitch at touchdown (rad), 0 up to a right angle
     * @return the landing
     */
    public static LyingLanding of(Lander lander, double gravity, double speed, double pitch) {
        Require.positive("gravity", gravity, "m/s2");
        Require.notNegative("touchdown speed", speed, "m/s");
        Require.within("touchdown pitch", pitch, 0, Math.PI / 2, "rad");
        double weight = lander.mass * gravity;
        double inertia = lander.mass * (lander.length * lander.length / 12 + lander.centre * lander.centre);
        double start = lander.mass * speed * lander.centre * Math.cos(pitch) / inertia;
        double fall = lander.centre * Math.sin(pitch);
        double rate = Math.sqrt(start * start + 2 * weight * fall / inertia);
        return new LyingLanding(weight, (1 + ThrusterLowering.IN_HAND) * weight,
                Rocket.propellantForSpeed(lander.mass, gravity * HOVER, USUAL_IMPULSE),
                lander.mass * speed * speed / 2, speed * speed / (2 * gravity), lander.length * Math.sin(pitch),
                rate * lander.length,
                new ModelNote("lands-lying", "energy of touchdown; base first, then the far end falls about it",
                        "rigid hull, no bounce, thrust off at contact",
                        "a factor of two in the slap, by how much the ground gives", ModelNote.Status.COMPUTED,
                        "mechanics, closed form; hover of 20 s at 340 s specific impulse, common practice, no source"));
    }
}
