// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.lowering.choice.MeansRow;
import bermwright.lowering.choice.PayloadSweep;
import bermwright.lowering.choice.Suggestions;
import bermwright.site.laydown.Alternatives;
import java.io.PrintStream;
import java.util.List;

/** What else could be done with a hull, for people. */
final class ChoicesText {
    private ChoicesText() {
    }

    static void compared(Alternatives choices, PrintStream out) {
        CommonText.heading("All means for " + choices.hull(), out);
        if (!choices.unusable().isEmpty()) {
            CommonText.wrapped("Not compared: " + choices.unusable() + ".", 2, out);
            return;
        }
        TextTable table = new TextTable("means", "can be done", "greatest load kN", "on", "gear t", "stops", "hours");
        for (MeansRow row : choices.comparison()) {
            table.row(row.means(), row.possible() ? "yes" : "no", kilonewtons(row.greatestLoad()), row.loadOn(),
                    TextTable.number(InUnits.tonnes(row.gearMass()), 2), TextTable.number(row.holdPoints(), 0),
                    TextTable.number(InUnits.hours(row.duration()), 2));
        }
        out.println(table);
        for (MeansRow row : choices.comparison()) {
            CommonText.wrapped(row.means() + ": governed by " + row.governs() + ". Ground: " + row.preparation()
                    + ". Gear: " + String.join(", ", row.gear()) + ".", 2, out);
            row.against().forEach(a -> CommonText.wrapped("- " + a, 4, out));
        }
        out.println();
        points("Load against mass", choices.byMass(), out);
        points("Load against centre of mass", choices.byCentre(), out);
    }

    static void suggested(String hull, Suggestions suggestions, PrintStream out) {
        CommonText.heading("Poles for " + hull, out);
        suggestions.words().forEach(w -> CommonText.wrapped(w, 2, out));
        out.println();
    }

    private static void points(String head, List<PayloadSweep.PayloadPoint> points, PrintStream out) {
        if (points.isEmpty()) {
            return;
        }
        out.println("  " + head);
        TextTable table = new TextTable("mass t", "centre of mass m", "balance deg", "one line kN", "pull-over kN",
                "one pole kN", "line factor", "");
        points.forEach(p -> table.row(TextTable.number(InUnits.tonnes(p.mass()), 1), TextTable.number(p.centre(), 2),
                TextTable.number(InUnits.degrees(p.balanceTilt()), 1), kilonewtons(p.lineEach()),
                kilonewtons(p.pullOver()), kilonewtons(p.poleEach()), TextTable.number(p.lineFactor(), 2),
                p.refused() ? "refused" : ""));
        out.println(table);
    }

    private static TextTable.Cell kilonewtons(double newtons) {
        return TextTable.number(InUnits.kilonewtons(newtons), 1);
    }
}
