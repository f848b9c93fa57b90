// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.lowering.body.PlanePoint;
import bermwright.site.SamplePlans;
import bermwright.site.laydown.LayPlane;
import bermwright.site.plan.Hull;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class HullAtTiltTest {
    private static final ElevationGrid LEVEL = SamplePlans.ground((e, n) -> 3);
    private static final Hull HULL = SamplePlans.hull("A", new Point(150, 100), 0);
    private static final double ROUNDING = 1e-9;

    static HullAtTilt at(double tiltDeg) {
        LayPlane plane = LayPlane.of(HULL, LEVEL.fittedPlane(HULL.bed(TrueMetres.SAME)).orElseThrow(), LEVEL);
        return HullAtTilt.of(HULL, plane, Math.toRadians(tiltDeg));
    }

    private static <T> void assertSpan(double low, double high, List<T> points, ToDoubleFunction<T> of) {
        assertEquals(low, points.stream().mapToDouble(of).min().orElseThrow(), ROUNDING);
        assertEquals(high, points.stream().mapToDouble(of).max().orElseThrow(), ROUNDING);
    }

    @Test
    void standingItIsBehindThePivotAndAsTallAsItIsLong() {
        HullAtTilt standing = at(0);
        assertSpan(-7.6, 0, standing.body(), PlanePoint::x);
        assertSpan(0, 38, standing.body(), PlanePoint::z);
        assertSpan(146.2, 153.8, standing.shadow(), Point::east);
        assertSpan(96.2, 103.8, standing.shadow(), Point::north);
        assertEquals(17, standing.centre().z(), ROUNDING);
    }

    @Test
    void lyingItReachesFromThePivotAlongItsAzimuth() {
        HullAtTilt lying = at(90);
        assertSpan(0, 38, lying.body(), PlanePoint::x);
        assertSpan(0, 7.6, lying.body(), PlanePoint::z);
        assertSpan(146.2, 153.8, lying.shadow(), Point::east);
        assertSpan(103.8, 141.8, lying.shadow(), Point::north);
    }

    @Test
    void everyPieceOfGearIsSeenFromAbove() {
        Map<HullAtTilt.Gear, Long> pieces = at(40).above().stream()
                .collect(Collectors.groupingBy(HullAtTilt.RopeAbove::gear, Collectors.counting()));
        // Two lines, each from lug to pole head and from there to its winch.
        assertEquals(4, pieces.get(HullAtTilt.Gear.LINE));
        assertEquals(2, pieces.get(HullAtTilt.Gear.POLE));
        assertEquals(2, pieces.get(HullAtTilt.Gear.STAY));
        assertEquals(1, pieces.get(HullAtTilt.Gear.PULL_OVER));
    }

    @Test
    void theShadowIsAnOutlineAroundTheCentreOfMass() {
        for (int tiltDeg = 0; tiltDeg <= 90; tiltDeg += 15) {
            HullAtTilt picture = at(tiltDeg);
            Ring shadow = new Ring(picture.shadow());
            assertTrue(shadow.contains(new Point(150, 103.8 + picture.centre().x())), "at " + tiltDeg);
        }
    }
}
