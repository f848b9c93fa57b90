// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.foundation.Progress;
import bermwright.site.assessment.AsBuilt;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.WorkCalendar;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.StationDose;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** What was surveyed after steps of the work, and the work's dates, for programs. */
final class AsBuiltJson {
    private AsBuiltJson() {
    }

    static void put(ObjectNode page, Assessment assessment) {
        ArrayNode surveys = page.putArray("as_built");
        AsBuilt.of(assessment, Progress.NONE).forEach(survey -> put(surveys.addObject(), survey));
        WorkCalendar.of(assessment).ifPresent(calendar -> {
            ObjectNode entry = page.putObject("calendar");
            entry.put("end", calendar.end().toString());
            JsonObjects.put(entry, "stood_still_days", calendar.stoodStill());
            ArrayNode steps = entry.putArray("steps");
            calendar.steps().forEach(s -> steps.addObject().put("id", s.step()).put("start", s.start().toString())
                    .put("end", s.end().toString()));
            ArrayNode nights = entry.putArray("nights");
            calendar.nights().forEach(n -> nights.addObject().put("sunset", n.sunset().toString())
                    .put("sunrise", n.sunrise().toString()));
        });
    }

    private static void put(ObjectNode entry, AsBuilt survey) {
        entry.put("step", survey.step().id());
        survey.step().asBuilt().ifPresent(a -> {
            entry.put("elevation_file", a.elevationFile());
            a.surveyed().ifPresent(day -> entry.put("surveyed", day.toString()));
            JsonObjects.put(entry, "placed_density_kg_m3", a.placedDensity());
        });
        JsonObjects.put(entry, "surveyed_share", survey.surveyed());
        JsonObjects.put(entry, "placed_m3", survey.volumes().placed());
        JsonObjects.put(entry, "planned_m3", survey.volumes().planned());
        JsonObjects.put(entry, "left_m3", survey.volumes().left());
        JsonObjects.put(entry, "over_m3", survey.volumes().over());
        ArrayNode covers = entry.putArray("covers");
        for (HullCover cover : survey.built()) {
            ObjectNode one = covers.addObject().put("id", cover.id());
            CoverJson.putLeast(one, cover);
            survey.design().stream().filter(d -> d.id().equals(cover.id())).findFirst()
                    .ifPresent(d -> JsonObjects.put(one, "planned_depth_m", d.least().depth()));
        }
        ArrayNode stations = entry.putArray("stations");
        for (StationDose dose : survey.stations()) {
            ObjectNode one = stations.addObject().put("hull", dose.hull()).put("id", dose.station());
            JsonObjects.put(one, "covered_mSv", InUnits.millisieverts(dose.covered().best()));
            JsonObjects.put(one, "low_mSv", InUnits.millisieverts(dose.covered().low()));
            JsonObjects.put(one, "high_mSv", InUnits.millisieverts(dose.covered().high()));
            survey.planned().stream().filter(p -> p.hull().equals(dose.hull()) && p.station().equals(dose.station()))
                    .findFirst().ifPresent(p -> JsonObjects.put(one, "planned_high_mSv",
                            InUnits.millisieverts(p.covered().high())));
        }
    }
}
