// SPDX-License-Identifier: Apache-2.0
package bermwright.demosite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.site.answer.AnswerTable;
import bermwright.site.answer.Answers;
import bermwright.site.answer.CoverAnswers;
import bermwright.site.answer.Figure;
import bermwright.site.answer.WorkAnswers;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo plan from file to report. */
class DemoRunTest {
    /** Sums of volumes that were each written in full. */
    private static final double SUM = 1e-6;

    @TempDir
    static Path folder;
    private static Cli report;
    private static JsonNode all;

    @BeforeAll
    static void run() {
        String plan = Cli.DEMO.resolve("plan.json").toString();
        report = Cli.run("report", plan, "--out", folder.toString(), "--json");
        all = Cli.run("assess", plan, "--json").json();
    }

    @Test
    void itsFindingsAreTheExpectedOnes() throws IOException {
        assertEquals(1, report.code(), report.err());
        assertEquals(Files.readAllLines(Cli.DEMO.resolve("expected-findings.tsv")), report.findings());
    }

    @Test
    void oneHullBreaksTwoRulesAndNoneOfTheOthersDoes() {
        Set<String> refused = report.findings().stream().filter(f -> f.startsWith("refuse"))
                .collect(Collectors.toSet());
        assertEquals(Set.of("refuse\tcedar\tkeep-out", "refuse\tcedar\tslope-under-hull"), refused);
    }

    /** Only what the plan's rules set is said to be by its rules. */
    @Test
    void everyFindingSaysWhatItGoesBy() {
        Set<String> byRules = new TreeSet<>();
        for (JsonNode finding : all.get("findings")) {
            assertFalse(finding.get("source").asText().isBlank(), finding.toString());
            if (finding.get("source").asText().contains("rules of the plan")) {
                byRules.add(finding.get("rule").asText());
            }
        }
        assertEquals(Set.of("slope-under-hull"), byRules);
    }

    @Test
    void thePageStandsAloneAndShowsEveryHull() throws IOException {
        String page = pages();
        for (String word : List.of("alder", "birch", "cedar", "<svg", "Larkspur Shelf")) {
            assertTrue(page.contains(word), word);
        }
        assertFalse(page.matches("(?s).*(src|href)=\"(https?:)?//.*"), "the page reaches for the network");
        assertTrue(Files.size(folder.resolve("drawings/plan-site.svg")) > 10_000);
        assertTrue(Files.size(folder.resolve("exchange/site.geojson")) > 1000);
    }

    private static String pages() throws IOException {
        StringBuilder all = new StringBuilder();
        for (String name : List.of("report", "planner", "reviewer", "excavation")) {
            all.append(Files.readString(folder.resolve(name + ".html")));
        }
        return all.toString();
    }

    @Test
    void theReportsAreHandedOverAsPdfSmallEnoughToSend() throws IOException {
        for (String name : List.of("planner", "reviewer", "excavation")) {
            Path file = folder.resolve(name + ".pdf");
            assertTrue(Files.size(file) < 5_000_000, name);
            try (PDDocument document = Loader.loadPDF(file.toFile())) {
                assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked(), name);
                assertTrue(!name.equals("reviewer") || document.getNumberOfPages() < 40,
                        name + ": " + document.getNumberOfPages());
            }
        }
    }

    @Test
    void everyHullHasItsAnswers() {
        assertEquals(3, all.get("hulls").size());
        for (JsonNode hull : all.get("hulls")) {
            assertTrue(hull.has("lying") && hull.has("cover"), hull.get("id").asText());
            for (JsonNode station : hull.get("stations")) {
                assertTrue(station.get("reduction").asDouble() > 0.9, station.get("id").asText());
            }
        }
    }

    @Test
    void theSoilAddsUp() {
        double covers = 0;
        for (JsonNode hull : all.get("hulls")) {
            covers += hull.get("cover").get("volume_m3").asDouble();
        }
        JsonNode works = all.get("earthworks");
        assertEquals(covers, works.get("placed_m3").asDouble(), SUM * covers);
        assertEquals(works.get("placed_m3").asDouble() * 1600 / 1750, works.get("bank_m3").asDouble(), SUM * covers);
        double hauled = 0;
        for (JsonNode haul : works.get("hauls")) {
            boolean isRamp = haul.get("kind").asText().startsWith("ramp");
            hauled += isRamp ? 0 : haul.get("bank_m3").asDouble();
        }
        assertEquals(works.get("bank_m3").asDouble(), hauled + works.get("shortage_m3").asDouble(), SUM * covers);
    }

    /** A line of a file with the numbers of a list, a column each there, in one cell as pages have them. */
    private static String together(List<String> keys, String line, List<String> columns) {
        String[] cells = line.split(",(?=([^\"]*\"[^\"]*\")*[^\"]*$)", -1);
        List<String> joined = new ArrayList<>();
        String last = "";
        for (int i = 0; i < cells.length; i++) {
            String key = columns.contains(keys.get(i)) ? keys.get(i) : keys.get(i).replaceAll("_\\d+(?=_|$)", "");
            boolean isList = !key.equals(keys.get(i));
            String cell = isList && cells[i].equals(keys.get(i)) ? key : cells[i];
            if (!isList || !key.equals(last)) {
                joined.add(cell);
            } else if (!cell.isEmpty() && !cell.equals(key)) {
                joined.set(joined.size() - 1, joined.get(joined.size() - 1) + ", " + cell);
            }
            last = key;
        }
        return String.join(",", joined);
    }

    /** A figure of JSON stands in the same characters in the file and on the page. */
    private static void agree(AnswerTable<?> table, Iterable<JsonNode> found, String... files) throws IOException {
        String page = pages();
        Set<String> rows = new HashSet<>();
        List<String> columns = table.figures().stream().map(Figure::column).toList();
        for (String file : files) {
            List<String> lines = Files.readAllLines(folder.resolve("tables").resolve(file + ".csv"));
            List<String> keys = List.of(lines.get(0).split(","));
            lines.stream().map(l -> together(keys, l, columns)).map(l -> l.replace("\"", "").replace("'", ""))
                    .forEach(rows::add);
            assertTrue(rows.contains(String.join(",", columns)), table.path() + ": " + lines.get(0));
        }
        for (JsonNode one : found) {
            List<String> cells = table.figures().stream().map(f -> {
                JsonNode value = one.at("/" + f.key().replace('.', '/'));
                return cell(f, value);
            }).toList();
            assertTrue(rows.contains(String.join(",", cells)), table.path() + " " + cells);
            cells.forEach(cell -> assertTrue(page.contains(">" + cell + "<") || table.path().contains("tilts"), cell));
        }
    }

    private static String cell(Figure<?> figure, JsonNode value) {
        List<String> parts = new ArrayList<>();
        value.forEach(v -> parts.add(cell(figure, v)));
        List<String> names = new ArrayList<>();
        value.fieldNames().forEachRemaining(n -> names.add(n + " " + cell(figure, value.get(n))));
        return value.isObject() ? String.join(", ", names) : value.isArray() ? String.join(", ", parts)
                : value.isNumber() || figure.unit().isPresent() ? figure.shown(value.asDouble(Double.NaN))
                : value.isBoolean() ? value.asBoolean() ? "yes" : "no" : value.asText();
    }

    private static List<JsonNode> each(JsonNode... arrays) {
        List<JsonNode> all = new ArrayList<>();
        for (JsonNode array : arrays) {
            array.forEach(all::add);
        }
        return all;
    }

    @Test
    void aFigureIsTheSameCharactersInJsonFileAndPage() throws IOException {
        for (JsonNode hull : all.get("hulls")) {
            String id = hull.get("id").asText();
            agree(Answers.STATIONS, hull.get("stations"), "dose-by-station");
            agree(Answers.COVER, List.of(((ObjectNode) hull.get("cover")).put("id", id)), "covers");
            agree(Answers.SUPPORTS, hull.at("/burial/supports/loads"), "supports-" + id);
            agree(Answers.LIFTS, hull.at("/burial/lifts"), "lifts-" + id);
            if ("lines".equals(hull.at("/lowering/means").asText())) {
                agree(Answers.TILTS, hull.at("/lowering/tilts"), "lowering-" + id);
            }
        }
        JsonNode works = all.get("earthworks");
        agree(Answers.HAULS, works.get("hauls"), "hauls", "ramps");
        agree(Answers.MACHINES, works.get("machines"), "machines");
        agree(Answers.SLOPES, works.get("slopes"), "slopes");
        agree(Answers.DIGGING, works.get("gear_digging"), "gear-digging");
        agree(WorkAnswers.STAGES, all.get("stages"), "order-of-work");
        for (JsonNode stage : all.get("stages")) {
            agree(WorkAnswers.PART_BUILT, stage.at("/part_built/stations"), "part-built");
        }
        agree(WorkAnswers.WAYS, all.at("/ways_out/hulls"), "ways-out");
        agree(WorkAnswers.SHELTERS, all.at("/ways_out/to_shelter"), "ways-to-shelter");
        for (JsonNode passing : all.get("pass_throughs")) {
            agree(CoverAnswers.PASSING, List.of(passing), "pass-throughs-" + passing.get("hull").asText());
        }
    }

    @Test
    void textForPeopleHasTheSameCharactersToo() {
        String text = Cli.run("cover", Cli.DEMO.resolve("plan.json").toString()).out().replaceAll(" +", " ");
        for (JsonNode hull : all.get("hulls")) {
            String row = Answers.COVER.brief().stream().map(f -> f.unit().isPresent() ? f.shown(hull.get("cover")
                    .at("/" + f.key().replace('.', '/')).asDouble(Double.NaN)) : hull.get("id").asText())
                    .collect(Collectors.joining(" "));
            assertTrue(text.contains(row), row + " in " + text);
        }
    }

    @Test
    void aFindingKeepsItsNumberAndItsNameInEveryCommand() {
        Map<String, String> numbers = new HashMap<>();
        all.get("findings").forEach(f -> assertNull(numbers.put(f.get("id").asText(), f.get("number").asText())));
        assertEquals(numbers.size(), Set.copyOf(numbers.values()).size());
        JsonNode part = Cli.run("lower", Cli.DEMO.resolve("plan.json").toString(), "--json").json();
        assertTrue(part.get("findings").size() > 0);
        for (JsonNode answer : List.of(part, report.json())) {
            answer.get("findings").forEach(f -> assertEquals(numbers.get(f.get("id").asText()),
                    f.get("number").asText(), f.get("id").asText()));
        }
    }
}
