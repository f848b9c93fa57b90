// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class InUnitsTest {
    /** One rounding of a division or a product. */
    private static final double ROUNDING = 1e-12;

    @Test
    void turnsSiIntoTheUnitsOfTables() {
        assertEquals(75, InUnits.degrees(Math.PI * 75 / 180), ROUNDING);
        assertEquals(12.5, InUnits.kilonewtons(12_500), ROUNDING);
        assertEquals(88, InUnits.tonnes(88_000), ROUNDING);
        assertEquals(3.95, InUnits.gramsASquareCentimetre(39.5), ROUNDING);
        assertEquals(150, InUnits.millisieverts(0.15), ROUNDING);
        assertEquals(1.5, InUnits.hours(5400), ROUNDING);
        assertEquals(OptionalDouble.of(2), InUnits.kilonewtons(OptionalDouble.of(2000)));
        assertEquals(OptionalDouble.empty(), InUnits.kilonewtons(OptionalDouble.empty()));
    }
}
