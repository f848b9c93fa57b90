// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.assessment.Assessment;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.haulage.Haul;
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
    }
}
