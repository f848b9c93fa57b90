// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

/**
 * A dose by the particles that make it; the unit is that of the quantity (Sv or Gy).
 *
 * @param fastNeutrons neutrons above 20 MeV
 * @param slowNeutrons neutrons below 20 MeV
 * @param protons      protons
 * @param helium       helium
 * @param heavy        ions heavier than helium
 * @param pions        charged pions and the muons that they decay into
 * @param gammas       electrons and gammas of neutral pions
 */
public record Particles(double fastNeutrons, double slowNeutrons, double protons, double helium, double heavy,
        double pions, double gammas) {
    /**
     * All particles together.
     *
     * @return the dose
     */
    public double total() {
        return fastNeutrons + slowNeutrons + protons + helium + heavy + pions + gammas;
    }

    /**
     * What is left of the dose in a sphere under a dome on the ground: half of what flies straight, all of the slow
     * neutrons, since the floor gives back what it gets.
     *
     * @return the doses
     */
    public Particles underDome() {
        return new Particles(fastNeutrons / 2, slowNeutrons, protons / 2, helium / 2, heavy / 2, pions / 2, gammas / 2);
    }

    /**
     * The same doses times a factor.
     *
     * @param factor factor (1), zero or more
     * @return the doses
     */
    public Particles times(double factor) {
        return new Particles(fastNeutrons * factor, slowNeutrons * factor, protons * factor, helium * factor,
                heavy * factor, pions * factor, gammas * factor);
    }

    /**
     * Both together.
     *
     * @param other the other dose
     * @return the sum, particle by particle
     */
    public Particles plus(Particles other) {
        return new Particles(fastNeutrons + other.fastNeutrons, slowNeutrons + other.slowNeutrons,
                protons + other.protons, helium + other.helium, heavy + other.heavy, pions + other.pions,
                gammas + other.gammas);
    }

    /**
     * Part of the dose that neutrons make.
     *
     * @return share (1), 0 to 1; 0 where there is no dose
     */
    double neutronShare() {
        return total() > 0 ? (fastNeutrons + slowNeutrons) / total() : 0;
    }
}
