// SPDX-License-Identifier: Apache-2.0
package bermwright.site.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.site.SamplePlans;
import bermwright.site.plan.Hull;
import org.junit.jupiter.api.Test;

class LyingPoseTest {
    /** Sums of a few dozen doubles at hundreds of metres. */
    private static final double ROUNDING = 1e-9;

    @Test
    void onLevelGroundTheAxisLiesOneRadiusUpAndStartsAtThePivotLine() {
        Hull hull = SamplePlans.hull("A", new Point(150, 100), 0);
        LyingPose pose = LyingPose.of(hull, SamplePlans.ground((e, n) -> 7)).orElseThrow();
        assertNear(new Vec3(150, 103.8, 10.8), pose.axisStart());
        assertNear(new Vec3(150, 141.8, 10.8), pose.axisEnd());
        assertNear(new Vec3(149, 113.8, 12.8), pose.place(10, 1, 2));
    }

    @Test
    void onFallingGroundTheAxisFallsWithIt() {
        Hull hull = SamplePlans.hull("A", new Point(100, 150), 90);
        LyingPose pose = LyingPose.of(hull, SamplePlans.ground((e, n) -> 20 - 0.03 * e + 0.01 * n)).orElseThrow();
        assertEquals(Math.atan(0.03), pose.slopeAlong(), ROUNDING);
        assertEquals(Math.atan(-0.01), pose.slopeAcross(), ROUNDING);
        assertEquals(-Math.sin(Math.atan(0.03)), pose.direction().z(), ROUNDING);
        assertEquals(38, pose.axisEnd().minus(pose.axisStart()).norm(), ROUNDING);
    }

    @Test
    void hasNoPoseOffTheGridOrOverMissingGround() {
        Hull off = SamplePlans.hull("A", new Point(290, 150), 90);
        assertTrue(LyingPose.of(off, SamplePlans.ground((e, n) -> 0)).isEmpty());
        Hull hole = SamplePlans.hull("A", new Point(150, 150), 90);
        assertTrue(LyingPose.of(hole, SamplePlans.ground((e, n) -> e > 160 && e < 165 ? Double.NaN : 0)).isEmpty());
    }

    private static void assertNear(Vec3 wanted, Vec3 found) {
        assertTrue(found.minus(wanted).norm() < ROUNDING, () -> found + " is not " + wanted);
    }
}
