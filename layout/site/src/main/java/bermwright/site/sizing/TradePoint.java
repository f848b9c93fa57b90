// SPDX-License-Identifier: Apache-2.0
package bermwright.site.sizing;

/**
 * One point of the curve of dose against soil: all hulls under the same thickness everywhere.
 *
 * @param thickness thickness (m)
 * @param volume    soil placed (m3)
 * @param station   the station that is farthest from its limit, as {@code hull/station}
 * @param best      dose there, cosmic over the stay and, at a shelter, the event (Sv)
 * @param high      84th percentile of it (Sv)
 * @param used      high over its limit, the greatest of all limits (1); 1 or less where all are met
 * @param people    the same for the crew, sharing its time as planned, and each named person, the greatest (1)
 */
public record TradePoint(double thickness, double volume, String station, double best, double high, double used,
        double people) {
    /**
     * Whether every limit is met at every station, and by crew and persons.
     *
     * @return true where it is
     */
    boolean isMet() {
        return used <= 1 && people <= 1;
    }
}
