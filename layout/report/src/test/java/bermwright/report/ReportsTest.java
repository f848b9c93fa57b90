// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.foundation.ModelNote;
import bermwright.foundation.Progress;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.outside.OutsideProgram;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.DrawingXml;
import bermwright.report.drawing.Svg;
import bermwright.report.reader.Reader;
import bermwright.report.sheet.ReviewRound;
import bermwright.site.assessment.Assessment;
import bermwright.site.comparison.Comparison;
import bermwright.site.exposure.StationDose;
import bermwright.site.planfile.PlanFiles;
import bermwright.site.stages.SettingOutPoint;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;

class ReportsTest {
    /** Units a column's name may end in, and names of columns that carry a pure number or a count. */
    private static final Set<String> UNITS = Set.of("m", "m2", "m3", "kg", "t", "kN", "deg", "mSv", "cm2", "percent",
            "1", "h", "hours", "days", "kPa", "MJ", "s", "min", "g", "mm", "K", "s2", "mol");
    private static final Set<String> PURE = Set.of("number", "point", "measured", "limit", "demand", "capacity",
            "factor", "face_factor", "required_factor", "loads", "value", "low", "high", "Z", "A", "share_by_mass");

    @TempDir
    private static Path directory;
    private static Path out;
    private static Assessment assessment;
    private static String page;

    @BeforeAll
    static void write() throws IOException {
        assessment = SiteOfTests.assessment(directory);
        out = directory.resolve("out");
        Path file = Reports.write(assessment, Reports.Order.ALL, out, Progress.NONE);
        assertEquals(out.resolve(Reports.PAGE), file);
        Path plan = out.resolve("exchange/plan.json");
        assertEquals(PlanFiles.text(assessment.plan()), Files.readString(plan), "the plan as it was read");
        assertEquals(assessment.plan(), PlanFiles.read(plan));
        StringBuilder all = new StringBuilder(Files.readString(file));
        for (Reader reader : Reader.values()) {
            all.append(Files.readString(out.resolve(reader.word() + ".html")));
        }
        page = all.toString();
    }

    private static List<Path> files(String ending) throws IOException {
        try (Stream<Path> all = Files.walk(out)) {
            return all.filter(p -> p.toString().endsWith(ending)).sorted().toList();
        }
    }

    @Test
    void eachReportOpensWithItsAnswerInFiveLinesAndIsWellFormed() throws IOException {
        for (Reader reader : Reader.values()) {
            String text = Files.readString(out.resolve(reader.word() + ".html"));
            String answer = text.substring(text.indexOf("<ol class=\"answer\">"), text.indexOf("</ol>"));
            assertEquals(5, answer.split("<li>", -1).length - 1, reader.title());
            assertTrue(text.indexOf("<ol class=\"answer\">") < text.indexOf("<h2"), "the answer comes first");
            assertTrue(text.contains("site plan.json") && text.contains("revision") && text.contains("SHA-256"));
            DrawingXml.read(text.substring(text.indexOf("<html")));
        }
    }

    @Test
    void pdfsAreTaggedCarryTheirFontsAndAPageNumberAndNameEachHullOnItsSheet() throws Exception {
        OutsideProgram.PDF.need("pdfinfo", "pdffonts", "pdftotext", "qpdf");
        for (Reader reader : Reader.values()) {
            String file = out.resolve(reader.word() + ".pdf").toString();
            OutsideProgram.run("qpdf", "--check", file);
            String about = OutsideProgram.run("pdfinfo", file);
            assertTrue(about.matches("(?s).*Tagged: +yes.*"), about);
            assertTrue(about.contains("2000"), "the stated date stands for none: " + about);
            List<String> fonts = OutsideProgram.run("pdffonts", file).lines().skip(2).toList();
            assertTrue(fonts.size() >= 2, fonts::toString);
            fonts.forEach(f -> assertTrue(f.matches(".* yes yes yes +\\d+ +\\d+"), f));
            String text = OutsideProgram.run("pdftotext", "-layout", file, "-");
            assertFalse(text.matches("(?s).*[\uFB00-\uFB06].*"), "letters set as one sign: " + file);
            assertTrue(text.contains("finding"), "a search finds words with f and i");
            String[] sheets = text.split("\f");
            for (int i = 0; i < sheets.length; i++) {
                assertTrue(sheets[i].contains((i + 1) + " / " + sheets.length), reader + ", sheet " + (i + 1));
                assertTrue(sheets[i].contains("revision not stated") || sheets[i].contains("lowering sheet"),
                        reader + ", head of sheet " + (i + 1));
            }
            assertTrue(Files.size(Path.of(file)) < 5_000_000);
        }
    }

    @Test
    void aPlanComparedWithItselfHasNotChanged() {
        Comparison same = Comparison.of(assessment, assessment);
        assertTrue(same.isSame(), same.keys() + " " + same.figures());
        assertEquals(Optional.empty(), new ReviewRound(same).drawing());
    }

    @Test
    void everyDrawingIsValidAndKeepsItsWordsOnThePaper() throws IOException {
        // Sheets to scale are not on pages; ScaleDrawingsTest measures them.
        List<Path> drawings = files(".svg").stream().filter(f -> !f.getParent().getFileName().toString()
                .startsWith("sheets-")).toList();
        assertTrue(drawings.size() >= 12, drawings::toString);
        for (Path file : drawings) {
            String name = file.getFileName().toString().replace(".svg", "");
            String svg = Files.readString(file);
            Element root = DrawingXml.read(svg).getDocumentElement();
            Dot paper = new Dot(Double.parseDouble(root.getAttribute("width")),
                    Double.parseDouble(root.getAttribute("height")));
            assertEquals(List.of(), DrawingXml.troubles(svg, paper), name);
            if (name.startsWith("plan-") || name.startsWith("setting-out-")) {
                assertEquals(List.of(), DrawingXml.covered(DrawingXml.read(svg)), name);
            }
            assertTrue(page.contains(svg.substring(svg.indexOf("<svg"))), name + " stands in the page as in its file");
        }
    }

    @Test
    void pointsToSetOutStandInTheFileAndOnTheDrawingOfTheirHull() throws IOException {
        List<List<String>> rows = csv("setting-out");
        assertEquals(assessment.settingOut().size() + 1, rows.size());
        assertTrue(rows.size() > 20, rows::toString);
        for (int i = 0; i < assessment.settingOut().size(); i++) {
            SettingOutPoint point = assessment.settingOut().get(i);
            assertEquals(point.id(), rows.get(i + 1).get(0));
            assertEquals(point.place().x(), Double.parseDouble(rows.get(i + 1).get(3)), 5e-4);
        }
        String hull = assessment.settingOut().get(0).subject();
        List<String> words = DrawingXml.texts(DrawingXml.read(Files.readString(files(".svg").stream()
                .filter(p -> p.getFileName().toString().startsWith("setting-out-")).findFirst().orElseThrow())));
        assertTrue(words.stream().anyMatch(w -> w.startsWith("pivot-")), hull + ": " + words);
    }

    @Test
    void otherCoversStandInTheFileWithThePlannedAmongThem() throws IOException {
        List<List<String>> rows = csv("cover-trade");
        List<String> planned = rows.stream().filter(r -> r.get(0).equals("100")).findFirst().orElseThrow();
        assertEquals(assessment.cover().orElseThrow().volume(), Double.parseDouble(planned.get(2)), 0.5);
        assertEquals(assessment.earthworks().orElseThrow().machineHours().orElseThrow(),
                Double.parseDouble(planned.get(3)), 0.5);
        assertTrue(page.contains("As planned: "));
    }

    @Test
    void thePageAsksForNothingAndEscapesWhatUsersWrote() {
        assertFalse(page.contains("<script"));
        assertFalse(page.matches("(?s).*(src|href)=\"(?!#|"
                + "(rules|planner|reviewer|excavation)[.](html|pdf)\"|data:image/png)[^\"]*\".*"));
        assertFalse(page.replace("http://www.w3.org/2000/svg",
                "").matches("(?s).*(url\\((?!#)|@import|<link|<iframe).*"));
        assertTrue(page.contains(Svg.escaped(SiteOfTests.HOSTILE)));
        assertFalse(page.contains("boulder <field>"));
    }

    @Test
    void tablesAndDrawingsNeverLeaveTheDirectory() throws IOException {
        try (Stream<Path> all = Files.walk(directory)) {
            assertEquals(List.of(), all.filter(Files::isRegularFile).filter(p -> !p.startsWith(out)
                    && !p.getParent().equals(directory)).toList());
        }
        assertTrue(files("").stream().noneMatch(p -> p.getFileName().toString().startsWith(".report-")));
    }

    @Test
    void allFindingsAreNumberedInOrderWithTheirWordsAndThoseWithAPlaceStandOnTheSitePlan() throws IOException {
        List<Numbered> findings = Numbered.of(assessment.findings());
        assertTrue(findings.size() > 3);
        List<List<String>> rows = csv("findings");
        assertEquals(findings.size() + 1, rows.size());
        String plan = Files.readString(out.resolve("drawings/plan-site.svg"));
        List<String> onSite = DrawingXml.texts(DrawingXml.read(plan));
        for (int i = 0; i < findings.size(); i++) {
            List<String> row = rows.get(i + 1);
            Finding finding = findings.get(i).finding();
            assertEquals(findings.get(i).number(), row.get(0));
            assertEquals(finding.level().word(), row.get(1));
            assertEquals(finding.text(), row.get(3).replaceFirst("^'", ""));
            assertEquals(finding.todo(), row.get(4));
            assertEquals(finding.id(), row.get(11));
            assertTrue(page.contains(Svg.escaped(finding.text())));
            if (finding.place().isPresent()) {
                assertTrue(onSite.contains(row.get(0)), "number " + row.get(0) + " on the site plan");
            }
        }
    }

    @Test
    void columnNamesEndInTheirUnits() throws IOException {
        List<String> without = new ArrayList<>();
        for (Path file : files(".csv")) {
            List<List<String>> rows = csv(file);
            for (int column = 0; column < rows.get(0).size(); column++) {
                String key = rows.get(0).get(column);
                int at = column;
                boolean numbers = rows.size() > 1 && rows.stream().skip(1).allMatch(r -> r.get(at).isEmpty()
                        || r.get(at).matches("-?\\d+(\\.\\d+)?"))
                        && rows.stream().skip(1).anyMatch(r -> !r.get(at).isEmpty());
                if (numbers && !PURE.contains(key) && !UNITS.contains(key.substring(key.lastIndexOf('_') + 1))) {
                    without.add(file.getFileName() + ": " + key);
                }
            }
        }
        assertEquals(List.of(), without);
    }

    @Test
    void doseFiguresAreTheAssessmentsOwn() throws IOException {
        List<StationDose> stations = assessment.dose().orElseThrow().stations();
        List<List<String>> rows = csv("dose-by-station");
        assertEquals(stations.size() + 1, rows.size());
        int best = rows.get(0).indexOf("covered_mSv");
        int high = rows.get(0).indexOf("high_mSv");
        for (int i = 0; i < stations.size(); i++) {
            assertEquals("%.2f".formatted(1000 * stations.get(i).covered().best()), rows.get(i + 1).get(best));
            assertEquals("%.2f".formatted(1000 * stations.get(i).covered().high()), rows.get(i + 1).get(high));
        }
    }

    @Test
    void loweringFiguresAreTheAssessmentsOwnAndInKilonewtons() throws IOException {
        LoweringResult result = assessment.hulls().get(0).laydown().orElseThrow().lowering().orElseThrow();
        List<List<String>> rows = csv(Drawing.name("lowering", SiteOfTests.HOSTILE));
        assertEquals(result.tilts().size() + 1, rows.size());
        int each = rows.get(0).indexOf("line_each_kN");
        double greatest = rows.stream().skip(1).mapToDouble(r -> Double.parseDouble(r.get(each))).max().orElseThrow();
        assertEquals(result.greatestLineTension() / 1000, greatest, 0.005 + 1e-9, "half a unit of the last digit");
        assertTrue(page.contains(Svg.escaped("What governs: " + result.governingPart())));
    }

    @Test
    void whatIsProvisionalIsMarkedAtEveryDrawingAndTableItTouches() {
        boolean marked = assessment.dose().orElseThrow().models().stream()
                .anyMatch(m -> m.status() == ModelNote.Status.PROVISIONAL);
        for (String title : List.of("Dose at each station alone, 150 days and one event like august 1972",
                "Against the limit on effective dose from all sources over the whole stay",
                "Every limit, for the crew and for each station alone")) {
            assertEquals(marked, page.contains(title + " — PROVISIONAL"), title);
        }
    }

    @Test
    void cautionsModelsDefaultsAndReadersAreThere() throws IOException {
        for (String caution : assessment.cautions()) {
            assertTrue(page.contains(Svg.escaped(caution)), caution);
        }
        for (String heading : List.of("What governs", "What stands behind the figures", "Dose against each limit",
                "Clearances", "Volumes and borrow", "Lifts and their levels", "Ways out and ways to shelter")) {
            assertTrue(page.contains(">" + heading + "</h2>"), heading);
        }
        Set<String> models = csv("models").stream().skip(1).map(r -> r.get(0)).collect(Collectors.toSet());
        assertEquals(assessment.models().stream().map(ModelNote::id).collect(Collectors.toSet()), models);
        Set<String> defaults = csv("defaults-taken").stream().map(r -> r.get(0)).collect(Collectors.toSet());
        assertTrue(defaults.contains("ground.gravity_m_s2") && !defaults.contains("ground.elevation_spread_m"),
                defaults::toString);
    }

    @Test
    void exchangeFilesHoldTheSite() throws IOException {
        JsonNode json = new ObjectMapper().readTree(out.resolve("exchange/site.geojson").toFile());
        List<String> layers = new ArrayList<>();
        json.get("features").forEach(f -> layers.add(f.at("/properties/layer").asText()));
        assertTrue(layers.containsAll(List.of("lying", "sweep", "cover_toe", "keep_out", "hull_axis", "setting_out",
                "findings")), layers::toString);
        String dxf = Files.readString(out.resolve("exchange/site.dxf"), StandardCharsets.US_ASCII);
        assertTrue(dxf.contains("AC1009") && dxf.trim().endsWith("EOF"));
        assertTrue(Files.size(out.resolve("exchange/site.gpkg")) > 10_000);
    }

    @Test
    void writingTwiceGivesTheSameFiles() throws IOException {
        Path again = directory.resolve("again");
        Reports.write(assessment, Reports.Order.ALL, again, Progress.NONE);
        for (Path file : files("")) {
            if (Files.isRegularFile(file)) {
                assertEquals(-1, Files.mismatch(file, again.resolve(out.relativize(file))), file::toString);
            }
        }
        try (Stream<Path> all = Files.walk(again)) {
            all.sorted(Comparator.reverseOrder()).forEach(p -> p.toFile().delete());
        }
    }

    @Test
    void cancelledWorkLeavesNothingBehind() throws IOException {
        Path place = directory.resolve("cancelled");
        Progress cancel = new Progress() {
            @Override
            public void report(double share, String step) {
            }

            @Override
            public boolean isCancelled() {
                return true;
            }
        };
        assertThrows(CancellationException.class, () -> Reports.write(assessment, Reports.Order.ALL, place, cancel));
        assertFalse(Files.exists(place));
        try (Stream<Path> all = Files.list(directory)) {
            assertEquals(List.of(), all.filter(p -> p.getFileName().toString().endsWith(".part")).toList());
        }
    }

    private static List<List<String>> csv(String name) throws IOException {
        return csv(out.resolve("tables/" + name + ".csv"));
    }

    /** Reads comma-separated values by the book: quotes, doubled quotes, line breaks inside. */
    private static List<List<String>> csv(Path file) throws IOException {
        String text = Files.readString(file);
        List<List<String>> rows = new ArrayList<>();
        List<String> row = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quoted && c == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"') {
                cell.append(c);
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && (c == ',' || c == '\r')) {
                row.add(cell.toString());
                cell.setLength(0);
            } else if (!quoted && c == '\n') {
                rows.add(List.copyOf(row));
                row.clear();
            } else {
                cell.append(c);
            }
        }
        return rows;
    }
}
