// SPDX-License-Identifier: Apache-2.0
package bermwright.site.burial;

import bermwright.published.Published;
import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;
import bermwright.published.PublishedValue;
import org.junit.jupiter.api.Test;

class HullBurialPublishedTest {
    /** The table prints two decimals: half a unit of the last. */
    private static final double HALF_PRINTED_DIGIT = 0.005;

    @PublishedTable("/bermwright/site/burial/published/long-tube-buckling.csv")
    void longTubes(PublishedRow row) {
        row.assertNear("pressure_Pa", ShellBuckling.longTube(new ShellBuckling.ThinShell(row.number("thickness_m"),
                row.number("modulus_Pa"), 300e6, row.number("poisson")), row.number("radius_m")), HALF_PRINTED_DIGIT);
    }

    @Test
    @Published(work = "common practice, no source", place = "hull lying on soil of 820 kN/m3, 3888 N/m, sinking",
            printedValue = 11.2004, unit = "mm", tolerance = 5e-5)
    void sinkingOfALyingHull(PublishedValue printed) {
        printed.assertEqualTo(SeatLoad.on(3888, 4.5, 820_000).sinking() * 1000);
    }

    @Test
    @Published(work = "common practice, no source", place = "hull lying on soil of 820 kN/m3, 3888 N/m, half width",
            printedValue = 0.317496, unit = "m", tolerance = 5e-7)
    void halfWidthOfContact(PublishedValue printed) {
        printed.assertEqualTo(SeatLoad.on(3888, 4.5, 820_000).halfWidth());
    }

    @Test
    @Published(work = "common practice, no source", place = "hull lying on soil of 820 kN/m3, 3888 N/m, peak",
            printedValue = 9.1844, unit = "kPa", tolerance = 5e-5)
    void greatestPressureOnTheSeat(PublishedValue printed) {
        printed.assertEqualTo(SeatLoad.on(3888, 4.5, 820_000).greatest() / 1000);
    }
}
