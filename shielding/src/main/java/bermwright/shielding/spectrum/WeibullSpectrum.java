// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.spectrum;

import bermwright.foundation.Require;

/**
 * Weibull form in energy: F(above E) = N exp(-k E^a).
 *
 * @param name     name of the event and its form
 * @param fluence  scale N (1/m2), positive
 * @param rate     k (1/MeV^a), positive
 * @param exponent a (1), positive
 * @param range    energies the form was fitted to (MeV)
 * @param source   source of the figures
 */
public record WeibullSpectrum(String name, double fluence, double rate, double exponent, Range range, String source)
        implements EventSpectrum {
    /** Refuses figures outside their range. */
    public WeibullSpectrum {
        Require.positive("fluence", fluence, "1/m2");
        Require.positive("rate", rate, "1/MeV^a");
        Require.positive("exponent", exponent, "1");
    }

    @Override
    public double above(double energyMeV) {
        return fluence * Math.exp(-rate * Math.pow(energyMeV, exponent));
    }

    @Override
    public double perMeV(double energyMeV) {
        return above(energyMeV) * rate * exponent * Math.pow(energyMeV, exponent - 1);
    }
}
