// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.assessment.Assessment;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.haulage.Haul;
import bermwright.site.stages.GearDigging;
import bermwright.site.stages.SlopeChecks;
import java.io.PrintStream;
import java.util.Optional;

/** Soil to be moved, for people. */
final class EarthworksText {
    private EarthworksText() {
    }

    static void write(Assessment assessment, PrintStream out) {
        CommonText.heading("Earthworks", out);
        Optional<EarthworksResult> result = assessment.earthworks();
        if (result.isEmpty()) {
            out.printf("  not computed%n%n");
            return;
        }
        EarthworksResult works = result.get();
        TextTable table = new TextTable("soil", "m3", "one standard deviation m3");
        table.row("placed", TextTable.number(works.placed(), 0));
        table.row("in place before digging", TextTable.number(works.bank(), 0),
                TextTable.number(works.spread().bank(), 0));
        table.row("loose in haulers", TextTable.number(works.loose(), 0), TextTable.number(works.spread().loose(), 0));
        table.row("left in borrow grounds", TextTable.number(works.borrowLeft(), 0));
        table.row("short", TextTable.number(works.shortage(), 0));
        out.println(table);
        TextTable hauls = new TextTable("from", "to", "for", "in place m3", "placed m3", "way m", "loads", "machine",
                "machine hours");
        for (Haul haul : works.hauls()) {
            hauls.row(haul.from(), haul.to(), haul.kind().word(), TextTable.number(haul.bank(), 0),
                    TextTable.number(haul.placed(), 0),
                    TextTable.number(haul.distance(), 0), TextTable.number(Math.ceil(haul.loads()), 0),
                    haul.machine(), TextTable.number(haul.machineHours(), 0));
        }
        out.println(hauls);
        for (EarthworksResult.MachineDays days : works.machineDays()) {
            out.printf("  %s: %s machine hours, %s days with all of them at work.%n", days.machine(),
                    TextTable.words(days.hours(), 0), TextTable.words(days.days(), 1));
        }
        out.println();
        if (!assessment.digging().items().isEmpty()) {
            digging(assessment.digging(), out);
        }
        assessment.slopes().filter(s -> !s.slopes().isEmpty()).ifPresent(s -> slopes(s, out));
    }

    private static void digging(GearDigging digging, PrintStream out) {
        TextTable table = new TextTable("hull", "dug for", "cut, in place m3", "filled in, placed m3");
        for (GearDigging.Item item : digging.items()) {
            table.row(item.hull(), item.part(), TextTable.number(item.cut(), 1), TextTable.number(item.fill(), 1));
        }
        out.println("Derived from the gear, for the plan states no preparation for it:");
        out.println(table);
    }

    private static void slopes(SlopeChecks slopes, PrintStream out) {
        TextTable table = new TextTable("slope of", "which is a", "height m", "angle deg", "worst circle x",
                "in the face, no cohesion x");
        for (SlopeChecks.Slope s : slopes.slopes()) {
            table.row(s.subject(), s.kind(), TextTable.number(s.height(), 1),
                    TextTable.number(InUnits.degrees(s.angle()), 1), TextTable.number(s.circle(), 2),
                    TextTable.number(s.plane(), 2));
        }
        out.println("How many times mounds and pits stand against a slide, 1.3 wanted while work goes on:");
        out.println(table);
    }
}
