// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.spectrum;

import bermwright.foundation.Require;
import java.util.OptionalDouble;

/**
 * Band form of the fluence above a rigidity R (GV), as ground-level events are published: J R^-a exp(-R/R1) up to the
 * break, above it a power law R^-b, or R^-b exp(-R/R2), that meets it smoothly.
 *
 * <p>With the second fold the break is (b - a) R1 R2 / (R2 - R1), without it (b - a) R1. Good from some 30 MeV to a few
 * GeV, where neutron monitors on the ground end; published fits are off by up to a third.
 *
 * @param name        name of the event
 * @param fluence     J, protons over all directions (1/m2), positive
 * @param softIndex   a (1), below b
 * @param foldGV      R1 (GV), positive
 * @param steepIndex  b (1)
 * @param steepFoldGV R2 (GV), above R1; empty for a power law to the end
 * @param source      source of the figures
 * @see "Tylka and Dietrich (2009), 31st International Cosmic Ray Conference (form, from memory); Koldobskiy et al.
 *     (2021), Astron. Astrophys. 647, A132, abstract (two exponential cut-offs; the smooth break worked out here)"
 */
public record FluenceBandSpectrum(String name, double fluence, double softIndex, double foldGV, double steepIndex,
        OptionalDouble steepFoldGV, String source) implements EventSpectrum {
    private static final Range FITTED = new Range(30, 5000);

    /** Refuses figures outside their range. */
    public FluenceBandSpectrum {
        Require.positive("fluence", fluence, "1/m2");
        Require.positive("fold", foldGV, "GV");
        Require.that(steepIndex > softIndex, "steep index is %s; accepted: above the soft index, %s", steepIndex,
                softIndex);
        Require.that(steepFoldGV.isEmpty() || steepFoldGV.getAsDouble() > foldGV,
                "steep fold is %s GV; accepted: above the fold, %s GV", steepFoldGV.orElse(0), foldGV);
    }

    /**
     * Rigidity at which the form changes.
     *
     * @return rigidity (GV), positive
     */
    public double breakGV() {
        return (steepIndex - softIndex) / (1 / foldGV - steepRate());
    }

    private double steepRate() {
        return steepFoldGV.isPresent() ? 1 / steepFoldGV.getAsDouble() : 0;
    }

    @Override
    public double above(double energyMeV) {
        double rigidity = Rigidity.gigavolts(energyMeV);
        double at = breakGV();
        if (rigidity <= at) {
            return fluence * Math.pow(rigidity, -softIndex) * Math.exp(-rigidity / foldGV);
        }
        double joined = fluence * Math.pow(at, steepIndex - softIndex) * Math.exp(softIndex - steepIndex);
        return joined * Math.pow(rigidity, -steepIndex) * Math.exp(-rigidity * steepRate());
    }

    @Override
    public double perMeV(double energyMeV) {
        double rigidity = Rigidity.gigavolts(energyMeV);
        double fall = rigidity <= breakGV() ? softIndex / rigidity + 1 / foldGV : steepIndex / rigidity + steepRate();
        return above(energyMeV) * fall * Rigidity.perMeV(energyMeV);
    }

    @Override
    public Range range() {
        return FITTED;
    }
}
