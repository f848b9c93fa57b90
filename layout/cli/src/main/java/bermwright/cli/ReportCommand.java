// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.report.HandoverPart;
import bermwright.report.Reports;
import bermwright.report.reader.DocumentControl;
import bermwright.report.reader.Handover;
import bermwright.report.reader.Reader;
import bermwright.site.assessment.Assessment;
import bermwright.site.comparison.Comparison;
import bermwright.site.doubt.Doubts;
import bermwright.site.judgement.Judgements;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.JudgementFiles;
import bermwright.site.planfile.PlanFiles;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the hand-over pages, drawings, tables and exchange files. */
@Command(name = "report", description = "Writes the hand-over pages, drawings, tables and exchange files.")
final class ReportCommand extends FolderCommand {
    @Option(names = "--for", paramLabel = "READERS", split = ",", description = "Whose reports: planner, reviewer,"
            + " excavation, with commas between; all three.")
    private List<String> readers = List.of();

    @Option(names = "--date", paramLabel = "DATE", description = "Date of the reports, such as 2031-02-14; none is"
            + " stated otherwise, so that the same input gives the same files.")
    private Optional<String> date = Optional.empty();

    @Option(names = "--revision", paramLabel = "REVISION", description = "Letter or number of the revision.")
    private String revision = "";

    @Option(names = "--against", paramLabel = "OLD", description = "An earlier plan: what changed since is reported.")
    private Optional<Path> against = Optional.empty();

    @Option(names = "--doubts", paramLabel = "DIR", description = "What doubts --out has written of this plan: what is"
            + " in doubt is shown too.")
    private Optional<Path> doubts = Optional.empty();

    @Override
    public Integer call() {
        Console console = console();
        OutFolder.refuseFile(directory());
        DocumentControl.Issue issue = new DocumentControl.Issue(revision, date.map(d -> Options.day("--date", d)));
        Set<Reader> asked = asked();
        Judgements judgements = JudgementFiles.of(planFile());
        OutFolder.check(directory(), "an earlier report", console().err());
        Plan plan = PlanFiles.read(planFile());
        Optional<Doubts> sampled = doubts.map(d -> DoubtsFile.read(d, plan, planFile()));
        double share = against.isPresent() ? 0.5 : 1;
        Optional<Assessment> earlier = against.map(old -> Assessed.plan(old, console.progress().part(0, 0.4)));
        Assessment assessment = Assessed.plan(planFile(), console.progress().part(0.8 * (1 - share), 0.8));
        Reports.Order order = new Reports.Order(asked, issue, new Handover.Review(judgements,
                earlier.map(e -> Comparison.of(e, assessment)), sampled));
        OutFolder.write(HandoverPart.REPORTS, assessment, order, directory(), console.progress().part(0.8, 1));
        Path page = directory().resolve(Reports.PAGE);
        console.progress().end();
        if (json()) {
            ObjectNode answer = CommonJson.of(assessment);
            answer.put("directory", directory().toString()).put("page", page.toString());
            ObjectNode reports = answer.putObject("reports");
            asked.forEach(r -> reports.put(r.word(), directory().resolve(r.word() + ".pdf").toString()));
            console.out().println(JsonObjects.text(answer));
        } else {
            CommonText.head(assessment, console.out());
            console.out().printf("Written: %s%n", page);
        }
        return ExitCode.of(assessment.findings()).number();
    }

    private Set<Reader> asked() {
        Set<Reader> asked = EnumSet.noneOf(Reader.class);
        readers.forEach(word -> asked.add(Reader.of(word.strip()).orElseThrow(() -> Options.bad(
                "--for", word, "planner, reviewer, excavation, with commas between"))));
        return asked.isEmpty() ? EnumSet.allOf(Reader.class) : asked;
    }
}
