// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.report.HandoverPart;
import bermwright.report.Reports;
import bermwright.report.reader.DocumentControl;
import bermwright.report.reader.Handover;
import bermwright.report.reader.Reader;
import bermwright.report.scale.SheetSize;
import java.util.EnumSet;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the drawings to scale. */
@Command(name = "drawings", description = "Writes drawings to scale on A3 and A1, as PDF and SVG: site plan, each"
        + " hull's plan and sections, finished contours, borrow pits, setting-out.")
final class DrawingsCommand extends FolderCommand {
    @Option(names = "--sheet", paramLabel = "SIZE", description = "A3 or A1; both where none is given.")
    private SheetSize size;

    @Option(names = "--revision", paramLabel = "R", defaultValue = "", description = "Revision in the title block.")
    private String revision;

    @Option(names = "--date", paramLabel = "D",
            description = "Date in the title block, such as 2031-02-14; none where none is given.")
    private Optional<String> date = Optional.empty();

    @Override
    public Integer call() {
        DocumentControl.Issue issue = new DocumentControl.Issue(revision, date.map(d -> Options.day("--date", d)));
        return write(HandoverPart.DRAWINGS, new Reports.Order(EnumSet.allOf(Reader.class), size == null
                ? EnumSet.allOf(SheetSize.class) : EnumSet.of(size), issue, Handover.Review.NONE));
    }
}
