// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.PartBuilt;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.stages.Stage;
import bermwright.site.stages.StagesResult;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.TreeMap;
import java.util.TreeSet;

/** The order of work step by step, for programs. */
final class StagesJson {
    private StagesJson() {
    }

    static void put(ObjectNode page, Assessment assessment) {
        ArrayNode steps = page.putArray("stages");
        assessment.stages().ifPresent(result -> {
            result.stages().forEach(stage -> put(steps.addObject(), stage, assessment));
            whole(page.putObject("work"), result);
        });
    }

    private static void whole(ObjectNode entry, StagesResult result) {
        JsonObjects.put(entry, "days", result.days());
        result.criticalChain().forEach(entry.putArray("critical_chain")::add);
    }

    private static void put(ObjectNode entry, Stage stage, Assessment assessment) {
        entry.put("id", stage.step().id()).put("step", stage.step().step().word()).put("of", stage.step().of());
        stage.step().lift().ifPresent(lift -> entry.put("lift", lift));
        stage.step().after().forEach(entry.putArray("after")::add);
        JsonObjects.put(entry, "start_day", stage.bar().start());
        JsonObjects.put(entry, "end_day", stage.bar().end());
        if (!stage.bar().resource().isEmpty()) {
            entry.put("machine", stage.bar().resource());
        }
        JsonObjects.put(entry, "machine_hours", stage.bar().machineHours());
        entry.put("critical", stage.bar().critical());
        new TreeSet<>(stage.standing()).forEach(entry.putArray("standing")::add);
        new TreeSet<>(stage.lying()).forEach(entry.putArray("lying")::add);
        ObjectNode heights = entry.putObject("cover_heights_m");
        new TreeMap<>(stage.coverHeights()).forEach((hull, height) -> JsonObjects.put(heights, hull, height));
        JsonObjects.put(entry, "placed_m3", stage.soil().placed());
        JsonObjects.put(entry, "ramp_m3", stage.soil().ramp());
        stage.soil().lifts().forEach(entry.putArray("lift_tops_m")::add);
        assessment.partBuilt().stream().filter(p -> p.step().equals(stage.step().id())).findFirst()
                .ifPresent(built -> put(entry.putObject("part_built"), built, assessment.plan().exposure()));
    }

    private static void put(ObjectNode entry, PartBuilt built, ExposurePlan exposure) {
        ArrayNode covers = entry.putArray("covers");
        for (HullCover cover : built.covers()) {
            ObjectNode one = covers.addObject().put("id", cover.id());
            one.put("is_whole", built.whole().contains(cover.id()));
            CoverJson.putLeast(one, cover);
        }
        ArrayNode stations = entry.putArray("stations");
        for (StationDose dose : built.stations()) {
            ObjectNode one = stations.addObject().put("hull", dose.hull()).put("id", dose.station());
            one.put("quantity", StationDose.QUANTITY);
            JsonObjects.put(one, "covered_mSv", InUnits.millisieverts(dose.covered().best()));
            JsonObjects.put(one, "low_mSv", InUnits.millisieverts(dose.covered().low()));
            JsonObjects.put(one, "high_mSv", InUnits.millisieverts(dose.covered().high()));
            JsonObjects.put(one, "share_of_limit", PartBuilt.used(exposure, dose));
        }
    }
}
