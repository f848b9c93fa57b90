// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.spectrum;

/**
 * Protons of one solar particle event, counted over the whole event and over all directions.
 *
 * <p>Heavier solar particles are left out: they add less than a tenth to the dose behind 10 g/cm2 (from memory).
 */
public sealed interface EventSpectrum
        permits ExponentialSpectrum, WeibullSpectrum, RigidityBandSpectrum, TabulatedSpectrum {
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
