// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The closed form of a ramp against its surface laid over a flank and added up cell by cell. */
class RampLawTest {
    private static final double CELL = 0.05;
    /** Cells on the edges count whole or not at all. */
    private static final double CELLS = 5e-3;
    private static final double BESIDE = Math.toRadians(34);

    /** What the ramp adds to a flank that rises at its slope from y = 0 on; x runs along the flank. */
    private static double counted(Ramp ramp) {
        double rise = Math.tan(ramp.grade());
        double side = Math.tan(ramp.sideSlope());
        double past = ramp.height() / side;
        double sum = 0;
        for (double x = CELL / 2; x < ramp.run() + past; x += CELL) {
            double road = x < ramp.run() ? x * rise : ramp.height() - (x - ramp.run()) * side;
            for (double y = CELL / 2 - ramp.width(); y < past; y += CELL) {
                // The roadway's outer edge stands w outwards of where the flank has the roadway's height.
                double outer = (y + ramp.width()) * side;
                sum += Math.max(0, Math.min(road, outer) - Math.max(0, y * side));
            }
        }
        return sum * CELL * CELL;
    }

    @Test
    void holdsWhatItsSurfaceAddsToTheFlank() {
        for (double[] one : new double[][] {{9, 4, 14}, {4, 3, 8}, {11, 5, 20}}) {
            Ramp ramp = new Ramp(one[0], one[1], Math.toRadians(one[2]), BESIDE);
            assertEquals(counted(ramp), ramp.volume(), CELLS * ramp.volume());
        }
    }

    @Test
    void growsWithTheSquareOfItsHeightAndIsNothingWithoutOne() {
        Ramp low = new Ramp(3, 4, 0.2, BESIDE);
        assertEquals(4 * low.volume(), new Ramp(6, 4, 0.2, BESIDE).volume(), 1e-9);
        assertEquals(0, new Ramp(0, 4, 0.2, BESIDE).volume());
    }

    @Test
    void takesFarLessThanAFreeStandingOne() {
        Ramp ramp = new Ramp(9, 4, Math.toRadians(14), BESIDE);
        double free = 4 * 9 * ramp.run() / 2 + 81 * ramp.run() / (3 * Math.tan(BESIDE));
        assertTrue(ramp.volume() < 0.5 * free, ramp.volume() + " m3 against " + free);
    }
}
