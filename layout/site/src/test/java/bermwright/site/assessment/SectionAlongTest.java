// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SectionAlongTest {
    private static final double EXACT = 1e-9;

    @Test
    void followsTheGroundAndMeasuresTrueMetresRoundACorner() {
        ElevationGrid slope = ElevationGrid.sampled(new GridFrame(41, 41, 0, 0, 1), (e, n) -> 0.1 * e - 0.2 * n)
                .withMetreScale(1.02);
        SectionAlong section = SectionAlong.of(List.of(new Point(5, 5), new Point(25, 5), new Point(25, 20)), slope,
                Optional.empty());
        SectionAlong.Sample first = section.samples().get(0);
        SectionAlong.Sample last = section.samples().get(section.samples().size() - 1);
        assertEquals(-0.5, first.natural(), EXACT);
        assertEquals(2.5 - 4, last.finished(), EXACT);
        assertEquals(35 * 1.02, last.distance(), EXACT);
        for (int i = 1; i < section.samples().size(); i++) {
            assertTrue(section.samples().get(i).distance() > section.samples().get(i - 1).distance());
        }
        assertTrue(section.hulls().isEmpty());
    }

    @Test
    void isNotKnownBeyondTheGround() {
        ElevationGrid level = ElevationGrid.sampled(new GridFrame(11, 11, 0, 0, 1), (e, n) -> 3);
        SectionAlong section = SectionAlong.of(List.of(new Point(5, 5), new Point(25, 5)), level, Optional.empty());
        assertTrue(Double.isNaN(section.samples().get(section.samples().size() - 1).natural()));
        assertEquals(3, section.samples().get(0).natural(), EXACT);
    }
}
