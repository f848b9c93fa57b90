// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SoilRadioactivityTest {
    private static final double SECONDS_A_YEAR = 86400 * 365.25;
    /** Worked by hand with three digits. */
    private static final double THREE_DIGITS = 0.0005;
    /** Gammas of the ground are printed as 3.33 to 3.76 mSv a year, some 3.4 of them by cosmic rays: Naito 2023. */
    private static final double LEFT_FOR_THE_SOIL = 0.36e-3;

    @Test
    void highlandIsAsWorkedByHand() {
        // 31.3 Bq/kg x 0.0417 + 8.12 x 0.604 + 6.79 x 0.462 = 9.35 nGy/h; by 0.7 and 8766 h: 0.0574 mSv a year.
        assertEquals(0.0574e-3, SoilRadioactivity.overOpenGround("highland") * SECONDS_A_YEAR, THREE_DIGITS * 1e-3);
    }

    @Test
    void mareHasLessAndBothFitBetweenThePrintedGammas() {
        double highland = SoilRadioactivity.overOpenGround("highland") * SECONDS_A_YEAR;
        double mare = SoilRadioactivity.overOpenGround("mare") * SECONDS_A_YEAR;
        assertTrue(mare < highland && highland < LEFT_FOR_THE_SOIL, highland + " " + mare);
        assertEquals(highland, SoilRadioactivity.overOpenGround("another") * SECONDS_A_YEAR, 0);
    }
}
