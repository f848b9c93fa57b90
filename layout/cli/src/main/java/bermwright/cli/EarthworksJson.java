// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.answer.Answers;
import bermwright.site.assessment.Assessment;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.stages.GearDigging;
import bermwright.site.stages.SlopeChecks;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Soil to be moved, for programs. */
final class EarthworksJson {
    private EarthworksJson() {
    }

    static void put(ObjectNode page, Assessment assessment) {
        assessment.earthworks().ifPresent(works -> {
            ObjectNode entry = page.putObject("earthworks");
            put(entry, works);
            assessment.slopes().ifPresent(slopes -> put(entry, slopes));
            ArrayNode digging = entry.putArray("gear_digging");
            for (GearDigging.Item item : assessment.digging().items()) {
                JsonObjects.put(digging.addObject(), Answers.DIGGING, item);
            }
        });
    }

    private static void put(ObjectNode entry, SlopeChecks slopes) {
        ArrayNode rows = entry.putArray("slopes");
        slopes.slopes().forEach(s -> JsonObjects.put(rows.addObject(), Answers.SLOPES, s));
        JsonObjects.put(entry, "steepest_made_ground_deg", InUnits.degrees(slopes.steepest()));
    }

    private static void put(ObjectNode entry, EarthworksResult works) {
        JsonObjects.put(entry, Answers.EARTHWORKS, works);
        ArrayNode hauls = entry.putArray("hauls");
        works.hauls().forEach(haul -> JsonObjects.put(hauls.addObject(), Answers.HAULS, haul));
        ArrayNode machines = entry.putArray("machines");
        works.machineDays().forEach(m -> JsonObjects.put(machines.addObject(), Answers.MACHINES, m));
    }
}
