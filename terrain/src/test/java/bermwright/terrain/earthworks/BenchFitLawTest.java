// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.Gradient;
import bermwright.terrain.grid.GridFrame;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BenchFitLawTest {
    /** The search is fine to a ten-thousandth of the limit, and the samples stand for the cells. */
    private static final double SEARCH_SHARE = 0.01;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void noOtherPlaneMovesLess(long seed) {
        Random random = new Random(seed);
        GridFrame frame = new GridFrame(41, 51, 0, 0, 1);
        double a = random.nextDouble();
        ElevationGrid ground = ElevationGrid.sampled(frame, (e, n) -> 0.06 * e + Math.sin(e / 5 + 6 * a)
                + 0.7 * Math.cos(n / 4 - a));
        Ring area = new Ring(List.of(new Point(10, 8), new Point(42, 12), new Point(36, 33), new Point(8, 28)));
        double limit = Math.toRadians(4);
        GradePlane best = BenchFit.leastMoved(ground, area,
                new BenchFit.Limits(limit, OptionalDouble.empty())).orElseThrow();
        double least = moved(ground, area, best);
        for (int i = 0; i < 300; i++) {
            double turn = 2 * Math.PI * random.nextDouble();
            double grade = Math.tan(limit) * Math.sqrt(random.nextDouble());
            GradePlane other = new GradePlane(best.centre(), best.height() + 0.4 * random.nextGaussian(),
                    new Gradient(grade * Math.sin(turn), grade * Math.cos(turn)), 1);
            assertTrue(moved(ground, area, other) > least * (1 - SEARCH_SHARE), "seed " + seed + ": " + other);
        }
    }

    private static double moved(ElevationGrid ground, Ring area, GradePlane plane) {
        return CutAndFill.between(ground, ElevationGrid.sampled(ground.frame(), plane::height), area).moved();
    }
}
