// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.published.Published;
import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;
import bermwright.published.PublishedValue;
import bermwright.regolith.Soils;
import org.junit.jupiter.api.Test;

class SlipPublishedTest {
    /** Few slices drawn by hand in 1977 against ours: half a percent. */
    private static final double HAND_SLICES = 0.0105;
    /** Eighteen programs scattered by some hundredths about their mean. */
    private static final double SCATTER = 0.015;
    /** A friction circle against slices: some percent, and the chart has three digits. */
    private static final double OTHER_METHOD = 0.05;
    private static final double FOOT = 0.3048;
    private static final double POUND_A_SQUARE_FOOT = 47.880259;
    private static final double POUND_A_CUBIC_FOOT = 157.087464;
    private static final String TWO_TO_ONE = "slope 2:1, 40 ft high, c 600 psf, phi 20, 120 pcf, circle about (120, 90)"
            + " of 80 ft; the crest's place and weight of soil from memory";

    private static SlopeProfile twoToOne() {
        return SlopeProfile.through(new double[] {-140 * FOOT, -60 * FOOT}, new double[] {20 * FOOT, 60 * FOOT});
    }

    private static SlopeStability.Soil soil() {
        return new SlopeStability.Soil(Soils.strength(20, 600 * POUND_A_SQUARE_FOOT),
                120 * POUND_A_CUBIC_FOOT / 9.80665, 9.80665);
    }

    private static SlipCircle circle() {
        return new SlipCircle(-120 * FOOT, 90 * FOOT, 80 * FOOT);
    }

    @Test
    @Published(work = "Fredlund and Krahn (1977), Canadian Geotechnical Journal 14, 429-439",
            place = "case 1, simplified Bishop: " + TWO_TO_ONE, printedValue = 2.080, unit = "1",
            tolerance = HAND_SLICES)
    void bishopOnAGivenCircle(PublishedValue printed) {
        printed.assertEqualTo(circle().bishop(twoToOne(), soil()));
    }

    @Test
    @Published(work = "Fredlund and Krahn (1977), Canadian Geotechnical Journal 14, 429-439",
            place = "case 1, ordinary method: " + TWO_TO_ONE, printedValue = 1.928, unit = "1",
            tolerance = HAND_SLICES)
    void ordinarySlicesOnAGivenCircle(PublishedValue printed) {
        printed.assertEqualTo(circle().ordinary(twoToOne(), soil()));
    }

    @Test
    @Published(work = "Giam and Donald (1989), Example problems for testing soil slope stability programs",
            place = "problem 1(a), 10 m at 2:1, c 3 kPa, phi 19.6, 20 kN/m3; mean of 18 results by Bishop's method",
            printedValue = 0.993, unit = "1", tolerance = SCATTER)
    void theWorstCircleOfASimpleSlope(PublishedValue printed) {
        printed.assertEqualTo(WorstSlip.of(10, Math.atan(0.5),
                new SlopeStability.Soil(Soils.strength(19.6, 3000), 20_000 / 9.80665, 9.80665)).factor());
    }

    /** A slope whose soil has just the cohesion of the chart stands at a factor of one. */
    @PublishedTable("/bermwright/terrain/published/taylor-1937-stability-numbers.csv")
    void taylorsStabilityNumbers(PublishedRow row) {
        double height = 10;
        SlopeStability.Soil soil = new SlopeStability.Soil(Soils.strength(row.number("friction"),
                row.number("number") * 1600 * 1.62 * height), 1600, 1.62);
        row.assertShare("factor", WorstSlip.of(height, Math.toRadians(row.number("slope")), soil).factor(),
                OTHER_METHOD);
    }
}
