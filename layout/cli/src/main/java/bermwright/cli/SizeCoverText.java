// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.finding.DoseRule;
import bermwright.finding.Rule;
import bermwright.finding.SizingRule;
import bermwright.shielding.cover.CoverThickness;
import bermwright.site.answer.Unit;
import bermwright.site.assessment.Cautions;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.sizing.SizedCover;
import bermwright.site.sizing.TradePoint;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
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

    void write(PrintStream out) {
        out.printf("%s%n", plan.title().isEmpty() ? file.toString() : plan.title() + " (" + file + ")");
        CommonText.wrapped((sized.isMet() ? "Every station meets every limit under this cover, on its 84th percentile"
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
        TextTable table = new TextTable("hull", "crown m", "flanks m", "base end m", "far end m");
        for (Map.Entry<String, CoverThickness> entry : new TreeMap<>(sized.thickness()).entrySet()) {
            CoverThickness parts = entry.getValue();
            Optional<CoverPlan> cover = plan.hull(entry.getKey()).flatMap(Hull::cover);
            table.row(entry.getKey(), TextTable.number(parts.crown(), 2), TextTable.number(parts.flank(), 2),
                    end(cover.map(CoverPlan::baseEnd), parts.baseEnd()),
                    end(cover.map(CoverPlan::farEnd), parts.farEnd()));
        }
        out.println(table);
        CommonText.wrapped(TextTable.words(sized.volume(), 0) + " m3 to be placed"
                + (sized.uniformVolume().isPresent() ? " (the same thickness all over each hull takes "
                + TextTable.words(sized.uniformVolume().getAsDouble(), 0) + " m3)" : "") + ", "
                + TextTable.words(sized.bankVolume(), 0) + " m3 to be dug"
                + (sized.bankAvailable().isPresent() ? "; the borrow grounds give "
                + TextTable.words(sized.bankAvailable().getAsDouble(), 0) + " m3" : "") + ".", 2, out);
        out.println();
    }

    /** An end's thickness, or what becomes of it where it has no cover. */
    private static Object end(Optional<CoverPlan.End> end, double thickness) {
        return end.filter(e -> e != CoverPlan.End.COVERED).map(e -> (Object) e.word())
                .orElseGet(() -> TextTable.number(thickness, 2));
    }

    private void stations(PrintStream out) {
        CommonText.heading("Dose under it, of somebody who never leaves the station; the share of the limit counts "
                + TextTable.words(plan.exposure().hoursOutsideADay(), 1) + " h a day outside", out);
        TextTable table = new TextTable("station", "best mSv", "high mSv", "share of limit %");
        sized.stations().forEach(s -> table.row(s.station(),
                TextTable.number(Unit.MSV.of(s.dose().best()), 1),
                TextTable.number(Unit.MSV.of(s.dose().high()), 1), TextTable.number(100 * s.used(), 0)));
        out.println(table);
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
        TextTable trade = new TextTable("thickness m", "soil m3", "worst station", "best mSv", "high mSv",
                "share of limit %");
        for (TradePoint point : sized.trade()) {
            trade.row(TextTable.number(point.thickness(), 2), TextTable.number(point.volume(), 0), point.station(),
                    TextTable.number(Unit.MSV.of(point.best()), 1),
                    TextTable.number(Unit.MSV.of(point.high()), 1),
                    TextTable.number(100 * point.used(), 0));
        }
        out.println(trade);
        sized.stopsPaying().ifPresent(t -> CommonText.wrapped("From " + TextTable.words(t, 2) + " m on a share more"
                + " soil takes off less than half such a share of the dose: more soil stops paying.", 2, out));
        out.println();
    }
}
