// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.spectrum;

import bermwright.published.Published;
import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;
import bermwright.published.PublishedValue;
import org.junit.jupiter.api.Test;

class EventSpectraPublishedTest {
    /** Printed figures are taken over as they stand. */
    private static final double EXACT = 1e-9;
    private static final double CM2 = 1e-4;

    @PublishedTable("/bermwright/shielding/published/jiggens-2018-table8.csv")
    void designSpectraCarryThePrintedFigures(PublishedRow row) {
        RigidityBandSpectrum spectrum =
                (RigidityBandSpectrum) EventSpectra.named("one in " + row.text("years") + " years");
        row.assertShare("index", spectrum.softIndex(), EXACT);
        row.assertShare("R0", spectrum.foldGV() * 100, EXACT);
        row.assertShare("C", spectrum.scale() * CM2, EXACT);
    }

    @Test
    @Published(work = "King (1974), J. Spacecraft Rockets 11, 401, as quoted second-hand", place = "August 1972",
            printedValue = 7.9e9, unit = "1/cm2", tolerance = 1)
    void august1972AboveThirty(PublishedValue printed) {
        printed.assertEqualTo(EventSpectra.named("august 1972").above(30) * CM2);
    }

    @Test
    @Published(work = "King (1974), J. Spacecraft Rockets 11, 401, as quoted second-hand",
            place = "August 1972, energy of the fold", printedValue = 26.5, unit = "MeV", tolerance = 1e-9)
    void august1972FallsWithItsFold(PublishedValue printed) {
        EventSpectrum event = EventSpectra.named("august 1972");
        printed.assertEqualTo(70 / Math.log(event.above(30) / event.above(100)));
    }
}
