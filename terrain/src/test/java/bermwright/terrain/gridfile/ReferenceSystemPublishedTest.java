// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.Point;
import bermwright.published.Published;
import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;
import bermwright.published.PublishedValue;
import org.junit.jupiter.api.Test;

class ReferenceSystemPublishedTest {
    /** Half of the last printed digit of a metre. */
    private static final double HALF_DIGIT = 0.6e-6;
    /** Half of the last printed digit of a scale. */
    private static final double HALF_DIGIT_OF_SCALE = 0.6e-6;

    @PublishedTable("/bermwright/terrain/published/polar-stereographic.csv")
    void southPolarPlaces(PublishedRow row) {
        ReferenceSystem system = ReferenceSystem.lunarSouthPolar();
        Point place = system.projected(new GeographicPlace(row.number("latitude"), row.number("longitude")));
        row.assertNear("east", place.east(), HALF_DIGIT);
        row.assertNear("north", place.north(), HALF_DIGIT);
        if (row.has("scale")) {
            row.assertNear("scale", 1 / system.scale(place).mean(), HALF_DIGIT_OF_SCALE);
        }
    }

    @Published(work = "IAU Working Group on Cartographic Coordinates (2015): sphere of 1737.4 km",
            place = "length of one degree along the equator, 2 pi R / 360", printedValue = 30323.350424, unit = "m",
            tolerance = HALF_DIGIT, remembered = true)
    @Test
    void aDegreeOfTheEquator(PublishedValue printed) {
        ReferenceSystem system = ReferenceSystem.lunarEquirectangular();
        printed.assertEqualTo(system.projected(new GeographicPlace(0, 11)).east()
                - system.projected(new GeographicPlace(0, 10)).east());
    }
}
