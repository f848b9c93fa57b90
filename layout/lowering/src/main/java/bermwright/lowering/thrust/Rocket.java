// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.thrust;

import bermwright.foundation.Require;

/** The rocket equation and what goes with it. */
public final class Rocket {
    /** Standard acceleration by which specific impulse is stated in seconds (m/s2), exact by convention. */
    public static final double STANDARD_GRAVITY = 9.80665;

    private Rocket() {
    }

    /**
     * Exhaust speed.
     *
     * @param specificImpulse specific impulse (s), positive
     * @return the speed (m/s)
     */
    public static double exhaustSpeed(double specificImpulse) {
        return STANDARD_GRAVITY * Require.positive("specific impulse", specificImpulse, "s");
    }

    /**
     * Propellant for an impulse while the mass hardly changes.
     *
     * @param impulse         thrust over time (N s), zero or more
     * @param specificImpulse specific impulse (s), positive
     * @return the propellant (kg)
     */
    public static double propellant(double impulse, double specificImpulse) {
        return Require.notNegative("impulse", impulse, "N s") / exhaustSpeed(specificImpulse);
    }

    /**
     * Propellant for a change of speed, m0 (1 - e^(-dv/ve)).
     *
     * @param mass            mass before (kg), positive
     * @param speedChange     change of speed (m/s), zero or more
     * @param specificImpulse specific impulse (s), positive
     * @return the propellant (kg)
     * @see "Tsiolkovsky (1903)"
     */
    public static double propellantForSpeed(double mass, double speedChange, double specificImpulse) {
        Require.notNegative("change of speed", speedChange, "m/s");
        return Require.positive("mass", mass, "kg") * -Math.expm1(-speedChange / exhaustSpeed(specificImpulse));
    }
}
