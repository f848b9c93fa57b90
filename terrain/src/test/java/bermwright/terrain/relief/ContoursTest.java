// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.List;
import org.junit.jupiter.api.Test;

class ContoursTest {
    private static final double ROUNDING = 1e-9;

    @Test
    void aConeHasCircles() {
        ElevationGrid cone = ElevationGrid.sampled(new GridFrame(101, 101, -50, -50, 1), (e, n) -> -Math.hypot(e, n));
        List<ContourLine> lines = Contours.at(cone, -30.5, -20.5, -10.5);
        assertEquals(3, lines.size());
        for (ContourLine line : lines) {
            assertTrue(line.isClosed());
            for (Point p : line.points()) {
                assertEquals(-line.level(), Math.hypot(p.east(), p.north()), 0.02);
            }
            double area = new Ring(line.points()).signedArea();
            assertTrue(area > 0, "the higher ground is on the left");
            assertEquals(Math.PI * line.level() * line.level(), area, 0.005 * area);
        }
    }

    @Test
    void aPlaneHasStraightOpenLines() {
        ElevationGrid plane = ElevationGrid.sampled(new GridFrame(11, 21, 0, 0, 1), (e, n) -> 0.1 * e);
        List<ContourLine> lines = Contours.every(plane, 0.25);
        assertEquals(List.of(0.25, 0.5, 0.75, 1.0, 1.25, 1.5, 1.75, 2.0),
                lines.stream().map(ContourLine::level).toList());
        for (ContourLine line : lines) {
            assertEquals(11, line.points().size());
            line.points().forEach(p -> assertEquals(line.level() * 10, p.east(), ROUNDING));
            assertTrue(line.points().get(0).north() > line.points().get(1).north(), "the higher ground is on the left");
        }
    }

    @Test
    void aSaddleIsJoinedByItsMean() {
        GridFrame frame = new GridFrame(2, 2, 0, 0, 1);
        ElevationGrid highMiddle = ElevationGrid.of(frame, new double[] {3, 0, 0, 2});
        List<ContourLine> joined = Contours.at(highMiddle, 1);
        assertEquals(2, joined.size());
        List<ContourLine> parted = Contours.at(highMiddle, 1.5);
        assertEquals(2, parted.size());
        assertTrue(joined.stream().anyMatch(l -> l.points().stream().allMatch(p -> p.east() <= p.north())));
        assertTrue(parted.stream().anyMatch(l -> l.points().stream().allMatch(p -> p.east() + p.north() <= 1)));
    }

    @Test
    void linesEndAtMissingHeights() {
        ElevationGrid plane = ElevationGrid.sampled(new GridFrame(11, 11, 0, 0, 1),
                (e, n) -> e == 5 && n == 5 ? Double.NaN : 0.1 * e);
        assertEquals(2, Contours.at(plane, 0.45).size());
        assertEquals(1, Contours.at(plane, 0.25).size());
        assertEquals(List.of(), Contours.every(ElevationGrid.sampled(new GridFrame(3, 3, 0, 0, 1),
                (e, n) -> Double.NaN), 1));
    }

    @Test
    void refusesTooManyLevels() {
        ElevationGrid plane = ElevationGrid.sampled(new GridFrame(3, 3, 0, 0, 1), (e, n) -> 100 * e);
        assertThrows(IllegalArgumentException.class, () -> Contours.every(plane, 0.001));
        assertThrows(IllegalArgumentException.class, () -> Contours.at(plane, 2, 1));
    }
}
