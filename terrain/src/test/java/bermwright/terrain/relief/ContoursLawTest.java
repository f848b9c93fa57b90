// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ContoursLawTest {
    private static final double ROUNDING = 1e-9;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void everyPointLiesAtItsLevelAndNoLineTouchesAnother(long seed) {
        Random random = new Random(seed);
        ElevationGrid rough = ElevationGrid.sampled(new GridFrame(70, 90, 10, -20, 2), (e, n) -> random.nextDouble());
        double[] levels = {0.1234, 0.41, 0.6, 0.987};
        for (double level : levels) {
            Set<Point> seen = new HashSet<>();
            for (ContourLine line : Contours.at(rough, level)) {
                assertEquals(level, line.level());
                for (Point p : line.points()) {
                    assertEquals(level, rough.height(p), ROUNDING, "seed " + seed);
                    assertTrue(seen.add(p), "seed " + seed + ": a point in two lines");
                }
                if (!line.isClosed()) {
                    assertTrue(isAtEdge(line.points().get(0)), "seed " + seed);
                    assertTrue(isAtEdge(line.points().get(line.points().size() - 1)), "seed " + seed);
                }
            }
        }
    }

    private static boolean isAtEdge(Point p) {
        return p.east() == 10 || p.east() == 188 || p.north() == -20 || p.north() == 118;
    }
}
