// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * What a hull lies on.
 *
 * @param kind          ground, cradle or bench
 * @param sunk          how far its lower side lies below the ground (m), zero or more
 * @param cradleHeight  how far a cradle lifts its lower side (m), zero or more
 * @param saddleCount   cradle: how many saddles (1), two or more, evenly spread between the outer ones
 * @param saddleFromEnd cradle: middle of the outer saddles from the ends of the hull (m); empty for a fifth of its
 *                      length
 * @param saddleContact cradle: angle of the hull's round that a saddle holds (rad), above zero, up to half a turn
 * @param saddleWidth   cradle: width of a saddle along the hull (m), above zero
 * @param annotations          note, own keys and the keys given
 */
public record Seat(Kind kind, double sunk, double cradleHeight, int saddleCount, OptionalDouble saddleFromEnd,
        double saddleContact, double saddleWidth, Annotations annotations) {
    /** Saddles where a plan states none (1); Zick (1951), from memory. */
    public static final int USUAL_SADDLES = 2;
    /** Share of the length between an end and the outer saddle (1); Zick (1951), from memory. */
    public static final double USUAL_FROM_END = 0.2;
    /** Angle that a saddle holds, in degrees; Zick (1951), 120 to 150, from memory. */
    public static final double USUAL_CONTACT_DEG = 120;
    /** Width of a saddle along the hull (m); chosen here. */
    public static final double USUAL_WIDTH = 0.5;

    /**
     * A seat whose saddles, if it has any, are the usual ones.
     *
     * @param kind         ground, cradle or bench
     * @param sunk         how far the hull's lower side lies below the ground (m), zero or more
     * @param cradleHeight how far a cradle lifts its lower side (m), zero or more
     * @return the seat
     */
    public static Seat usual(Kind kind, double sunk, double cradleHeight) {
        return new Seat(kind, sunk, cradleHeight, USUAL_SADDLES, OptionalDouble.empty(),
                Math.toRadians(USUAL_CONTACT_DEG), USUAL_WIDTH, Annotations.NOTHING);
    }

    /**
     * Where the outer saddles stand.
     *
     * @param length the hull's length (m)
     * @return distance of their middle from either end (m)
     */
    public double fromEnd(double length) {
        return saddleFromEnd.orElse(USUAL_FROM_END * length);
    }

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
