// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.answer.WorkAnswers;
import bermwright.site.assessment.Assessment;
import bermwright.site.egress.WaysOut;
import bermwright.site.haulage.FootWays;
import bermwright.site.plan.Hull;
import java.io.PrintStream;
import java.util.Locale;

/** Ways out of the hulls and to the storm shelters, for people. */
final class WaysOutText {
    private WaysOutText() {
    }

    static void write(Assessment assessment, PrintStream out) {
        WaysOut ways = assessment.waysOut();
        CommonText.heading("Ways out and ways to shelter", out);
        for (Hull hull : assessment.plan().hulls()) {
            int count = ways.hulls().getOrDefault(hull.id(), 0);
            out.printf(Locale.ROOT, "  %s: %d independent way%s out%n", hull.id(), count, count == 1 ? "" : "s");
        }
        if (ways.shelters().isEmpty()) {
            out.printf("%n  No station is named as a storm shelter, or none can be reached.%n%n");
            return;
        }
        out.println(TextTable.of(WorkAnswers.SHELTERS, ways.shelters()));
        CommonText.wrapped(String.format(Locale.ROOT, "At %.1f m/s inside and %.1f m/s outside, around hulls, walls and"
                + " keep-outs and over ground no steeper than %.0f degrees; time in locks is not in it.",
                WaysOut.WALK_SPEED, WaysOut.OUTSIDE_SPEED, FootWays.STEEPEST_DEG), 2, out);
        out.println();
    }
}
