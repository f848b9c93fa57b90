// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.foundation.Require;
import bermwright.foundation.Ring;
import java.util.List;
import java.util.Locale;

/**
 * Soil wanted somewhere: the cover of a hull, a fill or a ramp.
 *
 * @param to       id of the hull or preparation it is for
 * @param kind     what it is for
 * @param placed   volume once placed (m3), zero or more
 * @param density  density once placed (kg/m3), above zero
 * @param outlines where it meets the ground, at least one outline
 */
public record SoilNeed(String to, Kind kind, double placed, double density, List<Ring> outlines) {
    /** Refuses volumes below zero, densities of nothing and needs without a place. */
    public SoilNeed {
        Require.notNegative("placed volume for " + to, placed, "m3");
        Require.positive("placed density for " + to, density, "kg/m3");
        outlines = List.copyOf(outlines);
        Require.that(!outlines.isEmpty(), "the soil for %s has no outline; at least one is needed.", to);
    }

    /** What soil is wanted for. */
    public enum Kind {
        /** A hull's cover. */
        COVER,
        /** Filling low ground. */
        FILL,
        /** A ramp up a cover. */
        RAMP,
        /** The soil of a ramp on its way back. */
        RAMP_REMOVED;

        /**
         * The words used in files and pages.
         *
         * @return the words in lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /**
     * The soil of a ramp up the cover that this need is for.
     *
     * @param ramp the ramp
     * @return the need of the ramp, at the same place and density
     */
    public SoilNeed forRamp(Ramp ramp) {
        return new SoilNeed(to, Kind.RAMP, ramp.volume(), density, outlines);
    }

    /**
     * Mass of the soil.
     *
     * @return mass (kg)
     */
    public double mass() {
        return placed * density;
    }

    /** The largest of the outlines. */
    Ring mainOutline() {
        Ring main = outlines.get(0);
        for (Ring ring : outlines) {
            main = ring.area() > main.area() ? ring : main;
        }
        return main;
    }
}
