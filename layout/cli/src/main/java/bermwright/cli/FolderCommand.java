// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.report.HandoverPart;
import bermwright.report.Reports;
import bermwright.site.assessment.Assessment;
import java.nio.file.Path;
import picocli.CommandLine.Option;

/** A command that makes a folder out of a plan. */
abstract class FolderCommand extends PlanFileCommand {
    @Option(names = "--out", paramLabel = "DIR", required = true, description = "Where to; made where it is not there.")
    private Path directory;

    Path directory() {
        return directory;
    }

    /** Writes one part of what is handed over, and says where it is. */
    int write(HandoverPart part, Reports.Order order) {
        OutFolder.check(directory, "earlier " + part.word(), console().err());
        Assessment assessment = Assessed.plan(planFile(), console().progress().part(0, 0.9));
        OutFolder.write(part, assessment, order, directory, console().progress().part(0.9, 1));
        console().progress().end();
        OutFolder.answer(assessment, directory, json(), console());
        return ExitCode.of(assessment.findings()).number();
    }
}
