// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Limits on skin, eye and blood-forming organs are held against their own doses. */
class OrganLimitTest {
    private static final int UNREADABLE = 2;

    @TempDir
    Path folder;

    private String plan(String limits) throws IOException {
        String plan = Run.plan().strip().replace("\"thickness_m\": 2.5", "\"thickness_m\": 0.02");
        return Run.site(folder, plan.substring(0, plan.length() - 1)
                + ", \"exposure\": { \"stay_days\": 100, \"event\": \"august 1972\", \"limits\": [" + limits + "] } }")
                .toString();
    }

    private static String limit(String quantity, double limit) {
        return "{ \"quantity\": \"" + quantity + "\", \"from\": \"event\", \"over\": \"30 days\", \"limit_mSv\": "
                + limit + ", \"source\": \"" + quantity + "\" }";
    }

    static List<JsonNode> findings(JsonNode answer, String rule) {
        return StreamSupport.stream(answer.get("findings").spliterator(), false)
                .filter(f -> f.get("rule").asText().equals(rule)).toList();
    }

    /** A soft event gives the skin behind a bare hull more than what lies deep, and each limit counts its own. */
    @Test
    void eachOrganCountsItsOwnDose() throws IOException {
        JsonNode answer = Run.of("dose", plan(limit("gray equivalent, skin", 1e-3) + ","
                + limit("gray equivalent, eye", 1e-3) + "," + limit("gray equivalent, blood-forming organs", 1e-3) + ","
                + limit("effective dose", 1e-3)), "--json").json();
        List<JsonNode> found = findings(answer, "dose-limit");
        assertEquals(4, found.size(), found.toString());
        double[] doses = found.stream().mapToDouble(f -> f.get("measured").asDouble()).toArray();
        assertTrue(doses[0] > doses[1] && doses[1] > doses[2] && doses[2] > 0, found.toString());
        for (JsonNode one : found) {
            boolean isEffective = one.get("text").asText().startsWith("The effective dose from a solar particle event");
            assertEquals(isEffective ? "mSv" : "mGy-Eq", one.get("unit").asText(), one.toString());
        }
        assertEquals(1, found.stream().filter(f -> f.get("text").asText().startsWith("The gray equivalent,"
                + " blood-forming organs from a solar particle event")).count(), found.toString());
    }

    @Test
    void aLimitAboveAPublishedOneIsSaidWithItsRevision() throws IOException {
        JsonNode answer = Run.of("dose", plan(limit("gray equivalent, blood-forming organs", 400)), "--json").json();
        JsonNode found = findings(answer, "dose-limit-above-published").get(0);
        assertEquals(250, found.get("limit").asDouble(), 1e-9);
        assertTrue(found.get("source").asText().contains("Revision"), found.toString());
        assertTrue(findings(Run.of("dose", plan(limit("gray equivalent, blood-forming organs", 250)), "--json").json(),
                "dose-limit-above-published").isEmpty());
    }

    @Test
    void aQuantityThatNothingIsWorkedOutForIsRefused() throws IOException {
        Run run = Run.of("dose", plan(limit("absorbed dose", 1)), "--json");
        assertEquals(UNREADABLE, run.code());
        assertTrue(run.json().get("error").get("text").asText().contains("exposure.limits[0].quantity is"
                + " \"absorbed dose\"; accepted: \"effective dose\", \"gray equivalent, skin\""), run.out());
    }
}
