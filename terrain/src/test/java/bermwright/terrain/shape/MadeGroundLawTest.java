// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.shape;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.NodeRange;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class MadeGroundLawTest {
    private static final GridFrame FRAME = new GridFrame(200, 300, 5000, -3000, 2);

    private static double[] block(MadeGround ground, NodeRange block) {
        double[] heights = new double[(int) block.nodes()];
        ground.read(block, heights);
        return heights;
    }

    @Test
    void isTheSameToTheLastBitHoweverItIsCut() {
        MadeGround ground = new MadeGround(FRAME, new MadeGround.Recipe(20, 500, 0.8, 1, 200, 0.01, 3), 11);
        double[] whole = block(ground, NodeRange.all(FRAME));
        for (NodeRange part : new NodeRange[] {new NodeRange(0, 0, 64, 64), new NodeRange(100, 130, 17, 33),
            new NodeRange(199, 0, 1, 300)}) {
            double[] heights = block(ground, part);
            for (int r = 0; r < part.rows(); r++) {
                int from = (part.firstRow() + r) * 300 + part.firstColumn();
                assertArrayEquals(Arrays.copyOfRange(whole, from, from + part.columns()), Arrays.copyOfRange(heights,
                        r * part.columns(), (r + 1) * part.columns()));
            }
        }
    }

    @Test
    void theSeedDecides() {
        MadeGround.Recipe recipe = MadeGround.Recipe.HIGHLAND;
        NodeRange some = new NodeRange(10, 10, 20, 20);
        assertArrayEquals(block(new MadeGround(FRAME, recipe, 1), some), block(new MadeGround(FRAME, recipe, 1), some));
        assertFalse(Arrays.equals(block(new MadeGround(FRAME, recipe, 1), some),
                block(new MadeGround(FRAME, recipe, 2), some)));
    }

    @Test
    void reliefHasTheRootMeanSquareAskedFor() {
        GridFrame large = new GridFrame(700, 700, 0, 0, 20);
        double[] heights = block(new MadeGround(large, new MadeGround.Recipe(25, 1000, 0.8, 0, 100, 0, 3), 3),
                NodeRange.all(large));
        double mean = Arrays.stream(heights).average().orElseThrow();
        double rms = Math.sqrt(Arrays.stream(heights).map(h -> (h - mean) * (h - mean)).average().orElseThrow());
        assertEquals(25, rms, 5);
    }

    @Test
    void reliefGrowsWithTheDistanceToThePowerOfHurst() {
        GridFrame large = new GridFrame(900, 900, 0, 0, 1);
        double[] h = block(new MadeGround(large, new MadeGround.Recipe(25, 512, 0.75, 0, 100, 0, 3), 8),
                NodeRange.all(large));
        double near = difference(h, 900, 8);
        double far = difference(h, 900, 64);
        // Between the shortest and the longest wave, so the power is a little lower than asked for.
        assertEquals(0.75, Math.log(far / near) / Math.log(8), 0.12);
    }

    private static double difference(double[] h, int columns, int lag) {
        double sum = 0;
        int count = 0;
        for (int r = 0; r < columns; r++) {
            for (int c = 0; c + lag < columns; c++) {
                double d = h[r * columns + c + lag] - h[r * columns + c];
                sum += d * d;
                count++;
            }
        }
        return Math.sqrt(sum / count);
    }

    @Test
    void cratersComeInTheNumbersOfTheSteadyState() {
        // Craters of 64 to 128 m alone: a hole is a node deep below; their bowls cover N pi D2 / 4 of the ground.
        GridFrame large = new GridFrame(1500, 1500, 0, 0, 15.9);
        double[] h = block(new MadeGround(large, new MadeGround.Recipe(0, 1000, 0.8, 1, 127.2, 0, 3), 4),
                NodeRange.all(large));
        double below = Arrays.stream(h).filter(z -> z < 0).count() / (double) h.length;
        // Integral of pi D^2 / 4 x 2 x 0.079 D^-3 from 63.6 to 127.2 m is 0.079 pi / 2 ln 2 = 0.086; a bowl lies below
        // the ground before within 0.9 of its rim radius, and craters overlap.
        assertEquals(0.086 * 0.82, below, 0.02);
    }

    @Test
    void bouldersStandOnTheGround() {
        GridFrame large = new GridFrame(500, 500, 0, 0, 0.5);
        double[] h = block(new MadeGround(large, new MadeGround.Recipe(0, 100, 0.8, 0, 100, 0.01, 3), 4),
                NodeRange.all(large));
        assertTrue(Arrays.stream(h).min().orElseThrow() >= 0);
        double high = Arrays.stream(h).max().orElseThrow();
        assertTrue(high > 0.3 && high < 0.3 * 16 * 2, high + " m");
        // N(>= 1 m) = 0.01 in a square metre: 625 boulders on 250 m x 250 m, each of some pi D2 / 4.
        double covered = Arrays.stream(h).filter(z -> z > 0).count() * 0.25;
        assertEquals(625 * Math.PI / 4 * 3, covered, 500);
    }
}
