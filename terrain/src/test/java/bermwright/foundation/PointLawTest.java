// SPDX-License-Identifier: Apache-2.0
package bermwright.foundation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PointLawTest {
    private static final long SEED = 20261125;
    /** The library takes the root of a difference of squares of some hundred metres (m). */
    private static final double ROUNDING = 1e-5;

    @Test
    void theDistanceToAStretchIsThatOfAGeometryLibraryAndNoGreaterThanToItsEnds() {
        Random random = new Random(SEED);
        for (int i = 0; i < 2000; i++) {
            double[] d = random.doubles(6, -300, 300).toArray();
            Point p = new Point(d[0], d[1]);
            Point from = new Point(d[2], d[3]);
            Point to = i % 10 == 0 ? from : new Point(d[4], d[5]);
            double distance = p.distance(from, to);
            assertEquals(Line2D.ptSegDist(from.east(), from.north(), to.east(), to.north(),
                    p.east(), p.north()), distance, ROUNDING);
            assertEquals(p.distance(to, from), distance, ROUNDING);
            assertTrue(distance <= Math.min(p.distance(from), p.distance(to)) + ROUNDING);
        }
    }
}
