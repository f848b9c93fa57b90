// SPDX-License-Identifier: Apache-2.0
package bermwright.report.reader;

import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.foundation.ModelNote;
import bermwright.report.page.Html;
import bermwright.report.page.Html.Link;
import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.report.sheet.AsBuiltSheets;
import bermwright.report.sheet.DefaultSheets;
import bermwright.report.sheet.FindingSheets;
import bermwright.report.sheet.Marks;
import bermwright.report.sheet.PlanSheets;
import bermwright.report.sheet.ReviewRound;
import bermwright.report.sheet.Words;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.MachineCrossings;
import bermwright.site.assessment.WorkCalendar;
import bermwright.site.judgement.Judgements;
import bermwright.site.planfile.PlanNotes;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What all three reports have alike: how they open, what is to be decided, and what stands behind.
 *
 * @param handover what reports are made from
 * @param reader   whose report it is
 * @param pack     what it is written into
 */
public record Opening(Handover handover, Reader reader, Pack pack) {
    private static final String FOOT = "Planning figures only. Lowering: qualified riggers and engineers, local codes"
            + " and licensed practice decide. Radiation: qualified health physics decides; as low as reasonably"
            + " achievable.";

    private Assessment assessment() {
        return handover.assessment();
    }

    private Html page() {
        return pack.page;
    }

    /** Title, answer, document block, cautions and contents. */
    void open(List<Link> answer) {
        DocumentControl control = handover.control();
        pack.framed(control.title() + ": report for the " + reader.title().toLowerCase(Locale.ROOT),
                "Report for the " + reader.title().toLowerCase(Locale.ROOT) + " on the plan " + control.title(),
                control.head(reader), FOOT);
        page().open("first").heading(1, "top", control.title());
        page().paragraph("Report for the " + reader.title().toLowerCase(Locale.ROOT) + ". The answer first:");
        page().answer(answer);
        page().table(control.table());
        assessment().plan().annotations().note().filter(n -> !n.isBlank())
                .ifPresent(n -> page().note("small", "Note of the plan: " + n));
        page().open("caution").paragraph("Read first.").list(assessment().cautions()).close();
        page().contents().close();
    }

    /** What the reader has to decide, refusals first. */
    void decisions() {
        page().open("").heading(2, "decide", "To decide");
        listed(Finding.Level.REFUSE, "refuse", "Refused: not to be carried out so.");
        listed(Finding.Level.WARN, "warn", "Warned of: somebody must look and decide.");
        List<Finding> notes = assessment().findings().stream().filter(reader::decides)
                .filter(f -> f.level() == Finding.Level.NOTE).toList();
        if (!notes.isEmpty()) {
            page().paragraph("Worth knowing: " + Numbered.blocks(assessment().findings()).stream()
                    .filter(b -> notes.contains(b.worst())).map(b -> b.number() + " " + b.subjects() + ": "
                    + b.worst().text()).collect(Collectors.joining(" ")));
        }
        page().close();
    }

    private void listed(Finding.Level level, String kind, String words) {
        List<Numbered.Block> here = blocks(level);
        if (here.isEmpty()) {
            page().note("good", level == Finding.Level.REFUSE ? "Nothing refuses the plan. That is no permission: see"
                    + " the cautions." : "Nothing else is to be decided here.");
            return;
        }
        page().note(kind, words);
        page().decisions(here.stream().map(b -> List.of(b.number(), b.subjects(), b.worst().text()
                + (b.members().size() > 1 ? " (The worst of " + b.members().size() + ".)" : ""), b.todo()
                + judged(b))).toList());
    }

    /** What was judged of the findings of a block. */
    private String judged(Numbered.Block block) {
        List<String> words = new ArrayList<>();
        for (Numbered member : block.members()) {
            handover.judgements().stream().filter(j -> j.judgement().of().equals(member.finding().id()))
                    .forEach(j -> words.add(" Judged, " + member.number() + ": " + j.words() + "."));
        }
        return String.join("", words);
    }

    /** The judgements so far, and what changed from the plan that this one is compared with. */
    void review() {
        List<Judgements.Standing> judged = handover.judgements();
        if (!judged.isEmpty()) {
            page().open("").heading(2, "judgements", "Judgements so far");
            pack.table(ReviewRound.judgements(judged)).page().close();
        }
        handover.review().against().ifPresent(comparison -> {
            ReviewRound round = new ReviewRound(comparison);
            page().open("part").heading(2, "changes-since", "What changed since "
                    + Path.of(comparison.before().planName()).getFileName());
            page().paragraph(round.words());
            round.drawing().ifPresent(drawing -> pack.figure(drawing, "Broken grey: as it was. Full: as it is."));
            pack.table(round.keys()).table(round.findings()).table(round.figures()).page().close();
        });
    }

    /** The findings of a level that are the reader's, several of one rule as one. */
    List<Numbered.Block> blocks(Finding.Level level) {
        return Numbered.blocks(assessment().findings()).stream()
                .filter(b -> b.worst().level() == level && reader.decides(b.worst())).toList();
    }

    /** What was surveyed so far; nothing where nothing was. */
    void asBuilt() {
        AsBuiltSheets sheets = new AsBuiltSheets(handover.studies().asBuilt(), assessment().surveys().hulls());
        if (sheets.surveys().isEmpty() && sheets.hulls().isEmpty()) {
            return;
        }
        page().open("built").heading(2, "as-built", "As built");
        page().paragraph("From the elevation files surveyed after a step, with the densities measured then. Where a"
                + " survey has no height, no soil is counted. A hull whose two ends were surveyed counts where it lies."
                + " Where this is not as planned, a finding says so.");
        if (!sheets.hulls().isEmpty()) {
            pack.table(sheets.ends());
        }
        if (!sheets.surveys().isEmpty()) {
            pack.table(sheets.volumes());
            PlanSheets plans = new PlanSheets(assessment());
            sheets.surveys().forEach(s -> plans.difference(s).ifPresent(drawing -> pack.figure(drawing, "Hatched"
                    + " towards brown: lower than planned by then. Hatched towards blue: higher. White: as planned, as"
                    + " far as " + Words.said(assessment().plan().rules().asBuiltLevel(), "m") + " tells.")));
            pack.table(sheets.covers()).table(sheets.doses());
        }
        page().close();
    }

    /** The notes of the plan. */
    private void notes() {
        List<PlanNotes.Note> notes = PlanNotes.of(assessment().plan());
        if (!notes.isEmpty()) {
            page().heading(3, "notes", "Notes in the plan");
            page().table(new Table("plan-notes", "Notes, as they stand in the plan", List.of(Column.words("of", "at"),
                    Column.words("note", "note")), notes.stream().map(n -> List.of(n.of().isEmpty() ? "the plan"
                    : n.of(), n.text())).toList()));
        }
    }

    /** The verdict on the plan as the first line of an answer. */
    String verdict() {
        List<Numbered.Block> refused = blocks(Finding.Level.REFUSE);
        List<Numbered.Block> warned = blocks(Finding.Level.WARN);
        String rest = warned.isEmpty() ? "Nothing else is yours to decide." : warned.size()
                + " more matters are yours to decide: " + numbers(warned) + ".";
        return refused.isEmpty() ? "No finding refuses it; that is no permission. " + rest
                : "No, not as it is: " + numbers(refused) + " refuse it. " + rest;
    }

    private static String numbers(List<Numbered.Block> blocks) {
        return blocks.stream().map(b -> b.number() + " (" + b.subjects() + ")").collect(Collectors.joining(", "));
    }

    /** What would mend what is refused. */
    String remedy() {
        List<Numbered.Block> refused = blocks(Finding.Level.REFUSE);
        return refused.isEmpty() ? "Nothing is refused. First to decide: " + blocks(Finding.Level.WARN).stream()
                .limit(2).map(b -> b.number() + " " + b.subjects() + ": " + b.todo()).collect(Collectors.joining(" "))
                : refused.stream().map(b -> b.number() + " " + b.subjects() + ": " + b.todo())
                .collect(Collectors.joining(" "));
    }

    /** Models, soil, defaults and how to read the figures. */
    void behind(Predicate<ModelNote> model) {
        page().open("part").heading(2, "behind", "What stands behind the figures");
        List<ModelNote> all = new ArrayList<>(assessment().models());
        if (reader != Reader.REVIEWER) {
            handover.studies().calendar().ifPresent(c -> all.add(WorkCalendar.note()));
        }
        if (reader == Reader.EXCAVATION) {
            all.add(MachineCrossings.note());
        }
        List<ModelNote> models = all.stream().filter(model).toList();
        Marks.reasons(models).forEach(reason -> page().note("mark", reason));
        page().paragraph("Each model with the range in which it holds, how far it may be off, and where it is from.");
        page().table(models(models));
        page().heading(3, "soil", "The soil as it was taken");
        pack.table(DefaultSheets.soil(assessment().plan()));
        pack.table(DefaultSheets.soilFigures(assessment().plan()));
        page().heading(3, "defaults", "Defaults taken");
        page().paragraph("What the plan does not state was taken as follows.");
        pack.table(DefaultSheets.table(assessment().plan()));
        notes();
        page().heading(3, "conventions", "How to read positions and angles");
        page().list(conventions(assessment()));
        page().close();
    }

    /**
     * How positions, angles and spreads are to be read.
     *
     * @param assessment the assessment
     * @return a sentence a line
     */
    public static List<String> conventions(Assessment assessment) {
        return List.of("East and north are projected metres in the elevation file's reference system; one projected"
                + " metre is " + Words.fixed(assessment.ground().grid().metreScale(), 6) + " true metres here.",
                "Distances, volumes and slopes are true ones. Heights are those of the elevation file.",
                "Azimuths run clockwise from grid north; true north lies " + assessment.ground().file().scale()
                .trueNorth().map(a -> Words.fixed(a.degrees(), 2) + "° clockwise from grid north")
                .orElse("in a direction that the file does not tell") + ".",
                "Tilt is 0° standing and 90° lying on the fitted ground.",
                "Left and right are seen looking from a hull's base to its far end with the lay-down side down.",
                "Low and high are the 16th and 84th percentile.",
                "Heights smaller than a cell or within the elevation spread are not known, never clear.");
    }

    /**
     * The models, each with its range and source.
     *
     * @param models the models
     * @return the table
     */
    public static Table models(List<ModelNote> models) {
        List<List<String>> rows = new ArrayList<>();
        models.forEach(m -> rows.add(List.of(m.id(), m.status() == ModelNote.Status.COMPUTED ? m.status().word()
                : m.status().word().toUpperCase(Locale.ROOT), m.model(), m.validFor(), m.spread(), m.source())));
        return new Table("models", "Models", List.of(Column.words("id", "model"), Column.words("status", "status"),
                Column.words("model", "what is computed"), Column.words("valid_for", "valid for"),
                Column.words("spread", "spread"), Column.words("source", "source")), rows);
    }

    /** The reader's findings, each in a row. */
    void findings() {
        page().open("part").heading(2, "findings", "All findings of this report");
        page().table(FindingSheets.shown(assessment().findings(), reader::decides));
        page().close();
    }

    /** Where to sign. */
    void signature(String words) {
        page().open("sign").heading(2, "sign", "Judged and signed");
        page().paragraph(words);
        page().table(new Table("signatures", "Signatures", List.of(Column.words("role", "role"),
                Column.words("judgement", "accepted / refused / with these conditions"), Column.words("name", "name"),
                Column.words("date", "date"), Column.words("signature", "signature")), List.of(
                List.of(reader.title(), "", "", "", ""),
                List.of(reader == Reader.REVIEWER ? "Qualified health physicist" : reader == Reader.PLANNER
                        ? "Qualified rigger or engineer" : "Surveyor", "", "", "", ""),
                List.of("Responsible for the work", "", "", "", ""))));
        page().close();
    }
}
