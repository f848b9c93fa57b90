// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.regolith.Estimate;
import bermwright.regolith.SoilStates;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.List;
import org.junit.jupiter.api.Test;

class CutAndFillTest {
    private static final double ROUNDING = 1e-9;
    private static final GridFrame FRAME = new GridFrame(11, 11, 0, 0, 1);
    private static final ElevationGrid LEVEL = ElevationGrid.sampled(FRAME, (e, n) -> 0);

    private static Ring box(double west, double south, double east, double north) {
        return new Ring(List.of(new Point(west, south), new Point(east, south), new Point(east, north),
                new Point(west, north)));
    }

    @Test
    void takesPartsOfCells() {
        ElevationGrid raised = ElevationGrid.sampled(FRAME, (e, n) -> 2);
        CutAndFill part = CutAndFill.between(LEVEL, raised, box(1.25, 2.5, 4.75, 3.25));
        assertEquals(2 * 3.5 * 0.75, part.fill(), ROUNDING);
        assertEquals(0, part.cut(), ROUNDING);
        assertEquals(3.5 * 0.75, part.fillArea(), ROUNDING);
        CutAndFill withinOne = CutAndFill.between(LEVEL, raised, box(1.25, 2.5, 1.5, 2.75));
        assertEquals(2 * 0.0625, withinOne.fill(), ROUNDING);
    }

    @Test
    void aTiltedPlaneIsSplitAtItsZeroLine() {
        ElevationGrid tilted = ElevationGrid.sampled(FRAME, (e, n) -> e - 5);
        CutAndFill all = CutAndFill.between(LEVEL, tilted, box(0, 0, 10, 10));
        assertEquals(125, all.cut(), ROUNDING);
        assertEquals(125, all.fill(), ROUNDING);
        ElevationGrid skew = ElevationGrid.sampled(FRAME, (e, n) -> e - 4.3);
        CutAndFill part = CutAndFill.between(LEVEL, skew, box(0, 0, 10, 10));
        assertEquals(10 * 4.3 * 4.3 / 2, part.cut(), ROUNDING);
        assertEquals(10 * 5.7 * 5.7 / 2, part.fill(), ROUNDING);
        assertEquals(43, part.cutArea(), ROUNDING);
    }

    @Test
    void groundThatIsNotKnownIsCountedApart() {
        double[] heights = LEVEL.heights();
        heights[5 * 11 + 5] = Double.NaN;
        ElevationGrid raised = ElevationGrid.sampled(FRAME, (e, n) -> 1);
        CutAndFill all = CutAndFill.between(ElevationGrid.of(FRAME, heights), raised, box(0, 0, 10, 10));
        assertEquals(96, all.fill(), ROUNDING);
        assertEquals(4, all.unknownArea(), ROUNDING);
        CutAndFill beyond = CutAndFill.between(LEVEL, raised, box(8, 8, 12, 12));
        assertEquals(4, beyond.fill(), ROUNDING);
        assertEquals(12, beyond.unknownArea(), ROUNDING);
        CutAndFill away = CutAndFill.between(LEVEL, raised, box(20, 20, 22, 22));
        assertEquals(0, away.moved(), ROUNDING);
        assertEquals(4, away.unknownArea(), ROUNDING);
    }

    @Test
    void theWayRoundDoesNotMatter() {
        ElevationGrid bumpy = ElevationGrid.sampled(FRAME, (e, n) -> Math.sin(e) + Math.cos(2 * n));
        Ring one = new Ring(List.of(new Point(1.2, 1.7), new Point(8.3, 2.2), new Point(4.4, 8.8)));
        Ring other = new Ring(List.of(new Point(4.4, 8.8), new Point(8.3, 2.2), new Point(1.2, 1.7)));
        assertEquals(CutAndFill.between(LEVEL, bumpy, one).fill(), CutAndFill.between(LEVEL, bumpy, other).fill(),
                ROUNDING);
    }

    @Test
    void theRuleByHandIsNearTheExactMixedCell() {
        GridFrame frame = new GridFrame(2, 2, 0, 0, 10);
        CutAndFill exact = CutAndFill.between(ElevationGrid.of(frame, new double[] {2, 1, -1, -1}),
                ElevationGrid.sampled(frame, (e, n) -> 0));
        assertEquals(HandRules.mixedCellCut(100, 3, 2), exact.cut(), 2);
        assertEquals(HandRules.mixedCellCut(100, 2, 3), exact.fill(), 2);
    }

    @Test
    void refusesSurfacesOnOtherNodes() {
        ElevationGrid other = ElevationGrid.sampled(new GridFrame(11, 11, 0, 0, 1.5), (e, n) -> 0);
        assertThrows(IllegalArgumentException.class, () -> CutAndFill.between(LEVEL, other));
        assertThrows(IllegalArgumentException.class,
                () -> CutAndFill.between(LEVEL, LEVEL.withMetreScale(1.01), box(0, 0, 1, 1)));
    }

    @Test
    void statesCarryTheirSpread() {
        SoilStates states = new SoilStates(1800, 1450, 1650, 0.1);
        Estimate bank = states.bankFromPlaced(1000);
        assertEquals(1000 * 1650.0 / 1800, bank.best(), ROUNDING);
        assertEquals(bank.best() * (1 + 0.1 * Math.sqrt(2)), bank.high(), ROUNDING);
        assertEquals(1000, states.placedFromBank(bank.best()).best(), ROUNDING);
        assertEquals(1000 * 1650.0 / 1450, bank.best() * states.swell(), 1e-9);
        assertTrue(states.note().spread().startsWith("14 % for a volume, 10 % for a mass"));
    }
}
