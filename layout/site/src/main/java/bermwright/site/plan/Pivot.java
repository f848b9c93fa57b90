// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What a hull turns over while it is laid down.
 *
 * @param kind            rim, shoes or legs
 * @param ahead           shoes: how far the pivot line lies ahead of the axis (m)
 * @param halfSpread      shoes: half the distance between them (m)
 * @param count           legs: how many (1), two of them leading
 * @param footprintRadius legs: radius of the circle of their feet (m)
 * @param footArea        shoes, legs: area of each on the ground (m2), above zero
 * @param annotations            note, own keys and the keys given
 */
public record Pivot(Kind kind, OptionalDouble ahead, OptionalDouble halfSpread, OptionalInt count,
        OptionalDouble footprintRadius, OptionalDouble footArea, Annotations annotations) {
    /** Area of a shoe or foot that is not stated (m2); chosen here. */
    public static final double USUAL_FOOT_AREA = 1;

    /** Kinds of pivot. */
    public enum Kind {
        /** The bare base rim, a point contact. */
        RIM,
        /** Two shoes on a line. */
        SHOES,
        /** The two leading legs. */
        LEGS;

        /**
         * The word used in files and pages.
         *
         * @return the word in lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * How far the pivot line lies ahead of the axis.
     *
     * @param radius the hull's radius (m)
     * @return distance d_p (m): rim, the radius; shoes, their distance; legs, footprint radius times cos(pi/count)
     */
    public double ahead(double radius) {
        return switch (kind) {
            case RIM -> radius;
            case SHOES -> ahead.orElse(radius);
            case LEGS -> footprintRadius.orElse(radius) * Math.cos(Math.PI / count.orElse(4));
        };
    }
}
