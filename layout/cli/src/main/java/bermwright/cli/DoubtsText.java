// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.finding.Finding.Figures;
import bermwright.foundation.ModelNote;
import bermwright.site.assessment.Assessment;
import bermwright.site.doubt.DoubtWords;
import bermwright.site.doubt.Doubts;
import bermwright.site.doubt.FigureDoubt;
import java.io.PrintStream;
import java.util.Comparator;
import java.util.Locale;

/** What is in doubt, for people. */
final class DoubtsText {
    private static final double CERTAIN = 0.9995;
    private static final double SMALL = 0.02;
    private static final double PERCENT = 100;

    private DoubtsText() {
    }

    static void write(Assessment best, Doubts doubts, PrintStream out) {
        CommonText.head(best, out);
        CommonText.heading("What is in doubt", out);
        if (doubts.figures().isEmpty()) {
            CommonText.wrapped("Nothing was sampled: the plan has no cover on known ground, or nothing in it has a"
                    + " spread.", 2, out);
            out.println();
        } else {
            sampled(doubts, out);
        }
        ModelNote note = Doubts.note();
        CommonText.wrapped("Model: " + note.model() + ". Valid for: " + note.validFor() + ". Spread: " + note.spread()
                + ". Source: " + note.source() + ".", 2, out);
        out.println();
        CommonText.cautions(best.cautions(), out);
    }

    private static void sampled(Doubts doubts, PrintStream out) {
        DoubtWords.of(doubts).forEach(words -> CommonText.wrapped(words, 2, out));
        out.printf(Locale.ROOT, "%n  %d samples, seed %d%s%n%n", doubts.samples(), doubts.seed(), doubts.failed() == 0
                ? "" : "; " + doubts.failed() + " more could not be worked out");
        CommonText.heading("Main figures as they may come out", out);
        TextTable figures = new TextTable("figure", "unit", "best", "5 %", "16 %", "middle", "84 %", "95 %", "limit",
                "kept", "what decides most");
        doubts.figures().forEach(f -> figures.row(f.figure().name(), f.figure().unit(), cell(f.best()),
                cell(f.at(0.05)), cell(f.at(0.16)), cell(f.at(0.5)), cell(f.at(0.84)), cell(f.at(0.95)),
                cell(f.figure().limit().orElse(Double.NaN)), TextTable.number(f.kept(), 3), decides(f)));
        out.println(figures);
        CommonText.heading("Findings that are not certain", out);
        TextTable findings = new TextTable("finding", "best inputs", "refuses", "warns", "note");
        doubts.findings().stream().filter(f -> Math.max(f.refuses(), Math.max(f.warns(), f.notes())) < CERTAIN)
                .forEach(f -> findings.row(f.id(), f.best().map(l -> l.word()).orElse("not found"),
                        TextTable.number(f.refuses(), 3), TextTable.number(f.warns(), 3),
                        TextTable.number(f.notes(), 3)));
        out.println(findings.isEmpty() ? "  none" : findings);
        if (doubts.inFull().samples() > 0) {
            inFull(doubts.inFull(), out);
        }
    }

    private static void inFull(Doubts.InFull full, PrintStream out) {
        double middle = full.confirmed().stream().mapToDouble(Doubts.Confirmed::middle).max().orElse(0);
        Doubts.Confirmed worst = full.confirmed().stream().max(Comparator.comparingDouble(
                Doubts.Confirmed::greatest)).orElseThrow();
        CommonText.wrapped(String.format(Locale.ROOT, "%d samples were assessed in full, on ground whose heights are"
                + " off as a random field. Figures of the quick samples differ from them by no more than %.1f %% in the"
                + " middle, and at most by %.1f %% (%s).", full.samples(), PERCENT * middle, PERCENT * worst.greatest(),
                worst.figure().name()), 2, out);
        out.println();
        if (!full.findings().isEmpty()) {
            CommonText.heading("Findings that only those in full work out, where they are not certain", out);
            TextTable findings = new TextTable("finding", "refuses", "warns", "note");
            full.findings().forEach(f -> findings.row(f.id(), TextTable.number(f.refuses(), 2),
                    TextTable.number(f.warns(), 2), TextTable.number(f.notes(), 2)));
            out.println(findings);
        }
    }

    private static String decides(FigureDoubt f) {
        return f.shares().stream().filter(s -> s.total() > SMALL).limit(3).map(s -> String.format(Locale.ROOT,
                "%s %.0f %%", s.group(), PERCENT * s.total())).reduce((a, b) -> a + ", " + b).orElse("nothing here");
    }

    private static TextTable.Cell cell(double value) {
        return new TextTable.Cell(Figures.number(value));
    }
}
