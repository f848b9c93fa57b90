// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.answer.DoseAnswers;
import bermwright.site.answer.Unit;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.exposure.SiteDose;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.ExposurePlan;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Doses, for programs. */
final class DoseJson {
    private DoseJson() {
    }

    static void put(ObjectNode entry, HullAssessment hull, ExposurePlan exposure) {
        ArrayNode stations = entry.putArray("stations");
        boolean namesEvent = exposure.namesEvent();
        hull.stations().forEach(station -> put(stations.addObject(), station, namesEvent));
    }

    private static void put(ObjectNode entry, StationDose dose, boolean namesEvent) {
        JsonObjects.put(entry, DoseAnswers.STATION, dose);
        if (!namesEvent) {
            JsonObjects.put(entry, "event_mSv", Unit.MSV.of(dose.parts().event()));
        }
    }

    /** The plan's limits and the doses held against them. */
    static void putJudged(ObjectNode page, Assessment assessment) {
        JsonObjects.putAll(page, "limits", DoseAnswers.LIMITS, assessment.dose().map(SiteDose::limits)
                .orElse(List.of()));
    }

    /** Limits of published standards. */
    static void putLimits(ObjectNode page, Assessment assessment) {
        JsonObjects.putAll(page, "published_limits", DoseAnswers.PUBLISHED_LIMITS, assessment.dose()
                .map(SiteDose::publishedLimits).orElse(List.of()));
    }

    /** The crew's dose, the hours outside on a line of their own. */
    static void putCrew(ObjectNode page, Assessment assessment) {
        ExposurePlan exposure = assessment.plan().exposure();
        assessment.dose().ifPresent(dose -> dose.crew(exposure)
                .ifPresent(crew -> JsonObjects.put(page.putObject("crew"),
                DoseAnswers.CREW, new DoseAnswers.Crew(exposure, crew, dose.hasEvent()))));
    }

    /** The doses of the plan's named persons. */
    static void putPeople(ObjectNode page, Assessment assessment) {
        JsonObjects.putAll(page, "people", DoseAnswers.PEOPLE, assessment.dose().map(SiteDose::people)
                .orElse(List.of()));
    }

    /** The dose on open ground. */
    static void putOutside(ObjectNode page, Assessment assessment) {
        assessment.dose().ifPresent(dose -> {
            JsonObjects.put(page.putObject("open_ground"), DoseAnswers.OPEN_GROUND, dose);
            page.put("event", dose.event());
        });
    }
}
