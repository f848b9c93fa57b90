// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.site.doubt.Doubts;
import bermwright.site.doubt.Figure;
import bermwright.site.doubt.FigureDoubt;
import bermwright.site.doubt.UncertainInput;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DoubtsCommandTest {
    @TempDir
    Path folder;

    @Test
    void tooFewSamplesAreRefusedBeforeAnyWork() throws IOException {
        Run run = Run.of("doubts", Run.site(folder, Run.plan()).toString(), "--samples", "5", "--json");
        assertEquals(2, run.code());
        assertEquals("20 to 100000", run.json().get("error").get("accepted").asText());
    }

    @Test
    void aFileIsNoFolder() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "here");
        Run run = Run.of("doubts", Run.site(folder, Run.plan()).toString(), "--out", file.toString());
        assertEquals(2, run.code());
        assertTrue(run.err().contains("--out"), run.err());
    }

    @Test
    void saysSentencesFiguresAndChancesAndDrawsThem() throws IOException {
        Path out = folder.resolve("out");
        Run run = Run.of("doubts", Run.site(folder, Run.plan()).toString(), "--samples", "20", "--confirm", "1",
                "--out", out.toString(), "--json");
        JsonNode answer = run.json();
        assertEquals(20, answer.get("samples").asInt());
        assertTrue(answer.get("sentences").size() > 0, "sentences");
        JsonNode figure = answer.get("figures").get(0);
        assertTrue(figure.get("percentiles").get("5").asDouble() <= figure.get("percentiles").get("95").asDouble());
        assertTrue(figure.get("shares").size() > 0, "shares");
        assertTrue(answer.get("finding_chances").size() > 0, "findings");
        assertTrue(answer.get("confirmed").get(0).get("greatest_difference_share").asDouble() < 0.2);
        JsonNode schema = Run.of("schema", "--answers").json().get("$defs").get("doubts").get("properties");
        for (String part : List.of("inputs", "figures", "finding_chances", "confirmed")) {
            described(schema.get(part).get("items"), answer.get(part).get(0), part);
        }
        assertTrue(Files.exists(out.resolve("doubts.json")), "kept for reports");
        assertTrue(Files.exists(out.resolve("figures.csv")) && Files.exists(out.resolve("inputs.csv")));
        assertTrue(Files.exists(out.resolve("shares-" + figure.get("id").asText() + ".svg")), "drawing");
    }

    @Test
    void whatIsKeptInAFileIsReadBackForTheVeryPlanAlone() throws IOException {
        Path file = Run.site(folder, Run.plan());
        Plan plan = PlanFiles.read(file);
        Path out = Files.createDirectories(folder.resolve("out"));
        FigureDoubt figure = new FigureDoubt(new Figure("dose-elm", "dose at elm", "mSv", OptionalDouble.of(50), false),
                30.5, List.of(20.25, 31.0, 52.0), 2 / 3.0, List.of(new FigureDoubt.GroupShare("cohesion", 0.5, 0.6,
                        0.01)), 0.02, List.of(new FigureDoubt.Worth("ten strength tests", 0.66, 0.9)));
        List<Doubts.FindingChance> chances = List.of(new Doubts.FindingChance("dose-limit:elm", 0.25, 0.5, 0,
                Optional.of(Finding.Level.WARN)));
        Doubts doubts = new Doubts(List.of(new UncertainInput("cohesion", UncertainInput.Kind.PLAN, 500, 150, "Pa",
                "default", new UncertainInput.FindingOut("ten strength tests", true), List.of())), 3, 0, 7,
                List.of(figure), chances, new Doubts.InFull(1, List.of(new Doubts.Confirmed(figure.figure(), 0.01,
                        0.02)), List.of()));
        DoubtsFile.write(doubts, plan, file, out);
        assertEquals(doubts, DoubtsFile.read(out, plan, file));
        Files.writeString(file, Run.plan().replace("\"mass_t\": 26,", "\"mass_t\": 27,"));
        Run changed = Run.of("report", file.toString(), "--out", folder.resolve("report").toString(), "--doubts",
                out.toString());
        assertEquals(2, changed.code());
        assertTrue(changed.err().contains("--doubts is " + out.resolve("doubts.json") + " with plan_sha256 "),
                changed.err());
        Run none = Run.of("report", file.toString(), "--out", folder.resolve("report").toString(), "--doubts",
                folder.toString());
        assertTrue(none.err().contains("a folder that doubts --out has written, with doubts.json"), none.err());
    }

    /** Whether the schema of answers has every key with its meaning. */
    private static void described(JsonNode schema, JsonNode answer, String where) {
        answer.fieldNames().forEachRemaining(key -> {
            JsonNode one = schema.get("properties").path(key);
            assertTrue(one.has("type"), where + "." + key);
            JsonNode inner = answer.get(key);
            if (inner.isArray() && inner.size() > 0 && inner.get(0).isObject()) {
                described(one.get("items"), inner.get(0), where + "." + key);
            } else if (inner.isObject()) {
                described(one, inner, where + "." + key);
            } else if (!inner.isArray()) {
                assertTrue(one.get("description").asText().endsWith("."), where + "." + key);
            }
        });
    }
}
