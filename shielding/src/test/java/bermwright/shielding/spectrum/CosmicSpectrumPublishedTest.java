// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.spectrum;

import bermwright.foundation.Require;
import bermwright.published.Published;
import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;
import bermwright.published.PublishedValue;
import org.junit.jupiter.api.Test;

class CosmicSpectrumPublishedTest {
    /** The formula is taken over as printed. */
    private static final double EXACT = 1e-9;
    private static final String WORK = "Matthiae, Berger, Mrigakshi and Reitz (2013), Adv. Space Res. 51, 329";

    @PublishedTable("/bermwright/shielding/published/matthiae-2013-table1.csv")
    void farAboveTheModulationTheSpectrumIsThePrintedPowerLaw(PublishedRow row) {
        int charge = (int) row.number("charge");
        CosmicSpectrum spectrum = new CosmicSpectrum(0);
        double energy = 1e9;
        double rigidity = CosmicSpectrum.rigidityGV(charge, energy);
        double perGV = spectrum.flux(charge, energy) / (CosmicSpectrum.massNumber(charge) / charge * 1e-3);
        row.assertShare("C", perGV * Math.pow(rigidity, row.number("gamma")), 1e-5);
        double steep = CosmicSpectrum.rigidityGV(charge, 2 * energy) / rigidity;
        row.assertShare("gamma", Math.log(spectrum.flux(charge, energy) / spectrum.flux(charge, 2 * energy))
                / Math.log(steep), 1e-5);
        row.assertNear("alpha", slowSlope(spectrum, charge, row.number("gamma")), 1e-3);
    }

    /** Exponent of beta left when slow particles are compared, the rigidity factors taken out. */
    private static double slowSlope(CosmicSpectrum spectrum, int charge, double gamma) {
        double m = charge == 1 ? 0.938 : 0.939;
        double[] log = new double[2];
        double[] beta = new double[2];
        for (int i = 0; i < 2; i++) {
            double t = 0.01 * (1 + i);
            double p = Math.sqrt(t * (t + 2 * m));
            beta[i] = p / (t + m);
            double r = CosmicSpectrum.rigidityGV(charge, t * 1000);
            log[i] = Math.log(spectrum.flux(charge, t * 1000) * beta[i]) + gamma * Math.log(r)
                    - 4.7 * Math.log(r / (r + 0.37));
        }
        return (log[1] - log[0]) / Math.log(beta[1] / beta[0]);
    }

    @Test
    @Published(work = WORK, place = "modulation from 6400 counts a minute at Oulu", printedValue = 43.5, unit = "1",
            tolerance = 0.05)
    void modulationFromTheNeutronMonitor(PublishedValue printed) {
        printed.assertEqualTo(fromOulu(6400).modulationW());
    }

    @Test
    @Published(work = WORK, place = "R0 at W 100", printedValue = 0.608, unit = "GV", tolerance = 5e-4)
    void modulationRigidityAtMaximum(PublishedValue printed) {
        printed.assertEqualTo(new CosmicSpectrum(100).modulationGV());
    }

    @Test
    @Published(work = WORK, place = "R0 at W 0", printedValue = 0.37, unit = "GV", tolerance = EXACT)
    void modulationRigidityAtMinimum(PublishedValue printed) {
        printed.assertEqualTo(new CosmicSpectrum(0).modulationGV());
    }

    /**
     * Modulation from the counting rate of the Oulu neutron monitor: W = -0.093 N + 638.7.
     *
     * @param countsAMinute counts a minute, corrected for pressure, 4700 to 7000
     * @return the spectrum of that time
     * @throws IllegalArgumentException if the rate is outside its range
     */
    private static CosmicSpectrum fromOulu(double countsAMinute) {
        Require.within("counts a minute", countsAMinute, 4720, 7000, "1/min");
        return new CosmicSpectrum(-0.093 * countsAMinute + 638.7);
    }
}
