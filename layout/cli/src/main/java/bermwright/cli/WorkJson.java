// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.answer.Answers;
import bermwright.site.answer.WorkAnswers;
import bermwright.site.assessment.Assessment;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Soil to be moved and the order of work, for programs. */
final class WorkJson {
    private WorkJson() {
    }

    static void putSoil(ObjectNode page, Assessment assessment) {
        assessment.earthworks().ifPresent(works -> {
            ObjectNode entry = page.putObject("earthworks");
            JsonObjects.put(entry, WorkAnswers.EARTHWORKS, works);
            assessment.slopes().ifPresent(slopes -> JsonObjects.put(entry, WorkAnswers.MADE_GROUND, slopes));
            JsonObjects.putAll(entry, "gear_digging", Answers.DIGGING, assessment.digging().items());
        });
    }

    static void putStages(ObjectNode page, Assessment assessment) {
        JsonObjects.putAll(page, "stages", WorkAnswers.STAGES, WorkAnswers.InStage.of(assessment));
        assessment.stages().ifPresent(result -> JsonObjects.put(page.putObject("work"), WorkAnswers.WORK, result));
    }
}
