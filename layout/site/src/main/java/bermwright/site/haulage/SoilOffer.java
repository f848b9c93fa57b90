// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.foundation.Require;
import bermwright.foundation.Ring;

/**
 * Soil that can be taken: a borrow ground, or what a preparation cuts.
 *
 * @param from    id of the borrow ground or preparation
 * @param bank    usable volume in place before digging (m3), zero or more
 * @param density density in place (kg/m3), above zero
 * @param area    where it is dug
 */
public record SoilOffer(String from, double bank, double density, Ring area) {
    /** Refuses volumes below zero and densities of nothing. */
    public SoilOffer {
        Require.notNegative("usable bank volume of " + from, bank, "m3");
        Require.positive("bank density of " + from, density, "kg/m3");
    }

    /**
     * Mass of the soil.
     *
     * @return mass (kg)
     */
    public double mass() {
        return bank * density;
    }
}
