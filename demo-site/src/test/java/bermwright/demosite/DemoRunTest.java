// SPDX-License-Identifier: Apache-2.0
package bermwright.demosite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
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
        String page = Files.readString(folder.resolve("report.html"));
        for (String word : List.of("alder", "birch", "cedar", "<svg", "Larkspur Shelf")) {
            assertTrue(page.contains(word), word);
        }
        assertFalse(page.matches("(?s).*(src|href)=\"(https?:)?//.*"), "the page reaches for the network");
        assertTrue(Files.size(folder.resolve("drawings/plan-site.svg")) > 10_000);
        assertTrue(Files.size(folder.resolve("exchange/site.geojson")) > 1000);
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
}
