// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.spectrum;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.ModelNote;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class SolarActivityTest {
    @Test
    void statesOfTheSunAreKnownByTheirRange() {
        assertEquals(12.5, SolarActivity.spreadW(10), 0);
        assertEquals(10, SolarActivity.spreadW(55), 0);
        assertEquals(25, SolarActivity.spreadW(150), 0);
        assertEquals(17.5, SolarActivity.spreadW(90), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> SolarActivity.spreadW(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> SolarActivity.spreadW(201));
    }

    @Test
    void theDeepMinimumIsLowerThanTheMaximaAroundIt() {
        double minimum = SolarActivity.modulationW(LocalDate.of(2009, 8, 25));
        assertEquals(3, minimum, 1);
        assertTrue(SolarActivity.modulationW(LocalDate.of(2002, 9, 1)) > 100);
        assertTrue(SolarActivity.modulationW(LocalDate.of(2015, 1, 15)) > 60);
    }

    @Test
    void aDateToComeIsMarkedExtrapolated() {
        assertEquals(ModelNote.Status.EXTRAPOLATED, SolarActivity.note(LocalDate.of(2034, 1, 1)).status());
        assertEquals(ModelNote.Status.COMPUTED, SolarActivity.note(LocalDate.of(2019, 1, 1)).status());
    }

    @Test
    void aDateOutsideTheTableIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> SolarActivity.modulationW(LocalDate.of(1950, 1, 1)));
        assertThrows(IllegalArgumentException.class, () -> SolarActivity.modulationW(LocalDate.of(2090, 1, 1)));
    }

    @Test
    void aDayToComeMayBringAnySunOfTheTable() {
        Sun past = Sun.at(LocalDate.of(2002, 8, 1));
        assertEquals(20, past.modulationW() - past.quietW(), 1e-9);
        assertEquals(20, past.activeW() - past.modulationW(), 1e-9);
        Sun later = Sun.at(LocalDate.of(2036, 1, 1));
        assertEquals(3, later.quietW(), 0);
        assertEquals(130, later.activeW(), 0);
        assertTrue(later.modulationW() > 90, "near a maximum");
    }
}
