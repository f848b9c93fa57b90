// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.assessment.Assessment;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import picocli.CommandLine.Command;

/** Shows how each hull is laid down. */
@Command(name = "lower", description = "Each hull's lowering, tilt by tilt.")
final class LowerCommand extends PlanCommand {
    @Override
    ObjectNode page(Assessment assessment) {
        ObjectNode page = CommonPage.of(assessment);
        ArrayNode hulls = page.putArray("hulls");
        assessment.hulls().forEach(hull -> LoweringPage.put(hulls.addObject(), hull));
        return page;
    }

    @Override
    void text(Assessment assessment, PrintStream out) {
        CommonText.head(assessment, out);
        LoweringText.summary(assessment, out);
        LoweringText.tilts(assessment, out);
        CommonText.findings(assessment.findings(), out);
        CommonText.foot(assessment, out);
    }
}
