// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.answer.Answers;
import bermwright.site.assessment.Assessment;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;

/** What covers keep off, for programs and for people. */
final class HazardJson {
    private HazardJson() {
    }

    /** The figures of one hull. */
    static void put(ObjectNode entry, String hull, Assessment assessment) {
        assessment.hazards().hulls().stream().filter(h -> h.hull().equals(hull)).findFirst()
                .ifPresent(h -> JsonObjects.put(entry.putObject("hazards"), Answers.HAZARDS, h));
    }

    /** The table of all hazards by hull and station. */
    static void putJudged(ObjectNode page, Assessment assessment) {
        ArrayNode lines = page.putArray("cover_judged");
        assessment.hazards().judged().forEach(l -> JsonObjects.put(lines.addObject(), Answers.JUDGED_COVERS, l));
    }

    static void write(Assessment assessment, PrintStream out) {
        CommonText.heading("What the covers keep off", out);
        if (assessment.hazards().judged().isEmpty()) {
            out.println("  nothing to judge");
            out.println();
            return;
        }
        out.println(TextTable.of(Answers.JUDGED_COVERS, assessment.hazards().judged()));
        out.println(TextTable.of(Answers.HAZARDS, assessment.hazards().hulls()));
    }
}
