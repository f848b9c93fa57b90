// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.foundation.Progress;
import bermwright.site.answer.AsBuiltAnswers;
import bermwright.site.assessment.AsBuilt;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.WorkCalendar;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** What was surveyed after steps of the work, and the work's dates, for programs. */
final class AsBuiltJson {
    private AsBuiltJson() {
    }

    static void put(ObjectNode page, Assessment assessment) {
        JsonObjects.putAll(page, "as_built", AsBuiltAnswers.SURVEYS, AsBuilt.of(assessment, Progress.NONE));
        JsonObjects.putAll(page, "as_built_hulls", AsBuiltAnswers.HULLS,
                AsBuiltAnswers.HullEnd.all(assessment.surveys().hulls()));
        WorkCalendar.of(assessment).ifPresent(calendar ->
                JsonObjects.put(page.putObject("calendar"), AsBuiltAnswers.CALENDAR, calendar));
    }
}
