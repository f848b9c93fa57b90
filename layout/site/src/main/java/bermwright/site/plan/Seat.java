// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import java.util.Locale;

/**
 * What a hull lies on.
 *
 * @param kind          ground, cradle or bench
 * @param sunk          how far its lower side lies below the ground (m), zero or more
 * @param cradleHeight  how far a cradle lifts its lower side (m), zero or more
 * @param kept          note, own keys and the keys given
 */
public record Seat(Kind kind, double sunk, double cradleHeight, Kept kept) {
    /** Kinds of seat. */
    public enum Kind {
        /** The ground as it is. */
        GROUND,
        /** Cradles. */
        CRADLE,
        /** A levelled bench. */
        BENCH;

        /**
         * The word used in files and pages.
         *
         * @return the word in lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
