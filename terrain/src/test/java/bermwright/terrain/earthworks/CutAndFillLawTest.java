// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CutAndFillLawTest {
    /** Volumes here are of order 10^3 m3. */
    private static final double ROUNDING = 1e-7;
    private static final GridFrame FRAME = new GridFrame(31, 41, 5, -7, 1.5);

    private static ElevationGrid rough(long seed) {
        Random random = new Random(seed);
        return ElevationGrid.sampled(FRAME, (e, n) -> 2 * random.nextGaussian());
    }

    /** A star about the middle with uneven rays, so concave as a rule. */
    private static Ring star(long seed) {
        Random random = new Random(seed);
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < 17; i++) {
            corners.add(new Point(35, 15.5).moved(new Azimuth(2 * Math.PI * i / 17), 4 + 17 * random.nextDouble(), 0));
        }
        return new Ring(corners);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void cutAndFillChangePlacesWithTheSurfaces(long seed) {
        CutAndFill there = CutAndFill.between(rough(seed), rough(seed + 50), star(seed));
        CutAndFill back = CutAndFill.between(rough(seed + 50), rough(seed), star(seed));
        assertEquals(there.cut(), back.fill(), ROUNDING, "seed " + seed);
        assertEquals(there.fill(), back.cut(), ROUNDING, "seed " + seed);
        assertEquals(there.cutArea(), back.fillArea(), ROUNDING, "seed " + seed);
        assertEquals(net(there), -net(back), ROUNDING, "seed " + seed);
    }

    @ParameterizedTest
    @ValueSource(longs = {6, 7, 8, 9})
    void aSplitAreaAddsUp(long seed) {
        Ring whole = star(seed);
        Point middle = new Point(35, 15.5);
        double cut = 0;
        double fill = 0;
        double fillArea = 0;
        for (int i = 0; i < 17; i++) {
            Ring wedge = new Ring(List.of(middle, whole.corners().get(i), whole.corners().get((i + 1) % 17)));
            CutAndFill part = CutAndFill.between(rough(seed), rough(seed + 50), wedge);
            cut += part.cut();
            fill += part.fill();
            fillArea += part.fillArea();
        }
        CutAndFill all = CutAndFill.between(rough(seed), rough(seed + 50), whole);
        assertEquals(all.cut(), cut, ROUNDING, "seed " + seed);
        assertEquals(all.fill(), fill, ROUNDING, "seed " + seed);
        assertEquals(all.fillArea(), fillArea, ROUNDING, "seed " + seed);
        assertEquals(whole.area(), all.area(), ROUNDING, "seed " + seed);
        assertEquals(all.area(), all.cutArea() + all.fillArea(), ROUNDING, "seed " + seed);
    }

    @ParameterizedTest
    @ValueSource(longs = {10, 11})
    void anOutlineAroundAllIsTheWholeGrid(long seed) {
        Ring box = new Ring(List.of(new Point(5, -7), new Point(65, -7), new Point(65, 38), new Point(5, 38)));
        CutAndFill inside = CutAndFill.between(rough(seed), rough(seed + 50), box);
        CutAndFill all = CutAndFill.between(rough(seed), rough(seed + 50));
        assertEquals(all.cut(), inside.cut(), ROUNDING);
        assertEquals(all.fill(), inside.fill(), ROUNDING);
        assertEquals(all.cutArea(), inside.cutArea(), ROUNDING);
        assertEquals(0, inside.unknownArea(), ROUNDING);
    }

    @ParameterizedTest
    @ValueSource(longs = {12, 13})
    void whatIsTakenInTwoStepsIsTakenInOne(long seed) {
        ElevationGrid one = rough(seed);
        ElevationGrid two = rough(seed + 1);
        ElevationGrid three = rough(seed + 2);
        double steps = net(CutAndFill.between(one, two, star(seed)))
                + net(CutAndFill.between(two, three, star(seed)));
        assertEquals(net(CutAndFill.between(one, three, star(seed))), steps, ROUNDING);
    }

    /** A second route: many small triangles of the same surface, with the height difference taken at their middles. */
    @ParameterizedTest
    @ValueSource(longs = {14, 15, 16})
    void triangulationIsASecondRoute(long seed) {
        GridFrame frame = new GridFrame(4, 5, 0, 0, 2);
        Random random = new Random(seed);
        ElevationGrid before = ElevationGrid.sampled(frame, (e, n) -> 0);
        ElevationGrid after = ElevationGrid.sampled(frame, (e, n) -> random.nextGaussian());
        Ring ring = new Ring(List.of(new Point(0.3, 0.2), new Point(7.4, 1.1), new Point(5.2, 5.7),
                new Point(3.9, 2.8), new Point(1.1, 5.1)));
        double fill = 0;
        double cut = 0;
        int steps = 1600;
        double step = 8.0 / steps;
        for (int i = 0; i < steps; i++) {
            for (int j = 0; j < steps * 3 / 4; j++) {
                Point p = new Point((i + 0.5) * step, (j + 0.5) * step);
                if (ring.contains(p)) {
                    double height = fourTriangles(after, p);
                    fill += Math.max(0, height) * step * step;
                    cut += Math.max(0, -height) * step * step;
                }
            }
        }
        CutAndFill exact = CutAndFill.between(before, after, ring);
        assertEquals(fill, exact.fill(), MIDPOINT, "seed " + seed);
        assertEquals(cut, exact.cut(), MIDPOINT, "seed " + seed);
    }

    /** The sum over squares of 5 mm misses the outline by about this volume. */
    private static final double MIDPOINT = 2e-2;

    private static double fourTriangles(ElevationGrid grid, Point p) {
        int column = (int) (p.east() / 2);
        int row = (int) (p.north() / 2);
        double u = p.east() / 2 - column;
        double v = p.north() / 2 - row;
        double southwest = grid.nodeHeight(row, column);
        double southeast = grid.nodeHeight(row, column + 1);
        double northwest = grid.nodeHeight(row + 1, column);
        double northeast = grid.nodeHeight(row + 1, column + 1);
        double middle = (southwest + southeast + northwest + northeast) / 4;
        boolean vertical = Math.abs(v - 0.5) > Math.abs(u - 0.5);
        double distance = Math.max(Math.abs(v - 0.5), Math.abs(u - 0.5)) * 2;
        if (distance == 0) {
            return middle;
        }
        double t = ((vertical ? u : v) - 0.5) / distance + 0.5;
        double edge = vertical ? v > 0.5 ? northwest + t * (northeast - northwest)
                : southwest + t * (southeast - southwest)
                : u > 0.5 ? southeast + t * (northeast - southeast) : southwest + t * (northwest - southwest);
        return middle + distance * (edge - middle);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.9, 1.002, 1.1})
    void volumesAreTrue(double scale) {
        CutAndFill projected = CutAndFill.between(rough(20), rough(21), star(20));
        CutAndFill real = CutAndFill.between(rough(20).withMetreScale(scale), rough(21).withMetreScale(scale),
                star(20));
        assertEquals(projected.cut() * scale * scale, real.cut(), ROUNDING);
        assertEquals(projected.area() * scale * scale, real.area(), ROUNDING);
        assertTrue(real.unknownArea() == 0);
    }

    private static double net(CutAndFill moved) {
        return moved.fill() - moved.cut();
    }
}
