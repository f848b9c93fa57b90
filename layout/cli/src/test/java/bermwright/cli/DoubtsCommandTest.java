// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
        assertTrue(Files.exists(out.resolve("figures.csv")) && Files.exists(out.resolve("inputs.csv")));
        assertTrue(Files.exists(out.resolve("shares-" + figure.get("id").asText() + ".svg")), "drawing");
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
