// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.answer.Answers;
import bermwright.site.assessment.Assessment;
import bermwright.site.haulage.EarthworksResult;
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
        TextTable table = new TextTable("soil", "", "");
        Answers.EARTHWORKS.figures().forEach(f -> table.row(f.heading(), new TextTable.Cell(f.text(works)),
                f.unit().orElseThrow().symbol()));
        out.println(table);
        out.println(TextTable.of(Answers.HAULS, works.hauls()));
        out.println(TextTable.of(Answers.MACHINES, works.machineDays()));
        if (!assessment.digging().items().isEmpty()) {
            out.println(Answers.DIGGING.meaning());
            out.println(TextTable.of(Answers.DIGGING, assessment.digging().items()));
        }
        assessment.slopes().filter(s -> !s.slopes().isEmpty()).ifPresent(s -> {
            out.println(Answers.SLOPES.meaning());
            out.println(TextTable.of(Answers.SLOPES, s.slopes()));
        });
    }
}
