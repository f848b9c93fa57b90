// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.spectrum;

/** Rigidity of protons. */
final class Rigidity {
    private Rigidity() {
    }

    /** Rigidity (GV) at a kinetic energy (MeV). */
    static double gigavolts(double energyMeV) {
        return Math.sqrt(energyMeV * (energyMeV + 2 * EventSpectrum.PROTON_MEV)) / 1000;
    }

    /** How rigidity grows with energy (GV/MeV). */
    static double perMeV(double energyMeV) {
        return (energyMeV + EventSpectrum.PROTON_MEV) / (gigavolts(energyMeV) * 1e6);
    }
}
