// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LandformLawTest {
    /** The midpoint sum over squares of 0.05 m misses the kinks of cones and bowls by less than this share. */
    private static final double MIDPOINT_SHARE = 2e-4;

    private static double volume(Landform form, double reach) {
        double step = 0.05;
        double sum = 0;
        for (double x = -reach + step / 2; x < reach; x += step) {
            for (double y = -reach + step / 2; y < reach; y += step) {
                sum += form.height(x, y);
            }
        }
        return sum * step * step;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1.5})
    void aMoundHoldsItsVolume(double crown) {
        Mound mound = new Mound(new Point(0, 0), 3, crown, Math.toRadians(35));
        double exact = HandbookCraters.volume(mound);
        assertEquals(exact, volume(mound, 8), exact * MIDPOINT_SHARE);
    }

    @Test
    void aBermHoldsItsVolume() {
        Berm berm = new Berm(new Point(-3, -1), new Point(3, 1), 2, 1, Math.toRadians(33));
        assertEquals(HandbookCraters.volume(berm), volume(berm, 9), HandbookCraters.volume(berm) * MIDPOINT_SHARE);
    }

    @Test
    void aBowlHoldsItsVolume() {
        Crater crater = new Crater(new Point(0, 0), 16, 3, 0);
        assertEquals(-HandbookCraters.bowlVolume(crater), volume(crater, 10),
                HandbookCraters.bowlVolume(crater) * MIDPOINT_SHARE);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void rollingGroundHasTheRmsAskedFor(long seed) {
        RollingGround ground = RollingGround.of(seed, new RollingGround.Roughness(2, 100, 5, 0.85));
        double squares = 0;
        int n = 0;
        for (double x = 0; x < 3000; x += 13) {
            for (double y = 0; y < 3000; y += 13) {
                double height = ground.height(x, y);
                squares += height * height;
                n++;
            }
        }
        assertEquals(2, Math.sqrt(squares / n), 0.1, "seed " + seed);
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5})
    void longerWaysDifferMore(long seed) {
        RollingGround ground = RollingGround.of(seed, new RollingGround.Roughness(2, 400, 2, 0.8));
        double before = 0;
        for (double distance : new double[] {2, 8, 32}) {
            double sum = 0;
            for (int i = 0; i < 5000; i++) {
                double difference = ground.height(i * 3.7 + distance, i * 2.1) - ground.height(i * 3.7, i * 2.1);
                sum += difference * difference;
            }
            assertTrue(sum > 2 * before, "seed " + seed);
            before = sum;
        }
    }
}
