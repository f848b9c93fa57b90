// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.spectrum;

import bermwright.foundation.Require;
import java.util.List;

/**
 * Sum of exponentials in energy: F(above E) = sum of N exp[(E0 - E)/e].
 *
 * @param name   name of the event and its form
 * @param terms  the exponentials
 * @param range  energies the form was fitted to (MeV)
 * @param source source of the figures
 */
public record ExponentialSpectrum(String name, List<Term> terms, Range range, String source)
        implements EventSpectrum {
    /**
     * One exponential.
     *
     * @param fluence  protons above {@code fromMeV} (1/m2), positive
     * @param fromMeV  energy at which the fluence is given (MeV)
     * @param foldMeV  energy over which it falls to 1/e (MeV), positive
     */
    public record Term(double fluence, double fromMeV, double foldMeV) {
        /** Refuses figures outside their range. */
        public Term {
            Require.positive("fluence", fluence, "1/m2");
            Require.positive("energy of the fold", foldMeV, "MeV");
        }

        private double above(double energyMeV) {
            return fluence * Math.exp((fromMeV - energyMeV) / foldMeV);
        }
    }

    /** Copies the terms. */
    public ExponentialSpectrum {
        terms = List.copyOf(terms);
    }

    @Override
    public double above(double energyMeV) {
        return terms.stream().mapToDouble(t -> t.above(energyMeV)).sum();
    }

    @Override
    public double perMeV(double energyMeV) {
        return terms.stream().mapToDouble(t -> t.above(energyMeV) / t.foldMeV()).sum();
    }
}
