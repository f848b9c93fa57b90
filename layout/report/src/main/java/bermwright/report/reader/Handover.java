// SPDX-License-Identifier: Apache-2.0
package bermwright.report.reader;

import bermwright.site.assessment.Assessment;
import bermwright.site.comparison.Comparison;
import bermwright.site.doubt.Doubts;
import bermwright.site.judgement.Judgements;
import java.util.List;
import java.util.Optional;

/**
 * All that the three reports are made from.
 *
 * @param assessment the assessment
 * @param studies    what is shown beside it
 * @param control    plan, revision, date and checksums
 * @param review     what was judged, and the earlier plan
 */
public record Handover(Assessment assessment, Studies studies, DocumentControl control, Review review) {
    /**
     * What a review brings along.
     *
     * @param judgements what was judged so far
     * @param against    what changed from an earlier plan; empty where there is none to compare with
     * @param doubts     what is in doubt about this very plan; empty where it was not sampled
     */
    public record Review(Judgements judgements, Optional<Comparison> against, Optional<Doubts> doubts) {
        /** Nothing judged, nothing to compare with, nothing sampled. */
        public static final Review NONE = new Review(Judgements.NONE, Optional.empty());

        /**
         * A review without doubts.
         *
         * @param judgements what was judged so far
         * @param against    what changed from an earlier plan; empty where there is none to compare with
         */
        public Review(Judgements judgements, Optional<Comparison> against) {
            this(judgements, against, Optional.empty());
        }
    }

    /** The judgements that count, with whether they still stand. */
    List<Judgements.Standing> judgements() {
        return review.judgements.standing(Judgements.judged(assessment.findings(), assessment.dose()
                .map(d -> d.stations()).orElse(List.of())));
    }

    /**
     * The report of one reader.
     *
     * @param reader the reader
     * @return the report
     */
    public Pack report(Reader reader) {
        Opening opening = new Opening(this, reader, new Pack());
        return switch (reader) {
            case PLANNER -> new PlannerReport(this, opening).write();
            case REVIEWER -> new ReviewerReport(this, opening).write();
            case EXCAVATION -> new ExcavationReport(this, opening).write();
        };
    }
}
