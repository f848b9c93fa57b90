// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Progress;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.report.page.Html;
import bermwright.report.page.Table.Column;
import bermwright.report.page.Table;
import bermwright.report.sheet.BurialSheets;
import bermwright.report.sheet.CoverSheets;
import bermwright.report.sheet.CoverTradeSheet;
import bermwright.report.sheet.CurveSheets;
import bermwright.report.sheet.DoseSheets;
import bermwright.report.sheet.EarthworkSheets;
import bermwright.report.sheet.EgressSheets;
import bermwright.report.sheet.HazardSheets;
import bermwright.report.sheet.LaydownSheets;
import bermwright.report.sheet.LoweringSheets;
import bermwright.report.sheet.Marks;
import bermwright.report.sheet.MeansSheets;
import bermwright.report.sheet.PlanSheets;
import bermwright.report.sheet.ReviewSheets;
import bermwright.report.sheet.StageSheets;
import bermwright.report.sheet.Words;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.CoverTrade;
import bermwright.site.assessment.DoseCurves;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.assessment.LoweringChoices;
import bermwright.site.exposure.DoseAgainstCover;
import bermwright.site.exposure.JudgedLimit;
import bermwright.site.exposure.SiteDose;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.laydown.Alternatives;
import bermwright.site.laydown.Laydown;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.site.stages.SettingOutPoint;
import bermwright.site.stages.StagesResult;
import bermwright.terrain.gridfile.GroundFile;
import bermwright.terrain.gridfile.ReferenceSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The parts of the page for the surface planner, the crew-safety reviewer and the excavation lead.
 *
 * @param assessment the assessment
 * @param pack       what the parts are written into
 */
record DisciplineParts(Assessment assessment, Pack pack) {
    /** Site and ground, the lay-down plan of each hull, and its lowering. */
    void planner() {
        Html page = pack.page;
        page.heading(2, "planner", "For the surface planner");
        page.paragraph("Where everything stands, how each hull comes down, and where to stop and check.");
        pack.table(ground());
        pack.table(hulls());
        List<Alternatives> choices = LoweringChoices.of(assessment);
        for (HullAssessment hull : assessment.hulls()) {
            String id = hull.hull().id();
            page.heading(3, "lay-down-" + id, "Hull " + id + ": laying it down");
            assessment.shapes().hull(id).ifPresent(shapes -> pack.figure(
                    new PlanSheets(assessment).hull(shapes), "Nobody stands inside a sweep, a fall zone or a snap-back"
                    + " zone while it is live."));
            hull.laydown().ifPresent(laydown -> laydown(hull, laydown));
            choices.stream().filter(c -> c.hull().equals(id)).forEach(this::choices);
        }
    }

    private void choices(Alternatives choices) {
        MeansSheets sheets = new MeansSheets(choices);
        if (!choices.comparison().isEmpty()) {
            pack.table(sheets.means());
        }
        choices.suggestions().ifPresent(s -> pack.page.list(s.words()));
        if (!choices.byMass().isEmpty()) {
            pack.figure(sheets.byMass(), "");
        }
        if (!choices.byCentre().isEmpty()) {
            pack.figure(sheets.byCentre(), "");
        }
    }

    private void laydown(HullAssessment hull, Laydown laydown) {
        LaydownSheets sheets = new LaydownSheets(hull.hull());
        boolean byThrusters = hull.hull().arrival() == Hull.Arrival.LOWERED && hull.hull().lowering()
                .map(LoweringGear::means).filter(LoweringGear.Means.SIDE_THRUSTERS::equals).isPresent();
        laydown.thrusters().filter(r -> byThrusters).ifPresent(result -> {
            pack.figure(sheets.thrust(result), "Nobody stands where the jets reach.");
            pack.table(sheets.thrusters(result));
        });
        laydown.landing().ifPresent(landing -> pack.table(sheets.landing(landing)));
        laydown.lowering().ifPresent(result -> lowering(hull, result));
        laydown.review().ifPresent(review -> review(new ReviewSheets(hull.hull(), review)));
        laydown.disc().ifPresent(disc -> pack.table(sheets.landings(disc)));
        laydown.rest().ifPresent(rest -> pack.table(sheets.rest(rest)));
    }

    private void review(ReviewSheets sheets) {
        pack.figure(sheets.shocks(),
                "From the stiffness of the lines and the inertia of the body, never from a table.");
        pack.figure(sheets.runAway(), "Weight is a sixth of the Earth's; inertia is whole.");
        pack.figure(sheets.edge(), "");
        pack.table(sheets.figures());
        sheets.cross().ifPresent(pack::table);
        pack.page.table(sheets.worstLosses());
        pack.file(sheets.losses());
    }

    private void lowering(HullAssessment hull, LoweringResult result) {
        Html page = pack.page;
        String id = hull.hull().id();
        boolean byLines = hull.hull().lowering().map(LoweringGear::means).filter(LoweringGear.Means.LINES::equals)
                .isPresent();
        if (!byLines) {
            page.note("warn", "The plan lays this hull down by other means; what follows is its gear of lines for"
                    + " comparison.");
        }
        page.paragraph(LoweringSheets.balances(result));
        pack.figure(LoweringSheets.tension(hull.hull(), result), "What governs: " + result.governingPart()
                + ". The hand balance grows without end where a line hardly rises; it is cut off at the top.");
        pack.figure(LoweringSheets.reactions(hull.hull(), result), "The pull along the ground turns round at"
                + " hand-over: the pivot must be held both ways.");
        page.table(LoweringSheets.governing(id, result));
        pack.file(LoweringSheets.chain(id, result));
        page.table(LoweringSheets.shownTilts(id, result));
        pack.file(LoweringSheets.tilts(id, result));
        page.heading(4, "sequence-" + id, "In plain words");
        page.list(result.sequence());
        pack.table(LoweringSheets.holdPoints(id, result));
    }

    private Table ground() {
        GroundFile file = assessment.ground().file();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("elevation file", assessment.plan().ground().elevationFile() + ", " + file.format()));
        rows.add(List.of("nodes", file.grid().frame().columns() + " × " + file.grid().frame().rows() + ", "
                + Words.said(file.spacing(), "m") + " apart; " + file.missing() + " without a height"));
        rows.add(List.of("heights", Words.fixed(file.grid().lowest(), 2) + " to "
                + Words.fixed(file.grid().highest(), 2) + " m; spread "
                + Words.said(assessment.plan().ground().elevationSpread(), "m")));
        Optional<ReferenceSystem> system = file.referenceSystem();
        rows.add(List.of("reference system", system.map(s -> s.name() + s.code().map(c -> ", " + c).orElse(""))
                .orElse("not stated; coordinates are taken as true metres")));
        rows.add(List.of("metre scale", Words.fixed(file.grid().metreScale(), 6)
                + " true metres in a projected metre"));
        rows.add(List.of("true north", file.scale().trueNorth().map(a -> Words.fixed(a.degrees(), 3)
                + "° clockwise from grid north").orElse("not known")));
        file.cautions().forEach(caution -> rows.add(List.of("caution", caution)));
        return new Table("ground", "The ground", List.of(Column.words("what", "what"), Column.words("value", "value")),
                rows);
    }

    private Table hulls() {
        List<List<String>> rows = new ArrayList<>();
        for (HullAssessment hull : assessment.hulls()) {
            rows.add(List.of(hull.hull().id(), hull.hull().arrival().word(),
                    Words.fixed(hull.hull().layDownAzimuth().degrees(), 2),
                    Words.fixed(hull.hull().baseCentre().east(), 2), Words.fixed(hull.hull().baseCentre().north(), 2),
                    hull.lying().map(p -> Words.degrees(p.slopeAlong())).orElse(""),
                    hull.lying().map(p -> Words.degrees(p.slopeAcross())).orElse(""),
                    hull.lying().map(p -> Words.fixed(p.axisStart().z(), 2)).orElse(""),
                    hull.lying().map(p -> Words.fixed(p.axisEnd().z(), 2)).orElse("")));
        }
        return new Table("hulls", "The hulls", List.of(Column.words("hull", "hull"), Column.words("arrival", "arrival"),
                Column.number("lay_down_azimuth_deg", "azimuth from grid north (°)"),
                Column.number("base_centre_east_m", "base centre east (m)"),
                Column.number("base_centre_north_m", "base centre north (m)"),
                Column.number("slope_along_deg", "ground falls along (°)"),
                Column.number("slope_across_deg", "ground falls left (°)"),
                Column.number("axis_start_height_m", "axis height at base (m)"),
                Column.number("axis_end_height_m", "axis height at tip (m)")), rows);
    }

    /** Cover depth and dose at every station. */
    void reviewer() {
        Html page = pack.page;
        page.heading(2, "reviewer", "For the crew-safety reviewer");
        page.paragraph("What lies over the skin, what lies between each station and the sky, and the dose that comes"
                + " of it, always as best value with its low (16th percentile) and high (84th percentile). A limit is"
                + " met when the high value is at or below it.");
        assessment.dose().filter(dose -> !dose.stations().isEmpty()).ifPresentOrElse(dose -> {
            DoseSheets sheets = new DoseSheets(assessment.plan().exposure(), dose);
            Marks.reasons(dose.models()).forEach(reason -> page.note("mark", reason));
            pack.figure(sheets.stations(), "For somebody who spends the whole stay and the event there.");
            pack.table(sheets.crewTable());
            pack.table(sheets.table());
            pack.table(sheets.uncertainties());
            for (int i = 0; i < dose.limits().size(); i++) {
                JudgedLimit limit = dose.limits().get(i);
                if (limit.isJudged()) {
                    pack.figure(sheets.against(i), DoseSheets.origin(limit));
                } else {
                    page.note("warn", "The limit on " + DoseSheets.words(limit.limit()) + ". "
                            + DoseSheets.origin(limit));
                }
            }
            pack.table(sheets.limits());
            assessment.hulls().forEach(hull -> sheets.sky(hull.hull().id()).ifPresent(sky -> pack.figure(sky, "")));
            againstCover(dose);
        }, () -> page.note("warn", "No dose was worked out."));
        hazards();
        coverTrade();
        assessment.hulls().forEach(this::cover);
        egress();
    }

    private void hazards() {
        if (assessment.hazards().judged().isEmpty()) {
            return;
        }
        pack.page.heading(3, "hazards", "What the covers keep off");
        pack.page.paragraph("Each hull and station against radiation, meteoroids, thrown soil, heat and moonquakes. The"
                + " hazard that governs uses up most of what is allowed. Models, their range and their spread stand at"
                + " the end.");
        pack.table(HazardSheets.judged(assessment.hazards()));
        pack.table(HazardSheets.figures(assessment.hazards()));
    }

    private void egress() {
        EgressSheets sheets = new EgressSheets(assessment.plan().hulls(), assessment.waysOut());
        pack.page.heading(3, "ways-out", "Ways out and ways to shelter");
        pack.table(sheets.out());
        if (assessment.waysOut().shelters().isEmpty()) {
            pack.page.note("warn", "No station is named as a storm shelter, or none can be reached.");
            return;
        }
        pack.page.paragraph(sheets.words());
        pack.table(sheets.shelters());
        new PlanSheets(assessment).shelters().ifPresent(sheet -> pack.figure(sheet, "Ways over open ground, with the"
                + " covers as built."));
    }

    private void againstCover(SiteDose dose) {
        pack.page.heading(3, "dose-against-cover", "Dose against cover");
        List<DoseAgainstCover> all = DoseCurves.of(assessment, Progress.NONE);
        for (DoseAgainstCover curves : all) {
            CurveSheets sheets = new CurveSheets(curves, dose.stations().stream()
                    .filter(s -> curves.hulls().contains(s.hull())).toList());
            pack.figure(sheets.drawing(), "Hulls with this skin: " + String.join(", ", curves.hulls()) + ". The same"
                    + " thickness on every side, without the ground's return; a cover of uneven thickness lies between."
                    + " Published figures are those of the table below.");
            pack.table(sheets.composition());
            pack.file(sheets.table());
        }
        all.stream().findFirst().ifPresent(any -> pack.table(CurveSheets.published(any.cosmic().published())));
    }

    private void coverTrade() {
        CoverTrade trade = CoverTrade.of(assessment, Progress.NONE);
        if (trade.steps().isEmpty()) {
            return;
        }
        CoverTradeSheet sheet = new CoverTradeSheet(assessment.plan(), trade);
        pack.page.heading(3, "cover-trade", "Thinner and thicker covers");
        pack.page.paragraph("Every cover of the plan with all its parts at the same share of their thickness, raised,"
                + " dug for and hauled anew. Doses are for somebody who spends the whole stay at the worst station, the"
                + " event with it where it counts there; shares of a limit count the plan's hours outside too. They"
                + " are settled to 1 %, a little more coarsely than those above.");
        pack.page.list(sheet.words());
        pack.figure(sheet.drawing(), "Where the line of the dose runs flat, more soil buys little; where it lies above"
                + " 100 %, a limit is not met.");
        pack.table(sheet.table());
    }

    private void cover(HullAssessment hull) {
        String id = hull.hull().id();
        if (hull.lying().isEmpty() || assessment.cover().isEmpty()) {
            return;
        }
        pack.page.heading(3, "cover-" + id, "Hull " + id + ": under its cover");
        CoverSheets sheets = new CoverSheets(hull.hull(), hull.lying().get(), assessment.cover().get(),
                assessment.plan().walls());
        pack.figure(sheets.longSection(), "Depths are those in this section; the nearest way out may run out of it.");
        double cut = hull.cover().map(c -> c.least().along()).filter(Double::isFinite)
                .filter(s -> s > 0.05 * hull.hull().length() && s < 0.95 * hull.hull().length())
                .orElse(hull.hull().length() / 2);
        pack.figure(sheets.crossSection(cut), hull.cover().isPresent() ? "Cut where the cover is thinnest, or at half"
                + " length where that is at an end." : "");
        sheets.unrolled().ifPresent(drawing -> pack.figure(drawing, "The grid carries "
                + Words.said(assessment.ground().grid().surveyedSpacing(), "m")
                + " cells: what is smaller is not known."));
        sheets.passThroughs().ifPresent(pack::table);
        hull.burial().ifPresent(burial -> {
            BurialSheets shell = new BurialSheets(hull.hull(), burial);
            pack.page.list(shell.words());
            pack.figure(shell.pressure(), "");
            pack.table(shell.lifts());
            pack.table(shell.supports());
            shell.beam().forEach(drawing -> pack.figure(drawing,
                    "With the soil as it lies over each part of the hull, on the supports of the table above."));
        });
    }

    /** Volumes, hauls, and the points to set out. */
    void excavation() {
        Html page = pack.page;
        page.heading(2, "excavation", "For the excavation lead");
        page.paragraph("How much soil goes where, and the points to set out.");
        assessment.earthworks().ifPresentOrElse(this::soil, () -> page.note("warn", "No earthworks were worked out."));
        pack.table(CoverSheets.covers(assessment.hulls().stream().flatMap(h -> h.cover().stream()).toList()));
        if (!assessment.digging().items().isEmpty()) {
            pack.table(EarthworkSheets.digging(assessment.digging()));
        }
        assessment.slopes().filter(s -> !s.slopes().isEmpty()).ifPresent(s -> pack.table(EarthworkSheets.slopes(s)));
        assessment.stages().ifPresentOrElse(this::work, () -> page.note("warn", "The plan states no order of work."));
        page.heading(3, "setting-out", "Setting out");
        PlanSheets sheets = new PlanSheets(assessment);
        assessment.shapes().hulls().forEach(hull -> sheets.settingOut(hull)
                .ifPresent(sheet -> pack.figure(sheet, "Every point is in the file, those along toes too.")));
        page.table(StageSheets.settingOut(assessment.settingOut().stream()
                .filter(p -> p.kind() != SettingOutPoint.Kind.TOE).toList()));
        pack.file(StageSheets.settingOut(assessment.settingOut()));
    }

    private void work(StagesResult work) {
        StageSheets sheets = new StageSheets(work);
        pack.figure(sheets.time(), "Each step starts as soon as those before it are done and its machine is free.");
        pack.table(sheets.steps());
        if (!work.lifts().isEmpty()) {
            pack.figure(sheets.lifts(), "");
        }
        List<ModelNote> models = assessment.dose().map(SiteDose::models).orElse(List.of());
        if (!assessment.partBuilt().isEmpty()) {
            pack.page.note("warn", "A half-buried hull is not a safe one: nobody may count on a cover before its"
                    + " last step, even where a dose on the way is below a limit.");
            pack.figure(sheets.partBuilt(assessment.partBuilt(), models), "As if work stopped after that step.");
            pack.table(sheets.partBuilt(assessment.partBuilt(), assessment.plan().exposure(),
                    Marks.of(models)));
        }
        PlanSheets plans = new PlanSheets(assessment);
        work.stages().forEach(stage -> plans.stage(stage).ifPresent(sheet -> pack.figure(sheet,
                "Soil is placed level: a contour is the edge of the soil when it stood that high.")));
    }

    private void soil(EarthworksResult soil) {
        EarthworkSheets sheets = new EarthworkSheets(soil);
        if (soil.shortage() > 0) {
            pack.page.note("refuse", "The borrow grounds are short of " + Words.fixed(soil.shortage(), 0)
                    + " m³ bank volume.");
        }
        pack.table(sheets.volumes());
        if (!soil.hauls().isEmpty()) {
            pack.figure(sheets.sources(), "");
            pack.figure(sheets.massHaul(), "Ways on the ground, around what may not be crossed; they are drawn on the"
                    + " site plan.");
        }
        pack.table(sheets.hauls());
        if (!sheets.rampWords().isEmpty()) {
            pack.page.paragraph(sheets.rampWords());
            pack.table(sheets.ramps());
        }
        pack.table(sheets.machines());
    }
}
