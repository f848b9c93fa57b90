// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.foundation.Vec3;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ElevationGridLawTest {
    /** Sums of a few doubles of order 10 keep this. */
    private static final double ROUNDING = 1e-9;
    /** Differences of heights over a step of 1e-4 m lose half the digits. */
    private static final double DIFFERENCE_QUOTIENT = 1e-6;

    private static ElevationGrid rough(long seed) {
        Random random = new Random(seed);
        return ElevationGrid.sampled(new GridFrame(20, 30, -10, 40, 1.5), (e, n) -> random.nextGaussian());
    }

    private static Point inside(Random random) {
        return new Point(-9 + 41 * random.nextDouble(), 41 + 26 * random.nextDouble());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void theGradientIsTheDerivativeOfTheHeight(long seed) {
        ElevationGrid grid = rough(seed);
        Random random = new Random(seed + 100);
        double step = 1e-4;
        for (int i = 0; i < 200; i++) {
            Point p = inside(random);
            double x = (p.east() + 10) / 1.5 % 1;
            double y = (p.north() - 40) / 1.5 % 1;
            if (Math.min(Math.min(x, 1 - x), Math.min(y, 1 - y)) > 0.01) {
                double east = (grid.height(p.east() + step, p.north()) - grid.height(p.east() - step, p.north()))
                        / (2 * step);
                double north = (grid.height(p.east(), p.north() + step) - grid.height(p.east(), p.north() - step))
                        / (2 * step);
                assertEquals(east, grid.gradient(p).east(), DIFFERENCE_QUOTIENT, "seed " + seed + " at " + p);
                assertEquals(north, grid.gradient(p).north(), DIFFERENCE_QUOTIENT, "seed " + seed + " at " + p);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5, 6})
    void aCutIsStraightBetweenItsPoints(long seed) {
        ElevationGrid grid = rough(seed);
        Random random = new Random(seed + 100);
        for (int i = 0; i < 50; i++) {
            List<ProfilePoint> cut = grid.crossings(inside(random), inside(random));
            for (int k = 1; k < cut.size(); k++) {
                ProfilePoint a = cut.get(k - 1);
                ProfilePoint b = cut.get(k);
                Point third = new Point(a.place().east() + (b.place().east() - a.place().east()) / 3,
                        a.place().north() + (b.place().north() - a.place().north()) / 3);
                assertEquals(a.height() + (b.height() - a.height()) / 3, grid.triangleHeight(third), 1e-8,
                        "seed " + seed);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {7, 8})
    void sightIsMutual(long seed) {
        ElevationGrid grid = rough(seed);
        Random random = new Random(seed + 100);
        for (int i = 0; i < 200; i++) {
            Point a = inside(random);
            Point b = inside(random);
            Vec3 from = a.at(grid.triangleHeight(a) + 2 * random.nextDouble());
            Vec3 to = b.at(grid.triangleHeight(b) + 2 * random.nextDouble());
            assertEquals(grid.clearance(from, to), grid.clearance(to, from), ROUNDING, "seed " + seed);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {9, 10})
    void residualsOfAFittedPlaneHaveNoSlopeLeft(long seed) {
        ElevationGrid grid = rough(seed);
        Ring ring = new Ring(List.of(new Point(0, 45), new Point(25, 47), new Point(20, 60), new Point(3, 58)));
        FittedPlane fit = grid.fittedPlane(ring).orElseThrow();
        ElevationGrid left = ElevationGrid.sampled(grid.frame(), (e, n) -> grid.height(e, n) - fit.height(e, n));
        FittedPlane rest = left.fittedPlane(ring).orElseThrow();
        assertEquals(0, rest.height(), ROUNDING);
        assertEquals(0, rest.gradient().east(), ROUNDING);
        assertEquals(0, rest.gradient().north(), ROUNDING);
        assertEquals(fit.rms(), rest.rms(), ROUNDING);
        assertTrue(fit.low().residual() < 0 && fit.high().residual() > 0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 37, 90, 200})
    void slopesAlongAndAcrossGiveTheWholeSlope(double azimuth) {
        FittedPlane fit = rough(11).fittedPlane(new Ring(List.of(new Point(0, 45), new Point(25, 47),
                new Point(12, 60)))).orElseThrow();
        double along = Math.tan(fit.slopeAlong(Azimuth.ofDegrees(azimuth)));
        double across = Math.tan(fit.slopeAcross(Azimuth.ofDegrees(azimuth)));
        assertEquals(Math.tan(fit.slope()), Math.hypot(along, across), ROUNDING);
        assertEquals(Math.cos(fit.slope()), fit.normal().z(), ROUNDING);
    }
}
