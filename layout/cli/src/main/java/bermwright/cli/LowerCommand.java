// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.answer.LoweringAnswers;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.assessment.LoweringChoices;
import bermwright.site.laydown.Alternatives;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows how each hull is laid down. */
@Command(name = "lower", description = "Each hull's lowering, tilt by tilt.")
final class LowerCommand extends PlanCommand {
    @Option(names = "--compare", description = "Puts all means side by side, and the load against the payload.")
    private boolean compare;

    @Option(names = "--suggest", description = "Suggests pole heights and places that fit the winches.")
    private boolean suggest;

    @Override
    Assessments.Asked asked() {
        return Assessments.Asked.SHAPES;
    }

    @Override
    ObjectNode page(Assessment assessment) {
        ObjectNode page = CommonJson.of(assessment);
        ArrayNode hulls = page.putArray("hulls");
        Map<String, Alternatives> choices = choices(assessment);
        for (HullAssessment hull : assessment.hulls()) {
            ObjectNode entry = hulls.addObject();
            LoweringJson.put(entry, hull);
            hull.laydown().ifPresent(laydown -> LoweringJson.putReview(entry, laydown));
            Optional<Alternatives> other = Optional.ofNullable(choices.get(hull.hull().id()));
            if (compare) {
                other.ifPresent(c -> JsonObjects.put(entry, LoweringAnswers.COMPARED, c));
            }
            if (suggest) {
                other.flatMap(c -> c.suggestions()).ifPresent(s -> JsonObjects.put(entry.putObject("suggestions"),
                        LoweringAnswers.SUGGESTED, s));
            }
        }
        return page;
    }

    @Override
    void text(Assessment assessment, PrintStream out) {
        CommonText.head(assessment, out);
        LoweringText.summary(assessment, out);
        LoweringText.tilts(assessment, out);
        ReviewText.show(assessment, out);
        for (Alternatives other : choices(assessment).values()) {
            if (compare) {
                ChoicesText.compared(other, out);
            }
            if (suggest) {
                other.suggestions().ifPresent(s -> ChoicesText.suggested(other.hull(), s, out));
            }
        }
        CommonText.findings(assessment.findings(), out);
        CommonText.foot(assessment, out);
    }

    private Map<String, Alternatives> choices(Assessment assessment) {
        Map<String, Alternatives> choices = new LinkedHashMap<>();
        if (compare || suggest) {
            LoweringChoices.of(assessment).forEach(c -> choices.putIfAbsent(c.hull(), c));
        }
        return choices;
    }
}
