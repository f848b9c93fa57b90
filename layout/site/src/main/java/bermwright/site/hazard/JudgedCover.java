// SPDX-License-Identifier: Apache-2.0
package bermwright.site.hazard;

import bermwright.finding.Verdict;
import java.util.Objects;

/**
 * One line of the table: what a cover is judged for at one place.
 *
 * @param hull     the hull; {@code all} for people who move about
 * @param station  the station, or for all hulls the crew or a named person; empty for the whole hull
 * @param hazard   what it is judged for
 * @param measure  what was found and what is allowed
 * @param required cover depth required (m); not a number where depth is not what decides, or it is not worked out here
 * @param there    cover depth there, at the thinnest place (m); not a number where there is none or it is not known
 * @param verdict  whether it is kept off
 * @param governs  whether no other hazard at this place uses up more of what is allowed
 * @param words    what the measure means, and why it is not judged where it is not
 */
public record JudgedCover(String hull, String station, Hazard hazard, Measure measure, double required, double there,
        Verdict verdict, boolean governs, String words) {
    /** Refuses missing parts. */
    public JudgedCover {
        Objects.requireNonNull(measure, "measure");
    }

    /**
     * What was found and what is allowed.
     *
     * @param found   what was found, in {@code unit}; not a number where it is not known
     * @param allowed what is allowed, in {@code unit}; not a number where there is no limit
     * @param unit    their unit, as people write it; 1 for a chance
     * @param isLeast true where what was found must not be less, false where it must not be more
     */
    public record Measure(double found, double allowed, String unit, boolean isLeast) {
        /** Nothing known. */
        static final Measure NONE = new Measure(Double.NaN, Double.NaN, "1", false);

        /**
         * How much of what is allowed is used up.
         *
         * @return share (1), above 1 where it is not kept; not a number where it is not known
         */
        public double used() {
            return isLeast ? allowed / found : found / allowed;
        }
    }

    /** A line judged by its measure. */
    static JudgedCover of(Place place, Hazard hazard, Measure measure, double required, String words) {
        double used = measure.used();
        Verdict verdict = Double.isNaN(used) ? Verdict.NOT_JUDGED : used <= 1 ? Verdict.MET : Verdict.NOT_MET;
        return new JudgedCover(place.hull, place.station, hazard, measure, required, place.there, verdict, false,
                words);
    }

    /** A line that is not judged. */
    static JudgedCover open(Place place, Hazard hazard, String why) {
        return of(place, hazard, Measure.NONE, Double.NaN, why);
    }

    /** Where a line is judged, and the cover depth there (m). */
    record Place(String hull, String station, double there) {
    }

    JudgedCover governing() {
        return new JudgedCover(hull, station, hazard, measure, required, there, verdict, true, words);
    }

    /**
     * Hull and station as one word.
     *
     * @return such as {@code A/bunks}, or the hull alone
     */
    public String subject() {
        return station.isEmpty() ? hull : hull + "/" + station;
    }
}
