// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.lowering.choice.MeansRow;
import bermwright.lowering.choice.PayloadSweep;
import bermwright.lowering.choice.Suggestion;
import bermwright.lowering.choice.Suggestions;
import bermwright.site.laydown.Alternatives;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** What else could be done with a hull, for programs. */
final class ChoicesJson {
    private ChoicesJson() {
    }

    static void compared(ObjectNode hull, Alternatives choices) {
        ArrayNode rows = hull.putArray("means");
        choices.comparison().forEach(row -> means(rows.addObject(), row));
        points(hull.putArray("by_mass"), choices.byMass());
        points(hull.putArray("by_centre_of_mass"), choices.byCentre());
        if (!choices.unusable().isEmpty()) {
            hull.put("not_compared", choices.unusable());
        }
    }

    static void suggested(ObjectNode hull, Suggestions suggestions) {
        ObjectNode entry = hull.putObject("suggestions");
        suggestions.words().forEach(entry.putArray("words")::add);
        ArrayNode rows = entry.putArray("poles");
        for (Suggestion s : suggestions.found()) {
            ObjectNode row = rows.addObject().put("goal", s.goal().words());
            JsonObjects.put(row, "height_m", s.height());
            JsonObjects.put(row, "behind_pivot_m", s.behindPivot());
            JsonObjects.put(row, "greatest_line_tension_kN", InUnits.kilonewtons(s.greatestTension()));
            JsonObjects.put(row, "pole_each_kN", InUnits.kilonewtons(s.greatestThrust()));
            JsonObjects.put(row, "wall_mm", InUnits.millimetres(s.wall()));
            JsonObjects.put(row, "poles_t", InUnits.tonnes(s.poleMass()));
        }
    }

    private static void means(ObjectNode entry, MeansRow row) {
        entry.put("means", row.means()).put("possible", row.possible());
        JsonObjects.put(entry, "greatest_load_kN", InUnits.kilonewtons(row.greatestLoad()));
        entry.put("load_on", row.loadOn());
        JsonObjects.put(entry, "gear_t", InUnits.tonnes(row.gearMass()));
        row.gear().forEach(entry.putArray("gear")::add);
        entry.put("preparation", row.preparation()).put("hold_points", row.holdPoints());
        JsonObjects.put(entry, "hours", InUnits.hours(row.duration()));
        entry.put("governs", row.governs());
        row.against().forEach(entry.putArray("against")::add);
    }

    private static void points(ArrayNode rows, List<PayloadSweep.PayloadPoint> points) {
        for (PayloadSweep.PayloadPoint p : points) {
            ObjectNode row = rows.addObject();
            JsonObjects.put(row, "mass_t", InUnits.tonnes(p.mass()));
            JsonObjects.put(row, "centre_of_mass_from_base_m", p.centre());
            JsonObjects.put(row, "balance_tilt_deg", InUnits.degrees(p.balanceTilt()));
            JsonObjects.put(row, "line_each_kN", InUnits.kilonewtons(p.lineEach()));
            JsonObjects.put(row, "pull_over_kN", InUnits.kilonewtons(p.pullOver()));
            JsonObjects.put(row, "pole_each_kN", InUnits.kilonewtons(p.poleEach()));
            JsonObjects.put(row, "pivot_along_kN", InUnits.kilonewtons(p.pivotAlong()));
            JsonObjects.put(row, "line_factor", p.lineFactor());
            row.put("refused", p.refused());
        }
    }
}
