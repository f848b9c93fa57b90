// SPDX-License-Identifier: Apache-2.0
package bermwright.site.burial;

import bermwright.published.Published;
import bermwright.published.PublishedValue;
import org.junit.jupiter.api.Test;

class MachineOverHullPublishedTest {
    private static final double HALF_PRINTED_DIGIT = 0.0005;

    @Test
    @Published(work = "Boussinesq (1885), as tabulated in handbooks of soil mechanics", place = "influence value under"
            + " the middle of a loaded circle at a depth of one radius", printedValue = 0.646, unit = "1",
            tolerance = HALF_PRINTED_DIGIT, remembered = true)
    void pressureAtADepthOfOneRadius(PublishedValue printed) {
        printed.assertEqualTo(MachineOverHull.below(1, 2, 2));
    }

    @Test
    @Published(work = "Boussinesq (1885), as tabulated in handbooks of soil mechanics", place = "influence value under"
            + " the middle of a loaded circle at a depth of two radii", printedValue = 0.284, unit = "1",
            tolerance = HALF_PRINTED_DIGIT, remembered = true)
    void pressureAtADepthOfTwoRadii(PublishedValue printed) {
        printed.assertEqualTo(MachineOverHull.below(1, 1.5, 3));
    }
}
