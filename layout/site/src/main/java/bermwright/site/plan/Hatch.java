// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import java.util.Locale;

/**
 * A hatch, in body axes.
 *
 * @param id     its id, unique in the hull
 * @param end    base, far or side
 * @param along  distance from the base plane (m)
 * @param around turn from the crown (rad), positive to the left looking from base to far end
 * @param width  clear width (m), above zero
 * @param height clear height (m), above zero
 * @param sill   height of its sill above the ground or the hull's lower side (m)
 * @param annotations   note, own keys and the keys given
 */
public record Hatch(String id, End end, double along, double around, double width, double height, double sill,
        Annotations annotations) {
    /** Where on the hull a hatch is. */
    public enum End {
        /** In the base end. */
        BASE,
        /** In the far end. */
        FAR,
        /** In the side. */
        SIDE;

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
