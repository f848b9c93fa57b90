// SPDX-License-Identifier: Apache-2.0
package bermwright.site.doubt;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ElevationErrorsLawTest {
    private static final double SPREAD = 0.2;
    private static final double LENGTH = 30;
    private static final int FIELDS = 1500;
    /** Scatter of a correlation from so many fields, 1 / sqrt(1500), three times. */
    private static final double SCATTER = 0.08;
    private static final ElevationGrid LEVEL = ElevationGrid.sampled(new GridFrame(2, 13, 0, 0, 10), (x, y) -> 5);

    private static double correlation(List<double[]> fields, int one, int other) {
        double product = 0;
        double squares = 0;
        for (double[] field : fields) {
            product += field[one] * field[other];
            squares += (field[one] * field[one] + field[other] * field[other]) / 2;
        }
        return product / squares;
    }

    private static List<double[]> fields(ElevationErrors errors, double[] means) {
        List<double[]> fields = new ArrayList<>();
        for (int n = 0; n < FIELDS; n++) {
            ElevationGrid off = errors.on(LEVEL, means, n);
            double[] line = new double[13];
            for (int i = 0; i < line.length; i++) {
                line[i] = off.nodeHeight(0, i) - 5;
            }
            fields.add(line);
        }
        return fields;
    }

    @Test
    void errorsGoTogetherOverTheirLengthAndNoFarther() {
        List<double[]> fields = fields(new ElevationErrors(SPREAD, LENGTH, 1, List.of()), new double[0]);
        for (int apart : new int[] {1, 3, 6, 12}) {
            assertEquals(Math.exp(-10.0 * apart / LENGTH), correlation(fields, 0, apart), SCATTER, apart + "0 m");
        }
        double square = fields.stream().mapToDouble(f -> f[5] * f[5]).average().orElseThrow();
        assertEquals(SPREAD * SPREAD, square, SCATTER * SPREAD * SPREAD);
    }

    /** What is told of a bed is so in every field, and far from it nothing is told. */
    @Test
    void aFieldGoesThroughWhatIsToldOfABed() {
        ElevationErrors place = new ElevationErrors(SPREAD, LENGTH, 1, List.of(List.of(new Point(40, 0))));
        List<double[]> fields = fields(place, new double[] {2});
        for (double[] field : fields) {
            assertEquals(2 * SPREAD, field[4], 1e-3);
        }
        double nearby = fields.stream().mapToDouble(f -> f[5]).average().orElseThrow();
        assertEquals(2 * SPREAD * Math.exp(-10 / LENGTH), nearby, SCATTER * SPREAD);
    }

    @Test
    void hullsFarApartErrByThemselvesAndThoseOnOnePlaceAlike() {
        List<Point> here = ElevationErrors.bed(new Point(0, 0), new Azimuth(0), 30, 6);
        List<Point> far = ElevationErrors.bed(new Point(900, 0), new Azimuth(0), 30, 6);
        assertArrayEquals(new double[] {1.5, -0.7}, new ElevationErrors(SPREAD, LENGTH, 1, List.of(here, far))
                .together(new double[] {1.5, -0.7}), 1e-9);
        double[] same = new ElevationErrors(SPREAD, LENGTH, 1, List.of(here, here)).together(new double[] {1.5, -0.7});
        assertEquals(same[0], same[1], 1e-2);
    }
}
