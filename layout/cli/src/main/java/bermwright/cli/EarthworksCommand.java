// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import picocli.CommandLine.Command;

/** Shows the soil to be moved. */
@Command(name = "earthworks", description = "Cut, fill, borrow, haul, machine time.")
final class EarthworksCommand extends PlanCommand {
    @Override
    Assessments.Asked asked() {
        return Assessments.Asked.EARTHWORKS;
    }

    @Override
    ObjectNode page(Assessment assessment) {
        ObjectNode page = CommonJson.of(assessment);
        WorkJson.putSoil(page, assessment);
        WorkJson.putStages(page, assessment);
        return page;
    }

    @Override
    void text(Assessment assessment, PrintStream out) {
        CommonText.head(assessment, out);
        EarthworksText.write(assessment, out);
        CommonText.findings(assessment.findings(), out);
        CommonText.foot(assessment, out);
    }
}
