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
        JsonNode skin = of(found, "skin");
        JsonNode eye = of(found, "eye");
        JsonNode marrow = of(found, "blood-forming organs");
        JsonNode effective = found.stream().filter(f -> f.get("text").asText().startsWith("The effective dose from a"
                + " solar particle event")).findFirst().orElseThrow();
        assertTrue(dose(skin) > dose(eye) && dose(eye) > dose(marrow) && dose(marrow) > 0, found.toString());
        assertTrue(dose(skin) > dose(effective) && dose(effective) > 0, found.toString());
        assertEquals("mSv", effective.get("unit").asText());
        assertEquals("mGy-Eq", skin.get("unit").asText());
        assertEquals("mGy-Eq", marrow.get("unit").asText());
    }

    private static double dose(JsonNode finding) {
        return finding.get("measured").asDouble();
    }

    private static JsonNode of(List<JsonNode> found, String organ) {
        return found.stream().filter(f -> f.get("text").asText().startsWith("The gray equivalent, " + organ
                + " from a solar particle event")).findFirst().orElseThrow();
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
