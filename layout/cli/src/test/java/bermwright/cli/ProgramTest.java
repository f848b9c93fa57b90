// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.site.assessment.Version;
import bermwright.site.planfile.PlanFiles;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProgramTest {
    @TempDir
    Path folder;
    private Path plan;

    @BeforeEach
    void site() throws IOException {
        plan = Run.site(folder, Run.plan());
    }

    @Test
    void endsWithNothingWhereNothingRefusesThePlan() throws IOException {
        // Where people stay, a buried hull without a hatch is refused: here nobody does.
        ObjectNode store = (ObjectNode) new ObjectMapper().readTree(Run.plan());
        ((ObjectNode) store.get("hulls").get(0)).remove("stations");
        Run.site(folder, store.toString());
        Run run = Run.of("assess", plan.toString(), "--json");
        assertEquals(0, run.code(), run.out());
        assertTrue(run.err().contains("100 %  done"), run.err());
    }

    @Test
    void endsWithOneWhereAFindingRefusesThePlan() throws IOException {
        Run.site(folder, Run.plan().replace("\"breaking_load_kN\": 200", "\"breaking_load_kN\": 9"));
        for (String command : List.of("assess", "lower", "cover", "dose")) {
            Run run = Run.of(command, plan.toString());
            assertEquals(1, run.code(), command);
            assertTrue(run.out().contains("REFUSED"), run.out());
        }
    }

    @Test
    void aPlanWithoutAHullIsAFindingAndNoError() throws IOException {
        Run.site(folder, "{\"bermwright_plan\": 1, \"ground\": {\"elevation_file\": \"ground.asc\"}}");
        Run run = Run.of("assess", plan.toString(), "--json");
        assertTrue(run.code() <= 1, run.err());
        assertTrue(run.out().contains("\"no-hull\""), run.out());
        assertEquals(0, run.json().get("hulls").size());
    }

    @Test
    void aMistakeInThePlanIsOneLineAndAnObject() throws IOException {
        Run.site(folder, Run.plan().replace("\"mass_t\": 26", "\"mass_kg\": 26000"));
        Run run = Run.of("assess", plan.toString(), "--json");
        assertEquals(2, run.code());
        JsonNode error = run.json().get("error");
        List<String> keys = new ArrayList<>();
        error.fieldNames().forEachRemaining(keys::add);
        assertEquals(List.of("file", "line", "key", "value", "accepted", "text"), keys);
        assertEquals(plan.toString(), error.get("file").asText());
        assertEquals(11, error.get("line").asInt());
        assertEquals("hulls[0].mass_kg", error.get("key").asText());
        assertEquals("bermwright: " + error.get("text").asText(), run.err().strip());
    }

    @Test
    void withoutJsonAMistakeLeavesStandardOutputEmpty() throws IOException {
        Run.site(folder, "{");
        Run run = Run.of("assess", plan.toString());
        assertEquals(2, run.code());
        assertEquals("", run.out());
        assertEquals(1, run.err().strip().lines().count(), run.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"assess", "lower", "cover", "dose", "size-cover", "ground"})
    void aFileThatIsNotThereEndsWithTwo(String command) {
        Run run = Run.of(command, folder.resolve("none.json").toString(), "--json");
        assertEquals(2, run.code());
        assertTrue(run.json().get("error").get("text").asText().contains("there is no"), run.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"assess --jsn PLAN", "asess PLAN", "assess", "ground", "schema --tilt", "",
        "assess PLAN more"})
    void aWrongOptionEndsWithTwo(String line) {
        List<String> arguments = new ArrayList<>(List.of(line.replace("PLAN", plan.toString()).strip().split(" ")));
        arguments.removeIf(String::isEmpty);
        Run plain = Run.of(arguments.toArray(String[]::new));
        assertEquals(2, plain.code(), plain.err());
        assertEquals("", plain.out());
        arguments.add("--json");
        Run json = Run.of(arguments.toArray(String[]::new));
        assertEquals(2, json.code());
        assertTrue(json.json().get("error").has("accepted"));
    }

    @Test
    void elevationFilesThatLieEndWithTwo() throws IOException {
        Files.writeString(folder.resolve("ground.asc"),
                "ncols 100\nnrows 100\nxllcenter 0\nyllcenter 20\ncellsize 2\n1");
        Run run = Run.of("assess", plan.toString(), "--json");
        assertEquals(2, run.code(), run.out());
        assertTrue(run.json().get("error").get("file").asText().endsWith("ground.asc"), run.out());
        Files.delete(folder.resolve("ground.asc"));
        assertEquals(2, Run.of("assess", plan.toString()).code());
    }

    @Test
    void stopsWhenAskedTo() {
        Run run = Run.of(true, "assess", plan.toString(), "--json");
        assertEquals(3, run.code());
        assertEquals("cancelled; nothing was written", run.json().get("error").get("text").asText());
    }

    @Test
    void printsTheSchemaAndTheVersion() {
        Run schema = Run.of("schema");
        assertEquals(0, schema.code());
        assertEquals(PlanFiles.schema(), schema.out());
        assertEquals(schema.json(), Run.of("schema", "--json").json());
        assertEquals("bermwright " + Version.whole(), Run.of("--version").out().strip());
        assertTrue(Run.of("assess", "--help").out().contains("PLAN"));
    }

    @Test
    void saysWhatAnElevationFileHolds() {
        Run run = Run.of("ground", folder.resolve("ground.asc").toString(), "--json");
        assertEquals(0, run.code(), run.err());
        assertEquals(100, run.json().get("rows").asInt());
        assertEquals(2, run.json().get("spacing_m").asDouble());
        assertEquals(1, run.json().get("slope_deg").get("median").asDouble(), 0.01);
        Run text = Run.of("ground", folder.resolve("ground.asc").toString());
        assertTrue(text.out().matches("(?s).*rows of nodes +100\\b.*"), text.out());
        assertFalse(text.out().contains("NaN"), text.out());
    }

    @Test
    void theEditorIsAnotherProgram() {
        assertEquals(2, Run.of("edit", plan.toString()).code());
    }
}
