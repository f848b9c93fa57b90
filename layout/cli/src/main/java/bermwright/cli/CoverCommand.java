// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import picocli.CommandLine.Command;

/** Shows the cover of each hull. */
@Command(name = "cover", description = "Cover shape, depth over the skin, volume.")
final class CoverCommand extends PlanCommand {
    @Override
    Assessments.Asked asked() {
        return Assessments.Asked.SHAPES;
    }

    @Override
    ObjectNode page(Assessment assessment) {
        ObjectNode page = CommonJson.of(assessment);
        ArrayNode hulls = page.putArray("hulls");
        assessment.hulls().forEach(hull -> {
            ObjectNode entry = hulls.addObject();
            entry.put("id", hull.hull().id());
            CoverJson.put(entry, hull);
            CoverJson.putBurial(entry, hull);
            HazardJson.put(entry, hull.hull().id(), assessment);
        });
        HazardJson.putJudged(page, assessment);
        CoverJson.putToes(page, assessment);
        CoverJson.putPassThroughs(page, assessment);
        return page;
    }

    @Override
    void text(Assessment assessment, PrintStream out) {
        CommonText.head(assessment, out);
        CoverText.write(assessment, out);
        CoverText.writePassThroughs(assessment, out);
        CoverText.writeSupports(assessment, out);
        HazardJson.write(assessment, out);
        CommonText.findings(assessment.findings(), out);
        CommonText.foot(assessment, out);
    }
}
