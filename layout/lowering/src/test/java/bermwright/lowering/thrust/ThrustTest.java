// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.thrust;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Require;
import bermwright.lowering.ReferenceBody;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.motion.ToppleIntegrated;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Thrusters and landing worked by hand, to the digits worked. */
class ThrustTest {
    private static final Thrusters SIX = new Thrusters(6, 20_000, 46, 0, 320);

    @Test
    void constantRate() {
        TippingBody body = ReferenceBody.onRim();
        double rate = Math.toRadians(1);
        ThrusterResult result = ThrusterLowering.of(body, SIX, rate);
        assertEquals(84_521.739, result.greatestBrake(), 6e-4);
        assertEquals(Math.PI / 2, result.atTilt(), 1e-12);
        assertEquals(19_017.391, result.greatestPush(), 6e-4);
        assertEquals(3_874_191.1434 + 121_068.4732, result.impulse(), 1e-3);
        assertEquals(1234.554850 + 38.579840, result.propellant(), 2e-6);
        assertEquals(90, result.time(), 1e-9);
        assertEquals(120_000 / 84_521.739, result.thrustMargin(), 1e-6);
        assertEquals(80_000 / 84_521.739, result.oneOutMargin(), 1e-6);
        assertEquals(6, result.leastCount());
    }

    @ParameterizedTest
    @CsvSource({"0.5, 2469.1097, 2986.393, 0.436332", "1, 1234.5549, 11945.572, 0.872665",
        "2, 617.2774, 47782.288, 1.745329", "3, 411.5183, 107510.149, 2.617994"})
    void propellantFallsAndTouchdownRisesWithTheRate(double degPerSecond, double braking, double energy,
            double speed) {
        TippingBody body = ReferenceBody.onRim();
        double rate = Math.toRadians(degPerSecond);
        ThrusterResult result = ThrusterLowering.of(body, SIX, rate);
        double push = 38.579840 / degPerSecond;
        assertEquals(braking, result.propellant() - push, 1e-4);
        assertEquals(energy, result.touchdownEnergy(), 6e-4);
        assertEquals(speed, rate * 50, 6e-7);
    }

    @ParameterizedTest
    @CsvSource({"30, 22335.943, 181504.337", "45, 32752.174, 161647.826", "60, 31844.639, 139243.468",
        "90, 0, 109878.261"})
    void pivotForces(double deg, double along, double up) {
        ThrustState state = ThrusterLowering.at(ReferenceBody.onRim(), SIX, Math.toRadians(deg));
        assertEquals(along, state.pivotAlong(), 6e-4);
        assertEquals(up, state.pivotUp(), 6e-4);
    }

    @Test
    void frictionNeededIsFarBelowThatOfLines() {
        ThrusterResult result = ThrusterLowering.of(ReferenceBody.onRim(), SIX, Math.toRadians(1));
        assertEquals(0.229633, result.frictionNeeded(), 2e-6);
        assertEquals(31.882114, ToppleIntegrated.centreOfPercussion(ReferenceBody.onRim()), 6e-7);
        assertTrue(result.abortTilt().isPresent());
    }

    @ParameterizedTest
    @CsvSource({"20, 1160.428", "10, 581.624", "30, 1736.427"})
    void hoverPropellant(double seconds, double kg) {
        assertEquals(kg, Rocket.propellantForSpeed(120_000, 1.62 * seconds, 340), 6e-4);
    }

    @ParameterizedTest
    @CsvSource({"0.5, 15000, 0.077160", "1, 60000, 0.308642", "2, 240000, 1.234568"})
    void touchdown(double speed, double energy, double drop) {
        LyingLanding landing = LyingLanding.of(new LyingLanding.Lander(120_000, 50, 20), 1.62, speed, 0.05);
        assertEquals(energy, landing.touchdownEnergy(), 1e-6);
        assertEquals(drop, landing.equivalentDrop(), 6e-7);
        assertEquals(1160.428, landing.hoverPropellant(), 6e-4);
    }

    @Test
    void flatFlightWithoutAir() {
        assertEquals(15.432, flight(5, Math.PI / 4, 1.62), 6e-4);
        assertEquals(555.556, flight(30, Math.PI / 4, 1.62), 6e-4);
    }

    @Test
    void aProfileWithoutRampsIsTheConstantRateAndItsStart() {
        TippingBody body = ReferenceBody.onRim();
        double rate = Math.toRadians(1);
        ThrusterResult.Profiled even = ThrusterLowering.profiled(body, SIX,
                new RateProfile(rate, 1e-7, Math.toRadians(80), rate));
        // Beside the constant rate it has to be reached: inertia times rate over the lever.
        double start = 7.843e7 * rate / 46 / Rocket.exhaustSpeed(320);
        assertEquals(1234.554850 + 38.579840 + start, even.propellant(), 0.01);
        assertEquals(90, even.time(), 1e-4);
        assertEquals(11_945.572, even.contactEnergy(), 6e-4);
    }

    @Test
    void slowingDownBeforeContactAsksForMoreThrustThanTheConstantRate() {
        ThrusterResult result = ThrusterLowering.of(ReferenceBody.onRim(), SIX, Math.toRadians(1));
        ThrusterResult.Profiled soft = result.profiled();
        assertEquals(ThrusterLowering.SOFT_CONTACT, soft.contactSpeed(), 1e-9);
        assertTrue(soft.greatestBrake() > result.greatestBrake());
        assertTrue(soft.greatestPush() > result.greatestPush());
        assertTrue(soft.time() > result.time() && soft.propellant() > result.propellant());
        // What slowing takes: inertia times the change of rate over the lever.
        double far = Math.hypot(50, 9);
        double slow = ThrusterLowering.SOFT_CONTACT / far;
        double change = (Math.pow(Math.toRadians(1), 2) - slow * slow) / (2 * Math.toRadians(10));
        assertEquals(result.greatestBrake() + 7.843e7 * change / 46, soft.greatestBrake(), 60);
    }

    /**
     * The tilt from which half the thrusters just arrest the hull, turned round: for a tilt the rate that energy allows
     * there is a closed form, and from that rate the tilt must come back.
     */
    @ParameterizedTest
    @CsvSource({"20", "35", "45", "50"})
    void theAbortTiltIsWhereEnergyJustArrestsTheHull(double deg) {
        TippingBody body = ReferenceBody.onRim();
        double pull = body.weight() * body.centreRadius();
        double brake = 3 * 20_000 * 46;
        double end = body.balanceTilt() + Math.asin(brake / pull);
        double tilt = Math.toRadians(deg);
        double energy = brake * (end - tilt) - pull * (Math.cos(tilt - body.balanceTilt())
                - Math.cos(end - body.balanceTilt()));
        double rate = Math.sqrt(2 * energy / body.inertiaAboutPivot());
        assertEquals(tilt, ThrusterLowering.abortTilt(body, SIX, rate).orElseThrow(), 1e-9);
        assertEquals(end, ThrusterLowering.abortTilt(body, SIX, 0).orElseThrow(), 1e-12);
        // Followed step by step from there with all the thrust of one side, it comes to rest just short of the end.
        double t = tilt - 1e-4;
        double w = rate;
        double step = 2e-4;
        while (w > 0 && t < end) {
            double now = (pull * Math.sin(t + w * step / 2 - body.balanceTilt()) - brake) / body.inertiaAboutPivot();
            t += w * step + now * step * step / 2;
            w += now * step;
        }
        assertTrue(w <= 0 && t < end, "rate " + w + " at " + Math.toDegrees(t));
    }

    /**
     * How far something thrown flies over level ground without air, v2 sin(2a)/g; flat ground, short of orbit.
     *
     * @param speed     speed (m/s), zero or more
     * @param elevation elevation at which it leaves a (rad), 0 up to a right angle
     * @param gravity   acceleration of free fall (m/s2), positive
     * @return the distance (m)
     */
    private static double flight(double speed, double elevation, double gravity) {
        return speed * speed * Math.sin(2 * elevation) / Require.positive("gravity", gravity, "m/s2");
    }
}
