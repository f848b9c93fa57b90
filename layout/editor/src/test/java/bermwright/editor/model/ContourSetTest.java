// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Contour lines drawn into a picture, on a cone that rises by 1 m in 10 m to its top at 200, 200. */
class ContourSetTest {
    private static final int WHITE = 0xFFFFFFFF;
    private static final MapCamera WHOLE = new MapCamera(new Point(200, 200), 0.5, 800, 800);

    private static ElevationGrid cone() {
        return ElevationGrid.sampled(new GridFrame(201, 201, 0, 0, 2), (e, n) -> -Math.hypot(e - 200, n - 200) / 10);
    }

    private static int[] drawn(ContourSet lines, int every) {
        int[] pixels = new int[800 * 800];
        Arrays.fill(pixels, WHITE);
        lines.draw(pixels, WHOLE, every, false);
        return pixels;
    }

    private static int at(int[] pixels, double east, double north) {
        return pixels[(int) WHOLE.y(north) * 800 + (int) WHOLE.x(east)];
    }

    @Test
    void aLineLiesWhereTheGroundHasItsHeight() {
        int[] pixels = drawn(ContourSet.of(cone(), 1), 1);
        for (double turn = 0; turn < 6; turn += 0.1) {
            double x = Math.sin(turn);
            double y = Math.cos(turn);
            assertNotEquals(WHITE, at(pixels, 200 + 50 * x, 200 + 50 * y), "height -5 m is on a line at " + turn);
            assertEquals(WHITE, at(pixels, 200 + 55 * x, 200 + 55 * y), "height -5.5 m is on no line at " + turn);
        }
    }

    @Test
    void everyFifthLineIsStrongerAndOnlyTheyAreLeftInASmallerPicture() {
        int[] pixels = drawn(ContourSet.of(cone(), 1), 1);
        assertTrue(darkest(pixels, 100) < darkest(pixels, 90), "the line at -10 m is stronger than that at -9 m");
        int[] fewer = drawn(ContourSet.of(cone(), 1), 4);
        assertEquals(255, darkest(fewer, 90));
        assertTrue(darkest(fewer, 80) < 255, "-8 m is a fourth line");
    }

    /** The blue of the darkest pixel within a metre of a ring around the top. */
    private static int darkest(int[] pixels, double radius) {
        int darkest = 255;
        for (double r = radius - 1; r <= radius + 1; r += 0.25) {
            for (double turn = 0; turn < 6.28; turn += 0.01) {
                darkest = Math.min(darkest, at(pixels, 200 + r * Math.sin(turn), 200 + r * Math.cos(turn)) & 255);
            }
        }
        return darkest;
    }

    @Test
    void heightsStandOnTheStrongerLinesUprightAndApart() {
        List<ContourSet.Height> heights = ContourSet.of(cone(), 1).heights(WHOLE, 1);
        assertFalse(heights.isEmpty());
        for (ContourSet.Height height : heights) {
            double depth = Math.hypot(height.place().east() - 200, height.place().north() - 200) / 10;
            assertEquals(0, depth % 5 > 2.5 ? 5 - depth % 5 : depth % 5, 0.05, height.words());
            assertEquals("\u2212" + Math.round(depth), height.words());
            assertTrue(Math.abs(height.turn()) <= Math.PI / 2);
        }
        assertTrue(ContourSet.of(cone(), 1).heights(new MapCamera(new Point(200, 200), 20, 20, 20), 1).isEmpty(),
                "where the lines are short nothing is written");
    }
}
