// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.SiteGround;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;

/** A command that reads a plan, has it assessed, and shows a part of the assessment. */
abstract class PlanCommand extends PlanFileCommand {
    @Override
    public Integer call() {
        check();
        Console console = console();
        Plan plan = PlanFiles.read(planFile());
        SiteGround ground = SiteGround.read(plan, planFile(), console.progress().part(0, 0.02));
        Assessment assessment = Assessments.standard().run(asked(),
                new Assessments.Site(plan, planFile().toString(), ground),
                console.progress().part(0.02, 1));
        console.progress().end();
        if (json()) {
            console.out().println(JsonObjects.text(page(assessment)));
        } else {
            text(assessment, console.out());
        }
        return ExitCode.of(assessment.findings()).number();
    }

    /** How much of the plan has to be worked out for the answer. */
    abstract Assessments.Asked asked();

    /** Refuses options that cannot be followed, before any work is done. */
    void check() {
    }

    /** The answer for programs. */
    abstract ObjectNode page(Assessment assessment);

    /** The answer for people. */
    abstract void text(Assessment assessment, PrintStream out);
}
