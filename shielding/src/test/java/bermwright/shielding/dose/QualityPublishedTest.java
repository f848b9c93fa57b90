// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.published.Published;
import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;
import bermwright.published.PublishedValue;
import org.junit.jupiter.api.Test;

class QualityPublishedTest {
    private static final String ICRP_60 = "ICRP Publication 60 (1991), table A-1";
    private static final String ICRP_103_WEIGHTS = "ICRP Publication 103 (2007), table 3";
    private static final double EXACT = 1e-9;
    /** Printed with two decimals. */
    private static final double HALF_DIGIT = 0.005;
    private static final double PSV_CM2 = 1e-16;

    @Test
    @Published(work = ICRP_60, place = "below 10 keV/um", printedValue = 1, unit = "1", tolerance = EXACT,
            remembered = true)
    void sparseTracksCountOnce(PublishedValue printed) {
        printed.assertEqualTo(Quality.factor(9.99));
    }

    @Test
    @Published(work = ICRP_60, place = "0.32 L - 2.2 at 10 keV/um", printedValue = 1.0, unit = "1", tolerance = EXACT,
            remembered = true)
    void atTenTheLineBegins(PublishedValue printed) {
        printed.assertEqualTo(Quality.factor(10));
    }

    @Test
    @Published(work = ICRP_60, place = "0.32 L - 2.2 at 100 keV/um", printedValue = 29.8, unit = "1",
            tolerance = EXACT, remembered = true)
    void atAHundredTheLineEnds(PublishedValue printed) {
        printed.assertEqualTo(Quality.factor(100));
    }

    @Test
    @Published(work = ICRP_60, place = "300 / sqrt L at 1000 keV/um", printedValue = 9.49, unit = "1",
            tolerance = HALF_DIGIT, remembered = true)
    void denseTracksCountLessAgain(PublishedValue printed) {
        printed.assertEqualTo(Quality.factor(1000));
    }

    @Test
    @Published(work = "ICRP Publication 103 (2007), equation 4.3", place = "neutrons of 1 MeV", printedValue = 20.7,
            unit = "1", tolerance = 0.05, remembered = true)
    void neutronsOfOneMegaelectronvolt(PublishedValue printed) {
        printed.assertEqualTo(Quality.neutronWeight(0.999999));
    }

    @Test
    @Published(work = ICRP_103_WEIGHTS, place = "red bone marrow", printedValue = 0.12, unit = "1", tolerance = EXACT,
            remembered = true)
    void marrowIsAnEighthOfTheBody(PublishedValue printed) {
        printed.assertEqualTo(Tissue.MARROW.weight());
    }

    @Test
    @Published(work = ICRP_103_WEIGHTS, place = "skin", printedValue = 0.01, unit = "1", tolerance = EXACT,
            remembered = true)
    void skinIsAHundredthOfTheBody(PublishedValue printed) {
        printed.assertEqualTo(Tissue.SKIN.weight());
    }

    @PublishedTable("/bermwright/shielding/published/icrp-116-iso.csv")
    void coefficientsAsPrinted(PublishedRow row) {
        double energy = row.number("energy_MeV");
        row.assertShare("neutron", FluenceCoefficients.neutron(energy) / PSV_CM2, 1e-6);
        row.assertShare("proton", FluenceCoefficients.proton(energy) / PSV_CM2, 1e-6);
    }
}
