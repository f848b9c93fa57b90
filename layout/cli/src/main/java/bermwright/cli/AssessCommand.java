// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.answer.WorkAnswers;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import picocli.CommandLine.Command;

/** Shows everything about a plan. */
@Command(name = "assess", description = "Everything about a plan: findings, lowering, cover, dose, earthworks.")
final class AssessCommand extends PlanCommand {
    @Override
    Assessments.Asked asked() {
        return Assessments.Asked.EVERYTHING;
    }

    @Override
    ObjectNode page(Assessment assessment) {
        ObjectNode page = CommonJson.of(assessment);
        ArrayNode hulls = page.putArray("hulls");
        assessment.hulls().forEach(hull -> {
            ObjectNode entry = hulls.addObject();
            LoweringJson.put(entry, hull);
            CoverJson.put(entry, hull);
            CoverJson.putBurial(entry, hull);
            HazardJson.put(entry, hull.hull().id(), assessment);
            DoseJson.put(entry, hull, assessment.plan().exposure());
        });
        HazardJson.putJudged(page, assessment);
        DoseJson.putJudged(page, assessment);
        DoseJson.putCrew(page, assessment);
        DoseJson.putPeople(page, assessment);
        CoverJson.putPassThroughs(page, assessment);
        JsonObjects.put(page.putObject("ways_out"), WorkAnswers.WAYS_OUT, assessment);
        WorkJson.putSoil(page, assessment);
        WorkJson.putStages(page, assessment);
        AsBuiltJson.put(page, assessment);
        return page;
    }

    @Override
    void text(Assessment assessment, PrintStream out) {
        CommonText.head(assessment, out);
        CommonText.findings(assessment.findings(), out);
        LoweringText.summary(assessment, out);
        CoverText.write(assessment, out);
        CoverText.writePassThroughs(assessment, out);
        CoverText.writeSupports(assessment, out);
        DoseText.write(assessment, out);
        DoseText.judged(assessment, out);
        HazardJson.write(assessment, out);
        WaysOutText.write(assessment, out);
        EarthworksText.write(assessment, out);
        CommonText.foot(assessment, out);
    }
}
