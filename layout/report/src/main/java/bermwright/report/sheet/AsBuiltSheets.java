// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.report.page.Table;
import bermwright.site.answer.AsBuiltAnswers;
import bermwright.site.assessment.AsBuilt;
import bermwright.site.assessment.SurveyedHull;
import java.util.List;

/**
 * What was surveyed after steps of the work beside the plan, as tables; also for the editor.
 *
 * @param surveys one for each step after which the ground was surveyed
 * @param hulls   hulls that were surveyed
 */
public record AsBuiltSheets(List<AsBuilt> surveys, List<SurveyedHull> hulls) {
    /** Copies the surveys. */
    public AsBuiltSheets {
        surveys = List.copyOf(surveys);
        hulls = List.copyOf(hulls);
    }

    /** Ends of hulls as surveyed beside their places in the plan. */
    public Table ends() {
        return AnswerSheets.table("as-built-hulls", "As surveyed: where hulls lie, beside the plan",
                AsBuiltAnswers.HULLS, AsBuiltAnswers.HullEnd.all(hulls));
    }

    /** Soil placed and left, by survey. */
    public Table volumes() {
        return AnswerSheets.table("as-built", "As surveyed: soil placed and left", AsBuiltAnswers.SURVEYS, surveys);
    }

    /** Least depth of each cover as surveyed and as planned by then. */
    public Table covers() {
        return AnswerSheets.table("as-built-covers", "As surveyed: least cover beside the plan's by then",
                AsBuiltAnswers.COVERS, surveys.stream().flatMap(s -> AsBuiltAnswers.covers(s).stream()).toList());
    }

    /** Dose at each station as it stands beside the plan's by then. */
    public Table doses() {
        return AnswerSheets.table("as-built-doses", "As surveyed: dose for a whole stay as if work stopped here,"
                + " beside the plan's by then", AsBuiltAnswers.DOSES, surveys.stream()
                .flatMap(s -> AsBuiltAnswers.doses(s).stream()).toList());
    }
}
