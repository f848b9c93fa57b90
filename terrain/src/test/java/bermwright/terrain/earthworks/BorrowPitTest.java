// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BorrowPitTest {
    private static final double ROUNDING = 1e-6;
    /** A grid of half a metre keeps a pit of 40 m with sides of 1.4 m to this share. */
    private static final double GRID_SHARE = 0.01;
    private static final GridFrame FRAME = new GridFrame(121, 161, 0, 0, 0.5);
    private static final Ring AREA = new Ring(List.of(new Point(20, 15), new Point(60, 15), new Point(60, 45),
            new Point(20, 45)));

    private static BorrowPit.Ground spec(List<BorrowPit.KeptClear> clear) {
        return new BorrowPit.Ground(AREA, 0.8, Math.toRadians(30), 0.3, clear);
    }

    private static ElevationGrid rolling(long seed) {
        Random random = new Random(seed);
        double a = random.nextDouble();
        return ElevationGrid.sampled(FRAME, (e, n) -> 100 + Math.sin(e / 9 + a) + 0.05 * n);
    }

    @Test
    void aPitInLevelGroundIsAFrustum() {
        BorrowPit pit = BorrowPit.of(ElevationGrid.sampled(FRAME, (e, n) -> 10), spec(List.of()));
        double cotangent = 1 / Math.tan(Math.toRadians(30));
        double volume = 40 * 30 * 0.8 - 70 * 0.64 * cotangent + 4 * 0.512 * cotangent * cotangent / 3;
        assertEquals(volume, pit.bank(), GRID_SHARE * volume);
        assertEquals(9.2, pit.surface().height(new Point(40, 30)), ROUNDING);
        assertEquals(10 - 0.5 * Math.tan(Math.toRadians(30)), pit.surface().height(new Point(20.5, 30)), ROUNDING);
        assertEquals(10, pit.surface().height(new Point(20, 30)), ROUNDING);
    }

    @Test
    void whatIsKeptClearIsNotUndercut() {
        ElevationGrid ground = ElevationGrid.sampled(FRAME, (e, n) -> 10);
        Ring anchor = new Ring(List.of(new Point(39, 29), new Point(41, 29), new Point(41, 31), new Point(39, 31)));
        BorrowPit pit = BorrowPit.of(ground, spec(List.of(new BorrowPit.KeptClear(anchor, 5))));
        ElevationGrid left = pit.surface();
        for (int row = 0; row < 121; row++) {
            for (int column = 0; column < 161; column++) {
                Point p = new Point(FRAME.east(column), FRAME.north(row));
                double away = Math.hypot(Math.max(0, Math.abs(p.east() - 40) - 1),
                        Math.max(0, Math.abs(p.north() - 30) - 1));
                double lowest = 10 - Math.max(0, away - 5) * Math.tan(Math.toRadians(30));
                assertTrue(left.nodeHeight(row, column) >= lowest - ROUNDING, p.toString());
            }
        }
        assertEquals(9.2, left.height(new Point(50, 30)), ROUNDING);
        assertTrue(pit.bank() < BorrowPit.of(ground, spec(List.of())).bank() - 100);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void stripsAddUpAndTheSurfaceHoldsThem(long seed) {
        ElevationGrid ground = rolling(seed).withMetreScale(1.003);
        BorrowPit pit = BorrowPit.of(ground, spec(List.of()));
        List<BorrowPit.Strip> strips = pit.strips();
        assertEquals(3, strips.size());
        assertEquals(0.8, strips.get(2).bottom());
        assertEquals(pit.bank(), strips.stream().mapToDouble(BorrowPit.Strip::bank).sum(), ROUNDING);
        assertEquals(pit.bank(), CutAndFill.between(ground, pit.surface()).cut(), ROUNDING);
        assertEquals(pit.bank(0.4), CutAndFill.between(ground, pit.surface(0.4)).cut(), ROUNDING);
    }

    @Test
    void theDepthForAVolumeYieldsIt() {
        BorrowPit pit = BorrowPit.of(rolling(3), spec(List.of()));
        assertEquals(300, pit.bank(pit.depthFor(300)), ROUNDING);
        assertEquals(0.8, pit.depthFor(1e9));
        assertEquals(0, pit.bank(pit.depthFor(0)), ROUNDING);
    }

    @Test
    void theSidesStand() {
        ElevationGrid ground = rolling(4);
        ElevationGrid left = BorrowPit.of(ground, spec(List.of())).surface();
        assertTrue(StandingSlopes.of(ground, left, Math.toRadians(33)).stands());
    }

    @Test
    void refusesDepthsThatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> new BorrowPit.Ground(AREA, Double.NaN, 0.5, 0.3, List.of()));
        assertThrows(IllegalArgumentException.class, () -> new BorrowPit.Ground(AREA, 1, 2, 0.3, List.of()));
        assertThrows(IllegalArgumentException.class, () -> new BorrowPit.KeptClear(AREA, -1));
    }
}
