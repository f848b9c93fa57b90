// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.report.sheet.TradeSheet;
import bermwright.site.answer.SizingAnswers;
import bermwright.site.assessment.Cautions;
import bermwright.site.assessment.CoverSearch;
import bermwright.site.assessment.SiteGround;
import bermwright.site.assessment.Version;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import bermwright.site.sizing.SizedCover;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Looks for the least cover that meets the limits. */
@Command(name = "size-cover", description = "The least cover that meets the limits at every station.")
final class SizeCoverCommand extends PlanFileCommand {
    @Option(names = "--drawing", paramLabel = "FILE", description = "Draws dose against soil into this SVG file.")
    private Optional<Path> drawing = Optional.empty();

    @Override
    public Integer call() {
        Console console = console();
        Plan plan = PlanFiles.read(planFile());
        SiteGround ground = SiteGround.read(plan, planFile(), console.progress().part(0, 0.02));
        SizedCover sized = CoverSearch.least(plan, ground, console.progress().part(0.02, 1));
        drawing.ifPresent(file -> Options.write("--drawing", file, new TradeSheet(sized).drawing().file()));
        console.progress().end();
        if (json()) {
            console.out().println(JsonObjects.text(page(sized)));
        } else {
            new SizeCoverText(plan, planFile(), sized).write(console.out());
        }
        return ExitCode.of(sized.findings()).number();
    }

    private ObjectNode page(SizedCover sized) {
        ObjectNode page = JsonObjects.object();
        page.put("plan", planFile().toString()).put("bermwright", Version.text());
        Cautions.all().forEach(page.putArray("cautions")::add);
        CommonJson.putFindings(page, sized.findings());
        JsonObjects.put(page, SizingAnswers.SIZED, sized);
        return page;
    }
}
