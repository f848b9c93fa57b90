// SPDX-License-Identifier: Apache-2.0
package bermwright.report.reader;

import bermwright.foundation.Progress;
import bermwright.site.assessment.AsBuilt;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.CoverTrade;
import bermwright.site.assessment.DoseCurves;
import bermwright.site.assessment.LoweringChoices;
import bermwright.site.assessment.WorkCalendar;
import bermwright.site.exposure.DoseAgainstCover;
import bermwright.site.laydown.Alternatives;
import java.util.List;
import java.util.Optional;

/**
 * What reports show beside the assessment, asked for once: it takes a while.
 *
 * @param curves  dose against cover for each skin
 * @param trade   the plan's covers thinner and thicker
 * @param choices other gear and means for each hull
 * @param asBuilt what was surveyed after steps of the work
 * @param calendar dates of the work
 */
public record Studies(List<DoseAgainstCover> curves, CoverTrade trade, List<Alternatives> choices,
        List<AsBuilt> asBuilt, Optional<WorkCalendar> calendar) {
    /** Copies the lists. */
    public Studies {
        curves = List.copyOf(curves);
        choices = List.copyOf(choices);
        asBuilt = List.copyOf(asBuilt);
    }

    /**
     * The studies of an assessment.
     *
     * @param assessment the assessment
     * @param progress   told how far the work has come; may cancel it
     * @return the studies
     */
    public static Studies of(Assessment assessment, Progress progress) {
        progress.report(0, "other covers");
        List<DoseAgainstCover> curves = assessment.dose().isEmpty() ? List.of()
                : DoseCurves.of(assessment, progress.part(0, 0.05));
        List<AsBuilt> asBuilt = AsBuilt.of(assessment, progress.part(0.05, 0.2));
        CoverTrade trade = CoverTrade.of(assessment, progress.part(0.2, 0.8));
        progress.report(0.8, "other gear");
        return new Studies(curves, trade, LoweringChoices.of(assessment), asBuilt, WorkCalendar.of(assessment));
    }
}
