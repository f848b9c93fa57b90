// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is not judged is never read as met. */
class SilenceTest {
    private static final int REFUSED = 1;

    @TempDir
    Path folder;

    private String plan(String exposure) throws IOException {
        String plan = Run.plan().strip();
        return Run.site(folder, plan.substring(0, plan.length() - 1) + ", \"exposure\": {" + exposure + "} }")
                .toString();
    }

    private static JsonNode found(JsonNode answer, String rule) {
        for (JsonNode finding : answer.get("findings")) {
            if (finding.get("rule").asText().equals(rule)) {
                return finding;
            }
        }
        throw new AssertionError("no finding " + rule + ": " + answer.get("findings"));
    }

    private static boolean finds(JsonNode answer, String rule) {
        return answer.get("findings").findValuesAsText("rule").contains(rule);
    }

    @ParameterizedTest
    @CsvSource({"event,event,''", "all,stay,''", "event,event,'\"event\": \"august 1872\",'",
        "all,stay,'\"event\": \"august 1872\",'"})
    void aLimitOnEventsWithoutAnEventIsNotJudged(String from, String over, String event) throws IOException {
        String plan = plan(event + "\"limits\": [{\"from\": \"" + from + "\", \"over\": \"" + over
                + "\", \"limit_mSv\": 100000}]");
        Run run = Run.of("dose", plan, "--json");
        assertEquals(REFUSED, run.code(), run.err());
        JsonNode limit = run.json().get("limits").get(0);
        assertEquals("not judged", limit.get("verdict").asText());
        assertTrue(limit.get("reason").asText().contains(event.isEmpty() ? "the plan names none"
                : "the event \"august 1872\" is not known here"), limit.toString());
        limit.get("doses").forEach(d -> assertEquals("not judged", d.get("verdict").asText(), d.toString()));
        assertEquals("refuse", found(run.json(), "dose-limit-not-judged").get("level").asText());
        String text = Run.of("dose", plan).out();
        assertTrue(text.contains("days with no event"), text);
        assertFalse(text.contains(" met "), text);
        JsonNode sized = Run.of("size-cover", plan, "--json").json();
        assertFalse(sized.get("is_met").asBoolean());
        assertTrue(finds(sized, "dose-limit-not-judged"));
    }

    @Test
    void whatIsKnownAndAboveTheLimitIsNotMetWhateverIsMissing() throws IOException {
        JsonNode limit = Run.of("dose", plan("\"limits\": [{\"from\": \"all\", \"over\": \"stay\","
                + " \"limit_mSv\": 0.001}]"), "--json").json().get("limits").get(0);
        assertEquals("not met", limit.get("verdict").asText(), limit.toString());
    }

    @Test
    void peopleWithoutALimitAreRefusedAndHeldAgainstPublishedOnes() throws IOException {
        Run run = Run.of("dose", plan("\"event\": \"august 1972\", \"stay_days\": 5000"), "--json");
        assertEquals(REFUSED, run.code(), run.err());
        assertEquals("refuse", found(run.json(), "dose-no-limit").get("level").asText());
        JsonNode above = found(run.json(), "dose-above-published");
        assertTrue(above.get("measured").asDouble() > above.get("limit").asDouble(), above.toString());
        assertTrue(above.get("source").asText().contains("Revision C"), above.toString());
        JsonNode sized = Run.of("size-cover", plan("\"event\": \"august 1972\""), "--json").json();
        assertFalse(sized.get("is_met").asBoolean());
        assertEquals("refuse", found(sized, "size-cover-no-limit").get("level").asText());
    }

    @Test
    void aStationWithoutADoseLeavesTheCrewsDoseNotJudged() throws IOException {
        String outside = "{ \"id\": \"lost\", \"along_m\": -5 },";
        String plan = plan("\"event\": \"august 1972\", \"limits\": [{\"from\": \"all\", \"over\": \"stay\","
                + " \"limit_mSv\": 100000}]").toString();
        String text = Files.readString(Path.of(plan));
        Files.writeString(Path.of(plan), text.replaceFirst("\"stations\": *\\[",
                "\"stations\": [" + outside));
        Run run = Run.of("dose", plan, "--json");
        JsonNode limit = run.json().get("limits").get(0);
        assertEquals("not judged", limit.get("verdict").asText(), limit.toString());
        assertTrue(limit.get("reason").asText().contains("/lost"), limit.toString());
        assertTrue(limit.get("doses").size() > 0, limit.toString());
        JsonNode sized = Run.of("size-cover", plan, "--json").json();
        assertFalse(sized.get("is_met").asBoolean());
    }

    @Test
    void bareSkinRefusesWherePeopleStay() throws IOException {
        String plan = plan("\"event\": \"august 1972\", \"limits\": [{\"from\": \"all\", \"over\": \"stay\","
                + " \"limit_mSv\": 100000}]");
        String open = Files.readString(Path.of(plan)).replaceFirst("\"cover\": *\\{",
                "\"cover\": { \"base_end\": \"open\", \"far_end\": \"open\",");
        Files.writeString(Path.of(plan), open);
        Run run = Run.of("cover", plan, "--json");
        JsonNode bare = found(run.json(), "cover-bare");
        assertEquals("refuse", bare.get("level").asText());
        assertEquals(REFUSED, run.code());
        Files.writeString(Path.of(plan), open.replaceFirst("(?s)\"stations\": *\\[.*?\\],", ""));
        assertEquals("warn", found(Run.of("cover", plan, "--json").json(), "cover-bare").get("level").asText());
    }

    @Test
    void aLimitThatIsMetIsStillMet() throws IOException {
        JsonNode answer = Run.of("dose", plan("\"event\": \"august 1972\", \"limits\": [{\"from\": \"all\","
                + " \"over\": \"stay\", \"limit_mSv\": 100000}]"), "--json").json();
        assertEquals("met", answer.get("limits").get(0).get("verdict").asText());
        assertFalse(finds(answer, "dose-limit-not-judged"));
        assertFalse(finds(answer, "dose-no-limit"));
    }
}
