// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
        assertTrue(Files.exists(out.resolve("figures.csv")) && Files.exists(out.resolve("inputs.csv")));
        assertTrue(Files.exists(out.resolve("shares-" + figure.get("id").asText() + ".svg")), "drawing");
    }
}
