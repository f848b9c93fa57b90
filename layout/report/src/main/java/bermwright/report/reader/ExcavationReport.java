// SPDX-License-Identifier: Apache-2.0
package bermwright.report.reader;

import bermwright.report.page.Html;
import bermwright.report.page.Html.Link;
import bermwright.report.sheet.BurialSheets;
import bermwright.report.sheet.CalendarSheets;
import bermwright.report.sheet.CoverSheets;
import bermwright.report.sheet.EarthworkSheets;
import bermwright.report.sheet.PlanSheets;
import bermwright.report.sheet.StageSheets;
import bermwright.report.sheet.Words;
import bermwright.site.answer.WorkAnswers;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.MachineCrossings;
import bermwright.site.haulage.DugGround;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.plan.KeepOut;
import bermwright.site.stages.SettingOutPoint;
import bermwright.site.stages.StagesResult;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The report of the excavation lead: how much soil from where to where, in what lifts and order, how long it takes,
 * and where machines may not go.
 *
 * @param handover what it is made from
 * @param opening  how it opens
 */
record ExcavationReport(Handover handover, Opening opening) {
    private Assessment assessment() {
        return handover.assessment();
    }

    private Pack pack() {
        return opening.pack();
    }

    Pack write() {
        Html page = pack().page;
        opening.open(List.of(new Link("May the soil be placed?", opening.verdict()),
                new Link("How much soil?", volumes()), new Link("Where from?", sources()),
                new Link("How long?", time()), new Link("Where may machines not go?", barred())));
        opening.decisions();
        opening.review();
        page.open("part").heading(2, "volumes", "Volumes and borrow");
        assessment().earthworks().ifPresentOrElse(this::soil, () -> page.note("warn", "No earthworks were worked"
                + " out."));
        pack().table(CoverSheets.covers(assessment().hulls().stream().flatMap(h -> h.cover().stream()).toList()));
        if (!assessment().digging().items().isEmpty()) {
            pack().table(EarthworkSheets.digging(assessment().digging()));
        }
        assessment().slopes().filter(s -> !s.slopes().isEmpty())
                .ifPresent(s -> pack().table(EarthworkSheets.slopes(s)));
        page.close();
        page.open("part").heading(2, "machines-not", "Where machines may not go");
        page.list(barredList());
        pack().table(EarthworkSheets.crossings(MachineCrossings.of(assessment())));
        page.close();
        assessment().stages().ifPresentOrElse(this::work, () -> page.open("part").heading(2, "order", "Order of work")
                .note("warn", "The plan states no order of work.").close());
        opening.asBuilt();
        shells(page);
        settingOut(page);
        opening.findings();
        opening.behind(m -> !m.id().startsWith("dose") && !m.id().startsWith("lowering"));
        opening.signature("Volumes, order of work and setting-out of this report were judged by:");
        return pack();
    }

    private String volumes() {
        return assessment().earthworks().map(e -> "Placed " + Words.fixed(e.placed(), 0) + " m³, from "
                + Words.fixed(e.bank(), 0) + " ± " + Words.fixed(e.spread().bank(), 0) + " m³ in the bank, "
                + Words.fixed(e.loose(), 0) + " ± " + Words.fixed(e.spread().loose(), 0) + " m³ loose in the haulers, "
                + Words.tonnes(e.mass()) + " t.").orElse("No earthworks were worked out.");
    }

    private String sources() {
        return assessment().earthworks().map(e -> e.dug().stream().map(ExcavationReport::pit)
                .collect(Collectors.joining(" ")) + (e.shortage() > 0 ? " SHORT of " + Words.fixed(e.shortage(), 0)
                + " m³ in the bank." : " Left in all: " + Words.fixed(e.borrowLeft(), 0) + " m³ in the bank."))
                .orElse("Not worked out.");
    }

    private static String pit(DugGround dug) {
        return dug.from() + ": " + Words.fixed(dug.used(), 0) + " of " + Words.fixed(dug.usable(), 0)
                + " m³ in the bank, dug " + Words.fixed(dug.depth(), 2) + " m deep.";
    }

    private String time() {
        String hours = assessment().earthworks().map(EarthworksResult::machineDays).orElse(List.of()).stream()
                .map(m -> m.machine() + " " + Words.fixed(m.hours(), 0) + " machine hours, " + Words.fixed(m.days(), 1)
                + " days").collect(Collectors.joining("; "));
        return (hours.isEmpty() ? "No machine is planned" : hours) + "; " + assessment().stages().map(w ->
                "the whole order of work " + Words.fixed(w.days(), 1) + " days" + handover.studies().calendar().map(c ->
                ". " + new CalendarSheets(c, w).words()).orElse("; no first day is stated, so it has no dates.")
                + new StageSheets(w).untimed())
                .orElse("no order of work is stated.");
    }

    private String barred() {
        return barredList().size() + " places, listed below; first of all: " + barredList().get(0);
    }

    private List<String> barredList() {
        List<String> places = new ArrayList<>();
        places.add("Over a hull, before the soil over its crown is as deep as the table below asks; where it asks for"
                + " more than is planned, or says not judged: never. Place the crown from the side or from its ramp.");
        places.add("Into the sweep, fall zones and snap-back zones of a hull while it is lowered: "
                + assessment().shapes().hulls().stream().map(h -> h.hull().id()).collect(Collectors.joining(", "))
                + ".");
        List<KeepOut> keepOuts = assessment().plan().keepOuts();
        if (!keepOuts.isEmpty()) {
            places.add("Keep-outs: " + keepOuts.stream().map(k -> k.id() + " (" + k.kind() + ")")
                    .collect(Collectors.joining(", ")) + ".");
        }
        assessment().plan().landingPads().forEach(p -> places.add("Within " + Words.said(p.standOff(), "m") + " of pad "
                + p.id() + " while something lands or leaves."));
        assessment().plan().machines().forEach(m -> places.add(m.id() + ": ground steeper than "
                + Words.degrees(m.greatestGrade()) + "°, ways narrower than " + Words.said(m.width(), "m") + "."));
        assessment().plan().borrowGrounds().stream().filter(b -> b.keepClear() > 0).forEach(b -> places.add(
                "Digging in " + b.id() + " keeps " + Words.said(b.keepClear(), "m") + " from hulls, anchors, pole feet"
                + " and toes."));
        return places;
    }

    private void soil(EarthworksResult soil) {
        EarthworkSheets sheets = new EarthworkSheets(soil);
        if (soil.shortage() > 0) {
            pack().page.note("refuse", "The borrow grounds are short of " + Words.fixed(soil.shortage(), 0)
                    + " m³ bank volume.");
        }
        pack().table(sheets.volumes());
        pack().table(sheets.borrow(assessment().ground().grid(), assessment().plan().borrowGrounds()));
        pack().table(sheets.hauls());
        if (!soil.hauls().isEmpty()) {
            pack().figure(sheets.sources(), "");
            pack().figure(sheets.massHaul(), "Ways on the ground, around what may not be crossed; they are drawn on"
                    + " the site plan.");
        }
        if (!sheets.rampWords().isEmpty()) {
            pack().page.paragraph(sheets.rampWords());
            pack().table(sheets.ramps());
        }
        pack().table(sheets.machines());
        pack().figure(new PlanSheets(assessment()).site(), "Haul ways are the broken green lines. Numbers are those"
                + " of the findings.");
    }

    private void work(StagesResult work) {
        Html page = pack().page;
        StageSheets sheets = new StageSheets(work);
        page.open("part").heading(2, "order", "Order of work");
        pack().figure(sheets.time(), "Each step starts as soon as those before it are done and its machine is free.");
        pack().table(sheets.steps(WorkAnswers.InStage.of(assessment())));
        handover.studies().calendar().ifPresent(dates -> {
            CalendarSheets calendar = new CalendarSheets(dates, work);
            page.heading(2, "calendar", "Dates of the work").paragraph(calendar.words());
            pack().figure(calendar.bars(), "").table(calendar.dates()).table(calendar.nights());
        });
        page.heading(2, "lifts", "Lifts and their levels");
        pack().table(sheets.levels(assessment().hulls()));
        if (!work.lifts().isEmpty()) {
            pack().figure(sheets.lifts(), "");
        }
        PlanSheets plans = new PlanSheets(assessment());
        work.stages().forEach(stage -> plans.stage(stage).ifPresent(sheet -> pack().figure(sheet,
                "Soil is placed level: a contour is the edge of the soil when it stood that high.")));
        page.close();
    }

    private void shells(Html page) {
        page.open("part").heading(2, "shells", "What the lifts do to the hulls");
        assessment().hulls().forEach(hull -> hull.burial().ifPresent(burial -> {
            BurialSheets shell = new BurialSheets(hull.hull(), burial);
            page.heading(3, "shell-" + hull.hull().id(), "Hull " + hull.hull().id());
            pack().figure(shell.pressure(), "");
            pack().table(shell.lifts());
            pack().table(shell.supports());
            shell.beam().forEach(drawing -> pack().figure(drawing,
                    "With the soil as it lies over each part of the hull, on the supports of the table above."));
        }));
        page.close();
    }

    private void settingOut(Html page) {
        page.open("part").heading(2, "setting-out", "Setting out");
        page.paragraph("Points of covers, borrow grounds, preparations and what must not be touched; every point,"
                + " those along toes too, stands in setting-out.csv. Heights are those of the elevation file.");
        page.table(StageSheets.settingOut(assessment().settingOut().stream()
                .filter(p -> p.kind() != SettingOutPoint.Kind.TOE).toList()));
        page.close();
    }
}
