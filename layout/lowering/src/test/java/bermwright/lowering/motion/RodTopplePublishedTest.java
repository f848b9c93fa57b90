// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.motion;

import bermwright.lowering.body.Body;
import bermwright.lowering.body.EndShape;
import bermwright.lowering.body.Ground;
import bermwright.lowering.body.MassCentre;
import bermwright.lowering.body.Outline;
import bermwright.lowering.body.Pivot;
import bermwright.lowering.body.TippingBody;
import bermwright.published.Published;
import bermwright.published.PublishedValue;
import org.junit.jupiter.api.Test;

/** The uniform rod that falls about its foot, as mechanics textbooks have it. */
class RodTopplePublishedTest {
    private static final String BOOK = "uniform rod falling about its foot, classical mechanics textbooks";
    private static final double CLOSED_FORM = 1e-6;
    private static final double LENGTH = 7;
    private static final double GRAVITY = 1.62;

    private static TippingBody rod() {
        Body rod = new Body(new Outline(LENGTH, 1e-9, EndShape.FLAT, EndShape.FLAT), 10, new MassCentre(LENGTH / 2, 0,
                0),
                10 * LENGTH * LENGTH / 12, 0);
        return new TippingBody(rod, new Pivot.Rim(), new Ground(GRAVITY, 0, 0, 1));
    }

    @Test
    @Published(work = BOOK, place = "rate when level over sqrt(g/L): sqrt(3)", printedValue = 1.7320508075688772,
            unit = "1", tolerance = CLOSED_FORM, remembered = true)
    void rateWhenLevel(PublishedValue printed) {
        double rate = Topple.rate(rod(), rod().balanceTilt(), 0, Math.PI / 2);
        printed.assertEqualTo(rate / Math.sqrt(GRAVITY / LENGTH));
    }

    @Test
    @Published(work = BOOK, place = "upright force over weight at 60 deg: (1 - 3 cos)2/4", printedValue = 0.0625,
            unit = "1", tolerance = CLOSED_FORM, remembered = true)
    void uprightForceAtSixty(PublishedValue printed) {
        printed.assertEqualTo(ToppleIntegrated.pivotForce(rod(), Math.PI / 3).up() / rod().weight());
    }

    @Test
    @Published(work = BOOK, place = "level force over weight at 60 deg: 0.75 sin (3 cos - 2)",
            printedValue = -0.324760, unit = "1", tolerance = CLOSED_FORM, remembered = true)
    void levelForceAtSixty(PublishedValue printed) {
        printed.assertEqualTo(ToppleIntegrated.pivotForce(rod(), Math.PI / 3).along() / rod().weight());
    }

    @Test
    @Published(work = BOOK, place = "the foot's force vanishes where cos = 1/3", printedValue = 0, unit = "1",
            tolerance = CLOSED_FORM, remembered = true)
    void theFootIsUnloadedAtAThird(PublishedValue printed) {
        printed.assertEqualTo(ToppleIntegrated.pivotForce(rod(), Math.acos(1.0 / 3)).up() / rod().weight());
    }

    @Test
    @Published(work = BOOK, place = "centre of percussion over length: two thirds", printedValue = 0.6666666666666666,
            unit = "1", tolerance = CLOSED_FORM, remembered = true)
    void centreOfPercussion(PublishedValue printed) {
        printed.assertEqualTo(ToppleIntegrated.centreOfPercussion(rod()) / LENGTH);
    }

    @Test
    @Published(work = "Abramowitz and Stegun (1964), Handbook of Mathematical Functions",
            place = "table 17.1: K at m = 0.5", printedValue = 1.854074677301372, unit = "1", tolerance = 1e-12,
            remembered = true)
    void completeIntegral(PublishedValue printed) {
        printed.assertEqualTo(Elliptic.first(1, Math.sqrt(0.5)));
    }

    @Test
    @Published(work = "Abramowitz and Stegun (1964), Handbook of Mathematical Functions",
            place = "section 17: without modulus the integral is its amplitude, at 30 deg",
            printedValue = 0.5235987755982989, unit = "1", tolerance = 1e-12, remembered = true)
    void withoutModulus(PublishedValue printed) {
        printed.assertEqualTo(Elliptic.first(0.5, 0));
    }
}
