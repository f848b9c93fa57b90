// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.published.Published;
import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;
import bermwright.published.PublishedValue;
import org.junit.jupiter.api.Test;

class SoilPublishedTest {
    /** Half of the last printed digit. */
    private static final double HALF_OF_MICRO = 0.6e-6;
    private static final double HALF_OF_MILLI = 0.6e-3;
    /** Half of the last printed digit of the volumes, and what the rounded factors leave. */
    private static final double VOLUMES = 0.6e-3;
    private static final double BANK = 1624;
    private static final double COVER = 13_480.103989;

    @PublishedTable("/bermwright/terrain/published/shrink-and-swell.csv")
    void shrinkAndSwell(PublishedRow row) {
        SoilStates states = new SoilStates(BANK, 1000 * row.number("loose"), 1000 * row.number("placed"), 0.1);
        row.assertNear("shrink", states.shrink(), HALF_OF_MICRO);
        row.assertNear("swell", states.swell(), HALF_OF_MICRO);
        row.assertNear("bank_m3", states.bankFromPlaced(COVER).best(), VOLUMES);
        row.assertNear("loose_m3", states.looseFromBank(states.bankFromPlaced(COVER).best()).best(),
                VOLUMES);
        row.assertNear("mass_t", states.massOfPlaced(COVER).best() / 1000, HALF_OF_MILLI);
    }

    @Test
    @Published(work = "Carrier, Olhoeft and Mendell (1991), Lunar Sourcebook, chapter 9",
            place = "1.92 (z + 12.2)/(z + 18), z in cm, mean of the upper 50 cm", printedValue = 1.623975,
            unit = "g/cm3", tolerance = HALF_OF_MICRO, remembered = true)
    void meanDensityOfTheUpperHalfMetre(PublishedValue printed) {
        printed.assertEqualTo(RegolithDensity.mean(0, 0.5) / 1000);
    }

    @Test
    @Published(work = "Carrier, Olhoeft and Mendell (1991), Lunar Sourcebook, chapter 9",
            place = "the same, 50 to 100 cm", printedValue = 1.797242, unit = "g/cm3", tolerance = HALF_OF_MICRO,
            remembered = true)
    void meanDensityOfTheSecondHalfMetre(PublishedValue printed) {
        printed.assertEqualTo(RegolithDensity.mean(0.5, 1) / 1000);
    }

    @PublishedTable("/bermwright/terrain/published/upright-cuts.csv")
    void uprightCuts(PublishedRow row) {
        row.assertNear("height", SlopeStability.uprightCut(new SlopeStability.Soil(
                Math.toRadians(row.number("friction")), row.number("cohesion"), row.number("density"),
                row.number("gravity"))), HALF_OF_MICRO);
    }

    private static SlopeStability.Soil soil(double cohesion) {
        return new SlopeStability.Soil(Math.toRadians(38), cohesion, 1500, 1.62);
    }

    @Test
    @Published(work = "Long slope, tan phi / tan beta + c / (gamma h sin beta cos beta), common practice",
            place = "c 100 Pa, phi 38, 1500 kg/m3, beta 35, h 1 m, 1.62 m/s2", printedValue = 1.203378, unit = "1",
            tolerance = HALF_OF_MICRO)
    void longSlopeWithCohesion(PublishedValue printed) {
        printed.assertEqualTo(SlopeStability.longSlope(soil(100), Math.toRadians(35), 1));
    }

    @Test
    @Published(work = "Long slope, tan phi / tan beta, common practice", place = "phi 38, beta 35",
            printedValue = 1.115792, unit = "1", tolerance = HALF_OF_MICRO)
    void longSlopeWithoutCohesion(PublishedValue printed) {
        printed.assertEqualTo(SlopeStability.longSlope(soil(0), Math.toRadians(35), 1));
    }
}
