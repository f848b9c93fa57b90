// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Azimuth;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import org.junit.jupiter.api.Test;

class HillshadeTest {
    private static final GridFrame FRAME = new GridFrame(6, 8, 0, 0, 2);
    private static final double ROUNDING = 1e-12;

    private static int shade(byte[] shades, int row, int column) {
        return shades[row * 8 + column] & 255;
    }

    @Test
    void levelGroundIsAsBrightAsTheLightIsHigh() {
        byte[] shades = Hillshade.of(ElevationGrid.sampled(FRAME, (e, n) -> 7), new Light(new Azimuth(0),
                Math.toRadians(30)), 1);
        for (byte shade : shades) {
            assertEquals(128, shade & 255);
        }
    }

    @Test
    void aSlopeSquareToTheLightIsBrightest() {
        ElevationGrid fallsWest = ElevationGrid.sampled(FRAME, (e, n) -> e);
        assertEquals(255, shade(Hillshade.of(fallsWest, new Light(Azimuth.ofDegrees(270), Math.toRadians(45)), 1),
                2, 3));
        assertEquals(1, shade(Hillshade.of(fallsWest, new Light(Azimuth.ofDegrees(90), Math.toRadians(45)), 1), 2, 3));
        assertEquals(255, shade(Hillshade.of(fallsWest, new Light(Azimuth.ofDegrees(270), Math.toRadians(45)), 1),
                0, 0), "the edge is shaded as the ground beside it");
    }

    @Test
    void aMissingHeightLeavesItsNeighboursUnknown() {
        double[] heights = ElevationGrid.sampled(FRAME, (e, n) -> e).heights();
        heights[3 * 8 + 4] = Double.NaN;
        byte[] shades = Hillshade.of(ElevationGrid.of(FRAME, heights), Light.OF_MAPS, 1);
        int unknown = 0;
        for (byte shade : shades) {
            unknown += shade == Hillshade.UNKNOWN ? 1 : 0;
        }
        assertEquals(9, unknown);
        assertEquals(Hillshade.UNKNOWN, shades[3 * 8 + 4]);
    }

    @Test
    void bandsSplitAtTheirLimits() {
        ElevationGrid curve = ElevationGrid.sampled(new GridFrame(5, 12, 0, 0, 1), (e, n) -> e * e / 20);
        SlopeBands bands = SlopeBands.of(curve, Math.atan(0.25), Math.atan(0.55));
        assertEquals(0, bands.band(2, 2));
        assertEquals(1, bands.band(2, 3));
        assertEquals(1, bands.band(2, 5));
        assertEquals(2, bands.band(2, 6));
        assertEquals(1, bands.shares()[0] + bands.shares()[1] + bands.shares()[2], ROUNDING);
        assertArrayEquals(new double[] {Math.atan(0.25), Math.atan(0.55)}, bands.limits());
    }

    @Test
    void refusesLimitsThatDoNotRise() {
        ElevationGrid level = ElevationGrid.sampled(FRAME, (e, n) -> 0);
        assertThrows(IllegalArgumentException.class, () -> SlopeBands.of(level, 0.2, 0.1));
        assertThrows(IllegalArgumentException.class, () -> SlopeBands.of(level, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> SlopeBands.of(level));
        assertTrue(SlopeBands.of(level, 0.1).shares()[0] == 1);
    }
}
