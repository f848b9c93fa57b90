// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.lowering.review.CrossSlope;
import bermwright.lowering.review.CrossState;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** What a cross slope does to a lowering, for programs. */
final class CrossJson {
    private static final int EVERY = 5;

    private CrossJson() {
    }

    static void put(ObjectNode entry, CrossSlope cross) {
        JsonObjects.put(entry, "side_force_kN", InUnits.kilonewtons(cross.sideForce()));
        JsonObjects.put(entry, "weight_overstated_share", cross.overstated());
        cross.hardest().ifPresent(c -> {
            JsonObjects.put(entry, "tilt_deg", InUnits.degrees(c.tilt()));
            JsonObjects.put(entry, "hardest_kN", InUnits.kilonewtons(c.hardest()));
        });
        cross.mostUnequal().ifPresent(c -> {
            JsonObjects.put(entry, "more_on_one_line_kN", InUnits.kilonewtons(Math.abs(c.lower() - c.upper())));
            entry.put("other_slack", c.isSlack());
        });
        JsonObjects.put(entry, "side_line_kN", InUnits.kilonewtons(cross.mostSideLine().sideLine()));
        ArrayNode tilts = entry.putArray("tilts");
        cross.every(EVERY).forEach(c -> state(tilts.addObject(), c));
    }

    private static void state(ObjectNode row, CrossState c) {
        JsonObjects.put(row, "tilt_deg", InUnits.degrees(c.tilt()));
        row.put("line", c.lowering() ? "lowering" : "pull-over");
        JsonObjects.put(row, "lower_line_kN", InUnits.kilonewtons(c.lower()));
        JsonObjects.put(row, "upper_line_kN", InUnits.kilonewtons(c.upper()));
        JsonObjects.put(row, "harder_pole_kN", InUnits.kilonewtons(c.pole()));
        row.put("held_by", c.held().word());
        JsonObjects.put(row, "side_line_kN", InUnits.kilonewtons(c.sideLine()));
        JsonObjects.put(row, "pivot_up_kN", InUnits.kilonewtons(c.pivot().up()));
        JsonObjects.put(row, "pivot_along_kN", InUnits.kilonewtons(c.pivot().along()));
        JsonObjects.put(row, "pivot_across_kN", InUnits.kilonewtons(c.pivot().side()));
        JsonObjects.put(row, "lower_shoe_kN", InUnits.kilonewtons(c.pivot().lowerShoe()));
        JsonObjects.put(row, "upper_shoe_kN", InUnits.kilonewtons(c.pivot().upperShoe()));
        JsonObjects.put(row, "hold_needed_kN", InUnits.kilonewtons(c.pivot().holdNeeded()));
        c.sway().ifPresent(s -> {
            row.put("rests_by_itself", s.finds());
            JsonObjects.put(row, "sway_deg", s.finds() ? InUnits.degrees(s.angle()) : Double.NaN);
            JsonObjects.put(row, "far_end_aside_m", s.finds() ? s.farEnd() : Double.NaN);
            JsonObjects.put(row, "swayed_line_kN", s.finds() ? InUnits.kilonewtons(s.hardest()) : Double.NaN);
        });
    }
}
