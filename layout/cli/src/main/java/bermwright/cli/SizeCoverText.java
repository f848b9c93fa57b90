// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.finding.DoseRule;
import bermwright.finding.Rule;
import bermwright.finding.SizingRule;
import bermwright.site.answer.Figure;
import bermwright.site.answer.SizingAnswers;
import bermwright.site.assessment.Cautions;
import bermwright.site.plan.Plan;
import bermwright.site.sizing.SizedCover;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeMap;

/**
 * The least cover, for people.
 *
 * @param plan  the plan
 * @param file  its file
 * @param sized the answer
 */
record SizeCoverText(Plan plan, Path file, SizedCover sized) {
    private static final Set<Rule> NOT_JUDGED = Set.of(DoseRule.DOSE_LIMIT_NOT_JUDGED,
            SizingRule.SIZE_COVER_NO_LIMIT);

    /** How many of the limits used are shown; all are in JSON. */
    private static final int MOST_USED = 5;

    void write(PrintStream out) {
        out.printf("%s%n", plan.title().isEmpty() ? file.toString() : plan.title() + " (" + file + ")");
        CommonText.wrapped((sized.isMet() ? "Every station, the crew and every named person meet every limit under"
                + " this cover, on the 84th percentile"
                : sized.findings().stream().anyMatch(f -> NOT_JUDGED.contains(f.rule()))
                ? "NOT JUDGED: a limit could not be held against any cover; what follows goes by the others"
                : "NOT MET: no cover of up to the thickness tried meets every limit; the thinnest that comes about as"
                + " near as any is shown") + (sized.isBorrowEnough() ? "."
                : "; BUT the borrow grounds do not give so much soil."), 0, out);
        out.println();
        cover(out);
        stations(out);
        intervals(out);
        trade(out);
        CommonText.findings(sized.findings(), out);
        CommonText.cautions(Cautions.all(), out);
    }

    private void cover(PrintStream out) {
        CommonText.heading(sized.isMet() ? "Least cover" : "Nearest cover", out);
        out.println(TextTable.of(SizingAnswers.COVERS, SizingAnswers.Thickness.of(sized)));
        CommonText.wrapped(said(SizingAnswers.PLACED) + " m3 to be placed"
                + (sized.uniformVolume().isPresent() ? " (the same thickness all over each hull takes "
                + said(SizingAnswers.UNIFORM) + " m3)" : "") + ", " + said(SizingAnswers.BANK) + " m3 to be dug"
                + (sized.bankAvailable().isPresent() ? "; the borrow grounds give "
                + said(SizingAnswers.AVAILABLE) + " m3" : "") + ".", 2, out);
        out.println();
    }

    private String said(Figure<SizedCover> figure) {
        return figure.text(sized);
    }

    private void stations(PrintStream out) {
        CommonText.heading("Dose under it, of somebody who never leaves the station; the share of the limit counts "
                + TextTable.words(plan.exposure().hoursOutsideADay(), 1) + " h a day outside", out);
        out.println(TextTable.of(SizingAnswers.STATIONS, sized.stations()));
        CommonText.heading("What decides the cover: the limits that are used most", out);
        out.println(TextTable.of(SizingAnswers.USES, sized.uses().stream().limit(MOST_USED).toList()));
    }

    private void intervals(PrintStream out) {
        CommonText.heading("Thicknesses, the same all over a hull, that meet every limit", out);
        for (String hull : new TreeMap<>(sized.thickness()).keySet()) {
            String found = String.join(", ", sized.intervals().stream().filter(i -> i.hull().equals(hull))
                    .map(i -> TextTable.words(i.from(), 2) + " to " + TextTable.words(i.to(), 2) + " m").toList());
            out.printf("  %s: %s%n", hull, found.isEmpty() ? "none" : found);
        }
        double step = sized.trade().isEmpty() ? 0 : sized.trade().get(0).thickness();
        double last = sized.trade().isEmpty() ? 0 : sized.trade().get(sized.trade().size() - 1).thickness();
        CommonText.wrapped("Tried from " + TextTable.words(step, 2) + " to " + TextTable.words(last, 2)
                + " m in steps of " + TextTable.words(step, 2) + " m; dose is not monotone in soil, so there may be"
                + " more than one stretch.", 2, out);
        out.println();
    }

    private void trade(PrintStream out) {
        CommonText.heading("Dose against soil, all hulls under one thickness", out);
        out.println(TextTable.of(SizingAnswers.TRADE, sized.trade()));
        sized.stopsPaying().ifPresent(t -> CommonText.wrapped("From " + said(SizingAnswers.STOPS_PAYING) + " m on a"
                + " share more soil takes off less than half such a share of the dose: more soil stops paying.", 2,
                out));
        out.println();
    }
}
