// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.laydown.LandingDisc;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;

/** Landings all over the dispersion, for programs and for people. */
final class DiscJson {
    private DiscJson() {
    }

    static void put(ObjectNode entry, LandingDisc disc) {
        JsonObjects.put(entry, "dispersion_m", disc.radius());
        JsonObjects.put(entry, "swing_deg", InUnits.degrees(disc.swing()));
        JsonObjects.put(entry, "centre_of_mass_shift_m", disc.centre());
        entry.put("worst", disc.worst().where());
        ArrayNode spots = entry.putArray("tried");
        for (LandingDisc.Spot s : disc.spots()) {
            ObjectNode row = spots.addObject();
            JsonObjects.put(row, "ahead_m", s.ahead());
            JsonObjects.put(row, "left_m", s.left());
            JsonObjects.put(row, "eased_line_each_kN", InUnits.kilonewtons(s.eased().tension()));
            JsonObjects.put(row, "worst_line_each_kN", InUnits.kilonewtons(s.worst().tension()));
            JsonObjects.put(row, "worst_at_tilt_deg", InUnits.degrees(s.worst().tilt()));
            JsonObjects.put(row, "worst_swing_deg", InUnits.degrees(s.worst().swing()));
            JsonObjects.put(row, "worst_centre_of_mass_shift_m", s.worst().centre());
            JsonObjects.put(row, "lines_out_of_plane_deg", InUnits.degrees(s.turn()));
            JsonObjects.put(row, "lines_across_kN", InUnits.kilonewtons(s.side()));
            row.put("shoe_lifts", s.lifts());
        }
    }

    static void show(LandingDisc disc, PrintStream out) {
        CommonText.wrapped("Landings inside the dispersion, each on its own ground, the gear where it was set out, the"
                + " hull let swing " + TextTable.words(InUnits.degrees(disc.swing()), 1) + " deg and its centre of mass"
                + " shifted " + TextTable.words(disc.centre(), 2) + " m to either end (worst), or turning to ease it;"
                + " worst of all is " + disc.worst().where() + ":", 2, out);
        TextTable table = new TextTable("ahead m", "left m", "eased line kN", "worst line kN", "at tilt deg",
                "lines out of plane deg", "lines across kN", "a shoe lifts");
        for (LandingDisc.Spot s : disc.spots()) {
            table.row(TextTable.number(s.ahead(), 1), TextTable.number(s.left(), 1),
                    TextTable.number(InUnits.kilonewtons(s.eased().tension()), 1),
                    TextTable.number(InUnits.kilonewtons(s.worst().tension()), 1),
                    TextTable.number(InUnits.degrees(s.worst().tilt()), 1),
                    TextTable.number(InUnits.degrees(s.turn()), 1),
                    TextTable.number(InUnits.kilonewtons(s.side()), 1), s.lifts() ? "yes" : "no");
        }
        out.println(table);
    }
}
