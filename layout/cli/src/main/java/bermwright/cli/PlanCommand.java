// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.SiteGround;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** A command that reads a plan, has it assessed, and shows a part of the assessment. */
abstract class PlanCommand implements Callable<Integer> {
    @ParentCommand
    private Bermwright program;

    @Option(names = "--json", description = "Answers with one JSON object.")
    private boolean json;

    @Parameters(paramLabel = "PLAN", description = "The plan file.")
    private Path planFile;

    @Override
    public Integer call() {
        check();
        Console console = console();
        Plan plan = PlanFiles.read(planFile);
        SiteGround ground = SiteGround.read(plan, planFile, console.progress().part(0, 0.02));
        Assessment assessment = Assessments.standard().run(asked(),
                new Assessments.Site(plan, planFile.toString(), ground),
                console.progress().part(0.02, 1));
        console.progress().end();
        if (json) {
            console.out().println(JsonObjects.text(page(assessment)));
        } else {
            text(assessment, console.out());
        }
        return ExitCode.of(assessment.findings()).number();
    }

    Console console() {
        return program.console();
    }

    Path planFile() {
        return planFile;
    }

    boolean json() {
        return json;
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
