// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import bermwright.filestore.WholeFolder;
import bermwright.foundation.Progress;
import bermwright.report.drawing.Drawing;
import bermwright.report.exchange.DxfFile;
import bermwright.report.exchange.Feature;
import bermwright.report.exchange.GeoJsonFile;
import bermwright.report.exchange.GeoPackageFile;
import bermwright.report.exchange.SiteFrame;
import bermwright.report.page.Html;
import bermwright.report.page.PageFrame;
import bermwright.report.page.Table;
import bermwright.report.pdf.PdfFile;
import bermwright.report.reader.DocumentControl;
import bermwright.report.reader.Handover;
import bermwright.report.reader.Opening;
import bermwright.report.reader.Pack;
import bermwright.report.reader.Reader;
import bermwright.report.reader.Studies;
import bermwright.report.scale.ScaleDrawings;
import bermwright.report.scale.SheetSize;
import bermwright.report.sheet.FindingSheets;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Version;
import bermwright.site.planfile.PlanFiles;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Writes what is handed over: a start page, a report for each reader as page and PDF, drawings, tables and exchange
 * files.
 *
 * <p>Nothing is computed here; every figure is the assessment's own.
 */
public final class Reports {
    /** Name of the page to start from. */
    public static final String PAGE = "report.html";
    private static final String RULES = "rules.html";

    private Reports() {
    }

    /**
     * What is asked for.
     *
     * @param readers whose reports
     * @param sizes   sizes of the drawings to scale
     * @param issue   revision and date
     * @param review  what was judged, and the earlier plan
     */
    public record Order(Set<Reader> readers, Set<SheetSize> sizes, DocumentControl.Issue issue,
            Handover.Review review) {
        /** All reports, without revision, date and review. */
        public static final Order ALL = new Order(EnumSet.allOf(Reader.class), DocumentControl.Issue.NOT_STATED,
                Handover.Review.NONE);

        /** Copies readers and sizes, in their order. */
        public Order {
            readers = Collections.unmodifiableSet(EnumSet.copyOf(readers));
            sizes = Collections.unmodifiableSet(EnumSet.copyOf(sizes));
        }

        /**
         * An order with drawings in every size.
         *
         * @param readers whose reports
         * @param issue   revision and date
         * @param review  what was judged, and the earlier plan
         */
        public Order(Set<Reader> readers, DocumentControl.Issue issue, Handover.Review review) {
            this(readers, EnumSet.allOf(SheetSize.class), issue, review);
        }
    }

    /**
     * Writes what is ordered into a new folder, which then takes the place of the old one as a whole.
     *
     * @param assessment the assessment
     * @param order      what is asked for
     * @param directory  where to; made where it is not there; an earlier report there is replaced, a folder with other
     *                   files is refused
     * @param progress   told how far the work has come; may cancel it, and then nothing is left behind
     * @return the start page's file
     * @throws IOException if something cannot be written
     * @throws java.util.concurrent.CancellationException if the work was cancelled
     */
    public static Path write(Assessment assessment, Order order, Path directory, Progress progress)
            throws IOException {
        WholeFolder.check(directory);
        progress.check();
        Studies studies = Studies.of(assessment, progress.part(0, 0.4));
        progress.report(0.4, "drawing");
        Handover handover = new Handover(assessment, studies, DocumentControl.of(assessment, order.issue),
                order.review);
        Map<Reader, Pack> reports = new EnumMap<>(Reader.class);
        for (Reader reader : order.readers) {
            progress.check();
            reports.put(reader, handover.report(reader));
        }
        Pack start = start(handover, order.readers);
        progress.check();
        WholeFolder.write(directory, folder -> write(handover, start, reports, new Draft(folder, order.sizes,
                progress)));
        progress.report(1, "written");
        return directory.toAbsolutePath().resolve(PAGE);
    }

    private record Draft(Path folder, Set<SheetSize> sizes, Progress progress) {
    }

    private static void write(Handover handover, Pack start, Map<Reader, Pack> reports, Draft draft)
            throws IOException {
        draft.progress.report(0.5, "writing pages, drawings and tables");
        Files.writeString(draft.folder.resolve(PAGE), start.text(), StandardCharsets.UTF_8);
        Files.writeString(draft.folder.resolve(RULES), rules(), StandardCharsets.UTF_8);
        Path drawings = Files.createDirectories(draft.folder.resolve("drawings"));
        toScale(handover.assessment(), handover.control().issue(), new Draft(drawings, draft.sizes,
                draft.progress.part(0.52, 0.55)));
        Path tables = Files.createDirectories(draft.folder.resolve("tables"));
        written(start, drawings, tables);
        for (Map.Entry<Reader, Pack> report : reports.entrySet()) {
            draft.progress.check();
            String name = report.getKey().word();
            String text = report.getValue().text();
            Files.writeString(draft.folder.resolve(name + ".html"), text, StandardCharsets.UTF_8);
            written(report.getValue(), drawings, tables);
            draft.progress.report(0.55 + 0.1 * report.getKey().ordinal(), "setting the " + name + "'s report as PDF");
            PdfFile.write(draft.folder.resolve(name + ".pdf"), text,
                    handover.control().issue().date().orElse(DocumentControl.NO_DATE), handover.control().program());
        }
        draft.progress.check();
        draft.progress.report(0.85, "writing exchange files");
        writeExchange(handover.assessment(), Files.createDirectories(draft.folder.resolve("exchange")),
                draft.progress.part(0.85, 1));
        draft.progress.check();
    }

    private static void toScale(Assessment assessment, DocumentControl.Issue issue, Draft draft) throws IOException {
        ScaleDrawings drawings = ScaleDrawings.of(assessment, issue.revision(),
                issue.date().map(Object::toString).orElse(""));
        double share = 0;
        for (SheetSize size : draft.sizes) {
            draft.progress.report(share, "drawing to scale on " + size);
            drawings.write(draft.folder, size, draft.progress);
            share += 1.0 / draft.sizes.size();
        }
    }

    /** The drawings to scale alone, in a folder of their own. */
    static void drawings(Assessment assessment, Order order, Path directory, Progress progress) throws IOException {
        WholeFolder.write(directory, folder -> toScale(assessment, order.issue, new Draft(folder, order.sizes,
                progress)));
    }

    /** The exchange files alone, in a folder of their own. */
    static void exchange(Assessment assessment, Path directory, Progress progress) throws IOException {
        WholeFolder.write(directory, folder -> writeExchange(assessment, folder, progress));
    }

    private static void written(Pack pack, Path drawings, Path tables) throws IOException {
        for (Drawing drawing : pack.drawings()) {
            drawing.write(drawings);
        }
        for (Table table : pack.tables()) {
            Files.writeString(tables.resolve(table.name() + ".csv"), table.csv(), StandardCharsets.UTF_8);
        }
    }

    /** The catalogue of findings as a page of its own. */
    private static String rules() {
        return new Html().open("first").heading(1, "top", "Catalogue of findings").paragraph("Every rule that a finding"
                + " can come from. A finding of level refuse says that the plan must not be carried out so; warn, that"
                + " somebody must decide; note, that it is worth knowing.").table(FindingSheets.catalogue()).close()
                .page(PageFrame.plain("Catalogue of findings", "Bermwright " + Version.text() + "."));
    }

    /** The page to start from: what governs, and where each reader reads on. */
    private static Pack start(Handover handover, Set<Reader> readers) {
        Assessment assessment = handover.assessment();
        Pack pack = new Pack();
        DocumentControl control = handover.control();
        Html page = pack.page().open("first").heading(1, "top", control.title());
        page.paragraph("Start page of the reports on the plan " + control.file() + ", revision and date "
                + (control.issue().revision().isBlank() ? "not stated" : control.issue().revision()) + ", "
                + control.date() + ". Each reader has a report of their own:");
        readers.forEach(reader -> page.beside(reader.word() + ".html", reader.title() + ": page")
                .beside(reader.word() + ".pdf", reader.title() + ": PDF, to print and sign"));
        page.open("caution").paragraph("Read first.").list(assessment.cautions()).close();
        new Summary(assessment).write(pack);
        page.beside(RULES, "Catalogue of findings: every rule, what it measures and where its limit is from");
        page.close().open("behind");
        behind(handover, pack);
        page.close();
        return pack.framed(control.title(), "Start page of the reports on " + control.title(), "",
                "Planning figures only. Plan " + control.file() + ", " + control.program() + ".");
    }

    private static void behind(Handover handover, Pack pack) {
        Html page = pack.page();
        page.heading(2, "behind", "What stands behind the figures");
        pack.table(Opening.models(handover.assessment().models()));
        page.heading(3, "conventions", "How to read positions and angles");
        page.list(Opening.conventions(handover.assessment()));
        page.heading(3, "files", "Files beside this page");
        page.list(List.of("drawings: every drawing as SVG; drawings/sheets-A3.pdf"
                + " and sheets-A1.pdf: drawings to scale (site, hulls with sections, contours, borrow pits,"
                + " setting-out), each sheet as SVG in the folder of the same name.",
                "tables: every table as comma-separated values, units in the column names.",
                "exchange: site.geojson (projected metres, not longitude and latitude), site.wkt"
                + " (the reference system), site.dxf (release 12), site.gpkg (GeoPackage), plan.json (the plan as"
                + " it was read).",
                "exchange/surfaces: the finished ground, its slope, the placed soil, the cover depth and each lift as"
                + " GeoTIFF, and the finished ground and each lift as triangles in LandXML 1.2 and as 3-D faces in DXF"
                + " (the prepared ground in LandXML), in projected metres; lifts.csv says which file is which lift.",
                "exchange/dose-scene: hulls, mound, ground and stations as GDML with materials, source spectra and our"
                + " own doses, for an independent calculation; README.txt says how to read them."));
    }

    private static void writeExchange(Assessment assessment, Path directory, Progress progress) throws IOException {
        progress.report(0, "writing shapes for other programs");
        List<Feature> features = SiteFeatures.of(assessment);
        SiteFrame frame = SiteFeatures.frame(assessment);
        GeoJsonFile.write(directory.resolve("site.geojson"), features, frame);
        DxfFile.write(directory.resolve("site.dxf"), features);
        GeoPackageFile.write(directory.resolve("site.gpkg"), features, frame,
                SiteFeatures.looks(assessment));
        PlanFiles.write(assessment.plan(), directory.resolve("plan.json"));
        progress.report(0.1, "writing surfaces and lifts");
        SurfaceFiles.write(assessment, frame, Files.createDirectories(directory.resolve("surfaces")), progress);
        progress.report(0.7, "writing the scene for an independent dose");
        SceneFiles.write(assessment, Files.createDirectories(directory.resolve("dose-scene")), progress);
    }
}
