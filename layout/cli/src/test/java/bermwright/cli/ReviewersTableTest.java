// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which limits a reviewer's own response judges, and which it does not. */
class ReviewersTableTest {
    private static final int UNREADABLE = 2;
    private static final String RULE = "dose-limit-not-by-reviewer";
    private static final String LIMITS = "{ \"from\": \"cosmic\", \"limit_mSv\": 75 },"
            + "{ \"quantity\": \"gray equivalent, skin\", \"over\": \"30 days\", \"limit_mSv\": 1500 }";
    /** A table that is the same at every depth gives half of it under any cover, and once what the ground returns. */
    private static final double FLAT_MSV = 2;
    /** The sky is folded until half a per cent stays open. */
    private static final double SETTLED = 0.005;

    @TempDir
    Path folder;

    private void table(String name, String quantity, String per) throws IOException {
        Files.writeString(folder.resolve(name), quantity + "# per: " + per + """

                # open_ground_return_mSv: 0
                # skin_equivalence: 1
                # source: made up for this test
                areal_density_g_cm2,isotropic_dose_mSv,low_mSv,high_mSv
                0,2,1,4
                2000,2,1,4
                """);
    }

    private Run run(String exposure) throws IOException {
        String plan = Run.plan().strip();
        return Run.of("dose", Run.site(folder, plan.substring(0, plan.length() - 1)
                + ", \"exposure\": { \"stay_days\": 60, \"event\": \"august 1972\", " + exposure + ", \"limits\": ["
                + LIMITS + "] } }").toString(), "--json");
    }

    @Test
    void withoutATableNothingIsSaid() throws IOException {
        JsonNode answer = run("\"hours_outside_a_day\": 0").json();
        assertTrue(OrganLimitTest.findings(answer, RULE).isEmpty());
        assertEquals("built-in calculation",
                answer.get("limits").get(0).get("calculated_by").get(0).get("model").asText());
    }

    @Test
    void whatTheReviewersTableDoesNotJudgeIsSaidByLimit() throws IOException {
        table("mine.csv", "", "day");
        JsonNode answer = run("\"response\": \"mine.csv\"").json();
        JsonNode limits = answer.get("limits");
        assertTrue(limits.get(0).get("calculated_by").get(0).get("by_reviewer").asBoolean(), limits.toString());
        assertEquals("effective dose handed over as mine.csv",
                limits.get(0).get("calculated_by").get(0).get("model").asText());
        assertFalse(limits.get(1).get("calculated_by").get(0).get("by_reviewer").asBoolean(), limits.toString());
        List<JsonNode> said = OrganLimitTest.findings(answer, RULE);
        assertEquals(1, said.size(), said.toString());
        assertEquals("warn", said.get(0).get("level").asText());
        assertTrue(said.get(0).get("text").asText().contains("the limit of 1500.0 mGy-Eq on gray equivalent, skin over"
                + " any 30 days is judged by the built-in calculation for cosmic rays and event."), said.toString());
    }

    @Test
    void theEventsOwnTableStandsBesideThatOfTheDays() throws IOException {
        table("mine.csv", "", "day");
        table("event.csv", "", "event");
        JsonNode answer = run("\"response\": \"mine.csv\", \"more_responses\": [\"event.csv\"]").json();
        JsonNode station = answer.get("hulls").get(0).get("stations").get(0);
        assertEquals(FLAT_MSV / 2, station.get("event_mSv").asDouble(), SETTLED * FLAT_MSV / 2);
        assertEquals(FLAT_MSV / 2 * 60, station.get("cosmic_mSv").asDouble(), SETTLED * FLAT_MSV / 2 * 60);
    }

    @Test
    void anOrgansOwnTablesJudgeItsLimit() throws IOException {
        table("mine.csv", "", "day");
        table("skin-day.csv", "# quantity: gray equivalent, skin\n", "day");
        table("skin-event.csv", "# quantity: gray equivalent, skin\n", "event");
        JsonNode answer = run("\"hours_outside_a_day\": 0, \"response\": \"mine.csv\","
                + " \"more_responses\": [\"skin-day.csv\", \"skin-event.csv\"]").json();
        assertTrue(OrganLimitTest.findings(answer, RULE).isEmpty(), answer.toString());
        JsonNode skin = answer.get("limits").get(1);
        assertEquals(FLAT_MSV / 2 * 30 + FLAT_MSV / 2, skin.get("doses").get(0).get("best_mSv").asDouble(),
                SETTLED * FLAT_MSV / 2 * 31);
        boolean isNamed = false;
        for (JsonNode model : answer.get("models")) {
            isNamed |= model.get("id").asText().equals("handed-over-response-event-skin");
        }
        assertTrue(isNamed, answer.get("models").toString());
    }

    @Test
    void anOrgansTableForHalfOfItsLimitSaysTheOtherHalf() throws IOException {
        table("skin-event.csv", "# quantity: gray equivalent, skin\n", "event");
        JsonNode answer = run("\"more_responses\": [\"skin-event.csv\"]").json();
        List<JsonNode> said = OrganLimitTest.findings(answer, RULE);
        assertEquals(2, said.size(), said.toString());
        assertTrue(said.get(1).get("text").asText().contains("by the built-in calculation for cosmic rays."),
                said.toString());
    }

    @Test
    void aTableThatNoLimitNeedsIsSaid() throws IOException {
        table("eye.csv", "# quantity: gray equivalent, eye\n", "day");
        JsonNode answer = run("\"more_responses\": [\"eye.csv\"]").json();
        assertEquals(1, OrganLimitTest.findings(answer, "dose-table-unused").size());
    }

    @Test
    void aTableInTheWrongPlaceIsRefusedWithItsLine() throws IOException {
        table("skin.csv", "# quantity: gray equivalent, skin\n", "day");
        refused(run("\"response\": \"skin.csv\""), "skin.csv, line 1: quantity is gray equivalent, skin; accepted:"
                + " effective dose in place of the built-in response; a table of an organ stands in more_responses");
        table("whole.csv", "", "day");
        table("twice.csv", "", "day");
        refused(run("\"response\": \"twice.csv\", \"more_responses\": [\"whole.csv\"]"), "whole.csv, line 5: quantity"
                + " is effective dose, given already by another table; accepted: one table for each quantity and time");
        table("again.csv", "# quantity: gray equivalent, skin\n", "day");
        refused(run("\"more_responses\": [\"skin.csv\", \"again.csv\"]"), "again.csv, line 1: quantity is gray"
                + " equivalent, skin, given already by another table; accepted: one table for each quantity and time");
    }

    private static void refused(Run run, String words) {
        assertEquals(UNREADABLE, run.code(), run.out());
        String text = run.json().get("error").get("text").asText();
        assertTrue(text.endsWith(words), text);
    }
}
