// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.lowering.choice.MeansRow;
import bermwright.lowering.choice.PayloadSweep;
import bermwright.lowering.choice.Suggestions;
import bermwright.site.answer.LoweringAnswers;
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
        out.println(TextTable.of(LoweringAnswers.MEANS, choices.comparison()));
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
        out.println(TextTable.of(LoweringAnswers.PAYLOAD, points));
    }
}
