// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import bermwright.filestore.WholeFolder;
import bermwright.foundation.ModelNote;
import bermwright.foundation.Progress;
import bermwright.report.drawing.Drawing;
import bermwright.report.exchange.DxfFile;
import bermwright.report.exchange.Feature;
import bermwright.report.exchange.GeoJsonFile;
import bermwright.report.exchange.GeoPackageFile;
import bermwright.report.exchange.SiteFrame;
import bermwright.report.page.Html;
import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.report.sheet.DefaultSheets;
import bermwright.report.sheet.FindingSheets;
import bermwright.report.sheet.Words;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Version;
import bermwright.site.planfile.PlanFiles;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * Writes what is handed over: one page, drawings, tables and exchange files.
 *
 * <p>Nothing is computed here; every figure is the assessment's own.
 */
public final class Reports {
    /** Name of the page. */
    public static final String PAGE = "report.html";
    private static final String RULES = "rules.html";

    private Reports() {
    }

    /**
     * Writes all of it into a new folder, which then takes the place of the old one as a whole.
     *
     * @param assessment the assessment
     * @param directory  where to; made where it is not there; an earlier report there is replaced, a folder with other
     *                   files is refused
     * @param progress   told how far the work has come; may cancel it, and then nothing is left behind
     * @return the page's file
     * @throws IOException if something cannot be written
     * @throws java.util.concurrent.CancellationException if the work was cancelled
     */
    public static Path write(Assessment assessment, Path directory, Progress progress) throws IOException {
        WholeFolder.check(directory);
        progress.report(0, "drawing");
        Pack pack = new Pack();
        String page = page(assessment, pack);
        progress.check();
        WholeFolder.write(directory, folder -> write(assessment, pack, page, new Draft(folder, progress)));
        progress.report(1, "written");
        return directory.toAbsolutePath().resolve(PAGE);
    }

    private record Draft(Path folder, Progress progress) {
    }

    private static void write(Assessment assessment, Pack pack, String page, Draft draft) throws IOException {
        draft.progress.report(0.7, "writing the page, drawings and tables");
        Files.writeString(draft.folder.resolve(PAGE), page, StandardCharsets.UTF_8);
        Files.writeString(draft.folder.resolve(RULES), rules(), StandardCharsets.UTF_8);
        Path drawings = Files.createDirectories(draft.folder.resolve("drawings"));
        for (Drawing drawing : pack.drawings) {
            drawing.write(drawings);
        }
        Path tables = Files.createDirectories(draft.folder.resolve("tables"));
        for (Table table : pack.tables) {
            Files.writeString(tables.resolve(table.name() + ".csv"), table.csv(), StandardCharsets.UTF_8);
        }
        draft.progress.check();
        draft.progress.report(0.85, "writing exchange files");
        exchange(assessment, Files.createDirectories(draft.folder.resolve("exchange")), draft.progress);
        draft.progress.check();
    }

    /** The catalogue of findings as a page of its own. */
    private static String rules() {
        return new Html().open("first").heading(1, "top", "Catalogue of findings").paragraph("Every rule that a finding"
                + " can come from. A finding of level refuse says that the plan must not be carried out so; warn, that"
                + " somebody must decide; note, that it is worth knowing.").table(FindingSheets.catalogue()).close()
                .page("Catalogue of findings", "Bermwright " + Version.text() + ".");
    }

    private static String page(Assessment assessment, Pack pack) {
        String title = assessment.plan().title().isBlank() ? assessment.planName() : assessment.plan().title();
        Html page = pack.page.open("first").heading(1, "top", title);
        page.paragraph("Assessment of the plan " + fileName(assessment) + ", made with Bermwright "
                + assessment.version() + ". The plan as it was read stands in exchange/plan.json.");
        page.open("caution").paragraph("Read first.").list(assessment.cautions()).close();
        page.links(List.of(new Html.Link("summary", "What governs"), new Html.Link("planner", "Surface planner"),
                new Html.Link("reviewer", "Crew-safety reviewer"), new Html.Link("excavation", "Excavation lead"),
                new Html.Link("behind", "What stands behind")));
        new Summary(assessment).write(pack);
        page.beside(RULES, "Catalogue of findings: every rule, what it measures and where its limit is from");
        page.close().open("planner");
        DisciplineParts readers = new DisciplineParts(assessment, pack);
        readers.planner();
        page.close().open("reviewer");
        readers.reviewer();
        page.close().open("excavation");
        readers.excavation();
        page.close().open("behind");
        behind(assessment, pack);
        page.close();
        return page.page(title, "Planning figures only. Lowering: qualified riggers and engineers, local codes and"
                + " licensed practice decide. Radiation: qualified health physics decides; as low as reasonably"
                + " achievable. Plan " + fileName(assessment) + ", Bermwright " + assessment.version() + ".");
    }

    private static String fileName(Assessment assessment) {
        Path name = Path.of(assessment.planName()).getFileName();
        return name == null ? assessment.planName() : name.toString();
    }

    private static void behind(Assessment assessment, Pack pack) {
        Html page = pack.page;
        page.heading(2, "behind", "What stands behind the figures");
        page.paragraph("Each model with the range in which it holds, how far it may be off, and where it is from.");
        pack.table(models(assessment.models()));
        page.heading(3, "soil", "Assumptions: the soil as it was taken");
        pack.table(DefaultSheets.soil(assessment.plan()));
        page.heading(3, "defaults", "Assumptions: defaults taken");
        page.paragraph("What the plan does not state was taken as follows.");
        pack.table(DefaultSheets.table(assessment.plan()));
        page.heading(3, "conventions", "How to read positions and angles");
        page.list(List.of("East and north are projected metres in the elevation file's reference system; one projected"
                + " metre is " + Words.fixed(assessment.ground().grid().metreScale(), 6) + " true metres here.",
                "Distances, volumes and slopes are true ones.",
                "Azimuths run clockwise from grid north. Tilt is 0° standing and 90° lying on the fitted ground.",
                "Left and right are seen looking from a hull's base to its far end with the lay-down side down.",
                "Low and high are the 16th and 84th percentile.",
                "Heights smaller than a cell or within the elevation spread are not known, never clear."));
        page.heading(3, "files", "Files beside this page");
        page.list(List.of("drawings: every drawing as SVG.", "tables: every table as comma-separated values, units in"
                + " the column names.",
                "exchange: site.geojson (projected metres, not longitude and latitude), site.wkt"
                + " (the reference system), site.dxf (release 12), site.gpkg (GeoPackage), plan.json (the plan as"
                + " it was read).",
                "exchange/surfaces: the finished ground, its slope, the placed soil, the cover depth and each lift as"
                + " GeoTIFF, and the finished ground and each lift as triangles in LandXML 1.2 and as 3-D faces in DXF"
                + " (the prepared ground in LandXML), in projected metres; lifts.csv says which file is which lift."));
        page.heading(3, "cautions", "Cautions");
        page.list(assessment.cautions());
    }

    private static Table models(List<ModelNote> models) {
        return new Table("models", "Models", List.of(Column.words("id", "model"), Column.words("status", "status"),
                Column.words("model", "what is computed"), Column.words("valid_for", "valid for"),
                Column.words("spread", "spread"), Column.words("source", "source")), models.stream().map(m -> List.of(
                m.id(), m.status() == ModelNote.Status.COMPUTED ? m.status().word()
                : m.status().word().toUpperCase(Locale.ROOT), m.model(), m.validFor(), m.spread(),
                m.source())).toList());
    }

    private static void exchange(Assessment assessment, Path directory, Progress progress) throws IOException {
        List<Feature> features = SiteFeatures.of(assessment);
        SiteFrame frame = SiteFeatures.frame(assessment);
        GeoJsonFile.write(directory.resolve("site.geojson"), features, frame);
        DxfFile.write(directory.resolve("site.dxf"), features);
        GeoPackageFile.write(directory.resolve("site.gpkg"), features, frame);
        PlanFiles.write(assessment.plan(), directory.resolve("plan.json"));
        SurfaceFiles.write(assessment, frame, Files.createDirectories(directory.resolve("surfaces")), progress);
    }
}
