// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * An anchor in the ground; which figures it needs depends on its kind.
 *
 * @param kind     its kind
 * @param width    plate, block: width across the pull (m)
 * @param height   plate, block: height (m)
 * @param length   block: length along the pull (m)
 * @param depth    plate, block: depth to its lower edge (m); screw, pile: depth of its tip (m)
 * @param mass     ballast: mass (kg)
 * @param count    screw, pile: how many act together (1)
 * @param diameter screw: helix diameter (m); pile: shaft diameter (m)
 * @param annotations     note, own keys and the keys given
 */
public record Anchor(Kind kind, OptionalDouble width, OptionalDouble height, OptionalDouble length,
        OptionalDouble depth, OptionalDouble mass, OptionalInt count, OptionalDouble diameter,
                Annotations annotations) {
    /** Kinds of anchor. */
    public enum Kind {
        /** A buried plate. */
        PLATE,
        /** A buried block. */
        BLOCK,
        /** A weight on the ground. */
        BALLAST,
        /** Screw piles. */
        SCREW,
        /** Driven piles. */
        PILE;

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
