// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bermwright.foundation.ModelNote;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;

class ProvisionalCosmicTest {
    /** Depths (g/cm2) and doses under a flat slab (mSv a year) of the same calculation that made the dome table. */
    private static final double[] DEPTHS = {0, 5, 10, 20, 30, 50, 75, 100, 150, 200, 300, 400, 500};
    private static final double[] FLAT_MINIMUM = {408, 274, 242, 219, 211, 199, 183, 164, 127, 95, 51, 27, 14};
    private static final double[] FLAT_MAXIMUM = {165, 140, 131, 125, 125, 123, 117, 108, 87, 67, 38, 21, 11};
    /** The two rows come from unlike treatments of slow neutrons. */
    private static final double ROWS_AGREE = 0.12;
    private static final double MSV_A_YEAR = 365.25e3;

    @Test
    void foldedOverAFlatSlabItGivesTheFlatRow() {
        check(10, FLAT_MINIMUM);
        check(100, FLAT_MAXIMUM);
    }

    @Test
    void isMarkedProvisional() {
        assertEquals(ModelNote.Status.PROVISIONAL, ProvisionalCosmic.response(10, 1).note().status());
    }

    private static void check(double modulationW, double[] flat) {
        Response response = ProvisionalCosmic.response(modulationW, 1);
        GaussIntegrator integrator = new GaussIntegratorFactory().legendre(200, 0, 1);
        for (int i = 0; i < DEPTHS.length; i++) {
            double depth = DEPTHS[i] * 10;
            double folded = 0.5 * integrator.integrate(mu -> response.isotropicDose(depth / mu));
            // The ground's return is what open ground sends back: under a cover it is already part of the table.
            double ground = DEPTHS[i] == 0 ? response.openGroundReturn() : 0;
            assertEquals(flat[i], (folded + ground) * MSV_A_YEAR, flat[i] * ROWS_AGREE, DEPTHS[i] + " g/cm2");
        }
    }
}
