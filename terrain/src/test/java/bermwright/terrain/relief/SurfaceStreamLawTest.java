// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Progress;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.HornSlope;
import bermwright.terrain.grid.NodeRange;
import bermwright.terrain.grid.ValueSink;
import java.time.Instant;
import java.util.Arrays;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SurfaceStreamLawTest {
    private static final int ROWS = 83;
    private static final int COLUMNS = 131;
    private static final double SPACING = 2.5;
    /** Angles in degrees from the same rises by another formula. */
    private static final double ROUNDING = 1e-12;

    static ElevationGrid ground() {
        Random random = new Random(5);
        return ElevationGrid.sampled(new GridFrame(ROWS, COLUMNS, 100, 200, SPACING), (e, n) ->
                Math.abs(e - 250) < 4 && Math.abs(n - 300) < 4 ? Double.NaN
                : 9 * Math.sin(e / 21) * Math.cos(n / 17) + 0.3 * random.nextDouble()).withMetreScale(0.998);
    }

    static Stream<Surface> surfaces() {
        LightSurface.Stay stay = new LightSurface.Stay(Math.toRadians(-88), 0.3, new Azimuth(0.4),
                Instant.parse("2030-06-01T00:00:00Z"), Instant.parse("2030-07-01T00:00:00Z"));
        return Stream.of(new SlopeSurface(GradientMethod.HORN), new SlopeSurface(GradientMethod.ZEVENBERGEN_THORNE),
                new AspectSurface(GradientMethod.HORN), new HillshadeSurface(Light.OF_MAPS, 1.5),
                new RoughnessSurface(RoughnessSurface.Measure.RILEY), new RoughnessSurface(
                RoughnessSurface.Measure.RANGE), new CurvatureSurface(CurvatureSurface.Kind.PLAN),
                PlaneSurface.over(PlaneSurface.Quantity.SLOPE, 20, SPACING), new PlaneSurface(
                PlaneSurface.Quantity.ROUGHNESS, 3), new FootprintSurface(FootprintSurface.Quantity.HIGH_SPOT,
                new FootprintSurface.Rectangle(43, 8.2, Azimuth.ofDegrees(75)), SPACING),
                new LightSurface(stay, 60, SPACING));
    }

    private static float[] inBlocks(Surface surface, int rows, int columns, boolean byBands) {
        float[] all = new float[ROWS * COLUMNS];
        Arrays.fill(all, 77);
        SurfaceStream.run(ground(), surface, new ValueSink() {
            @Override
            public int blockRows() {
                return rows;
            }

            @Override
            public int blockColumns() {
                return columns;
            }

            @Override
            public boolean isByBands() {
                return byBands;
            }

            @Override
            public void put(NodeRange block, float[] values) {
                for (int r = 0; r < block.rows(); r++) {
                    System.arraycopy(values, r * block.columns(), all, (block.firstRow() + r) * COLUMNS
                            + block.firstColumn(), block.columns());
                }
            }

            @Override
            public void endOfBand() {
                // nothing waits for it
            }
        }, Progress.NONE);
        return all;
    }

    @ParameterizedTest
    @MethodSource("surfaces")
    void isTheSameToTheLastBitHoweverTheGroundIsCut(Surface surface) {
        float[] whole = SurfaceStream.whole(ground(), surface);
        assertArrayEquals(whole, inBlocks(surface, ROWS, COLUMNS, false));
        assertArrayEquals(whole, inBlocks(surface, 1, COLUMNS, false));
        assertArrayEquals(whole, inBlocks(surface, 16, 16, true));
        assertArrayEquals(whole, inBlocks(surface, 7, 29, false));
    }

    @Test
    void slopeIsThatOfTheWholeGrid() {
        double[] slopes = HornSlope.slopes(ground());
        float[] stream = SurfaceStream.whole(ground(), new SlopeSurface(GradientMethod.HORN));
        for (int i = 0; i < slopes.length; i++) {
            float expected = (float) Math.toDegrees(slopes[i]);
            assertEquals(expected, stream[i], Float.isNaN(expected) ? 1 : Math.ulp(expected));
        }
    }

    @Test
    void theFastAngleIsTheArcTangent() {
        double[] rises = new double[4000];
        for (int i = 0; i < rises.length; i++) {
            rises[i] = Math.pow(10, -6 + 10.0 * i / rises.length);
        }
        double[] angles = Arrays.stream(rises).map(r -> r * r).toArray();
        SlopeAngle.degrees(angles, angles.length);
        for (int i = 0; i < rises.length; i++) {
            double exact = Math.toDegrees(Math.atan(rises[i]));
            assertEquals(exact, angles[i], ROUNDING * Math.max(1, exact));
        }
    }

    @Test
    void statisticsAreThoseOfTheWholeGrid() {
        GroundStatistics statistics = GroundStatistics.of(ground(), Progress.NONE);
        assertEquals(ground().lowest(), statistics.lowest());
        assertEquals(ground().highest(), statistics.highest());
        assertEquals(ground().missing(), statistics.missing());
        double[] shares = {0, 0.5, 0.9, 1};
        double[] quantiles = HornSlope.quantiles(ground(), shares);
        for (int i = 0; i < shares.length; i++) {
            assertEquals(quantiles[i], statistics.slope(shares[i]), Math.toRadians(0.01) + ROUNDING);
        }
    }

    @Test
    void canBeCancelled() {
        Progress cancelled = new Progress() {
            @Override
            public void report(double share, String step) {
            }

            @Override
            public boolean isCancelled() {
                return true;
            }
        };
        assertThrows(CancellationException.class, () -> GroundStatistics.of(ground(), cancelled));
    }

    @Test
    void aPlaneHasItsSlopeOverAnyBaselineAndUnderAnyFootprint() {
        ElevationGrid plane = ElevationGrid.sampled(new GridFrame(60, 60, 0, 0, 2), (e, n) -> 0.1 * e + 0.05 * n);
        double slope = Math.toDegrees(Math.atan(Math.hypot(0.1, 0.05)));
        assertEquals(slope, at(plane, PlaneSurface.over(PlaneSurface.Quantity.SLOPE, 24, 2)), 1e-5);
        assertEquals(0, at(plane, PlaneSurface.over(PlaneSurface.Quantity.ROUGHNESS, 24, 2)), 1e-5);
        Azimuth heading = Azimuth.ofDegrees(30);
        FootprintSurface.Rectangle rectangle = new FootprintSurface.Rectangle(40, 8, heading);
        double along = Math.toDegrees(Math.atan(-(0.1 * heading.east() + 0.05 * heading.north())));
        double across = Math.toDegrees(Math.atan(0.1 * heading.north() - 0.05 * heading.east()));
        assertEquals(along, at(plane, new FootprintSurface(FootprintSurface.Quantity.SLOPE_ALONG, rectangle, 2)), 1e-5);
        assertEquals(across, at(plane, new FootprintSurface(FootprintSurface.Quantity.SLOPE_ACROSS, rectangle, 2)),
                1e-5);
        assertEquals(0, at(plane, new FootprintSurface(FootprintSurface.Quantity.HIGH_SPOT, rectangle, 2)), 1e-5);
    }

    @Test
    void aBowlCurvesAsItsFormula() {
        double k = 0.002;
        ElevationGrid bowl = ElevationGrid.sampled(new GridFrame(60, 60, -60, -50, 2), (e, n) -> k * (e * e + n * n));
        assertEquals(-4 * k, at(bowl, new CurvatureSurface(CurvatureSurface.Kind.TOTAL)), 1e-8);
        assertEquals(-2 * k, at(bowl, new CurvatureSurface(CurvatureSurface.Kind.PROFILE)), 1e-8);
        assertEquals(-2 * k, at(bowl, new CurvatureSurface(CurvatureSurface.Kind.PLAN)), 1e-8);
    }

    private static float at(ElevationGrid ground, Surface surface) {
        return SurfaceStream.whole(ground, surface)[30 * ground.frame().columns() + 31];
    }
}
