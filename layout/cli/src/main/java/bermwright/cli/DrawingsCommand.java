// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.filestore.WholeFolder;
import bermwright.foundation.InputException;
import bermwright.report.scale.ScaleDrawings;
import bermwright.report.scale.SheetSize;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.SiteGround;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Writes the drawings to scale. */
@Command(name = "drawings", description = "Writes drawings to scale on A3 and A1, as PDF and SVG: site plan, each"
        + " hull's plan and sections, finished contours, borrow pits, setting-out.")
final class DrawingsCommand implements Callable<Integer> {
    @ParentCommand
    private Bermwright program;

    @Option(names = "--json", description = "Answers with one JSON object.")
    private boolean json;

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "Where to; made where it is not there.")
    private Path directory;

    @Option(names = "--sheet", paramLabel = "SIZE", description = "A3 or A1; both where none is given.")
    private SheetSize size;

    @Option(names = "--revision", paramLabel = "R", defaultValue = "", description = "Revision in the title block.")
    private String revision;

    @Option(names = "--date", paramLabel = "D", defaultValue = "",
            description = "Date in the title block, such as 2031-02-14; none where none is given.")
    private String date;

    @Parameters(paramLabel = "PLAN", description = "The plan file.")
    private Path planFile;

    @Override
    public Integer call() {
        Console console = program.console();
        check();
        Plan plan = PlanFiles.read(planFile);
        SiteGround ground = SiteGround.read(plan, planFile, console.progress().part(0, 0.02));
        Assessment assessment = Assessments.standard().run(plan, planFile.toString(), ground,
                console.progress().part(0.02, 0.9));
        try {
            WholeFolder.write(directory, folder -> {
                ScaleDrawings drawings = ScaleDrawings.of(assessment, revision, date);
                for (SheetSize each : size == null ? List.of(SheetSize.values()) : List.of(size)) {
                    console.progress().check();
                    console.progress().report(0.92, "drawing " + each);
                    drawings.write(folder, each);
                }
            });
        } catch (IOException e) {
            throw OutFolder.notWritten(directory, e);
        }
        console.progress().end();
        if (json) {
            ObjectNode answer = CommonJson.of(assessment);
            answer.put("directory", directory.toString());
            console.out().println(JsonObjects.text(answer));
        } else {
            CommonText.head(assessment, console.out());
            console.out().printf("Written: %s%n", directory);
        }
        return ExitCode.of(assessment.findings()).number();
    }

    /** Refuses a date that is none and a folder that can't be replaced before the long work begins. */
    private void check() {
        try {
            if (!date.isEmpty()) {
                LocalDate.parse(date);
            }
        } catch (DateTimeException none) {
            throw InputException.badValue(new InputException.Place("", 0, "--date"), date,
                    "a date as year-month-day, such as 2031-02-14");
        }
        OutFolder.check(directory, "earlier drawings");
    }
}
