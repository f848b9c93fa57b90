// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.report.HandoverPart;
import bermwright.report.Reports;
import bermwright.report.reader.DocumentControl;
import bermwright.report.reader.Handover;
import bermwright.report.reader.Reader;
import bermwright.report.scale.SheetSize;
import bermwright.site.assessment.Assessment;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Optional;
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

    @Option(names = "--date", paramLabel = "D",
            description = "Date in the title block, such as 2031-02-14; none where none is given.")
    private Optional<String> date = Optional.empty();

    @Parameters(paramLabel = "PLAN", description = "The plan file.")
    private Path planFile;

    @Override
    public Integer call() {
        Console console = program.console();
        DocumentControl.Issue issue = new DocumentControl.Issue(revision, date.map(d -> Options.day("--date", d)));
        OutFolder.check(directory, "earlier " + HandoverPart.DRAWINGS.word());
        Assessment assessment = Assessed.plan(planFile, console.progress().part(0, 0.9));
        Reports.Order order = new Reports.Order(EnumSet.allOf(Reader.class), size == null
                ? EnumSet.allOf(SheetSize.class) : EnumSet.of(size), issue, Handover.Review.NONE);
        OutFolder.write(HandoverPart.DRAWINGS, assessment, order, directory, console.progress().part(0.9, 1));
        console.progress().end();
        OutFolder.answer(assessment, directory, json, console);
        return ExitCode.of(assessment.findings()).number();
    }
}
