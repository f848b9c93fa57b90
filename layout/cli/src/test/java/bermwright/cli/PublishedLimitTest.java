// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan's limits taken from published ones by name, and limits over a career. */
class PublishedLimitTest {
    private static final int UNREADABLE = 2;
    private static final double MILLI = 1000;
    /** Figures that go through the file and the page as decimal text. */
    private static final double ROUNDING = 1e-9;

    @TempDir
    Path folder;

    private String plan(String stay, String limits) throws IOException {
        String plan = Run.plan().strip();
        return Run.site(folder, plan.substring(0, plan.length() - 1) + ", \"exposure\": {\n" + stay
                + "\"event\": \"august 1972\",\n\"limits\": [\n" + limits + "\n] } }").toString();
    }

    @Test
    void aNamedLimitIsJudgedWithItsRevision() throws IOException {
        String plan = plan("\"stay_days\": 100,", "{ \"published\": \"short term, blood-forming organs\" },"
                + "{ \"published\": \"cosmic rays on a planet's surface, a day\" }");
        JsonNode limits = Run.of("dose", plan, "--json").json().get("limits");
        JsonNode blood = limits.get(0);
        assertEquals("gray equivalent, blood-forming organs", blood.get("quantity").asText());
        assertEquals("30 days", blood.get("over").asText());
        assertEquals(250, blood.get("limit_mSv").asDouble(), ROUNDING);
        assertEquals("mGy-Eq", blood.get("unit").asText());
        assertTrue(blood.get("source").asText().contains("Revision C"), blood.toString());
        assertEquals("confirm the revision before use", blood.get("confirm").asText());
        assertTrue(blood.get("judged").asBoolean());
        assertEquals("crew", blood.get("doses").get(0).get("who").asText());
        JsonNode day = limits.get(1);
        assertEquals(0.8, day.get("limit_mSv").asDouble(), ROUNDING);
        JsonNode station = Run.of("dose", plan, "--json").json().get("hulls").get(0).get("stations").get(0);
        assertEquals(station.get("spread").get("cosmic").get("best_mSv").asDouble() / 100,
                day.get("doses").get(1).get("best_mSv").asDouble(), ROUNDING);
        String text = Run.of("dose", plan).out().replaceAll("\\s+", " ");
        assertTrue(text.contains("gray equivalent, blood-forming organs from all sources over any 30 days,"
                + " 250.0 mGy-Eq. Limit from:"
                + " NASA-STD-3001 Volume 1 Revision C, second-hand; confirm the revision before use."), text);
    }

    @Test
    void anUnknownNameIsRefusedWithFileKeyValueAndTheNames() throws IOException {
        Run run = Run.of("dose", plan("", "{ \"published\": \"short term\" }"), "--json");
        assertEquals(UNREADABLE, run.code());
        JsonNode error = run.json().get("error");
        assertEquals("exposure.limits[0].published", error.get("key").asText());
        assertEquals("\"short term\"", error.get("value").asText());
        assertTrue(error.get("file").asText().endsWith(".json"), error.toString());
        assertTrue(error.get("line").asInt() > 1, error.toString());
        assertTrue(error.get("accepted").asText().startsWith("\"career\", \"short term, blood-forming organs\", "),
                error.toString());
    }

    @Test
    void neitherNameNorValueIsRefused() throws IOException {
        Run run = Run.of("dose", plan("", "{ \"over\": \"stay\" }"), "--json");
        assertEquals(UNREADABLE, run.code());
        JsonNode error = run.json().get("error");
        assertEquals("exposure.limits[0].limit_mSv", error.get("key").asText());
        assertTrue(error.get("accepted").asText().contains("or published with the name of a limit: \"career\""),
                error.toString());
    }

    @Test
    void aNameAndAnotherValueIsAFinding() throws IOException {
        JsonNode answer = Run.of("dose", plan("\"stay_days\": 100,", "{ \"published\": \"short term, skin\","
                + " \"limit_mSv\": 1600 }"), "--json").json();
        JsonNode found = OrganLimitTest.findings(answer, "dose-limit-differs-from-published").get(0);
        assertEquals("exposure.limits[0]", found.get("subject").asText());
        assertEquals(1500, found.get("limit").asDouble(), ROUNDING);
        assertTrue(found.get("text").asText().contains("limit_mSv 1600 against 1500"), found.toString());
        assertEquals(1500, answer.get("limits").get(0).get("limit_mSv").asDouble(), ROUNDING);
    }

    @Test
    void aCareerIsJudgedByTheStayWhereThePlanGivesIt() throws IOException {
        JsonNode answer = Run.of("dose", plan("\"stay_days\": 100,", "{ \"published\": \"career\" },"
                + "{ \"limit_mSv\": 600 }"), "--json").json();
        JsonNode career = answer.get("limits").get(0);
        assertTrue(career.get("judged").asBoolean());
        assertEquals(answer.get("limits").get(1).get("doses"), career.get("doses"), "the stay's dose");
        JsonNode said = OrganLimitTest.findings(answer, "dose-career").get(0);
        assertEquals(career.get("doses").get(0).get("high_mSv").asDouble(), said.get("measured").asDouble(),
                ROUNDING * MILLI);
        assertTrue(said.get("text").asText().contains("before and will get after"), said.toString());
        assertEquals("computed", model(answer).get("status").asText());
        assertTrue(model(answer).get("valid_for").asText().contains("is not known, since the plan gives no"
                + " solar_date"));
    }

    @Test
    void aLongStayUnderOneSunIsMarked() throws IOException {
        JsonNode oneSun = Run.of("dose", plan("\"stay_days\": 1500,", "{ \"published\": \"career\" }"), "--json")
                .json();
        assertEquals("extrapolated", model(oneSun).get("status").asText());
        JsonNode dated = Run.of("dose", plan("\"stay_days\": 1500, \"solar_date\": \"2015-01-01\",",
                "{ \"published\": \"career\" }"), "--json").json();
        assertEquals("extrapolated", model(dated).get("status").asText());
        assertTrue(model(dated).get("valid_for").asText().contains("from 2015-01-01 to 2019-02-09"),
                model(dated).toString());
        JsonNode steady = Run.of("dose", plan("\"stay_days\": 200, \"solar_date\": \"2019-10-01\",",
                "{ \"published\": \"career\" }"), "--json").json();
        assertEquals("computed", model(steady).get("status").asText());
    }

    @Test
    void withoutAStayACareerIsSaidNotToBeJudged() throws IOException {
        String plan = plan("", "{ \"published\": \"career, skin\" }");
        JsonNode answer = Run.of("dose", plan, "--json").json();
        JsonNode career = answer.get("limits").get(0);
        assertFalse(career.get("judged").asBoolean());
        assertEquals("not judged", career.get("verdict").asText());
        assertEquals(0, career.get("doses").size());
        assertTrue(career.get("reason").asText().startsWith("no length of stay is given"), career.toString());
        JsonNode said = OrganLimitTest.findings(answer, "dose-limit-not-judged").get(0);
        assertEquals("refuse", said.get("level").asText());
        assertTrue(said.get("text").asText().contains("is not judged, so it is not met: no length of stay is given"),
                said.toString());
        JsonNode sized = Run.of("size-cover", plan, "--json").json();
        assertEquals(1, OrganLimitTest.findings(sized, "dose-limit-not-judged").size(), sized.toString());
        assertTrue(OrganLimitTest.findings(sized, "size-cover-no-limit").isEmpty());
    }

    private static JsonNode model(JsonNode answer) {
        for (JsonNode model : answer.get("models")) {
            if (model.get("id").asText().equals("career-dose")) {
                return model;
            }
        }
        throw new AssertionError("no model note career-dose in " + answer.get("models"));
    }
}
