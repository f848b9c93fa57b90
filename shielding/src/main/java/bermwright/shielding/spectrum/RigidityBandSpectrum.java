// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.spectrum;

import bermwright.foundation.Require;

/**
 * Band form in rigidity R (GV): C R^-a exp(-R/R0) up to the break (b - a) R0, above it the power law R^-b that
 * meets it smoothly; C is per solid angle, the fluence over all directions 4 pi times it.
 *
 * @param name        name of the design spectrum
 * @param scale       C (1/(m2 sr GV)), positive
 * @param softIndex   a (1), below b
 * @param foldGV      R0 (GV), positive
 * @param steepIndex  b (1)
 * @param source      source of the figures
 * @see "Jiggens et al. (2018), J. Space Weather Space Clim. 8, A31, table 8"
 */
public record RigidityBandSpectrum(String name, double scale, double softIndex, double foldGV, double steepIndex,
        String source) implements EventSpectrum {
    private static final int STEPS = 64;

    /** Refuses figures outside their range. */
    public RigidityBandSpectrum {
        Require.positive("scale", scale, "1/(m2 sr GV)");
        Require.positive("fold", foldGV, "GV");
        Require.that(steepIndex > softIndex, "steep index is %s; accepted: above %s", steepIndex, softIndex);
    }

    /**
     * Rigidity at which the form changes.
     *
     * @return rigidity (GV), positive
     */
    public double breakGV() {
        return (steepIndex - softIndex) * foldGV;
    }

    /**
     * Fluence over all directions per rigidity.
     *
     * @param rigidityGV rigidity (GV), positive
     * @return fluence (1/(m2 GV)), zero or more
     */
    public double perGV(double rigidityGV) {
        double difference = steepIndex - softIndex;
        double value = rigidityGV <= breakGV()
                ? Math.pow(rigidityGV, -softIndex) * Math.exp(-rigidityGV / foldGV)
                : Math.pow(rigidityGV, -steepIndex) * Math.pow(breakGV(), difference) * Math.exp(-difference);
        return 4 * Math.PI * scale * value;
    }

    @Override
    public double above(double energyMeV) {
        double rigidity = Rigidity.gigavolts(energyMeV);
        double sum = 0;
        if (rigidity < breakGV()) {
            sum = integral(rigidity, breakGV());
            rigidity = breakGV();
        }
        return sum + perGV(rigidity * (1 + 1e-12)) * rigidity / (steepIndex - 1);
    }

    @Override
    public double perMeV(double energyMeV) {
        return perGV(Rigidity.gigavolts(energyMeV)) * Rigidity.perMeV(energyMeV);
    }

    @Override
    public Range range() {
        return new Range(5, 1000);
    }

    /** Simpson's rule in the logarithm of rigidity. */
    private double integral(double from, double to) {
        double step = Math.log(to / from) / STEPS;
        double sum = 0;
        for (int i = 0; i <= STEPS; i++) {
            double rigidity = from * Math.exp(i * step);
            int weight = i == 0 || i == STEPS ? 1 : 2 + 2 * (i % 2);
            sum += weight * perGV(Math.min(rigidity, to)) * rigidity;
        }
        return sum * step / 3;
    }
}
