// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import java.io.PrintStream;

/** The cover of each hull, for people. */
final class CoverText {
    private CoverText() {
    }

    static void write(Assessment assessment, PrintStream out) {
        CommonText.heading("Cover", out);
        TextTable table = new TextTable("hull", "soil m3", "mass t", "least depth m", "wanted there m", "at along m",
                "around deg", "least g/cm2", "skin below wanted %", "shell factor");
        for (HullAssessment hull : assessment.hulls()) {
            if (hull.cover().isEmpty()) {
                table.row(hull.hull().id(), "no cover");
                continue;
            }
            var cover = hull.cover().get();
            table.row(hull.hull().id(), TextTable.number(cover.volume(), 0),
                    TextTable.number(InUnits.tonnes(cover.placedMass()), 0),
                    TextTable.number(cover.least().depth(), 2), TextTable.number(cover.least().wanted(), 2),
                    TextTable.number(cover.least().along(), 1),
                    TextTable.number(InUnits.degrees(cover.least().around()), 0),
                    TextTable.number(InUnits.gramsASquareCentimetre(cover.leastArealDensity()), 0),
                    TextTable.number(100 * cover.shareBelowWanted(), 1),
                    TextTable.number(hull.burial().map(b -> b.shellFactor()).orElse(Double.NaN), 1));
        }
        out.println(table);
        assessment.cover().ifPresent(cover -> out.printf("  In all %s m3 placed, slopes of at most %s deg.%n%n",
                TextTable.words(cover.volume(), 0),
                TextTable.words(InUnits.degrees(assessment.plan().ground().regolith().stableSlope()), 1)));
    }
}
