// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.shape;

import bermwright.foundation.Point;
import bermwright.published.Published;
import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;
import bermwright.published.PublishedValue;
import org.junit.jupiter.api.Test;

class FreshCraterPublishedTest {
    /** Half of the last digit of a thickness printed with four decimals. */
    private static final double HALF_DIGIT_4 = 0.00006;
    /** The source prints one digit, "about": half a unit of it. */
    private static final double HALF_OF_ONE_DIGIT = 0.05;

    @PublishedTable("/bermwright/terrain/published/pike-1977-simple-craters.csv")
    void proportions(PublishedRow row) {
        double diameter = row.number("diameter");
        double tolerance = row.number("tolerance");
        row.assertNear("depth", FreshCrater.depth(diameter), tolerance);
        row.assertNear("rim_height", FreshCrater.rimHeight(diameter), tolerance);
        row.assertNear("flank_width", HandbookCraters.flankWidth(diameter), tolerance);
    }

    @Test
    @Published(work = "Pike (1974), Geophysical Research Letters 1, 291-294, doi:10.1029/GL001i007p00291",
            place = "abstract: fresh craters below 15 km, depth over diameter", printedValue = 0.2, unit = "1",
            tolerance = HALF_OF_ONE_DIGIT)
    void simpleCratersAreOneFifthAsDeepAsWide(PublishedValue printed) {
        for (double diameter : new double[] {100, 2_000, 14_000}) {
            printed.assertEqualTo(FreshCrater.depth(diameter) / diameter);
        }
    }

    @Test
    @Published(work = "McGetchin, Settle and Head (1973), Earth and Planetary Science Letters 20, 226-236",
            place = "T = .14 R^.74 at the rim of a crater of 100 m, evaluated by hand", printedValue = 2.5314,
            unit = "m", tolerance = HALF_DIGIT_4, remembered = true)
    void debrisAtTheRim(PublishedValue printed) {
        printed.assertEqualTo(HandbookCraters.ejectaThickness(50, 50));
    }

    @Test
    @Published(work = "McGetchin, Settle and Head (1973), Earth and Planetary Science Letters 20, 226-236",
            place = "decay with the cube of the distance, at two rim radii, evaluated by hand", printedValue = 0.3164,
            unit = "m", tolerance = HALF_DIGIT_4, remembered = true)
    void debrisAtTwoRadii(PublishedValue printed) {
        printed.assertEqualTo(HandbookCraters.ejectaThickness(50, 100));
    }

    @Test
    @Published(work = "Pike (1974), Earth and Planetary Science Letters 23, 265-271",
            place = "T = .033 R at the rim of a crater of 100 m, evaluated by hand", printedValue = 1.65,
            unit = "m", tolerance = HALF_DIGIT_4, remembered = true)
    void debrisAtTheRimByTheSecondRelation(PublishedValue printed) {
        printed.assertEqualTo(HandbookCraters.ejectaThicknessByRadius(50, 50));
    }

    @Test
    @Published(work = "Pike (1974), Earth and Planetary Science Letters 23, 265-271",
            place = "T = .033 R, at two rim radii, evaluated by hand", printedValue = 0.20625, unit = "m",
            tolerance = 1e-9, remembered = true)
    void debrisAtTwoRadiiByTheSecondRelation(PublishedValue printed) {
        printed.assertEqualTo(HandbookCraters.ejectaThicknessByRadius(50, 100));
    }

    @Test
    @Published(work = "Volume of a paraboloid of revolution, common practice, no source",
            place = "pi D^2 d / 8, D 20, d 4", printedValue = 628.3185, unit = "m3", tolerance = HALF_DIGIT_4)
    void bowlVolume(PublishedValue printed) {
        printed.assertEqualTo(HandbookCraters.bowlVolume(new Crater(new Point(0, 0), 20, 4, 0)));
    }

    @Test
    @Published(work = "Wall slope of a paraboloid of revolution, common practice, no source",
            place = "atan(4 d / D), D 20, d 4", printedValue = 38.6598, unit = "degrees", tolerance = HALF_DIGIT_4)
    void steepestWall(PublishedValue printed) {
        printed.assertEqualTo(Math.toDegrees(HandbookCraters.steepestWall(new Crater(new Point(0, 0), 20, 4, 0))));
    }
}
