// SPDX-License-Identifier: Apache-2.0
package bermwright.site.judgement;

import bermwright.site.plan.Annotations;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/**
 * What one person judged of one finding or station.
 *
 * @param of          id of the finding, or of the station as hull/station
 * @param decision    what was decided
 * @param name        who decided
 * @param date        when
 * @param revision    revision of the plan it was decided on
 * @param remark      in the person's words
 * @param judgedOn    what the finding or station said at that time, with its figures
 * @param annotations note, own keys and the keys given
 */
public record Judgement(String of, Decision decision, String name, LocalDate date, Optional<String> revision,
        Optional<String> remark, String judgedOn, Annotations annotations) {
    /** What can be decided. */
    public enum Decision {
        /** Taken as it is, by that person. */
        ACCEPTED,
        /** Not taken: the plan must change. */
        REFUSED,
        /** A remark, without a decision. */
        REMARK;

        /**
         * The word used in options, files and pages.
         *
         * @return the word in lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * The judgement in words.
     *
     * @return such as "accepted by A. Reviewer on 2031-02-14 (revision B): as discussed"
     */
    public String words() {
        return (decision == Decision.REMARK ? "remark" : decision.word()) + " by " + name + " on " + date
                + revision.map(r -> " (revision " + r + ")").orElse("") + remark.map(r -> ": " + r).orElse("");
    }
}
