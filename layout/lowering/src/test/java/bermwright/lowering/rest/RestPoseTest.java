// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

class RestPoseTest {
    private static final LyingCylinder HULL = new LyingCylinder(new Point(20, 50), Azimuth.ofDegrees(90), 50, 4.5,
            new LyingCylinder.Load(194_400, 20), 0);

    private static ElevationGrid ground(DoubleBinaryOperator height) {
        return ElevationGrid.sampled(new GridFrame(201, 201, 0, 0, 0.5), height);
    }

    @Test
    void restsOnTwoHighSpotsWithItsBaseOffTheGround() {
        double[] felt = new double[51];
        felt[10] = 0.3;
        felt[40] = 0.6;
        RestPose pose = RestPose.resting(felt, 0, HULL);
        assertEquals(10, pose.contacts().get(0), 1e-12);
        assertEquals(40, pose.contacts().get(1), 1e-12);
        assertEquals(-0.572939, Math.toDegrees(pose.pitch()), 6e-7);
        assertEquals(0.2, pose.baseGap(), 1e-12);
        assertEquals(10, pose.rockMargin(), 1e-12);
    }

    @Test
    void mayRockOnASpotUnderTheCentreOfMass() {
        double[] felt = new double[51];
        felt[21] = 0.5;
        RestPose pose = RestPose.resting(felt, 0, HULL);
        assertEquals(0, pose.contacts().get(0), 1e-12);
        assertEquals(21, pose.contacts().get(1), 1e-12);
        assertEquals(1, pose.rockMargin(), 1e-12);
        assertTrue(pose.pitch() < 0);
    }

    @Test
    void levelGroundCarriesAllAlong() {
        RestPose pose = RestPose.of(HULL, ground((e, n) -> 3)).orElseThrow();
        assertEquals(0, pose.pitch(), 1e-12);
        assertEquals(0, pose.greatestGap(), 1e-12);
        assertEquals(RestPose.Roll.STAYS, pose.roll());
        assertEquals(0.0112004, pose.sinkage(), 6e-8);
        assertEquals(1.348, Math.toDegrees(pose.staysSurely()), 6e-4);
        assertEquals(4.046, Math.toDegrees(pose.rollsSurely()), 6e-4);
    }

    @Test
    void aCrossSlopeRollsTheHull() {
        double slope = Math.tan(Math.toRadians(2));
        assertEquals(RestPose.Roll.MAY_ROLL, RestPose.of(HULL, ground((e, n) -> n * slope)).orElseThrow().roll());
        RestPose steep = RestPose.of(HULL, ground((e, n) -> -n * Math.tan(Math.toRadians(5)))).orElseThrow();
        assertEquals(RestPose.Roll.ROLLS, steep.roll());
        assertEquals(5, Math.toDegrees(steep.crossSlope()), 1e-9);
    }

    @Test
    void slopeAlongIsPitchDownAhead() {
        RestPose pose = RestPose.of(HULL, ground((e, n) -> -0.02 * e)).orElseThrow();
        assertEquals(Math.atan(0.02), pose.pitch(), 1e-9);
    }

    @Test
    void aBoulderToTheSideMattersOnlyAboveTheHullsRounding() {
        DoubleBinaryOperator low = (e, n) -> Math.hypot(e - 40, n - 52) < 0.4 ? 0.468 : 0;
        DoubleBinaryOperator high = (e, n) -> Math.hypot(e - 40, n - 52) < 0.4 ? 0.6 : 0;
        assertEquals(0, RestPose.of(HULL, ground(low)).orElseThrow().greatestGap(), 1e-9);
        assertTrue(RestPose.of(HULL, ground(high)).orElseThrow().greatestGap() > 0.05);
    }

    @Test
    void missingGroundGivesNoPose() {
        assertFalse(RestPose.of(HULL, ground((e, n) -> e > 60 ? Double.NaN : 0)).isPresent());
    }

    /** A mirrored ground is felt alike and falls the other way across. */
    @Test
    void mirrorImagesAgree() {
        DoubleBinaryOperator rough = (e, n) -> 0.3 * Math.sin(e / 7) * Math.cos(n / 5) + 0.02 * (n - 50);
        RestPose a = RestPose.of(HULL, ground(rough)).orElseThrow();
        RestPose b = RestPose.of(HULL, ground((e, n) -> rough.applyAsDouble(e, 100 - n))).orElseThrow();
        assertEquals(a.pitch(), b.pitch(), 1e-12);
        assertEquals(a.contacts(), b.contacts());
        assertEquals(a.crossSlope(), -b.crossSlope(), 1e-12);
    }

    @Test
    void legsHoldTheBaseUp() {
        LyingCylinder onLegs = new LyingCylinder(HULL.base(), HULL.azimuth(), 50, 4.5, HULL.load(), 1.5);
        RestPose pose = RestPose.of(onLegs, ground((e, n) -> 0)).orElseThrow();
        assertEquals(Math.toDegrees(Math.atan(1.5 / 50)), Math.toDegrees(pose.pitch()), 1e-9);
        assertEquals(1.718358, Math.toDegrees(pose.pitch()), 6e-7);
    }

    /** On a plane, however it slopes and whatever its rounding, the hull lies on its whole length and does not rock. */
    @Test
    void aPlaneIsTouchedOverTheWholeLength() {
        for (int i = 0; i < 200; i++) {
            double along = 0.05 * Math.sin(i);
            double across = 0.02 * Math.cos(2.3 * i);
            RestPose pose = RestPose.of(HULL, ground((e, n) -> 3 + along * e + across * n)).orElseThrow();
            assertEquals(20, pose.rockMargin(), 1e-9, "plane " + i);
            assertEquals(0, pose.contacts().get(0), 1e-12);
            assertEquals(50, pose.contacts().get(1), 1e-9);
        }
    }
}
