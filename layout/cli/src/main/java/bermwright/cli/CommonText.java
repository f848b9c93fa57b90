// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.finding.Finding;
import bermwright.foundation.ModelNote;
import bermwright.site.assessment.Assessment;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

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
                ? "Nothing %srefuses this plan; %d warnings and %d notes stand below.".formatted(
                        assessment.dose().isPresent() && assessment.earthworks().isPresent() ? ""
                                : "that this command works out ",
                        count(assessment, Finding.Level.WARN), count(assessment, Finding.Level.NOTE))
                : "REFUSED: %d findings say that this plan must not be carried out so; %d warnings, %d notes."
                        .formatted(refused, count(assessment, Finding.Level.WARN),
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
        int number = 1;
        for (Finding finding : findings) {
            out.printf("  %2d. %s  %s  %s%s%n", number++, finding.level().word().toUpperCase(Locale.ROOT),
                    finding.subject(), finding.rule().id(), figures(finding));
            wrapped(finding.text(), 6, out);
            String where = finding.place().map(p -> String.format(Locale.ROOT, "at %.1f m east, %.1f m north; ",
                    p.east(), p.north())).orElse("");
            wrapped("(" + where + finding.origin() + ")", 6, out);
        }
        out.println();
    }

    private static String figures(Finding finding) {
        String unit = finding.unit().equals("1") ? "" : " " + finding.unit();
        String measured = figure(finding.measured(), "measured ", unit);
        String limit = figure(finding.limit(), "limit ", unit);
        String both = measured.isEmpty() || limit.isEmpty() ? measured + limit : measured + ", " + limit;
        return both.isEmpty() ? "" : "  [" + both + "]";
    }

    private static String figure(OptionalDouble value, String name, String unit) {
        return value.isPresent() ? name + shortNumber(value.getAsDouble()) + unit : "";
    }

    /** A number with four significant digits at least, and no needless ones. */
    static String shortNumber(double value) {
        if (!Double.isFinite(value)) {
            return "-";
        }
        double size = Math.abs(value);
        int digits = size >= 1000 || value == Math.rint(value) ? 0 : size >= 100 ? 1 : size >= 1 ? 2 : 3;
        return TextTable.words(value, digits);
    }

    static void foot(Assessment assessment, PrintStream out) {
        heading("Models behind the figures", out);
        for (ModelNote note : assessment.models()) {
            out.printf("  %s%s%n", note.id(), note.status() == ModelNote.Status.COMPUTED ? ""
                    : " [" + note.status().word().toUpperCase(Locale.ROOT) + "]");
            wrapped(note.model(), 6, out);
            wrapped("Valid for: " + note.validFor() + ". Spread: " + note.spread() + ". Source: " + note.source() + ".",
                    6, out);
        }
        out.println();
        cautions(assessment.cautions(), out);
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
