// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.assessment.Assessment;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.haulage.Haul;
import bermwright.site.stages.GearDigging;
import bermwright.site.stages.SlopeChecks;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Soil to be moved, for programs. */
final class EarthworksPage {
    private EarthworksPage() {
    }

    static void put(ObjectNode page, Assessment assessment) {
        assessment.earthworks().ifPresent(works -> {
            ObjectNode entry = page.putObject("earthworks");
            put(entry, works);
            assessment.slopes().ifPresent(slopes -> put(entry, slopes));
            ArrayNode digging = entry.putArray("gear_digging");
            for (GearDigging.Item item : assessment.digging().items()) {
                ObjectNode row = digging.addObject().put("hull", item.hull()).put("part", item.part());
                JsonPage.put(row, "cut_m3", item.cut());
                JsonPage.put(row, "fill_m3", item.fill());
            }
        });
    }

    private static void put(ObjectNode entry, SlopeChecks slopes) {
        ArrayNode rows = entry.putArray("slopes");
        for (SlopeChecks.Slope s : slopes.slopes()) {
            ObjectNode row = rows.addObject().put("of", s.subject()).put("kind", s.kind());
            JsonPage.put(row, "height_m", s.height());
            JsonPage.put(row, "angle_deg", InUnits.degrees(s.angle()));
            JsonPage.put(row, "factor_worst_circle", s.circle());
            JsonPage.put(row, "factor_in_the_face", s.plane());
            JsonPage.put(row, "circle_radius_m", s.radius());
        }
        JsonPage.put(entry, "steepest_made_ground_deg", InUnits.degrees(slopes.steepest()));
    }

    private static void put(ObjectNode entry, EarthworksResult works) {
        JsonPage.put(entry, "placed_m3", works.placed());
        JsonPage.put(entry, "bank_m3", works.bank());
        JsonPage.put(entry, "loose_m3", works.loose());
        JsonPage.put(entry, "mass_t", InUnits.tonnes(works.mass()));
        JsonPage.put(entry, "bank_spread_m3", works.spread().bank());
        JsonPage.put(entry, "loose_spread_m3", works.spread().loose());
        ArrayNode hauls = entry.putArray("hauls");
        works.hauls().forEach(haul -> put(hauls.addObject(), haul));
        JsonPage.put(entry, "machine_hours", works.machineHours());
        ArrayNode machines = entry.putArray("machines");
        works.machineDays().forEach(m -> machines.addObject().put("id", m.machine()).put("machine_hours", m.hours())
                .put("days", m.days()));
        JsonPage.put(entry, "borrow_left_m3", works.borrowLeft());
        JsonPage.put(entry, "shortage_m3", works.shortage());
    }

    private static void put(ObjectNode entry, Haul haul) {
        entry.put("from", haul.from()).put("to", haul.to());
        entry.put("kind", haul.kind().word());
        JsonPage.put(entry, "bank_m3", haul.bank());
        JsonPage.put(entry, "placed_m3", haul.placed());
        JsonPage.put(entry, "distance_m", haul.distance());
        JsonPage.put(entry, "loads", haul.loads());
        entry.put("machine", haul.machine());
        JsonPage.put(entry, "machine_hours", haul.machineHours());
    }
}
