// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.spectrum;

import java.util.List;

/**
 * Protons of one solar particle event, counted over the whole event and over all directions.
 *
 * <p>Heavier solar particles are left out: they add less than a tenth to the dose behind 10 g/cm2 (from memory).
 */
public sealed interface EventSpectrum
        permits ExponentialSpectrum, WeibullSpectrum, RigidityBandSpectrum, FluenceBandSpectrum, TabulatedSpectrum,
        CutSpectrum {
    /** Rest energy of the proton (MeV). */
    double PROTON_MEV = 938.272;

    /**
     * Name of the event and its form.
     *
     * @return the name
     */
    String name();

    /**
     * Protons above an energy.
     *
     * @param energyMeV kinetic energy (MeV), positive
     * @return omnidirectional fluence (1/m2), zero or more
     */
    double above(double energyMeV);

    /**
     * Protons per unit of energy.
     *
     * @param energyMeV kinetic energy (MeV), positive
     * @return omnidirectional fluence per energy (1/m2/MeV), zero or more
     */
    double perMeV(double energyMeV);

    /**
     * Where the form holds.
     *
     * @return least and greatest energy (MeV) of the data the form was fitted to
     */
    Range range();

    /**
     * How the form goes on above the energies that it holds for, in words.
     *
     * @return such as "by its own form"
     */
    default String continuation() {
        return "by its own form";
    }

    /**
     * The same event continued by other laws, where nobody has stated the law.
     *
     * @return the other spectra, whose doses belong into the band; none where the form is a published one
     */
    default List<EventSpectrum> otherwise() {
        return List.of();
    }

    /**
     * Source of the figures.
     *
     * @return the published work, with "from memory" where so
     */
    String source();

    /**
     * Energies a spectrum was fitted to.
     *
     * @param fromMeV least energy (MeV)
     * @param toMeV   greatest energy (MeV)
     */
    record Range(double fromMeV, double toMeV) {
    }
}
