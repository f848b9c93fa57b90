// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.published.Published;
import bermwright.published.PublishedValue;
import bermwright.regolith.Strength;
import org.junit.jupiter.api.Test;

class ShakenSlopePublishedTest {
    private static final double GRAVITY = 1.62;
    private static final double EARTH = 9.81;

    private static SlopeStability.Soil soil(double frictionDeg, double cohesion) {
        return new SlopeStability.Soil(new Strength(Math.toRadians(frictionDeg), cohesion), 1600, GRAVITY);
    }

    /** Circles come within a percent of the plane in the face. */
    @Test
    @Published(work = "Newmark (1965), Geotechnique 15, 139", place = "sand without cohesion slides at tan(phi - beta):"
            + " 42 deg on 33 deg", printedValue = 0.1584, unit = "shares of gravity", tolerance = 0.0015)
    void sandYieldsAtTheTangentOfWhatIsLeft(PublishedValue printed) {
        printed.assertEqualTo(ShakenSlope.of(10, Math.toRadians(33), soil(42, 0), 0.1).yield() / GRAVITY);
    }

    /** The chart prints three decimals. */
    @Test
    @Published(work = "Taylor (1937), Journal of the Boston Society of Civil Engineers 24, 197",
            place = "stability number c / (gamma H) of a slope of 45 deg at 15 deg", printedValue = 0.083, unit = "1",
            tolerance = 0.002, remembered = true)
    void cohesionThatJustHoldsASteepCut(PublishedValue printed) {
        double weight = 16_500;
        double height = 7.1;
        double low = 0;
        double high = weight * height;
        for (int i = 0; i < 20; i++) {
            double middle = (low + high) / 2;
            boolean stands = ShakenSlope.of(height, Math.toRadians(45), new SlopeStability.Soil(
                    new Strength(Math.toRadians(15), middle), weight / EARTH, EARTH), 0).atRest() > 1;
            high = stands ? middle : high;
            low = stands ? low : middle;
        }
        printed.assertEqualTo(high / (weight * height));
    }

    /** Light shaking begins at 1.4 % of the Earth's gravity and ends at 3.9 %. */
    @Test
    @Published(work = "Watters et al. (2024), Planetary Science Journal 5, 22", place = "abstract: light shaking may be"
            + " enough for slides in regolith of some 0.1 kPa on steep slopes", printedValue = 0.26,
            unit = "m/s2", tolerance = 0.12)
    void lightShakingMovesSteepLooseRegolith(PublishedValue printed) {
        printed.assertEqualTo(ShakenSlope.of(10, Math.toRadians(33), soil(39, 100), 0).yield());
    }

    /** The printed odds have two digits. */
    @Test
    @Published(work = "Watters and Schmerr (2025), Science Advances, as told by the Smithsonian Institution",
            place = "1 in 20 million a day near an active fault is 1 in 5,500 over ten years", printedValue = 5500,
            unit = "1", tolerance = 50)
    void chanceOfAQuakeInALongStay(PublishedValue printed) {
        printed.assertEqualTo(1 / -Math.expm1(3652.5 * Math.log1p(-1 / 2e7)));
    }
}
