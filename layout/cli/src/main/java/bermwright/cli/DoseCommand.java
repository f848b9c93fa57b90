// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import picocli.CommandLine.Command;

/** Shows the dose at each station. */
@Command(name = "dose", description = "Dose at each station, by source and direction.")
final class DoseCommand extends PlanCommand {
    @Override
    Assessments.Asked asked() {
        return Assessments.Asked.DOSE;
    }

    @Override
    ObjectNode page(Assessment assessment) {
        ObjectNode page = CommonPage.of(assessment);
        ArrayNode hulls = page.putArray("hulls");
        assessment.hulls().forEach(hull -> {
            ObjectNode entry = hulls.addObject();
            entry.put("id", hull.hull().id());
            DosePage.put(entry, hull);
        });
        DosePage.putOutside(page, assessment);
        return page;
    }

    @Override
    void text(Assessment assessment, PrintStream out) {
        CommonText.head(assessment, out);
        DoseText.write(assessment, out);
        DoseText.directions(assessment, out);
        CommonText.findings(assessment.findings(), out);
        CommonText.foot(assessment, out);
    }
}
