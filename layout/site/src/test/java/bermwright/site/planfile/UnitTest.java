// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {
    /** Conversions multiply and divide once each: two roundings. */
    private static final double TWO_ROUNDINGS = 1e-15;

    @ParameterizedTest
    @CsvSource({"MILLIMETRE, 36, 0.036", "DEGREE, 75, 1.3089969389957472", "DEGREE_A_MINUTE, 2, 0.0005817764173314432",
        "TONNE, 88, 88000", "GRAM_A_SQUARE_CENTIMETRE, 3.95, 39.5", "TONNE_SQUARE_METRE, 14700, 14700000",
        "KILONEWTON, 900, 900000", "MEGANEWTON, 81, 81000000", "MEGAJOULE, 5, 5000000", "KILOPASCAL, 70, 70000",
        "MEGAPASCAL, 355, 355000000", "GIGAPASCAL, 200, 200000000000", "MILLISIEVERT, 150, 0.15",
        "KILOGRAM_A_CUBIC_METRE, 1650, 1650", "PASCAL, 500, 500", "DAY, 180, 180", "HOUR, 16, 16", "SECOND, 300, 300"})
    void convertsToSi(Unit unit, double value, double si) {
        assertEquals(si, unit.toSi(value), Math.abs(si) * TWO_ROUNDINGS);
        assertEquals(value, unit.fromSi(si), Math.abs(value) * TWO_ROUNDINGS);
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void whatWasReadIsWrittenAsItStood(Unit unit) {
        Random random = new Random(41);
        for (int i = 0; i < 2000; i++) {
            double asTyped = Math.round(random.nextDouble() * 1e6) / Math.pow(10, random.nextInt(7));
            assertEquals(asTyped, unit.fromSi(unit.toSi(asTyped)), "seed 41, draw " + i);
        }
    }

    @Test
    void anSiValueThatWasNeverTypedComesBackTheSame() {
        Random random = new Random(42);
        for (int i = 0; i < 2000; i++) {
            double si = random.nextDouble() * 6;
            double back = Unit.DEGREE.toSi(Unit.DEGREE.fromSi(si));
            assertEquals(si, back, si * TWO_ROUNDINGS, "seed 42, draw " + i);
        }
    }
}
