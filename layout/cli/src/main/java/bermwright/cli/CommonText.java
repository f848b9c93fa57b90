// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.foundation.ModelNote;
import bermwright.site.assessment.Assessment;
import bermwright.site.plan.PlanSoil;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What every answer about a plan says to people: head, findings, models, cautions. */
final class CommonText {
    private static final int WIDTH = 100;

    private CommonText() {
    }

    static void head(Assessment assessment, PrintStream out) {
        String title = assessment.plan().title();
        out.printf("%s%n", title.isEmpty() ? assessment.planName() : title + " (" + assessment.planName() + ")");
        long refused = count(assessment, Finding.Level.REFUSE);
        out.printf("%s%n%n", refused == 0
                ? String.format(Locale.ROOT, "Nothing %srefuses this plan; %d warnings and %d notes stand below.",
                        assessment.dose().isPresent() && assessment.earthworks().isPresent() ? ""
                                : "that this command works out ",
                        count(assessment, Finding.Level.WARN), count(assessment, Finding.Level.NOTE))
                : String.format(Locale.ROOT, "REFUSED: %d findings refuse this plan; %d warnings, %d notes.",
                        refused, count(assessment, Finding.Level.WARN),
                                count(assessment, Finding.Level.NOTE)));
    }

    private static long count(Assessment assessment, Finding.Level level) {
        return assessment.findings().stream().filter(f -> f.level() == level).count();
    }

    static void findings(List<Finding> findings, PrintStream out) {
        heading("Findings", out);
        if (findings.isEmpty()) {
            out.println("  none");
        }
        for (Numbered.Block block : Numbered.blocks(findings)) {
            block(block, out);
        }
        out.println();
    }

    /** Findings of one rule and level, which are read as one: what it is once, then each subject with its figures. */
    private static void block(Numbered.Block block, PrintStream out) {
        Finding worst = block.worst();
        boolean single = block.members().size() == 1;
        out.printf("  %s  %s  %s: %s%s%n", block.number(), worst.level().word().toUpperCase(Locale.ROOT),
                worst.rule().id(), block.subjects(), figures(single || worst.found().isEmpty()
                ? worst.compared() : worst.rule().entry().measures()));
        for (Numbered member : block.members()) {
            Finding one = member.finding();
            if (!single) {
                out.printf("      %s  %s%s%s%n", member.number(), one.subject(), figures(one.found()), place(one));
            }
            if (!block.text(member).isEmpty()) {
                wrapped(one.text(), single ? 6 : 8, out);
            }
        }
        wrapped("To do: " + block.todo(), 6, out);
        wrapped("(" + (single ? place(worst).strip() + (place(worst).isEmpty() ? "" : "; ") : "") + worst.origin()
                + ")", 6, out);
    }

    private static String place(Finding finding) {
        return finding.place().map(p -> String.format(Locale.ROOT, "  at %.1f m east, %.1f m north", p.east(),
                p.north())).orElse("");
    }

    private static String figures(String words) {
        return words.isEmpty() ? "" : "  [" + words + "]";
    }

    static void foot(Assessment assessment, PrintStream out) {
        heading("Soil as it was taken", out);
        PlanSoil.of(assessment.plan().ground()).statements().forEach(s -> wrapped("%s: %s (%s)".formatted(s.about(),
                s.taken(), s.from()), 2, out));
        out.println();
        heading("Models behind the figures", out);
        assessment.models().forEach(note -> model(note, out));
        out.println();
        cautions(assessment.cautions(), out);
    }

    /** A model behind figures. */
    static void model(ModelNote note, PrintStream out) {
        out.printf("  %s%s%n", note.id(), note.status() == ModelNote.Status.COMPUTED ? ""
                : " [" + note.status().word().toUpperCase(Locale.ROOT) + "]");
        wrapped(note.model(), 6, out);
        wrapped("Valid for: " + note.validFor() + ". Spread: " + note.spread() + ". Source: " + note.source() + ".",
                6, out);
    }

    static void cautions(List<String> cautions, PrintStream out) {
        heading("Cautions", out);
        cautions.forEach(caution -> wrapped(caution, 2, out));
    }

    static void heading(String text, PrintStream out) {
        out.println(text);
        out.println("=".repeat(text.length()));
    }

    /** A paragraph, broken between words. */
    static void wrapped(String text, int indent, PrintStream out) {
        String edge = " ".repeat(indent);
        List<String> line = new ArrayList<>();
        int length = indent;
        for (String word : text.replace("..", ".").split(" ")) {
            if (length + word.length() + 1 > WIDTH && !line.isEmpty()) {
                out.println(edge + String.join(" ", line));
                line.clear();
                length = indent;
            }
            line.add(word);
            length += word.length() + 1;
        }
        out.println(edge + String.join(" ", line));
    }
}
