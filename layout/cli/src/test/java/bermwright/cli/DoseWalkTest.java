// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The second opinion of {@code dose --walk}, and what it refuses. */
class DoseWalkTest {
    private static final double SUM = 1e-9;
    private static final double ASKED = 0.04;

    @TempDir
    static Path folder;
    private static String plan;
    private static JsonNode all;

    @BeforeAll
    static void asked() throws IOException {
        String text = Run.plan().strip();
        plan = Run.site(folder, text.substring(0, text.length() - 1)
                + ", \"exposure\": { \"stay_days\": 100, \"event\": \"february 1956\" } }").toString();
        all = Run.of("dose", plan, "--walk", "--error", Double.toString(ASKED), "--json").json();
    }

    @Test
    void standsBesideWhatIsShown() {
        JsonNode walks = all.get("walks");
        List<String> sources = new ArrayList<>();
        for (JsonNode walk : walks) {
            sources.add(walk.get("source").asText());
            double sum = walk.get("straight_mSv").asDouble() + walk.get("made_mSv").asDouble()
                    + walk.get("slow_neutrons_mSv").asDouble() + walk.get("ground_mSv").asDouble();
            assertEquals(walk.get("walk_mSv").asDouble(), sum, SUM * sum);
            assertTrue(walk.get("reached").asBoolean());
            assertEquals("agree within errors", walk.get("verdict").asText(), walk.toString());
        }
        assertEquals("cosmic rays over the stay", sources.get(0));
        assertEquals(2 * all.get("hulls").get(0).get("stations").size(), sources.size());
        JsonNode cosmic = walks.get(0);
        assertTrue(cosmic.get("walk_error_mSv").asDouble() <= ASKED * cosmic.get("walk_mSv").asDouble());
        JsonNode station = all.get("hulls").get(0).get("stations").get(0);
        assertEquals(station.get("spread").get("cosmic").get("best_mSv").asDouble(),
                cosmic.get("shown_mSv").asDouble(), SUM);
        boolean noted = false;
        for (JsonNode model : all.get("models")) {
            noted |= model.get("id").asText().equals("dose-walk");
        }
        assertTrue(noted, "the model of the walks is said");
    }

    @Test
    void refusesWhatItCannotDo() {
        assertRefused("--station", "--walk", "--station", "elm/nowhere");
        assertRefused("--error", "--walk", "--error", "0.0001");
        assertRefused("--seed", "--seed", "5");
    }

    private static void assertRefused(String key, String... options) {
        List<String> arguments = new ArrayList<>(List.of("dose", plan, "--json"));
        arguments.addAll(List.of(options));
        Run run = Run.of(arguments.toArray(String[]::new));
        assertEquals(2, run.code());
        assertEquals(key, run.json().get("error").get("key").asText());
    }
}
