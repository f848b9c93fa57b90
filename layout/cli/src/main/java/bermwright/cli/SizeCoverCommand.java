// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.shielding.cover.CoverThickness;
import bermwright.site.assessment.Cautions;
import bermwright.site.assessment.CoverSearch;
import bermwright.site.assessment.SiteGround;
import bermwright.site.assessment.Version;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import bermwright.site.sizing.SizedCover;
import bermwright.site.sizing.TradePoint;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Looks for the least cover that meets the limits. */
@Command(name = "size-cover", description = "The least cover that meets the limits at every station.")
final class SizeCoverCommand implements Callable<Integer> {
    @ParentCommand
    private Bermwright program;

    @Option(names = "--json", description = "Answers with one JSON object.")
    private boolean json;

    @Parameters(paramLabel = "PLAN", description = "The plan file.")
    private Path planFile;

    @Override
    public Integer call() {
        Console console = program.console();
        Plan plan = PlanFiles.read(planFile);
        SiteGround ground = SiteGround.read(plan, planFile, console.progress().part(0, 0.02));
        SizedCover sized = CoverSearch.least(plan, ground, console.progress().part(0.02, 1));
        console.progress().end();
        if (json) {
            console.out().println(JsonPage.text(page(sized)));
        } else {
            text(plan, sized, console.out());
        }
        return ExitCode.of(sized.findings()).number();
    }

    private ObjectNode page(SizedCover sized) {
        ObjectNode page = JsonPage.object();
        page.put("plan", planFile.toString()).put("bermwright", Version.text());
        Cautions.all().forEach(page.putArray("cautions")::add);
        CommonPage.putFindings(page, sized.findings());
        page.put("is_met", sized.isMet());
        ArrayNode hulls = page.putArray("hulls");
        new TreeMap<>(sized.thickness()).forEach((id, parts) -> {
            ObjectNode cover = hulls.addObject().put("id", id).putObject("cover");
            cover.put("crown_m", parts.crown()).put("flank_m", parts.flank());
            cover.put("base_end_m", parts.baseEnd()).put("far_end_m", parts.farEnd());
        });
        JsonPage.put(page, "volume_m3", sized.volume());
        JsonPage.put(page, "bank_m3", sized.bankVolume());
        JsonPage.put(page, "bank_available_m3", sized.bankAvailable());
        JsonPage.put(page, "stops_paying_m", sized.stopsPaying());
        ArrayNode trade = page.putArray("trade");
        for (TradePoint point : sized.trade()) {
            ObjectNode entry = trade.addObject().put("thickness_m", point.thickness());
            entry.put("volume_m3", point.volume()).put("station", point.station());
            JsonPage.put(entry, "covered_mSv", InUnits.millisieverts(point.best()));
            JsonPage.put(entry, "high_mSv", InUnits.millisieverts(point.high()));
            JsonPage.put(entry, "share_of_limit", point.used());
        }
        ArrayNode intervals = page.putArray("intervals");
        sized.intervals().forEach(i -> intervals.addObject().put("hull", i.hull()).put("from_m", i.from())
                .put("to_m", i.to()));
        return page;
    }

    private void text(Plan plan, SizedCover sized, PrintStream out) {
        out.printf("%s%n", plan.title().isEmpty() ? planFile.toString() : plan.title() + " (" + planFile + ")");
        out.printf("%s%n%n", sized.isMet() ? "Every station meets every limit under this cover, on its 84th percentile."
                : "NOT MET: no cover of up to the thickness tried meets every limit; the nearest one is shown.");
        CommonText.heading("Least cover", out);
        TextTable table = new TextTable("hull", "crown m", "flanks m", "base end m", "far end m");
        for (var entry : new TreeMap<>(sized.thickness()).entrySet()) {
            CoverThickness parts = entry.getValue();
            table.row(entry.getKey(), TextTable.number(parts.crown(), 2), TextTable.number(parts.flank(), 2),
                    TextTable.number(parts.baseEnd(), 2), TextTable.number(parts.farEnd(), 2));
        }
        out.println(table);
        out.printf("  %s m3 to be placed, %s m3 to be dug%s.%n%n", TextTable.words(sized.volume(), 0),
                TextTable.words(sized.bankVolume(), 0), sized.bankAvailable().isPresent()
                        ? "; the borrow grounds give " + TextTable.words(sized.bankAvailable().getAsDouble(), 0)
                        + " m3" : "");
        CommonText.heading("Dose against soil, all hulls under one thickness", out);
        TextTable trade = new TextTable("thickness m", "soil m3", "worst station", "best mSv", "high mSv",
                "share of limit");
        for (TradePoint point : sized.trade()) {
            trade.row(TextTable.number(point.thickness(), 2), TextTable.number(point.volume(), 0), point.station(),
                    TextTable.number(InUnits.millisieverts(point.best()), 1),
                    TextTable.number(InUnits.millisieverts(point.high()), 1), TextTable.number(point.used(), 2));
        }
        out.println(trade);
        sized.stopsPaying().ifPresent(t -> out.printf("  From %s m on more soil takes off little more dose.%n%n",
                TextTable.words(t, 2)));
        CommonText.findings(sized.findings(), out);
        CommonText.cautions(Cautions.all(), out);
    }
}
