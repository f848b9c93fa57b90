// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.thrust;

import bermwright.published.Published;
import bermwright.published.PublishedValue;
import org.junit.jupiter.api.Test;

/** The rocket equation against its closed forms. */
class RocketPublishedTest {
    private static final String WORK = "Tsiolkovsky (1903), rocket equation, textbooks";

    @Test
    @Published(work = WORK, place = "a change of speed equal to that of the exhaust leaves 1/e of the mass",
            printedValue = 0.367879, unit = "1", tolerance = 5e-7, remembered = true)
    void oneExhaustSpeed(PublishedValue printed) {
        double used = Rocket.propellantForSpeed(1, Rocket.exhaustSpeed(300), 300);
        printed.assertEqualTo(1 - used);
    }

    @Test
    @Published(work = WORK, place = "specific impulse of 450 s is an exhaust speed of", printedValue = 4413,
            unit = "m/s", tolerance = 0.5, remembered = true)
    void exhaustSpeed(PublishedValue printed) {
        printed.assertEqualTo(Rocket.exhaustSpeed(450));
    }
}
