// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.published.Published;
import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;
import bermwright.published.PublishedValue;
import bermwright.regolith.Soils;
import org.junit.jupiter.api.Test;

class StandingPublishedTest {
    /** Half of the last printed digit. */
    private static final double HALF_OF_MICRO = 0.6e-6;

    @PublishedTable("/bermwright/terrain/published/upright-cuts.csv")
    void uprightCuts(PublishedRow row) {
        row.assertNear("height", SlopeStability.uprightCut(new SlopeStability.Soil(
                Soils.strength(row.number("friction"), row.number("cohesion")), row.number("density"),
                row.number("gravity"))), HALF_OF_MICRO);
    }

    private static SlopeStability.Soil soil(double cohesion) {
        return new SlopeStability.Soil(Soils.strength(38, cohesion), 1500, 1.62);
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
