// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

/** What a cascade leaves: mass and charge number, excitation and recoil energy (MeV). */
record Residue(int mass, int charge, double excitation, double recoil) {
    /** The same, no lower than its ground state. */
    Residue possible() {
        return new Residue(mass, charge, Math.max(0, excitation), recoil);
    }
}
