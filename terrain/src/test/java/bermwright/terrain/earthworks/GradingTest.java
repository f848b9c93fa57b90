// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.Gradient;
import bermwright.terrain.grid.GridFrame;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GradingTest {
    /** A grid of half a metre keeps a body of some 10 m to this share. */
    private static final double GRID_SHARE = 0.01;
    private static final double ROUNDING = 1e-9;
    private static final GridFrame FRAME = new GridFrame(121, 161, 0, 0, 0.5);

    private static Ring box(double west, double south, double east, double north) {
        return new Ring(List.of(new Point(west, south), new Point(east, south), new Point(east, north),
                new Point(west, north)));
    }

    private static ElevationGrid level(double height) {
        return ElevationGrid.sampled(FRAME, (e, n) -> height);
    }

    /** A box with sides that run out square to it: box, wedges along the edges, a quarter cone at each corner. */
    private static double boxWithSides(double depth, double slope) {
        double run = depth / Math.tan(slope);
        return 20 * 10 * depth + 60 * depth * run / 2 + Math.PI * run * run * depth / 3;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.8, 1.0, 1.25})
    void aBenchBelowLevelGroundHasSlopedSides(double scale) {
        ElevationGrid ground = level(50).withMetreScale(scale);
        Ring bench = box(30 / scale, 25 / scale, 50 / scale, 35 / scale);
        ShapedGround made = Grading.shaped(ground, bench, (e, n) -> 47, SideSlopes.of(Math.toRadians(40)));
        double volume = boxWithSides(3, Math.toRadians(40));
        assertEquals(volume, made.moved().cut(), GRID_SHARE * volume);
        assertEquals(0, made.moved().fill(), ROUNDING);
        assertTrue(made.meetsGround());
        assertTrue(StandingSlopes.of(ground, made.after(), Math.toRadians(41)).stands());
        assertFalse(StandingSlopes.of(ground, made.after(), Math.toRadians(38)).stands());
    }

    @Test
    void aPadAboveLevelGroundHasSlopedSides() {
        ShapedGround made = Grading.shaped(level(50), box(30, 25, 50, 35), (e, n) -> 52,
                new SideSlopes(Math.toRadians(60), Math.toRadians(30)));
        double volume = boxWithSides(2, Math.toRadians(30));
        assertEquals(volume, made.moved().fill(), GRID_SHARE * volume);
        assertEquals(52, made.after().height(new Point(40, 30)), ROUNDING);
        assertEquals(52 - 2 * Math.tan(Math.toRadians(30)), made.after().height(new Point(52, 30)), ROUNDING);
    }

    @Test
    void onASlopeOneSideIsCutAndTheOtherFilled() {
        ElevationGrid ground = ElevationGrid.sampled(FRAME, (e, n) -> 0.1 * (e - 40));
        ShapedGround made = Grading.shaped(ground, box(30, 25, 50, 35), GradePlane.level(0)::height,
                SideSlopes.of(Math.toRadians(33)));
        assertEquals(made.moved().cut(), made.moved().fill(), GRID_SHARE * made.moved().cut());
        assertTrue(made.after().height(new Point(51, 30)) < ground.height(new Point(51, 30)));
        assertTrue(made.after().height(new Point(29, 30)) > ground.height(new Point(29, 30)));
        assertTrue(made.meetsGround());
    }

    @Test
    void aSideThatNeverMeetsTheGroundIsSaid() {
        ElevationGrid steep = ElevationGrid.sampled(FRAME, (e, n) -> 0.8 * e);
        ShapedGround made = Grading.shaped(steep, box(30, 25, 50, 35), GradePlane.level(30)::height,
                SideSlopes.of(Math.toRadians(33)));
        assertFalse(made.meetsGround());
        assertFalse(Grading.shaped(level(0), box(70, 25, 79, 35), GradePlane.level(5)::height,
                SideSlopes.of(Math.toRadians(33))).meetsGround());
    }

    @Test
    void groundThatWasSteepBeforeIsNotAtFault() {
        ElevationGrid steep = ElevationGrid.sampled(FRAME, (e, n) -> 2 * e);
        ElevationGrid lowered = ElevationGrid.sampled(FRAME, (e, n) -> 2 * e - (e > 20 && e < 40 ? 0.01 : 0));
        assertTrue(StandingSlopes.of(steep, steep, Math.toRadians(30)).place().isEmpty());
        StandingSlopes slopes = StandingSlopes.of(steep, lowered, Math.toRadians(30));
        assertEquals(Math.atan(2 + 0.01 / 0.5), slopes.steepest(), 1e-6);
        assertTrue(slopes.areaTooSteep() < 40);
    }

    @Test
    void theBestBenchOnAPlaneIsThePlane() {
        ElevationGrid ground = ElevationGrid.sampled(FRAME, (e, n) -> 7 + 0.03 * (e - 40) - 0.02 * (n - 30));
        GradePlane plane = BenchFit.leastMoved(ground, box(30, 25, 50, 35),
                new BenchFit.Limits(Math.toRadians(5), OptionalDouble.empty())).orElseThrow();
        assertEquals(0.03, plane.gradient().east(), 1e-5);
        assertEquals(-0.02, plane.gradient().north(), 1e-5);
        assertEquals(7, plane.height(40, 30), 1e-4);
    }

    @Test
    void theBestBenchKeepsToItsGrade() {
        ElevationGrid ground = ElevationGrid.sampled(FRAME, (e, n) -> 0.2 * e + 0.1 * Math.sin(n));
        GradePlane plane = BenchFit.leastMoved(ground, box(30, 25, 50, 35),
                new BenchFit.Limits(Math.toRadians(3), OptionalDouble.empty())).orElseThrow();
        assertEquals(Math.toRadians(3), plane.gradient().slope(), 1e-6);
        GradePlane flat = BenchFit.leastMoved(ground, box(30, 25, 50, 35),
                new BenchFit.Limits(0, OptionalDouble.empty())).orElseThrow();
        assertEquals(new Gradient(0, 0), flat.gradient());
    }

    @Test
    void aBalancedBenchNeedsNoSoilFromElsewhere() {
        ElevationGrid ground = ElevationGrid.sampled(FRAME, (e, n) -> 0.004 * (e - 38) * (e - 38) + 0.05 * n);
        Ring area = box(30, 25, 50, 35);
        GradePlane plane = BenchFit.leastMoved(ground, area,
                new BenchFit.Limits(Math.toRadians(2), OptionalDouble.of(0.8))).orElseThrow();
        CutAndFill inside = CutAndFill.between(ground, ElevationGrid.sampled(FRAME, plane::height), area);
        assertEquals(inside.fill(), 0.8 * inside.cut(), 0.02 * inside.fill());
    }

    @Test
    void noBenchOnGroundThatIsNotKnown() {
        double[] heights = level(1).heights();
        heights[60 * 161 + 80] = Double.NaN;
        ElevationGrid holed = ElevationGrid.of(FRAME, heights);
        assertEquals(Optional.empty(), BenchFit.leastMoved(holed, box(30, 25, 50, 35),
                new BenchFit.Limits(0.1, OptionalDouble.empty())));
        ShapedGround made = Grading.shaped(holed, box(30, 25, 50, 35), (e, n) -> 2, SideSlopes.of(0.6));
        assertTrue(Double.isNaN(made.after().nodeHeight(60, 80)));
        assertFalse(made.meetsGround());
    }
}
