// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.filestore.WholeFolder;
import bermwright.foundation.InputException;
import bermwright.report.Reports;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.SiteGround;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Writes the hand-over pages, drawings, tables and exchange files. */
@Command(name = "report", description = "Writes the hand-over pages, drawings, tables and exchange files.")
final class ReportCommand implements Callable<Integer> {
    @ParentCommand
    private Bermwright program;

    @Option(names = "--json", description = "Answers with one JSON object.")
    private boolean json;

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "Where to; made where it is not there.")
    private Path directory;

    @Parameters(paramLabel = "PLAN", description = "The plan file.")
    private Path planFile;

    @Override
    public Integer call() {
        Console console = program.console();
        if (Files.exists(directory) && !Files.isDirectory(directory)) {
            throw InputException.badValue(new InputException.Place("", 0, "--out"), directory.toString(),
                    "a folder, or the name of one to be made");
        }
        Plan plan = PlanFiles.read(planFile);
        check();
        SiteGround ground = SiteGround.read(plan, planFile, console.progress().part(0, 0.02));
        Assessment assessment = Assessments.standard().run(plan, planFile.toString(), ground,
                console.progress().part(0.02, 0.8));
        Path page = written(assessment, console);
        console.progress().end();
        if (json) {
            ObjectNode answer = CommonJson.of(assessment);
            answer.put("directory", directory.toString()).put("page", page.toString());
            console.out().println(JsonObjects.text(answer));
        } else {
            CommonText.head(assessment, console.out());
            console.out().printf("Written: %s%n", page);
        }
        return ExitCode.of(assessment.findings()).number();
    }

    /** Refuses a folder that can't be replaced before the long work begins. */
    private void check() {
        try {
            WholeFolder.check(directory);
        } catch (DirectoryNotEmptyException others) {
            throw InputException.unreadable(new InputException.Place("", 0, "--out"), others.getMessage(),
                    "an empty or new folder, or one that holds an earlier report and nothing else",
                    Optional.of(others));
        } catch (IOException e) {
            throw notWritten(e);
        }
    }

    private InputException notWritten(IOException e) {
        return InputException.unreadable(new InputException.Place("", 0, "--out"),
                directory + " cannot be written to (" + e + ")", "a folder that can be written to", Optional.of(e));
    }

    private Path written(Assessment assessment, Console console) {
        try {
            Reports.write(assessment, directory, console.progress().part(0.8, 1));
            return directory.resolve(Reports.PAGE);
        } catch (IOException e) {
            throw notWritten(e);
        }
    }
}
