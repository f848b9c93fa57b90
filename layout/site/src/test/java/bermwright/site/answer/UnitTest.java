// SPDX-License-Identifier: Apache-2.0
package bermwright.site.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class UnitTest {
    /** One rounding of a division or a product. */
    private static final double ROUNDING = 1e-12;

    @Test
    void turnsSiIntoTheUnitsOfTables() {
        assertEquals(75, Unit.DEG.of(Math.PI * 75 / 180), ROUNDING);
        assertEquals(12.5, Unit.KN.of(12_500), ROUNDING);
        assertEquals(88, Unit.T.of(88_000), ROUNDING);
        assertEquals(3.95, Unit.G_CM2.of(39.5), ROUNDING);
        assertEquals(150, Unit.MSV.of(0.15), ROUNDING);
        assertEquals(1.5, Unit.H.of(5400), ROUNDING);
    }
}
