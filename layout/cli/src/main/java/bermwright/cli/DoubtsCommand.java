// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.filestore.WholeFolder;
import bermwright.report.sheet.DoubtSheets;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.SiteGround;
import bermwright.site.doubt.DoubtWords;
import bermwright.site.doubt.Doubts;
import bermwright.site.doubt.FigureDoubt;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Says how sure findings and figures are, what decides them, and what finding out would be worth. */
@Command(name = "doubts", description = "The chance of each finding and the share of each unknown in each main figure.")
final class DoubtsCommand extends PlanFileCommand {
    private static final int LEAST = 20;
    private static final int MOST = 100_000;

    @Option(names = "--samples", paramLabel = "N", description = "Samples, 20 to 100000; 1000 where left out.")
    private int samples = 1000;

    @Option(names = "--seed", paramLabel = "N", description = "Seed that repeats the samples; 1 where left out.")
    private long seed = 1;

    @Option(names = "--confirm", paramLabel = "N", description = "Samples that are assessed in full too; 50 where"
            + " left out.")
    private int confirm = 50;

    @Option(names = "--out", paramLabel = "DIR", description = "Writes tables and drawings into this folder;"
            + " report --doubts DIR shows them.")
    private Optional<Path> out = Optional.empty();

    @Override
    public Integer call() {
        check("--samples", samples, LEAST, MOST);
        check("--confirm", confirm, 0, MOST);
        out.ifPresent(folder -> OutFolder.check(folder, "earlier doubts", console().err()));
        Console console = console();
        Plan plan = PlanFiles.read(planFile());
        SiteGround ground = SiteGround.read(plan, planFile(), console.progress().part(0, 0.02));
        Assessment best = Assessments.standard().run(plan, planFile().toString(), ground,
                console.progress().part(0.02, 0.15));
        Doubts doubts = Doubts.of(best, new Doubts.Asked(samples, seed, confirm), first -> first(console, first),
                console.progress().part(0.15, 1));
        out.ifPresent(folder -> write(doubts, plan, folder));
        console.progress().end();
        if (json()) {
            console.out().println(JsonObjects.text(DoubtsJson.of(best, doubts)));
        } else {
            DoubtsText.write(best, doubts, console.out());
            out.ifPresent(folder -> console.out().printf("Written: %s%n", folder));
        }
        return ExitCode.of(best.findings()).number();
    }

    /** The first answer stands among the progress, for what standard output holds is the last one. */
    private static void first(Console console, Doubts first) {
        List<String> words = DoubtWords.of(first);
        words.stream().limit(2).forEach(w -> console.progress().report(0.2, "after " + Doubts.FIRST + " samples: "
                + w));
    }

    private static void check(String option, int value, int least, int most) {
        if (value < least || value > most) {
            throw Options.bad(option, Integer.toString(value), least + " to " + most);
        }
    }

    private void write(Doubts doubts, Plan plan, Path folder) {
        DoubtSheets sheets = new DoubtSheets(doubts);
        OutFolder.write(folder, () -> WholeFolder.write(folder, into -> {
            for (FigureDoubt figure : doubts.figures()) {
                if (figure.varies()) {
                    sheets.shares(figure).write(into);
                    sheets.distribution(figure).write(into);
                }
            }
            for (var table : List.of(sheets.figures(), sheets.findings(), sheets.shareTable(), sheets.inputs(),
                    sheets.confirmed())) {
                Files.writeString(into.resolve(table.name() + ".csv"), table.csv());
            }
            DoubtsFile.write(doubts, plan, planFile(), into);
        }));
    }
}
