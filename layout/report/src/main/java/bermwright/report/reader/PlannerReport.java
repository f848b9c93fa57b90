// SPDX-License-Identifier: Apache-2.0
package bermwright.report.reader;

import bermwright.finding.Finding;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.report.page.Html;
import bermwright.report.page.Html.Link;
import bermwright.report.sheet.LaydownSheets;
import bermwright.report.sheet.LoweringSheets;
import bermwright.report.sheet.MeansSheets;
import bermwright.report.sheet.PlaceSheets;
import bermwright.report.sheet.PlanSheets;
import bermwright.report.sheet.ReviewSheets;
import bermwright.report.sheet.StageSheets;
import bermwright.report.sheet.Words;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.laydown.Alternatives;
import bermwright.site.laydown.Laydown;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.site.stages.SettingOutPoint;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The report of the surface planner: may it be done, where everything stands, how each hull comes down, where to stop
 * and check.
 *
 * @param handover what it is made from
 * @param opening  how it opens
 */
record PlannerReport(Handover handover, Opening opening) {
    private Assessment assessment() {
        return handover.assessment();
    }

    private Pack pack() {
        return opening.pack();
    }

    Pack write() {
        Html page = pack().page;
        opening.open(List.of(new Link("May it be carried out?", opening.verdict()),
                new Link("What would mend it?", opening.remedy()),
                new Link("Where do the hulls lie?", assessment().hulls().stream().map(PlannerReport::lies)
                        .collect(Collectors.joining(" "))),
                new Link("How hard do the lines pull?", pulls()),
                new Link("How long does it take?", days())));
        opening.decisions();
        opening.review();
        site(page);
        assessment().hulls().forEach(this::sheet);
        page.open("part").heading(2, "setting-out", "Setting out");
        PlanSheets plans = new PlanSheets(assessment());
        assessment().shapes().hulls().forEach(hull -> plans.settingOut(hull)
                .ifPresent(sheet -> pack().figure(sheet, "Every point is in the file, those along toes too.")));
        page.table(StageSheets.settingOut(assessment().settingOut().stream()
                .filter(p -> p.kind() != SettingOutPoint.Kind.TOE).toList()));
        pack().file(StageSheets.settingOut(assessment().settingOut()));
        page.close();
        assessment().hulls().forEach(this::detail);
        new InDoubt(pack(), handover.review().doubts()).write(f -> !f.isOnPeople());
        opening.findings();
        opening.behind(m -> !m.id().startsWith("dose") && !m.id().startsWith("haul"));
        opening.signature("The plan as described in this report, its findings and its cautions, was judged by:");
        return pack();
    }

    private static String lies(HullAssessment hull) {
        return hull.lying().map(p -> hull.hull().id() + ": base at east " + Words.fixed(p.axisStart().x(), 1)
                + ", north " + Words.fixed(p.axisStart().y(), 1) + " m, towards azimuth "
                + Words.fixed(hull.hull().layDownAzimuth().degrees(), 1) + "° of the grid, on ground falling "
                + Words.degrees(p.slopeAlong()) + "° along.").orElse(hull.hull().id() + ": stays upright, or its ground"
                + " is not known.");
    }

    private String pulls() {
        String words = assessment().hulls().stream().filter(h -> isBy(h, LoweringGear.Means.LINES)).flatMap(h ->
                h.laydown().flatMap(Laydown::lowering).stream().map(r -> h.hull().id() + ": one line up to "
                        + Words.said(r.greatestLineTension() / 1000, "kN") + " at " + Words.degrees(r.atTilt())
                        + "° of tilt; governed by " + r.governingPart() + ".")).collect(Collectors.joining(" "));
        return words.isEmpty() ? "No hull is lowered by lines." : words;
    }

    private String days() {
        return assessment().stages().map(w -> Words.said(w.days(), "1") + " days for " + w.stages().size()
                + " steps; the end hangs on " + String.join(", ", w.criticalChain()) + "."
                + new StageSheets(w).untimed())
                .orElse("The plan states no order of work.");
    }

    private void site(Html page) {
        page.open("part").heading(2, "site", "The site");
        pack().figure(new PlanSheets(assessment()).site(), "Numbers are those of the findings. "
                + "East and north are projected metres; the scale bar shows true metres.");
        PlaceSheets places = new PlaceSheets(assessment());
        pack().table(places.hulls()).table(places.ground());
        page.heading(2, "clearances", "Clearances");
        page.paragraph("Measured in plan. The findings look in space and at the moment: a sweep may cross in plan what"
                + " is not there yet or lies below it.");
        pack().table(places.clearances());
        page.close();
    }

    private static boolean isBy(HullAssessment hull, LoweringGear.Means means) {
        return hull.hull().arrival() == Hull.Arrival.LOWERED
                && hull.hull().lowering().map(LoweringGear::means).filter(means::equals).isPresent();
    }

    /** What the crew at the hull holds in its hands: loads, margins and hold points on one sheet. */
    private void sheet(HullAssessment hull) {
        String id = hull.hull().id();
        if (hull.laydown().isEmpty() || hull.hull().arrival() == Hull.Arrival.STAYS_UPRIGHT) {
            return;
        }
        Laydown laydown = hull.laydown().get();
        Html page = pack().page;
        LaydownSheets laying = new LaydownSheets(hull.hull());
        pack().sheet("Hull " + id + ": lowering sheet");
        page.heading(2, "sheet-" + id, "Hull " + id + ": lowering sheet");
        page.paragraph("Qualified riggers and engineers decide; nobody stands inside a sweep, a fall zone or a"
                + " snap-back zone while it is live. Plan and revision stand at the head of the report.");
        long refused = assessment().findings().stream().filter(f -> f.level() == Finding.Level.REFUSE
                && f.subject().equals(id)).count();
        if (refused > 0) {
            page.note("refuse", "NOT TO BE LOWERED AS PLANNED: " + refused + (refused == 1 ? " finding refuses"
                    : " findings refuse") + " this hull.");
        }
        if (isBy(hull, LoweringGear.Means.LINES)) {
            laydown.lowering().ifPresent(result -> {
                page.open("left").table(LoweringSheets.sheetTilts(id, result));
                page.table(LoweringSheets.sheetParts(id, result)).close().open("right");
                pack().table(LoweringSheets.holdPoints(id, result));
                page.close();
            });
        } else if (hull.hull().arrival() == Hull.Arrival.LOWERED) {
            laydown.thrusters().ifPresent(result -> {
                page.open("left").table(laying.thrusters(result)).close().open("right");
                pack().table(laying.holdPoints(result));
                page.close();
            });
        } else {
            laydown.landing().ifPresent(landing -> {
                page.open("left").table(laying.landing(landing)).close().open("right");
                pack().table(laying.holdPoints(landing));
                page.close();
            });
        }
        page.open("clear").close().close();
    }

    private void detail(HullAssessment hull) {
        String id = hull.hull().id();
        Html page = pack().page;
        page.open("part").heading(2, "lay-down-" + id, "Hull " + id + ": laying it down, in detail");
        page.list(new HullWords(assessment(), hull).lines());
        assessment().shapes().hull(id).ifPresent(shapes -> pack().figure(
                new PlanSheets(assessment()).hull(shapes), "Nobody stands inside a sweep, a fall zone or a snap-back"
                + " zone while it is live."));
        hull.laydown().ifPresent(laydown -> laydown(hull, laydown));
        handover.studies().choices().stream().filter(c -> c.hull().equals(id)).forEach(this::choices);
        page.close();
    }

    private void choices(Alternatives choices) {
        MeansSheets sheets = new MeansSheets(choices);
        if (!choices.comparison().isEmpty()) {
            pack().table(sheets.means());
        }
        choices.suggestions().ifPresent(s -> pack().page.list(s.words()));
        if (!choices.byMass().isEmpty()) {
            pack().figure(sheets.byMass(), "");
        }
        if (!choices.byCentre().isEmpty()) {
            pack().figure(sheets.byCentre(), "");
        }
    }

    private void laydown(HullAssessment hull, Laydown laydown) {
        LaydownSheets sheets = new LaydownSheets(hull.hull());
        laydown.thrusters().filter(r -> isBy(hull, LoweringGear.Means.SIDE_THRUSTERS)).ifPresent(result -> {
            pack().figure(sheets.thrust(result), "Nobody stands where the jets reach.");
            pack().table(sheets.thrusters(result));
        });
        laydown.landing().ifPresent(landing -> pack().table(sheets.landing(landing)));
        laydown.lowering().ifPresent(result -> lowering(hull, result));
        laydown.review().ifPresent(review -> review(new ReviewSheets(hull.hull(), review)));
        laydown.disc().ifPresent(disc -> pack().table(sheets.landings(disc)));
        laydown.rest().ifPresent(rest -> pack().table(sheets.rest(rest)));
    }

    private void review(ReviewSheets sheets) {
        pack().figure(sheets.shocks(),
                "From the stiffness of the lines and the inertia of the body, never from a table.");
        pack().figure(sheets.runAway(), "Weight is a sixth of the Earth's; inertia is whole.");
        pack().figure(sheets.edge(), "");
        pack().table(sheets.figures());
        sheets.cross().ifPresent(pack()::table);
        pack().page.table(sheets.worstLosses());
        pack().file(sheets.losses());
    }

    private void lowering(HullAssessment hull, LoweringResult result) {
        Html page = pack().page;
        String id = hull.hull().id();
        if (!isBy(hull, LoweringGear.Means.LINES)) {
            page.note("warn", "The plan lays this hull down by other means; what follows is its gear of lines for"
                    + " comparison.");
        }
        page.paragraph(LoweringSheets.balances(result));
        pack().figure(LoweringSheets.tension(hull.hull(), result), "What governs: " + result.governingPart()
                + ". The hand balance grows without end where a line hardly rises; it is cut off at the top.");
        pack().figure(LoweringSheets.reactions(hull.hull(), result), "The pull along the ground turns round at"
                + " hand-over: the pivot must be held both ways.");
        page.table(LoweringSheets.governing(id, result));
        pack().file(LoweringSheets.chain(id, result));
        page.table(LoweringSheets.shownTilts(id, result));
        pack().file(LoweringSheets.tilts(id, result));
        page.heading(4, "sequence-" + id, "In plain words");
        page.list(result.sequence());
    }
}
