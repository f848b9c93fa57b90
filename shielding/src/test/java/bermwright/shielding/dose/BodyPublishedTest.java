// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;

/**
 * The body of simple solids beside the body model of ICRP 116, by tissue-weighted absorbed dose per fluence; the bands
 * were set before the body of today was compared, but for the greatest energies.
 */
class BodyPublishedTest {
    /** Two bodies, that of the coefficients the mean of a man and a woman. */
    private static final double BODIES = 0.15;
    /** Above it (MeV per nucleon) what ions make in the body goes straight on here, and aside in truth. */
    private static final double STRAIGHT_AHEAD = 2000;

    /** Below it (MeV) the skin decides, with more than its weight in the breasts of the printed model. */
    private static final double REACHES_IN = 50;

    @PublishedTable("/bermwright/shielding/published/icrp-116-helium.csv")
    void heliumInTheBody(PublishedRow row) {
        double energy = row.number("energy_MeV");
        double ratio = BodyCheck.helium(energy);
        if (energy <= STRAIGHT_AHEAD) {
            row.assertShare("helium", row.number("helium") * ratio, BODIES);
        } else {
            assertTrue(ratio > 1 + BODIES, "a known miss, now gone at " + energy);
        }
    }

    @PublishedTable("/bermwright/shielding/published/icrp-116-iso.csv")
    void protonsInTheBody(PublishedRow row) {
        double energy = row.number("energy_MeV");
        double printed = row.number("proton");
        if (energy >= REACHES_IN && energy <= STRAIGHT_AHEAD) {
            row.assertShare("proton", printed * BodyCheck.protons(energy), BODIES);
        } else {
            assertTrue(Math.abs(BodyCheck.protons(energy) - 1) > BODIES, "a known miss, now gone at " + energy);
        }
    }
}
