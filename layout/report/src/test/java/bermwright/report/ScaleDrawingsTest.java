// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Progress;
import bermwright.outside.OutsideProgram;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.DrawingXml;
import bermwright.report.paper.Lettering;
import bermwright.report.paper.Mark;
import bermwright.report.paper.Patch;
import bermwright.report.scale.ScaleDrawings;
import bermwright.report.scale.ScaleDrawings.ScaleSheet;
import bermwright.report.scale.SheetSize;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets measured as with a ruler, in the files themselves. */
class ScaleDrawingsTest {
    private static final double POINTS = 72 / 25.4;
    /** What a ruler cannot tell (mm). */
    private static final double HAIR = 0.01;

    @TempDir
    private static Path folder;
    private static Assessment assessment;
    private static List<ScaleSheet> sheets;

    @BeforeAll
    static void draw() throws IOException {
        assessment = SiteOfTests.assessment(folder);
        ScaleDrawings drawings = ScaleDrawings.of(assessment, "B", "2031-02-14");
        sheets = drawings.sheets(SheetSize.A3, Progress.NONE);
        for (String name : List.of("one", "two")) {
            drawings.write(Files.createDirectories(folder.resolve(name)), SheetSize.A3, Progress.NONE);
        }
    }

    private static ScaleSheet sheet(String part) {
        return sheets.stream().filter(s -> s.name().contains(part)).findFirst().orElseThrow();
    }

    private static double length(List<Dot> line) {
        return Math.hypot(line.get(1).x() - line.get(0).x(), line.get(1).y() - line.get(0).y());
    }

    @Test
    void everySheetOfTheListIsThere() {
        for (String part : List.of("site-plan", "long-section", "cross-sections", "contours", "borrow-plan",
                "borrow-sections", "setting-out")) {
            assertTrue(sheets.stream().anyMatch(s -> s.name().contains(part)), part);
        }
        for (ScaleSheet sheet : sheets) {
            assertTrue(List.of(100, 200, 500, 1000, 2000, 5000).contains(sheet.scale()), sheet.name());
            assertFalse(sheet.name().contains("/") || sheet.name().contains("<"), sheet.name());
            List<String> words = sheet.paper().marks().stream().filter(Mark.Words.class::isInstance)
                    .map(m -> ((Mark.Words) m).words()).toList();
            assertTrue(words.contains("2031-02-14") && words.contains("Rev B"), sheet.name());
            assertTrue(words.stream().noneMatch(w -> w.startsWith("Not named")), sheet.name() + ": " + words);
        }
    }

    @Test
    void anSvgMeasuresTrue() throws Exception {
        HullAssessment hull = assessment.hulls().stream().filter(h -> h.lying().isPresent()).findFirst().orElseThrow();
        ScaleSheet plan = sheets.stream().filter(s -> s.title().equals("Hull " + hull.hull().id() + ": plan"))
                .findFirst().orElseThrow();
        String svg = Files.readString(folder.resolve("one/sheets-A3/" + plan.name() + ".svg"));
        assertTrue(svg.contains("width=\"420mm\" height=\"297mm\" viewBox=\"0 0 420 297\""), svg.substring(0, 300));
        int at = svg.indexOf("class=\"hull-axis\" d=\"M") + "class=\"hull-axis\" d=\"M".length();
        String[] ends = svg.substring(at, svg.indexOf('"', at)).split("[L ]");
        double paper = Math.hypot(Double.parseDouble(ends[2]) - Double.parseDouble(ends[0]),
                Double.parseDouble(ends[3]) - Double.parseDouble(ends[1]));
        assertEquals(hull.hull().length() * 1000 / plan.scale(), paper, HAIR);
        DrawingXml.read(svg);
    }

    @Test
    void aPdfMeasuresTrue() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(folder.resolve("one/sheets-A3.pdf").toFile())) {
            assertEquals(sheets.size(), pdf.getNumberOfPages());
            for (int i = 0; i < sheets.size(); i++) {
                PDPage page = pdf.getPage(i);
                assertEquals(420, page.getMediaBox().getWidth() / POINTS, HAIR);
                assertEquals(297, page.getMediaBox().getHeight() / POINTS, HAIR);
                List<List<Dot>> lines = lines(page);
                for (Mark mark : sheets.get(i).paper().marks()) {
                    if (mark instanceof Mark.Path path && path.name().equals("hull-axis")) {
                        assertTrue(lines.stream().anyMatch(l -> Math.abs(length(l) - length(path.points())) < HAIR),
                                sheets.get(i).name() + ": " + length(path.points()) + " mm");
                    }
                }
                for (COSName name : page.getResources().getFontNames()) {
                    assertTrue(page.getResources().getFont(name).isEmbedded(), name.getName());
                }
            }
        }
    }

    /** The straight lines of a page (mm), as its operators have them. */
    private static List<List<Dot>> lines(PDPage page) throws IOException {
        List<List<Dot>> lines = new ArrayList<>();
        List<Double> numbers = new ArrayList<>();
        Dot from = new Dot(0, 0);
        for (Object token : new PDFStreamParser(page).parse()) {
            if (token instanceof COSNumber number) {
                numbers.add(number.floatValue() / POINTS);
            } else if (token instanceof Operator operator) {
                boolean moves = operator.getName().equals("m");
                if (moves || operator.getName().equals("l")) {
                    Dot to = new Dot(numbers.get(numbers.size() - 2), numbers.get(numbers.size() - 1));
                    if (!moves) {
                        lines.add(List.of(from, to));
                    }
                    from = to;
                }
                numbers.clear();
            }
        }
        return lines;
    }

    @Test
    void dimensionsSayWhatTheyMeasure() {
        ScaleSheet cut = sheet("long-section");
        List<Double> said = new ArrayList<>();
        for (Mark mark : cut.paper().marks()) {
            if (mark instanceof Mark.Words words) {
                for (String part : words.words().split(" ")) {
                    if (part.matches("-?\\d+\\.\\d+")) {
                        said.add(Double.parseDouble(part));
                    }
                }
            }
        }
        int seen = 0;
        for (Mark mark : cut.paper().marks()) {
            if (mark instanceof Mark.Path path && path.name().equals("dimension")) {
                double metres = length(path.points()) * cut.scale() / 1000;
                assertTrue(said.stream().anyMatch(s -> Math.abs(s - metres) < 0.011), metres + " m in " + said);
                seen++;
            }
        }
        assertTrue(seen >= 5, seen + " dimensions");
    }

    @Test
    void lettersAreLargeEnoughAndNoneStandOnOthers() {
        for (ScaleSheet sheet : sheets) {
            List<Mark.Words> all = sheet.paper().marks().stream().filter(Mark.Words.class::isInstance)
                    .map(Mark.Words.class::cast).toList();
            Patch page = Patch.between(new Dot(0, 0), new Dot(sheet.paper().width(), sheet.paper().height()));
            for (int i = 0; i < all.size(); i++) {
                assertTrue(all.get(i).capital() >= Lettering.LEAST, all.get(i).words());
                assertTrue(all.get(i).patch().isInside(page), sheet.name() + ": " + all.get(i));
                for (int k = 0; k < i; k++) {
                    assertFalse(inked(all.get(i)).overlaps(inked(all.get(k))), sheet.name() + ": " + all.get(i)
                            + " on " + all.get(k));
                }
            }
        }
    }

    /** The letters themselves, without the room around them. */
    private static Patch inked(Mark.Words words) {
        Patch patch = words.patch();
        return new Patch(patch.middle(), patch.halfWidth() - 0.15 * words.capital(), words.capital() / 2, patch.turn());
    }

    @Test
    void theSameSheetsAreTheSameBytes() throws IOException {
        assertEquals(-1, Files.mismatch(folder.resolve("one/sheets-A3.pdf"), folder.resolve("two/sheets-A3.pdf")));
        for (ScaleSheet sheet : sheets) {
            String file = "sheets-A3/" + sheet.name() + ".svg";
            assertArrayEquals(Files.readAllBytes(folder.resolve("one").resolve(file)),
                    Files.readAllBytes(folder.resolve("two").resolve(file)));
        }
    }

    @Test
    void otherProgramsTakeThePdf() throws Exception {
        OutsideProgram.PDF.need("pdffonts", "qpdf");
        String pdf = folder.resolve("one/sheets-A3.pdf").toString();
        String fonts = OutsideProgram.run("pdffonts", pdf);
        List<String> rows = fonts.lines().skip(2).toList();
        assertTrue(!rows.isEmpty() && rows.stream().allMatch(r -> r.matches(".*Identity-H\\s+yes yes yes.*")), fonts);
        assertTrue(OutsideProgram.run("qpdf", "--check", pdf).contains("No syntax or stream encoding errors"));
    }

    @Test
    void lettersThatTheTypefaceLacksAreNamed() {
        assertEquals("U+6708 A", Lettering.shown("\u6708 A"));
        assertTrue(Lettering.width("U+6708", 2) > 5);
        String cut = Lettering.cut("a very long name of something", 2, 20);
        assertTrue(cut.endsWith("\u2026") && Lettering.width(cut, 2) <= 20, cut);
        assertEquals("\u00c4\u03b1\u0416", Lettering.shown("\u00c4\u03b1\u0416"));
    }
}
