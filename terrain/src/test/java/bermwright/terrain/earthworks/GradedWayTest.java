// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class GradedWayTest {
    /** Heights are found in steps of at most 5 cm, so to half of that. */
    private static final double HALF_STEP = 0.026;
    private static final GridFrame FRAME = new GridFrame(81, 121, 0, 0, 1);
    private static final List<Point> LINE = List.of(new Point(15, 20), new Point(60, 40), new Point(105, 45));

    private static GradedWay.Way way(double gradeDeg, GradedWay.Ends ends) {
        return new GradedWay.Way(LINE, 6, Math.toRadians(gradeDeg), SideSlopes.of(Math.toRadians(33)), ends);
    }

    private static void assertKeepsGrade(GradedWay.Made made, double gradeDeg) {
        for (int i = 1; i < made.places().size(); i++) {
            double rise = Math.abs(made.heights().get(i) - made.heights().get(i - 1));
            assertTrue(rise <= Math.tan(Math.toRadians(gradeDeg))
                    * made.places().get(i).distance(made.places().get(i - 1)) + 1e-9, "station " + i);
        }
    }

    @Test
    void gentleGroundIsLeftAsItLies() {
        ElevationGrid ground = ElevationGrid.sampled(FRAME, (e, n) -> 0.02 * e);
        GradedWay.Made made = GradedWay.made(ground, way(10, GradedWay.Ends.FREE)).orElseThrow();
        for (int i = 0; i < made.places().size(); i++) {
            assertEquals(ground.height(made.places().get(i)), made.heights().get(i), HALF_STEP);
        }
        assertTrue(made.ground().moved().moved() < 95 * 6 * HALF_STEP + 95 * 3 * 3 * 0.02);
    }

    @Test
    void aRidgeIsCutToTheGrade() {
        ElevationGrid ground = ElevationGrid.sampled(FRAME, (e, n) -> 8 * Math.exp(-(e - 60) * (e - 60) / 100));
        GradedWay.Made made = GradedWay.made(ground, way(6, GradedWay.Ends.FREE)).orElseThrow();
        assertKeepsGrade(made, 6);
        assertTrue(made.ground().moved().cut() > 100);
        assertTrue(made.ground().meetsGround());
        assertEquals(made.heights().get(0), made.ground().after().height(new Point(15, 20)), 1e-9);
    }

    @Test
    void anEndHeldIsKeptAndOneTooHighIsRefused() {
        ElevationGrid ground = ElevationGrid.sampled(FRAME, (e, n) -> 0);
        GradedWay.Ends up = new GradedWay.Ends(OptionalDouble.of(0), OptionalDouble.of(5), OptionalDouble.empty());
        GradedWay.Made made = GradedWay.made(ground, way(6, up)).orElseThrow();
        assertEquals(5, made.heights().get(made.heights().size() - 1), HALF_STEP);
        assertKeepsGrade(made, 6);
        assertEquals(Optional.empty(), GradedWay.made(ground, way(2, up)));
    }

    @Test
    void aBalancedWayUsesWhatItCuts() {
        ElevationGrid ground = ElevationGrid.sampled(FRAME, (e, n) -> 3 * Math.sin(e / 9));
        GradedWay.Made made = GradedWay.made(ground, way(4, new GradedWay.Ends(OptionalDouble.empty(),
                OptionalDouble.empty(), OptionalDouble.of(0.9)))).orElseThrow();
        double cut = 0;
        double fill = 0;
        for (int i = 0; i < made.places().size(); i++) {
            double above = ground.height(made.places().get(i)) - made.heights().get(i);
            cut += Math.max(0, above);
            fill += Math.max(0, -above);
        }
        assertEquals(0.9 * cut, fill, 1e-6);
        assertThrows(IllegalArgumentException.class, () -> new GradedWay.Ends(OptionalDouble.of(1),
                OptionalDouble.empty(), OptionalDouble.of(0.9)));
    }

    @Test
    void noWayOverGroundThatIsNotKnown() {
        ElevationGrid holed = ElevationGrid.sampled(FRAME, (e, n) -> e == 60 && n == 40 ? Double.NaN : 0);
        assertEquals(Optional.empty(), GradedWay.made(holed, way(5, GradedWay.Ends.FREE)));
    }

    /** Least over all profiles is checked against every profile of a short way with coarse height steps. */
    @Test
    void theProfileMovesTheLeast() {
        double[] ground = {0, 2, -1, 1.5, 0.5};
        double[] found = GradedProfile.leastMoved(ground, new GradedProfile.Limits(1, 0.5, OptionalDouble.empty(),
                OptionalDouble.empty())).orElseThrow();
        double least = Double.POSITIVE_INFINITY;
        int levels = 13;
        int all = (int) Math.pow(levels, 5);
        for (int code = 0; code < all; code++) {
            double sum = 0;
            double before = Double.NaN;
            int rest = code;
            for (int i = 0; i < 5; i++) {
                double z = -1 + 0.25 * (rest % levels);
                rest /= levels;
                sum += Double.isNaN(before) || Math.abs(z - before) <= 0.5 ? Math.abs(z - ground[i])
                        : Double.POSITIVE_INFINITY;
                before = z;
            }
            least = Math.min(least, sum);
        }
        double ours = 0;
        for (int i = 0; i < 5; i++) {
            ours += Math.abs(found[i] - ground[i]);
        }
        assertTrue(ours <= least + 1e-9, ours + " against " + least);
    }
}
