// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.regolith.Strength;
import org.junit.jupiter.api.Test;

/** A mound that is not shaken stands as its worst circle does; shaking lowers its factor to one at its yield. */
class ShakenSlopeLawTest {
    private static final double GRAVITY = 1.62;

    private static SlopeStability.Soil soil(double frictionDeg, double cohesion) {
        return new SlopeStability.Soil(new Strength(Math.toRadians(frictionDeg), cohesion), 1600, GRAVITY);
    }

    @Test
    void atRestItIsTheWorstCircleAndShakingLowersIt() {
        double slope = Math.toRadians(34);
        ShakenSlope mound = ShakenSlope.of(10.8, slope, soil(41, 600), 0.25);
        assertEquals(WorstSlip.of(10.8, slope, soil(41, 600)).factor(), mound.atRest(), 1e-12);
        assertTrue(mound.shaken() < mound.atRest());
        assertEquals(1, ShakenSlope.of(10.8, slope, soil(41, 600), mound.yield()).shaken(), 5e-3);
        assertEquals(0, ShakenSlope.of(10.8, slope, soil(30, 0), 0.1).yield());
    }
}
