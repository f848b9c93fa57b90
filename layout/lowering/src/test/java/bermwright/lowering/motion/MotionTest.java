// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.lowering.ReferenceBody;
import bermwright.lowering.body.Body;
import bermwright.lowering.body.EndShape;
import bermwright.lowering.body.Ground;
import bermwright.lowering.body.MassCentre;
import bermwright.lowering.body.Outline;
import bermwright.lowering.body.Pivot;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.rig.Lug;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The reference body in motion, each figure to the digits worked by hand. */
class MotionTest {
    private static final double TEN_DIGITS = 6e-11;
    private static final double MILLI = 6e-4;

    private static HeldBody held() {
        double area = Math.PI / 4 * 0.036 * 0.036;
        return new HeldBody(ReferenceBody.onRim(), new Lug(ReferenceBody.LUG, 0, 0), ReferenceBody.HEAD,
                2 * 80e9 * area, 31);
    }

    @Test
    void freeToppleFromBalanceByEnergy() {
        TippingBody body = ReferenceBody.onRim();
        double rate = Topple.rate(body, body.balanceTilt(), 0, Math.PI / 2);
        assertEquals(0.2816320082, rate, TEN_DIGITS);
        assertEquals(14.307904, rate * Topple.farRadius(body), 6e-7);
        assertEquals(14.081600, rate * 50, 6e-7);
        assertEquals(12.456447, rate * Math.hypot(44, 4.5), 6e-7);
        assertEquals(3_110_400, body.inertiaAboutPivot() * rate * rate / 2, 1e-6);
    }

    @Test
    void timeOfAToppleByEllipticIntegralsAndByIntegration() {
        TippingBody body = ReferenceBody.onRim();
        double from = body.balanceTilt() + Math.toRadians(1);
        assertEquals(22.53671859, Topple.time(body, from, Math.PI / 2), 6e-9);
        ToppleIntegrated.Arrival arrival = ToppleIntegrated.integrate(body, from, 0, Math.PI / 2);
        assertEquals(22.53671859, arrival.time(), 6e-9);
        assertEquals(0.2816045279, arrival.rate(), TEN_DIGITS);
        assertEquals(0.2816045279, Topple.rate(body, from, 0, Math.PI / 2), TEN_DIGITS);
    }

    @ParameterizedTest
    @CsvSource({"30, 37379.16, 134144.62", "45, 10723.13, 80125.15", "60, -54125.72, 38152.52"})
    void shearAtThePivotFlipsDuringAFreeTopple(double past, double along, double up) {
        ToppleIntegrated.PivotForce force = ToppleIntegrated.pivotForce(ReferenceBody.onRim(), Math.toRadians(past));
        assertEquals(along, force.along(), 6e-3);
        assertEquals(up, force.up(), 6e-3);
    }

    @Test
    void pivotForcesLyingAfterAFreeTopple() {
        TippingBody body = ReferenceBody.onRim();
        ToppleIntegrated.PivotForce force = ToppleIntegrated.pivotForce(body, Math.PI / 2 - body.balanceTilt());
        assertEquals(-163_590.46, force.along(), 6e-3);
        assertEquals(32_594.16, force.up(), 6e-3);
    }

    @ParameterizedTest
    @CsvSource({"0.3, 52.43", "0.5, 54.35", "0.7, 55.91"})
    void theBaseKicksForwardPastFiftyDegrees(double friction, double past) {
        TippingBody body = ReferenceBody.onRim();
        ToppleIntegrated.PivotForce before = ToppleIntegrated.pivotForce(body, Math.toRadians(past - 0.01));
        ToppleIntegrated.PivotForce after = ToppleIntegrated.pivotForce(body, Math.toRadians(past + 0.01));
        assertTrue(-before.along() < friction * before.up());
        assertTrue(-after.along() > friction * after.up());
    }

    @ParameterizedTest
    @CsvSource({"0.10, 16.174264, 0.004285708, 0.140937, 7385.218, 72153.903, 72204.965",
        "0.50, 16.870641, 0.010056333, 0.331205, 8841.442, 160087.364, 160194.547"})
    void slackComingTaut(double slack, double takeUp, double rate, double speed, double still, double oneMass,
            double energy) {
        assertEquals(25.662488, held().length(Math.toRadians(16)), 6e-7);
        assertEquals(2_874_214.832, held().spring(Math.toRadians(16)), 1);
        Shock.Snatch snatch = Shock.slack(held(), Math.toRadians(16), 0, slack);
        assertEquals(takeUp, Math.toDegrees(snatch.takeUpTilt()), 6e-7);
        assertEquals(rate, snatch.takeUpRate(), 6e-10);
        assertEquals(speed, snatch.lineSpeed(), 6e-7);
        assertEquals(still, snatch.still(), MILLI);
        assertEquals(oneMass, snatch.oneMass(), 0.05);
        assertEquals(energy, snatch.energy(), 0.05);
    }

    @Test
    void anEmergencyStopDoublesTheTensionHereAndAddsASixthOnEarth() {
        Shock.Stop stop = Shock.emergencyStop(held(), Math.toRadians(60), Math.toRadians(0.5));
        assertEquals(0.250897, stop.lineSpeed(), 6e-7);
        assertEquals(2_010_032.2, held().spring(Math.toRadians(60)), 1);
        assertEquals(94_882.61, held().feltMass(Math.toRadians(60)), 6e-3);
        assertEquals(109_569.577, stop.extra(), 0.05);
        assertEquals(2.075260, stop.factor(), 6e-7);
        assertEquals(1.365, stop.period(), 6e-4);
        HeldBody earth = new HeldBody(new TippingBody(ReferenceBody.body(20, 0), new Pivot.Rim(),
                new Ground(9.81, 0, 0, 0.5)), held().lug(), held().lead(), held().stiffness(), held().fall());
        assertEquals(1.177627, Shock.emergencyStop(earth, Math.toRadians(60), Math.toRadians(0.5)).factor(), 1e-4);
    }

    @Test
    void theMotionNearsTheHeldStillCurveAsTheRateGoesToNothing() {
        HeldBody held = held();
        double from = Math.toRadians(20);
        double worstBefore = Double.POSITIVE_INFINITY;
        for (double degPerSecond : new double[] {0.5, 0.05, 0.005}) {
            List<PaidOut.Moment> moments = PaidOut.integrate(held, from, Math.toRadians(degPerSecond),
                    Math.toRadians(80));
            double worst = moments.stream().mapToDouble(m ->
                    Math.abs(m.tension() / held.stillTension(m.tilt()) - 1)).max().orElseThrow();
            assertTrue(worst < worstBefore / 5, degPerSecond + " deg/s: " + worst + " after " + worstBefore);
            worstBefore = worst;
        }
        assertTrue(worstBefore < 0.012, "at 0.005 deg/s the tension swings by " + worstBefore);
    }

    @Test
    void aSlenderRodIsTheLimitOfAThinBody() {
        Body rod = new Body(new Outline(50, 1e-6, EndShape.FLAT, EndShape.FLAT), 1000, new MassCentre(25, 0, 0),
                1000 * 2500 / 12.0, 0);
        TippingBody body = new TippingBody(rod, new Pivot.Rim(), new Ground(ReferenceBody.GRAVITY, 0, 0, 1));
        double rate = Topple.rate(body, body.balanceTilt(), 0, Math.PI / 2);
        assertEquals(0.3117691, rate, 6e-8);
        assertEquals(15.588457, rate * 50, 2e-6);
    }
}
