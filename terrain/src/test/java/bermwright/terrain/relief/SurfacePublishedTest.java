// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import bermwright.published.Published;
import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;
import bermwright.published.PublishedValue;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class SurfacePublishedTest {
    /** The mean spin is taken without the Moon's physical libration, which is up to 0.04 degree. */
    private static final double LIBRATION_DEG = 0.05;
    /** Half a unit of the second digit, and the physical libration. */
    private static final double LAST_DIGIT_AND_LIBRATION_DEG = 0.045;

    @PublishedTable("/bermwright/terrain/published/slope-windows.csv")
    void slopeOfAWindowByTheStream(PublishedRow row) {
        String cells = "ghidefabc";
        double[] heights = new double[9];
        for (int i = 0; i < 9; i++) {
            heights[i] = row.number(cells.substring(i, i + 1));
        }
        ElevationGrid grid = ElevationGrid.of(new GridFrame(3, 3, 0, 0, row.number("w")), heights);
        // A float of order 100 is right to 4e-6.
        row.assertNear("slope", SurfaceStream.whole(grid, new SlopeSurface(GradientMethod.HORN))[4],
                row.number("slope_tolerance") + 4e-6);
        row.assertNear("aspect", SurfaceStream.whole(grid, new AspectSurface(GradientMethod.HORN))[4],
                row.number("aspect_tolerance") + 1.6e-5);
    }

    @Test
    @Published(work = "Meeus (1998), Astronomical algorithms, 2nd edition",
            place = "example 53.a, 1992 April 12, 0h TD:"
            + " longitude of the place with the sun overhead", printedValue = 67.89, unit = "deg",
            tolerance = LIBRATION_DEG, remembered = true)
    void longitudeUnderTheSun(PublishedValue printed) {
        printed.assertEqualTo(Math.toDegrees(SunPlace.at(Instant.parse("1992-04-12T00:00:00Z")).longitude()));
    }

    @Test
    @Published(work = "Meeus (1998), Astronomical algorithms, 2nd edition",
            place = "example 53.a, 1992 April 12, 0h TD:"
            + " latitude of the place with the sun overhead", printedValue = 1.46, unit = "deg",
            tolerance = LAST_DIGIT_AND_LIBRATION_DEG, remembered = true)
    void latitudeUnderTheSun(PublishedValue printed) {
        printed.assertEqualTo(Math.toDegrees(SunPlace.at(Instant.parse("1992-04-12T00:00:00Z")).latitude()));
    }

    @Test
    @Published(work = "Sun's elevation at the Moon's poles, axis tilted 1.54 deg (LROC pages, as in facts 8.4)",
            place = "greatest elevation of the middle of the sun at a pole", printedValue = 1.54, unit = "deg",
            tolerance = 0.06)
    void theSunStandsLowAtThePole(PublishedValue printed) {
        double highest = 0;
        Instant time = Instant.parse("2030-01-01T00:00:00Z");
        for (int hour = 0; hour < 400 * 24; hour += 6) {
            highest = Math.max(highest, SunPlace.at(time.plusSeconds(3600L * hour)).elevation(-Math.PI / 2, 0));
        }
        printed.assertEqualTo(Math.toDegrees(highest));
    }

    @Test
    @Published(work = "Mean synodic month, any almanac", place = "days from new moon to new moon",
            printedValue = 29.530589, unit = "d", tolerance = 0.001, remembered = true)
    void theSunGoesRoundInAMonth(PublishedValue printed) {
        // 99 months from 2000 on: the Moon's motion and the Earth's even out over eight years.
        Instant from = Instant.parse("2000-01-06T00:00:00Z");
        double turns = 0;
        double before = SunPlace.at(from).longitude();
        int days = 2924;
        for (int hour = 6; hour <= days * 24; hour += 6) {
            double now = SunPlace.at(from.plusSeconds(3600L * hour)).longitude();
            turns -= Math.IEEEremainder(now - before, 2 * Math.PI) / (2 * Math.PI);
            before = now;
        }
        printed.assertEqualTo(days / turns);
    }
}
