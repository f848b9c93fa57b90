// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.scene;

import bermwright.published.Published;
import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;
import bermwright.published.PublishedValue;
import org.junit.jupiter.api.Test;

class DensityProfilePublishedTest {
    /** The spread the table states for every one of its best estimates (g/cm3). */
    private static final double STATED_SPREAD = 0.05;
    private static final DensityProfile PROFILE = DensityProfile.lunarSoilInPlace();

    @PublishedTable("/bermwright/shielding/scene/published/sourcebook-1991-density.csv")
    void layers(PublishedRow row) {
        double from = row.number("from_cm") / 100;
        double to = row.number("to_cm") / 100;
        double mean = (PROFILE.columnMass(to) - PROFILE.columnMass(from)) / (to - from) / 1000;
        row.assertNear("density_g_cm3", mean, STATED_SPREAD);
    }

    @Test
    @Published(work = "Carrier, Olhoeft and Mendell (1991), Lunar Sourcebook, chapter 9",
            place = "integral of 1.92 (z + 12.2) / (z + 18) over the upper metre, worked by hand",
            printedValue = 171.0608, unit = "g/cm2", tolerance = 0.02)
    void massOfTheUpperMetre(PublishedValue printed) {
        printed.assertEqualTo(PROFILE.columnMass(1) / 10);
    }
}
