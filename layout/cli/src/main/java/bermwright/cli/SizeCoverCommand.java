// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.report.sheet.TradeSheet;
import bermwright.site.answer.Unit;
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
import java.nio.file.Path;
import java.util.Optional;
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

    @Option(names = "--drawing", paramLabel = "FILE", description = "Draws dose against soil into this SVG file.")
    private Optional<Path> drawing = Optional.empty();

    @Parameters(paramLabel = "PLAN", description = "The plan file.")
    private Path planFile;

    @Override
    public Integer call() {
        Console console = program.console();
        Plan plan = PlanFiles.read(planFile);
        SiteGround ground = SiteGround.read(plan, planFile, console.progress().part(0, 0.02));
        SizedCover sized = CoverSearch.least(plan, ground, console.progress().part(0.02, 1));
        drawing.ifPresent(file -> Options.write("--drawing", file, new TradeSheet(sized).drawing().file()));
        console.progress().end();
        if (json) {
            console.out().println(JsonObjects.text(page(sized)));
        } else {
            new SizeCoverText(plan, planFile, sized).write(console.out());
        }
        return ExitCode.of(sized.findings()).number();
    }

    private ObjectNode page(SizedCover sized) {
        ObjectNode page = JsonObjects.object();
        page.put("plan", planFile.toString()).put("bermwright", Version.text());
        Cautions.all().forEach(page.putArray("cautions")::add);
        CommonJson.putFindings(page, sized.findings());
        page.put("is_met", sized.isMet());
        ArrayNode hulls = page.putArray("hulls");
        new TreeMap<>(sized.thickness()).forEach((id, parts) -> {
            ObjectNode cover = hulls.addObject().put("id", id).putObject("cover");
            cover.put("crown_m", parts.crown()).put("flank_m", parts.flank());
            cover.put("base_end_m", parts.baseEnd()).put("far_end_m", parts.farEnd());
        });
        JsonObjects.put(page, "volume_m3", sized.volume());
        JsonObjects.put(page, "uniform_volume_m3", sized.uniformVolume());
        JsonObjects.put(page, "bank_m3", sized.bankVolume());
        JsonObjects.put(page, "bank_available_m3", sized.bankAvailable());
        JsonObjects.put(page, "stops_paying_m", sized.stopsPaying());
        ArrayNode stations = page.putArray("stations");
        sized.stations().forEach(station -> {
            ObjectNode entry = stations.addObject().put("station", station.station());
            JsonObjects.put(entry, "covered_mSv", Unit.MSV.of(station.dose().best()));
            JsonObjects.put(entry, "high_mSv", Unit.MSV.of(station.dose().high()));
            JsonObjects.put(entry, "share_of_limit", station.used());
        });
        ArrayNode trade = page.putArray("trade");
        for (TradePoint point : sized.trade()) {
            ObjectNode entry = trade.addObject().put("thickness_m", point.thickness());
            entry.put("volume_m3", point.volume()).put("station", point.station());
            JsonObjects.put(entry, "covered_mSv", Unit.MSV.of(point.best()));
            JsonObjects.put(entry, "high_mSv", Unit.MSV.of(point.high()));
            JsonObjects.put(entry, "share_of_limit", point.used());
        }
        ArrayNode intervals = page.putArray("intervals");
        sized.intervals().forEach(i -> intervals.addObject().put("hull", i.hull()).put("from_m", i.from())
                .put("to_m", i.to()));
        return page;
    }

}
