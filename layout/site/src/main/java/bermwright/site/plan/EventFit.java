// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import bermwright.shielding.spectrum.FluenceBandSpectrum;
import java.util.OptionalDouble;

/**
 * A solar particle event by the figures of a published fit in rigidity, as those of ground-level events are given.
 *
 * @param name        name of the event
 * @param fluence     J, protons over all directions (1/m2), above zero
 * @param softIndex   index of the power law below the break (1)
 * @param foldGV      rigidity of the exponential below the break (GV), above zero
 * @param steepIndex  index of the power law above the break (1), above the soft one
 * @param steepFoldGV rigidity of a second exponential above the break (GV), above the first; empty for none
 * @param source      the work the figures are from
 * @param annotations note, own keys and the keys given
 */
public record EventFit(String name, double fluence, double softIndex, double foldGV, double steepIndex,
        OptionalDouble steepFoldGV, String source, Annotations annotations) {
    /** Refuses figures that make no spectrum. */
    public EventFit {
        new FluenceBandSpectrum(name, fluence, softIndex, foldGV, steepIndex, steepFoldGV, source);
    }

    /**
     * The event's protons.
     *
     * @return the spectrum
     */
    public FluenceBandSpectrum spectrum() {
        return new FluenceBandSpectrum(name, fluence, softIndex, foldGV, steepIndex, steepFoldGV, source);
    }
}
