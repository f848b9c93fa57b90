// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.foundation.Vec3;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ElevationGridTest {
    /** Sums of doubles of order 100 keep this. */
    private static final double ROUNDING = 1e-9;

    private static final GridFrame FRAME = new GridFrame(11, 21, 100, 200, 2);

    private static ElevationGrid plane() {
        return ElevationGrid.sampled(FRAME, (e, n) -> 5 + 0.1 * (e - 100) + 0.05 * (n - 200));
    }

    private static Ring box(double west, double south, double east, double north) {
        return new Ring(List.of(new Point(west, south), new Point(east, south), new Point(east, north),
                new Point(west, north)));
    }

    @Test
    void aPlaneHasItsGradientEverywhere() {
        Gradient gradient = plane().gradient(new Point(117.3, 209.1));
        assertEquals(0.1, gradient.east(), ROUNDING);
        assertEquals(0.05, gradient.north(), ROUNDING);
        assertEquals(Math.atan(Math.hypot(0.1, 0.05)), plane().slope(new Point(100, 200)), ROUNDING);
        assertEquals(243.434949, gradient.aspect().orElseThrow().degrees(), 1e-6);
    }

    @Test
    void fallIsPositiveDownhillAndToTheLeft() {
        Gradient gradient = plane().gradient(new Point(120, 210));
        assertEquals(-Math.atan(0.1), gradient.fallAlong(Azimuth.ofDegrees(90)), ROUNDING);
        assertEquals(Math.atan(0.05), gradient.fallAlong(Azimuth.ofDegrees(180)), ROUNDING);
        assertEquals(Math.atan(0.1), gradient.fallToLeftOf(Azimuth.ofDegrees(0)), ROUNDING);
        assertEquals(-Math.atan(0.05), gradient.fallToLeftOf(Azimuth.ofDegrees(90)), ROUNDING);
    }

    @Test
    void levelGroundHasNoAspect() {
        assertEquals(Optional.empty(), new Gradient(0, 0).aspect());
        assertEquals(Optional.empty(), Gradient.UNKNOWN.aspect());
        assertFalse(Gradient.UNKNOWN.isKnown());
    }

    @Test
    void theMetreScaleStretchesDistancesAndFlattensSlopes() {
        ElevationGrid stretched = plane().withMetreScale(1.25);
        assertEquals(0.08, stretched.gradient(new Point(120, 210)).east(), ROUNDING);
        assertEquals(2.5, stretched.trueSpacing(), ROUNDING);
        List<ProfilePoint> profile = stretched.profile(new Point(100, 210), new Point(140, 210), 10);
        assertEquals(50, profile.get(profile.size() - 1).distance(), ROUNDING);
        assertEquals(6, profile.size());
        assertEquals(0.08, HornSlope.gradient(stretched, 5, 5).east(), ROUNDING);
        FittedPlane fit = stretched.fittedPlane(box(110, 205, 130, 215)).orElseThrow();
        assertEquals(0.08, fit.gradient().east(), ROUNDING);
        assertEquals(stretched.height(new Point(128, 206)), fit.height(new Point(128, 206)), ROUNDING);
        assertNotEquals(plane(), stretched);
    }

    @Test
    void outsideTheGridNothingIsKnown() {
        assertTrue(Double.isNaN(plane().height(new Point(99.999, 205))));
        assertTrue(plane().isMissing(new Point(140.001, 205)));
        assertFalse(plane().gradient(new Point(120, 220.001)).isKnown());
        assertTrue(plane().isMissing(box(135, 205, 141, 210)));
        assertEquals(Optional.empty(), plane().fittedPlane(box(135, 205, 141, 210)));
    }

    @Test
    void aMissingNodeHidesTheCellsAroundIt() {
        double[] heights = plane().heights();
        heights[5 * 21 + 10] = Double.NaN;
        ElevationGrid holed = plane().withHeights(heights);
        assertEquals(1, holed.missing());
        assertTrue(holed.isMissing(new Point(121, 211)));
        assertFalse(holed.isMissing(new Point(123, 211)));
        assertTrue(holed.isMissing(box(121, 205, 130, 215)));
        assertFalse(holed.isMissing(box(122.1, 205, 130, 215)));
        assertTrue(holed.isMissing(box(119, 209, 119.2, 209.2)));
        assertTrue(Double.isNaN(HornSlope.slope(holed, 5, 10)));
        assertTrue(Double.isNaN(HornSlope.slope(holed, 4, 9)));
        assertFalse(Double.isNaN(HornSlope.slope(holed, 3, 9)));
    }

    @Test
    void theFittedPlaneNamesItsHighestSpot() {
        double[] heights = plane().heights();
        heights[5 * 21 + 10] += 1;
        FittedPlane fit = plane().withHeights(heights).fittedPlane(box(110, 203, 130, 217)).orElseThrow();
        assertEquals(new Point(120, 210), fit.high().place());
        assertTrue(fit.high().residual() > 0.8 && fit.high().residual() < 1);
        assertTrue(fit.rms() > 0.01);
        List<FittedPlane.Spot> spots = plane().withHeights(heights).highSpots(box(110, 203, 130, 217), fit, 0.3);
        assertEquals(fit.high(), spots.get(0));
        assertTrue(spots.stream().allMatch(s -> s.residual() > 0.3 && s.place().distance(new Point(120, 210)) < 2.83));
    }

    @Test
    void refusesAnInfiniteHeight() {
        IllegalArgumentException thrown = assertThrows(IllegalArgumentException.class,
                () -> ElevationGrid.sampled(FRAME, (e, n) -> 1 / (e - 100)));
        assertEquals("a height is infinite; missing heights are NaN.", thrown.getMessage());
    }

    @Test
    void aWindowKeepsNodesAndScale() {
        ElevationGrid window = plane().withMetreScale(1.01).window(new Point(109, 203), new Point(115, 207));
        assertEquals(new GridFrame(4, 5, 108, 202, 2), window.frame());
        assertEquals(plane().height(new Point(112, 206)), window.height(new Point(112, 206)), ROUNDING);
        assertEquals(1.01, window.metreScale());
        assertThrows(IllegalArgumentException.class, () -> plane().window(new Point(300, 300), new Point(310, 310)));
    }

    @Test
    void rangeLeavesOutMissingHeights() {
        double[] heights = plane().heights();
        heights[0] = Double.NaN;
        ElevationGrid holed = plane().withHeights(heights);
        assertEquals(5.1, holed.lowest(), ROUNDING);
        assertEquals(10, holed.highest(), ROUNDING);
    }

    @Test
    void aRidgeStandsInTheWay() {
        ElevationGrid ridge = ElevationGrid.sampled(new GridFrame(5, 11, 0, 0, 1), (e, n) -> e == 5 ? 3 : 0);
        assertFalse(ridge.hasLineOfSight(new Vec3(0.5, 2.2, 2), new Vec3(9.5, 2.7, 2)));
        assertTrue(ridge.hasLineOfSight(new Vec3(0.5, 2.2, 3.1), new Vec3(9.5, 2.7, 3.1)));
        assertEquals(-1, ridge.clearance(new Vec3(0.5, 2.2, 2), new Vec3(9.5, 2.7, 2)), ROUNDING);
        assertFalse(ridge.hasLineOfSight(new Vec3(0.5, 2.2, 9), new Vec3(10.5, 2.7, 9)));
    }
}
