// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class FreeSurfaceTest {
    /** Half a unit of the last digit the hand-worked figures have. */
    private static final double SIX_DIGITS = 6e-7;
    /** Cells of a brute sum over a million points leave this share. */
    private static final double BRUTE = 2e-3;
    /** Twenty-four points over a stretch whose ends begin like a square root. */
    private static final double SUMMED = 1e-6;
    private static final double RADIUS = 4.5;
    private static final double VOLUME = Math.PI * RADIUS * RADIUS;

    @Test
    void aStandingTankTippedALittleMovesItsLiquidByTheClosedForm() {
        FreeSurface tank = new FreeSurface(RADIUS, 15, VOLUME);
        assertEquals(1, tank.depthStanding(), 1e-12);
        assertEquals(0.176786, tank.centre(Math.toRadians(2)).off(), SIX_DIGITS);
        assertEquals(0.442911, tank.centre(Math.toRadians(5)).off(), SIX_DIGITS);
        assertEquals(0.892655, tank.centre(Math.toRadians(10)).off(), SIX_DIGITS);
        Slosh slosh = new Slosh(RADIUS, 1, 1.62);
        for (double deg = 0.5; deg < Math.toDegrees(slosh.dryTilt()); deg += 1.5) {
            double tilt = Math.toRadians(deg);
            assertEquals(slosh.shift(tilt), tank.centre(tilt).off(), SUMMED);
            double along = 0.5 + RADIUS * RADIUS * Math.pow(Math.tan(tilt), 2) / 8;
            assertEquals(along, tank.centre(tilt).along(), SUMMED, "a wedge moves up by R2 tan2 / 8h");
        }
    }

    @Test
    void aLyingTankHoldsItsLiquidAsASegment() {
        FreeSurface tank = new FreeSurface(RADIUS, 15, VOLUME);
        assertEquals(1.065758, tank.depthLying(), SIX_DIGITS);
        assertEquals(RADIUS - 0.634808, tank.centre(Math.PI / 2).off(), SIX_DIGITS);
        assertEquals(7.5, tank.centre(Math.PI / 2).along(), 1e-9);
        FreeSurface half = new FreeSurface(2, 10, Math.PI * 2 * 10);
        assertEquals(4 * 2 / (3 * Math.PI), half.centre(Math.PI / 2).off(), 1e-9, "centre of a half circle, 4R/3pi");
    }

    /** Every tilt against a brute sum of small cells filled from the lowest up. */
    @Test
    void agreesWithABruteSumAtEveryTilt() {
        FreeSurface tank = new FreeSurface(2, 9, 30);
        for (double deg : new double[] {20, 50, 80, 89, 93, 120, 160}) {
            double tilt = Math.toRadians(deg);
            FreeSurface.Centre centre = tank.centre(tilt);
            double[] brute = brute(tank, tilt);
            assertEquals(brute[0], centre.along(), BRUTE * tank.length(), "along at " + deg);
            assertEquals(brute[1], centre.off(), BRUTE * tank.length(), "off at " + deg);
        }
    }

    private static double[] brute(FreeSurface tank, double tilt) {
        int n = 100;
        double r = tank.radius();
        java.util.List<double[]> cells = new java.util.ArrayList<>();
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double off = r * (2 * (j + 0.5) / n - 1);
                double s = tank.length() * (i + 0.5) / n;
                cells.add(new double[] {s * Math.cos(tilt) - off * Math.sin(tilt), s, off,
                    2 * Math.sqrt(r * r - off * off) * tank.length() / n * 2 * r / n});
            }
        }
        cells.sort(java.util.Comparator.comparingDouble(c -> c[0]));
        double volume = 0;
        double along = 0;
        double off = 0;
        for (double[] c : cells) {
            double part = Math.min(c[3], tank.volume() - volume);
            if (part <= 0) {
                break;
            }
            volume += part;
            along += part * c[1];
            off += part * c[2];
        }
        return new double[] {along / volume, off / volume};
    }

    @Test
    void upsideDownItRestsOnTheOtherEnd() {
        FreeSurface tank = new FreeSurface(2, 9, 30);
        assertEquals(9 - tank.depthStanding() / 2, tank.centre(Math.PI).along(), 1e-6);
        assertEquals(tank.depthStanding() / 2, tank.centre(0).along(), 1e-12);
        assertTrue(tank.centre(Math.toRadians(91)).along() > 4.5, "past level it runs to the far end");
    }

    @Test
    void refusesMoreThanTheTankHolds() {
        assertThrows(IllegalArgumentException.class, () -> new FreeSurface(1, 1, 4));
        assertThrows(IllegalArgumentException.class, () -> new FreeSurface(1, 1, Double.NaN));
    }
}
