// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bermwright.lowering.body.PlanePoint;
import org.junit.jupiter.api.Test;

class HullAtTiltLawTest {
    private static final double ROUNDING = 1e-9;

    private static double distance(PlanePoint a, PlanePoint b) {
        return Math.hypot(a.x() - b.x(), a.z() - b.z());
    }

    @Test
    void theBodyIsRigidAndTurnsAboutThePivot() {
        HullAtTilt standing = HullAtTiltTest.at(0);
        PlanePoint pivot = new PlanePoint(0, 0);
        for (int tiltDeg = 5; tiltDeg <= 90; tiltDeg += 5) {
            HullAtTilt tilted = HullAtTiltTest.at(tiltDeg);
            for (int i = 0; i < standing.body().size(); i++) {
                assertEquals(distance(standing.body().get(i), standing.centre()),
                        distance(tilted.body().get(i), tilted.centre()), ROUNDING);
                assertEquals(distance(standing.body().get(i), pivot), distance(tilted.body().get(i), pivot), ROUNDING);
            }
        }
    }

    @Test
    void polesAndStaysDoNotMoveWithTheHull() {
        assertEquals(HullAtTiltTest.at(0).above().stream().filter(HullAtTiltLawTest::isFixed).toList(),
                HullAtTiltTest.at(70).above().stream().filter(HullAtTiltLawTest::isFixed).toList());
    }

    private static boolean isFixed(HullAtTilt.RopeAbove rope) {
        return rope.gear() == HullAtTilt.Gear.POLE || rope.gear() == HullAtTilt.Gear.STAY;
    }
}
