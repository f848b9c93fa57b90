// SPDX-License-Identifier: Apache-2.0
package bermwright.report.reader;

import bermwright.foundation.ModelNote;
import bermwright.report.page.Html;
import bermwright.report.page.Html.Link;
import bermwright.report.sheet.BurialSheets;
import bermwright.report.sheet.CoverSheets;
import bermwright.report.sheet.CoverTradeSheet;
import bermwright.report.sheet.CurveSheets;
import bermwright.report.sheet.DoseSheets;
import bermwright.report.sheet.EgressSheets;
import bermwright.report.sheet.HazardSheets;
import bermwright.report.sheet.Marks;
import bermwright.report.sheet.PlanSheets;
import bermwright.report.sheet.StageSheets;
import bermwright.report.sheet.Words;
import bermwright.site.answer.DoseAnswers;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.CoverTrade;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.assessment.PartBuilt;
import bermwright.site.doubt.Figure;
import bermwright.site.exposure.DoseAgainstCover;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.JudgedLimit;
import bermwright.site.exposure.SiteDose;
import bermwright.site.exposure.StationDose;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The report of the crew-safety reviewer: dose against each limit, thinnest places, part-built covers, ways out, and
 * how far the figures can be leaned on.
 *
 * @param handover what it is made from
 * @param opening  how it opens
 */
record ReviewerReport(Handover handover, Opening opening) {
    private static final double MILLI = 1000;

    private Assessment assessment() {
        return handover.assessment();
    }

    private Pack pack() {
        return opening.pack();
    }

    Pack write() {
        Html page = pack().page;
        opening.open(List.of(new Link("May people live there?", opening.verdict()),
                new Link("Are the limits met?", limits()), new Link("Where is it worst?", worst()),
                new Link("Where is the cover thinnest?", thinnest()),
                new Link("From when may they count on it, and what makes it uncertain?", whole() + " "
                        + uncertain())));
        opening.decisions();
        opening.review();
        page.open("part").heading(2, "limits", "Dose against each limit");
        page.paragraph("Best value with its low (16th percentile) and high (84th percentile). A limit is met when the"
                + " high value is at or below it.");
        assessment().dose().filter(dose -> !dose.stations().isEmpty()).ifPresentOrElse(this::dose,
                () -> page.note("warn", "No dose was worked out: nothing is judged, and nothing is met."));
        page.close();
        page.open("part").heading(2, "thinnest", "Cover and its thinnest places");
        pack().table(CoverSheets.covers(assessment().hulls().stream().flatMap(h -> h.cover().stream()).toList()));
        assessment().hulls().forEach(this::cover);
        page.close();
        hazards(page);
        partBuilt(page);
        opening.asBuilt();
        page.open("ways").heading(2, "ways-out", "Ways out and ways to shelter");
        egress(page);
        page.close();
        page.open("part").heading(2, "changes", "What changes the answer most");
        assessment().dose().ifPresent(dose -> pack().table(new DoseSheets(assessment().plan().exposure(), dose)
                .uncertainties()));
        coverTrade(page);
        assessment().dose().filter(dose -> !dose.stations().isEmpty()).ifPresent(this::againstCover);
        page.close();
        new InDoubt(pack(), handover.review().doubts()).write(Figure::isOnPeople);
        opening.findings();
        opening.behind(ReviewerReport::isMine);
        opening.signature("The doses, covers and ways out of this report, with the models behind them, were judged"
                + " by:");
        return pack();
    }

    /** Models that doses, covers, shells and ways out rest on. */
    private static boolean isMine(ModelNote note) {
        return !note.id().startsWith("haul") && !note.id().startsWith("lowering") && !note.id().startsWith("pivot");
    }

    private String limits() {
        List<JudgedLimit> all = assessment().dose().map(SiteDose::limits).orElse(List.of());
        if (all.isEmpty()) {
            return "The plan states no limit, or no dose was worked out: nothing is judged.";
        }
        return all.stream().map(l -> {
            String who = l.held().stream().filter(JudgedLimit.Held::isCrew).findFirst().map(h -> ", the crew gets "
                    + spread(h.dose())).orElse("");
            return "On " + DoseAnswers.limitWords(l.limit()) + ", " + Words.said(l.limit().limit() * MILLI, "mSv")
                    + ": "
                    + l.verdict().word().toUpperCase(Locale.ROOT) + who
                    + (l.isJudged() ? "." : " (" + l.why() + ").");
        }).collect(Collectors.joining(" "));
    }

    private static String spread(StationDose.Spread dose) {
        return Words.said(dose.best() * MILLI, "mSv") + " (" + Words.said(dose.low() * MILLI, "1") + " to "
                + Words.said(dose.high() * MILLI, "1") + ")";
    }

    private String worst() {
        return assessment().dose().map(SiteDose::stations).orElse(List.of()).stream()
                .max(Comparator.comparingDouble(s -> s.covered().high())).map(s -> s.name() + ": "
                + spread(s.covered()) + " for a whole stay there with the event, " + Words.fixed(100 * s.reduction(), 1)
                + " % less than upright and bare.").orElse("No station has a dose.");
    }

    private String thinnest() {
        String depths = assessment().hulls().stream().flatMap(h -> h.cover().stream())
                .filter(c -> Double.isFinite(c.least().depth())).map(ReviewerReport::least)
                .collect(Collectors.joining(" "));
        Optional<StationDose> weak = assessment().dose().map(SiteDose::stations).orElse(List.of()).stream()
                .min(Comparator.comparingDouble(s -> s.seen().leastArealDensity()));
        return (depths.isEmpty() ? "No cover was worked out." : depths) + weak.map(s -> " The weakest direction of all"
                + " is seen from " + s.name() + ": "
                + Words.said(s.seen().leastArealDensity() / 10, "g/cm²") + ".").orElse("");
    }

    private static String least(HullCover c) {
        return c.id() + ": " + Words.fixed(c.least().depth(), 2) + " m of " + Words.fixed(c.least().wanted(), 2)
                + " m, " + Words.fixed(c.least().along(), 1) + " m from the base plane.";
    }

    private String whole() {
        List<PartBuilt> built = assessment().partBuilt();
        String steps = assessment().hulls().stream().map(h -> h.hull().id()).map(id -> built.stream()
                .filter(p -> p.whole().contains(id)).findFirst().map(p -> id + " after step " + p.step())
                .orElse("")).filter(w -> !w.isEmpty()).collect(Collectors.joining(", "));
        return steps.isEmpty() ? "No step of the work brings a cover to its full height, or no order of work is stated."
                : "Covers are whole: " + steps + "; before that nobody may count on them.";
    }

    private String uncertain() {
        Map<String, Long> terms = assessment().dose().map(SiteDose::stations).orElse(List.of()).stream()
                .map(s -> s.parts().uncertainties().cosmic().greatest().word())
                .collect(Collectors.groupingBy(w -> w, Collectors.counting()));
        return terms.entrySet().stream().max(Map.Entry.<String, Long>comparingByValue()
                .thenComparing(Map.Entry.comparingByKey())).map(e -> "The dose of cosmic rays is uncertain mostly by "
                + e.getKey() + ".").orElse("");
    }

    private void dose(SiteDose dose) {
        Html page = pack().page;
        DoseSheets sheets = new DoseSheets(assessment().plan().exposure(), dose);
        Marks.reasons(dose.models()).forEach(reason -> page.note("mark", reason));
        pack().table(sheets.limits());
        for (int i = 0; i < dose.limits().size(); i++) {
            JudgedLimit limit = dose.limits().get(i);
            if (limit.isJudged()) {
                pack().figure(sheets.against(i), DoseSheets.origin(limit));
            } else {
                page.note("warn", "The limit on " + DoseAnswers.limitWords(limit.limit()) + ". "
                        + DoseSheets.origin(limit));
            }
        }
        page.heading(2, "stations", "Dose at each station");
        pack().figure(sheets.stations(), "For somebody who spends the whole stay and the event there.");
        pack().table(sheets.crewTable());
        if (!dose.people().isEmpty()) {
            pack().table(sheets.people());
        }
        pack().table(sheets.table());
        page.heading(2, "sky", "What each station sees of the sky");
        assessment().hulls().forEach(hull -> sheets.sky(hull.hull().id(), assessment().ground().file().scale()
                .trueNorth()).ifPresent(sky -> pack().figure(sky, sheets.weakest(hull.hull().id()))));
    }

    private void hazards(Html page) {
        if (assessment().hazards().judged().isEmpty()) {
            return;
        }
        page.open("hazards").heading(2, "hazards", "What the covers keep off");
        page.paragraph("Each hull and station against radiation, meteoroids, thrown soil, heat and moonquakes. The"
                + " hazard that governs uses up most of what is allowed. Models, their range and their spread stand at"
                + " the end.");
        pack().table(HazardSheets.judged(assessment().hazards()));
        pack().table(HazardSheets.figures(assessment().hazards()));
        page.close();
    }

    private void partBuilt(Html page) {
        if (assessment().partBuilt().isEmpty() || assessment().stages().isEmpty()) {
            return;
        }
        StageSheets sheets = new StageSheets(assessment().stages().get());
        List<ModelNote> models = assessment().dose().map(SiteDose::models).orElse(List.of());
        page.open("part").heading(2, "part-built", "While the covers rise");
        page.note("warn", "A half-buried hull is not a safe one: nobody may count on a cover before its"
                + " last step, even where a dose on the way is below a limit.");
        pack().figure(sheets.partBuilt(assessment().partBuilt(), models), "As if work stopped after that step. Between"
                + " the steps nothing was worked out.");
        pack().table(sheets.partBuilt(assessment().partBuilt(), assessment().plan().exposure(), Marks.of(models)));
        page.close();
    }

    private void egress(Html page) {
        EgressSheets sheets = new EgressSheets(assessment().plan().hulls(), assessment().waysOut());
        pack().table(sheets.out());
        if (assessment().waysOut().shelters().isEmpty()) {
            page.note("warn", "No station is named as a storm shelter, or none can be reached.");
            return;
        }
        page.paragraph(sheets.words());
        pack().table(sheets.shelters());
        new PlanSheets(assessment()).shelters().ifPresent(sheet -> pack().figure(sheet, "Ways over open ground, with"
                + " the covers as built."));
    }

    private void againstCover(SiteDose dose) {
        pack().page.heading(3, "dose-against-cover", "Dose against cover, beside published doses");
        List<DoseAgainstCover> all = handover.studies().curves();
        for (DoseAgainstCover curves : all) {
            CurveSheets sheets = new CurveSheets(curves, dose.stations().stream()
                    .filter(s -> curves.hulls().contains(s.hull())).toList());
            pack().figure(sheets.drawing(), "Hulls with this skin: " + String.join(", ", curves.hulls()) + ". The same"
                    + " thickness on every side, without the ground's return; a cover of uneven thickness lies"
                    + " between. Published figures are those of the table below.");
            pack().table(sheets.composition());
            pack().file(sheets.table());
        }
        all.stream().findFirst().ifPresent(any -> pack().table(CurveSheets.published(any.cosmic().published())));
    }

    private void coverTrade(Html page) {
        CoverTrade trade = handover.studies().trade();
        if (trade.steps().isEmpty()) {
            return;
        }
        CoverTradeSheet sheet = new CoverTradeSheet(assessment().plan(), trade);
        page.heading(3, "cover-trade", "Thinner and thicker covers");
        page.paragraph("Every cover of the plan with all its parts at the same share of their thickness, raised,"
                + " dug for and hauled anew. Doses are for somebody who spends the whole stay at the worst station, the"
                + " event with it where it counts there; shares of a limit count the plan's hours outside too. They"
                + " are settled to 1 %, a little more coarsely than those above.");
        page.list(sheet.words());
        pack().figure(sheet.drawing(), "Where the line of the dose runs flat, more soil buys little; where it lies"
                + " above 100 %, a limit is not met.");
        pack().table(sheet.table());
    }

    private void cover(HullAssessment hull) {
        String id = hull.hull().id();
        if (hull.lying().isEmpty() || assessment().cover().isEmpty()) {
            return;
        }
        pack().page.heading(3, "cover-" + id, "Hull " + id + ": under its cover");
        CoverSheets sheets = new CoverSheets(hull.hull(), hull.lying().get(), assessment().cover().get(),
                assessment().plan().walls());
        pack().figure(sheets.longSection(), "Depths are those in this section; the nearest way out may run out of it.");
        double cut = hull.cover().map(c -> c.least().along()).filter(Double::isFinite)
                .filter(s -> s > 0.05 * hull.hull().length() && s < 0.95 * hull.hull().length())
                .orElse(hull.hull().length() / 2);
        pack().figure(sheets.crossSection(cut), hull.cover().isPresent() ? "Cut where the cover is thinnest, or at"
                + " half length where that is at an end." : "");
        sheets.unrolled().ifPresent(drawing -> pack().figure(drawing, "The grid carries "
                + Words.said(assessment().ground().grid().surveyedSpacing(), "m")
                + " cells: what is smaller is not known."));
        sheets.passThroughs().ifPresent(pack()::table);
        hull.burial().ifPresent(burial -> pack().page.list(new BurialSheets(hull.hull(), burial).words()));
    }
}
