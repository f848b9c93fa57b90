// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.regolith.Soils;
import org.junit.jupiter.api.Test;

class SlipLawTest {
    /** Eighty slices of a flat arc leave some thousandths. */
    private static final double SLICED = 0.004;
    /** A search may end on another of two circles that are as bad. */
    private static final double SEARCHED = 1e-4;
    private static final double DEG = Math.PI / 180;

    private static SlopeStability.Soil soil(double frictionDeg, double cohesion, double gravity) {
        return new SlopeStability.Soil(Soils.strength(frictionDeg, cohesion), 1600, gravity);
    }

    @Test
    void gravityCountsOnlyThroughCohesion() {
        assertEquals(WorstSlip.of(8, 34 * DEG, soil(41, 0, 1.62)).factor(),
                WorstSlip.of(8, 34 * DEG, soil(41, 0, 9.81)).factor(), SEARCHED);
        assertEquals(WorstSlip.of(8, 34 * DEG, soil(41, 600, 1.62)).factor(),
                WorstSlip.of(8, 34 * DEG, soil(41, 600 * 9.81 / 1.62, 9.81)).factor(), SEARCHED);
        assertTrue(WorstSlip.of(8, 34 * DEG, soil(41, 600, 1.62)).factor()
                > WorstSlip.of(8, 34 * DEG, soil(41, 600, 9.81)).factor());
    }

    /** Without cohesion no circle is worse than the plane in the face, and flat ones come close. */
    @Test
    void withoutCohesionCirclesComeCloseToThePlane() {
        double plane = SlopeStability.longSlope(soil(41, 0, 1.62), 34 * DEG, 1);
        double circle = WorstSlip.of(8, 34 * DEG, soil(41, 0, 1.62)).factor();
        assertTrue(circle >= (1 - SLICED) * plane && circle < 1.02 * plane, circle + " " + plane);
    }

    @Test
    void steeperHigherAndWeakerIsLessSafe() {
        double base = WorstSlip.of(8, 34 * DEG, soil(35, 300, 1.62)).factor();
        assertTrue(WorstSlip.of(8, 38 * DEG, soil(35, 300, 1.62)).factor() < base);
        assertTrue(WorstSlip.of(12, 34 * DEG, soil(35, 300, 1.62)).factor() < base);
        assertTrue(WorstSlip.of(8, 34 * DEG, soil(33, 300, 1.62)).factor() < base);
        assertTrue(WorstSlip.of(8, 34 * DEG, soil(35, 200, 1.62)).factor() < base);
    }

    /** Without friction Bishop's and the ordinary method are one. */
    @Test
    void withoutFrictionBothMethodsAgree() {
        SlopeProfile profile = SlopeProfile.simple(10, 45 * DEG);
        SlipCircle circle = SlipCircle.through(0, 0, 14, 10, 0.2);
        SlopeStability.Soil clay = soil(0, 5000, 1.62);
        assertEquals(circle.ordinary(profile, clay), circle.bishop(profile, clay), 1e-9);
        double arc = circle.radius() * 2 * Math.asin(Math.hypot(14, 10) / 2 / circle.radius());
        double weight = 0;
        double moment = 0;
        for (double x = 0.0005; x < 14; x += 0.001) {
            double depth = profile.height(x) - circle.height() + Math.sqrt(circle.radius() * circle.radius()
                    - (x - circle.along()) * (x - circle.along()));
            weight += Math.max(0, depth) * 0.001 * 1600 * 1.62;
            moment += Math.max(0, depth) * 0.001 * 1600 * 1.62 * (x - circle.along());
        }
        assertTrue(weight > 0);
        assertEquals(5000 * arc * circle.radius() / moment, circle.ordinary(profile, clay), 0.003, "moments by hand");
    }

    @Test
    void refusesSlopesThatAreNone() {
        assertThrows(IllegalArgumentException.class, () -> WorstSlip.of(8, 0, soil(35, 300, 1.62)));
        assertThrows(IllegalArgumentException.class, () -> WorstSlip.of(Double.NaN, 0.5, soil(35, 300, 1.62)));
        assertThrows(IllegalArgumentException.class, () -> SlopeProfile.through(new double[] {0, 0},
                new double[] {0, 1}));
    }
}
