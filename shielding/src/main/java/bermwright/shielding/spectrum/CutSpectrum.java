// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.spectrum;

import java.util.Objects;

/**
 * An event without what its form only continues: no proton above the greatest energy that it was fitted to.
 *
 * @param whole the event
 */
public record CutSpectrum(EventSpectrum whole) implements EventSpectrum {
    /** Refuses nothing. */
    public CutSpectrum {
        Objects.requireNonNull(whole, "event");
    }

    @Override
    public String name() {
        return whole.name() + ", to " + range().toMeV() + " MeV";
    }

    @Override
    public double above(double energyMeV) {
        return Math.max(0, whole.above(energyMeV) - whole.above(range().toMeV()));
    }

    @Override
    public double perMeV(double energyMeV) {
        return energyMeV < range().toMeV() ? whole.perMeV(energyMeV) : 0;
    }

    @Override
    public Range range() {
        return whole.range();
    }

    @Override
    public String source() {
        return whole.source();
    }
}
