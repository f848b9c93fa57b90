// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Something on or through a covered hull's skin that its cover has to reckon with, in body axes.
 *
 * @param id     its id, unique in the cover
 * @param kind   what it is
 * @param along  its middle, from the base plane (m)
 * @param around its middle, turn from the crown (rad), positive to the left looking from base to far end
 * @param width  width around the hull, measured on the skin (m), above zero
 * @param length length along the hull (m), above zero
 * @param clear  strip around it that the cover leaves free of soil (m), zero or more; empty where none is kept
 * @param open   whether a feed-through is an open pipe, as a shaft always is
 * @param annotations   note, own keys and the keys given
 */
public record PassThrough(String id, Kind kind, double along, double around, double width, double length,
        OptionalDouble clear, boolean open, Annotations annotations) {
    /** Kinds of things that pass through a cover. */
    public enum Kind {
        /** Gives off heat to the sky, so it must see it. */
        RADIATOR,
        /** A cable that may lie in soil. */
        CABLE,
        /** A pipe or duct, closed unless said to be open. */
        FEED_THROUGH,
        /** Skin that soil must not touch for its heat's sake. */
        THERMAL_KEEP_OUT,
        /** An open shaft straight up; square to the skin on the lower half. */
        SHAFT;

        /**
         * The word used in files and pages.
         *
         * @return the words in lower case
         */
        public String word() {
            return this == FEED_THROUGH ? "feed-through" : this == THERMAL_KEEP_OUT ? "thermal keep-out"
                    : name().toLowerCase(Locale.ROOT);
        }

        /**
         * Whether soil on it stops its work.
         *
         * @return true for radiators and thermal keep-outs
         */
        public boolean isSpoiltBySoil() {
            return this == RADIATOR || this == THERMAL_KEEP_OUT;
        }
    }

    /**
     * Whether rays run through it without soil.
     *
     * @return true for a shaft and for an open feed-through
     */
    public boolean isVoid() {
        return kind == Kind.SHAFT || kind == Kind.FEED_THROUGH && open;
    }
}
