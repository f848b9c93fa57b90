// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.report.sheet.ReviewRound;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Version;
import bermwright.site.comparison.Comparison;
import bermwright.site.planfile.PlanFiles;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Says what changed between two plans. */
@Command(name = "compare", description = "What changed between two plans: keys, findings, dose, volumes, hours.")
final class CompareCommand extends JsonCommand {
    @Parameters(index = "0", paramLabel = "OLD", description = "The earlier plan file.")
    private Path oldFile;

    @Parameters(index = "1", paramLabel = "NEW", description = "The later plan file.")
    private Path newFile;

    @Override
    public Integer call() {
        Console console = console();
        PlanFiles.read(newFile);
        Assessment before = Assessed.plan(oldFile, console.progress().part(0, 0.5));
        Assessment after = Assessed.plan(newFile, console.progress().part(0.5, 1));
        Comparison comparison = Comparison.of(before, after);
        console.progress().end();
        if (json()) {
            console.out().println(JsonObjects.text(page(comparison)));
        } else {
            text(comparison, console.out());
        }
        return ExitCode.of(after.findings()).number();
    }

    private ObjectNode page(Comparison comparison) {
        ObjectNode page = JsonObjects.object();
        page.put("plan", newFile.toString()).put("against", oldFile.toString()).put("bermwright", Version.text());
        comparison.after().cautions().forEach(page.putArray("cautions")::add);
        ArrayNode keys = page.putArray("keys");
        comparison.keys().forEach(k -> keys.addObject().put("key", k.key()).put("before", k.before())
                .put("after", k.after()));
        ArrayNode findings = page.putArray("findings");
        comparison.findings().forEach(f -> {
            ObjectNode entry = findings.addObject().put("id", f.id()).put("fate", f.fate().word());
            f.before().ifPresent(b -> entry.putObject("before").put("level", b.level().word()).put("text", b.text()));
            f.after().ifPresent(a -> entry.putObject("after").put("level", a.level().word()).put("text", a.text()));
        });
        ArrayNode figures = page.putArray("figures");
        comparison.figures().forEach(f -> figures.addObject().put("of", f.of()).put("key", f.key())
                .put("figure", f.figure()).put("unit", f.unit()).put("before", f.before()).put("after", f.after()));
        return page;
    }

    private void text(Comparison comparison, PrintStream out) {
        CommonText.heading("From " + oldFile + " to " + newFile, out);
        CommonText.wrapped(new ReviewRound(comparison).words(), 2, out);
        out.println();
        CommonText.heading("Keys", out);
        comparison.keys().forEach(k -> CommonText.wrapped(k.key() + ": " + k.before() + " -> " + k.after(), 2, out));
        out.println();
        CommonText.heading("Findings", out);
        comparison.findings().forEach(f -> {
            out.printf("  %s  %s%n", f.fate().word().toUpperCase(Locale.ROOT), f.id());
            f.before().ifPresent(b -> CommonText.wrapped("before: " + b.level().word() + ": " + b.text(), 6, out));
            f.after().ifPresent(a -> CommonText.wrapped("now: " + a.level().word() + ": " + a.text(), 6, out));
        });
        out.println();
        CommonText.heading("Figures", out);
        TextTable table = new TextTable("of", "figure", "unit", "before", "now");
        comparison.figures().forEach(f -> table.row(f.of(), f.figure(), f.unit(), f.before(), f.after()));
        if (!table.isEmpty()) {
            out.println(table);
        }
        CommonText.cautions(comparison.after().cautions(), out);
    }
}
