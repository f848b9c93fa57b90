// SPDX-License-Identifier: Apache-2.0
package bermwright.site.doubt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.published.Published;
import bermwright.published.PublishedValue;
import org.junit.jupiter.api.Test;

class ChaosExpansionPublishedTest {
    private static final String ISHIGAMI = "Ishigami and Homma (1990); shares as in Sudret (2008), Reliability"
            + " Engineering and System Safety 93, 964";
    /** Four digits are printed. */
    private static final double HALF_PRINTED_DIGIT = 5e-5;
    private static final int SAMPLES = 1000;

    private static final ChaosExpansion ISHIGAMI_FIT = ishigami();

    private static ChaosExpansion ishigami() {
        double[][] x = scaled(QuasiRandom.even(3, SAMPLES, 1));
        double[] y = new double[SAMPLES];
        for (int n = 0; n < SAMPLES; n++) {
            double a = Math.PI * x[n][0];
            double b = Math.PI * x[n][1];
            double c = Math.PI * x[n][2];
            y[n] = Math.sin(a) + 7 * Math.pow(Math.sin(b), 2) + 0.1 * Math.pow(c, 4) * Math.sin(a);
        }
        return ChaosExpansion.fit(x, y, new ChaosExpansion.Shape(ChaosExpansion.Family.LEGENDRE, 11, 3));
    }

    private static double[][] scaled(double[][] even) {
        for (double[] point : even) {
            for (int i = 0; i < point.length; i++) {
                point[i] = 2 * point[i] - 1;
            }
        }
        return even;
    }

    private static void within(PublishedValue printed, ChaosExpansion.Share share, double ours) {
        assertTrue(share.error() < 0.02, "an error that says something: " + share.error());
        printed.assertEqualTo(ours);
    }

    private static ChaosExpansion.Share one(ChaosExpansion fit, int inputs, int which) {
        boolean[] group = new boolean[inputs];
        group[which] = true;
        return fit.share(group);
    }

    @Test
    @Published(work = ISHIGAMI, place = "first order of the first input", printedValue = 0.3139, unit = "1",
            tolerance = 0.005)
    void firstInputAlone(PublishedValue printed) {
        within(printed, one(ISHIGAMI_FIT, 3, 0), one(ISHIGAMI_FIT, 3, 0).first());
    }

    @Test
    @Published(work = ISHIGAMI, place = "first order of the second input", printedValue = 0.4424, unit = "1",
            tolerance = 0.005)
    void secondInputAlone(PublishedValue printed) {
        within(printed, one(ISHIGAMI_FIT, 3, 1), one(ISHIGAMI_FIT, 3, 1).first());
    }

    @Test
    @Published(work = ISHIGAMI, place = "total order of the first input", printedValue = 0.5576, unit = "1",
            tolerance = 0.005)
    void firstInputWithOthers(PublishedValue printed) {
        within(printed, one(ISHIGAMI_FIT, 3, 0), one(ISHIGAMI_FIT, 3, 0).total());
    }

    @Test
    @Published(work = ISHIGAMI, place = "total order of the third input", printedValue = 0.2437, unit = "1",
            tolerance = 0.005)
    void thirdInputWithOthers(PublishedValue printed) {
        within(printed, one(ISHIGAMI_FIT, 3, 2), one(ISHIGAMI_FIT, 3, 2).total());
    }

    /** Closed form V_i = 1 / (3 (1 + a_i)^2), the product of 1 + V_i less one the variance; a = 0, 1, 4.5, 9. */
    @Test
    @Published(work = "Sobol' (1993), Mathematical Modelling and Computational Experiments 1, 407: the g-function",
            place = "closed form, first order for a = 0, 1, 4.5, 9", printedValue = 0.7165, unit = "1",
            tolerance = 0.05)
    void gFunctionWithinItsError(PublishedValue printed) {
        double[] a = {0, 1, 4.5, 9};
        double[][] x = scaled(QuasiRandom.even(4, SAMPLES, 2));
        double[] y = new double[SAMPLES];
        for (int n = 0; n < SAMPLES; n++) {
            y[n] = 1;
            for (int i = 0; i < 4; i++) {
                y[n] *= (Math.abs(4 * (x[n][i] + 1) / 2 - 2) + a[i]) / (1 + a[i]);
            }
        }
        ChaosExpansion fit = ChaosExpansion.fit(x, y, new ChaosExpansion.Shape(ChaosExpansion.Family.LEGENDRE, 10, 2));
        double all = 1;
        double[] parts = new double[4];
        for (int i = 0; i < 4; i++) {
            parts[i] = 1 / (3 * Math.pow(1 + a[i], 2));
            all *= 1 + parts[i];
        }
        assertEquals(0.7165, parts[0] / (all - 1), HALF_PRINTED_DIGIT);
        for (int i = 0; i < 4; i++) {
            ChaosExpansion.Share share = one(fit, 4, i);
            assertEquals(parts[i] / (all - 1), share.first(), share.error(), "input " + i);
        }
        assertTrue(fit.error() < 0.05, "left-out error " + fit.error());
        printed.assertEqualTo(one(fit, 4, 0).first());
    }
}
