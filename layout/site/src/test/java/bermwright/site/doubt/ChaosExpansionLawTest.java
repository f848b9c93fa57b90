// SPDX-License-Identifier: Apache-2.0
package bermwright.site.doubt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** A linear answer has shares in closed form, and a seed draws the same samples again. */
class ChaosExpansionLawTest {
    @Test
    void theLinearCaseHasItsClosedForm() {
        double[] b = {3, 2, 1, 0};
        double[][] z = QuasiRandom.normal(4, 200, 3);
        double[] y = new double[200];
        for (int n = 0; n < y.length; n++) {
            for (int i = 0; i < 4; i++) {
                y[n] += b[i] * z[n][i];
            }
        }
        ChaosExpansion fit = ChaosExpansion.fit(z, y, new ChaosExpansion.Shape(ChaosExpansion.Family.HERMITE, 3, 2));
        for (int i = 0; i < 4; i++) {
            boolean[] alone = new boolean[4];
            alone[i] = true;
            assertEquals(b[i] * b[i] / 14, fit.share(alone).first(), 1e-9);
            assertEquals(b[i] * b[i] / 14, fit.share(alone).total(), 1e-9);
        }
        assertEquals(0, fit.error(), 1e-12);
        assertEquals(13 / 14.0, fit.share(new boolean[] {true, true, false, true}).first(), 1e-9);
        assertEquals(7, fit.at(new double[] {1, 1, 2, 5}), 1e-9);
    }

    @Test
    void aSeedRepeatsAndAnotherDiffers() {
        assertEquals(QuasiRandom.normal(5, 50, 7)[49][4], QuasiRandom.normal(5, 50, 7)[49][4]);
        assertTrue(QuasiRandom.normal(5, 50, 7)[49][4] != QuasiRandom.normal(5, 50, 8)[49][4]);
    }
}
