// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SurveyCommandTest {
    private static final int NODES = 150;

    @TempDir
    Path folder;
    private Path file;

    @BeforeEach
    void region() throws IOException {
        StringBuilder text = new StringBuilder("ncols " + NODES + "\nnrows " + NODES
                + "\nxllcenter 1000\nyllcenter 2000\ncellsize 4\nNODATA_value -9999\n");
        for (int r = 0; r < NODES; r++) {
            for (int c = 0; c < NODES; c++) {
                text.append(String.format(Locale.ROOT, "%.3f ", 100 + 4 * Math.sin(c / 23.0) * Math.cos(r / 31.0)));
            }
            text.append('\n');
        }
        file = folder.resolve("region.asc");
        Files.writeString(file, text);
    }

    @Test
    void givesPlacesWithReasonsAndAPlanForEach() {
        Path out = folder.resolve("found");
        Run run = Run.of("survey", file.toString(), "--best", "2", "--headings", "12", "--out", out.toString(),
                "--json");
        assertEquals(0, run.code(), run.err());
        JsonNode places = run.json().get("places");
        assertEquals(2, places.size());
        JsonNode tally = run.json().get("tally");
        assertEquals(NODES * NODES, tally.get("admitted").asInt() + tally.get("too_steep").asInt()
                + tally.get("too_rough").asInt() + tally.get("no_soil").asInt() + tally.get("no_sight").asInt()
                + tally.get("unknown").asInt());
        assertTrue(places.get(0).get("score").asDouble() >= places.get(1).get("score").asDouble());
        assertEquals(8, places.get(0).get("reasons").size());
        for (String name : new String[] {"scores.tif", "scores.svg", "places.csv", "place-1.json", "place-2.json"}) {
            assertTrue(Files.isRegularFile(out.resolve(name)), name);
        }
        // The built-in hull is made so that nothing of its own refuses it where it is put.
        Run assessed = Run.of("assess", out.resolve("place-1.json").toString(), "--json");
        assertEquals(0, assessed.code(), assessed.out());
        JsonNode hull = assessed.json().get("hulls").get(0);
        assertTrue(Math.abs(hull.get("lying").get("slope_along_deg").asDouble()) < 5, hull.get("lying").toString());
        assertEquals(3, hull.get("stations").size());
        assertFalse(assessed.out().contains("slope-under-hull"), assessed.out());
    }

    @Test
    void aMapCanBeReadAsAnElevationFile() {
        Path out = folder.resolve("found");
        assertEquals(0, Run.of("survey", file.toString(), "--best", "1", "--headings", "4", "--out",
                out.toString()).code());
        Run run = Run.of("ground", out.resolve("scores.tif").toString(), "--json");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.json().get("highest_m").asDouble() <= 1, run.out());
        assertTrue(run.json().get("missing").asInt() > 0, run.out());
    }

    @Test
    void wrongOptionsAreNamed() {
        refused("--best", "--best", "0");
        refused("--within", "--within", "0,0,1,1");
        refused("--relay", "--relay", "north");
        refused("--light", "--light", "2030-01-01,2029-01-01,10");
        refused("--borrow", "--borrow", "1,2");
        refused("--spark", "--spark", "local[2]");
    }

    private void refused(String named, String... options) {
        String[] words = new String[options.length + 2];
        words[0] = "survey";
        words[1] = file.toString();
        System.arraycopy(options, 0, words, 2, options.length);
        Run run = Run.of(words);
        assertEquals(2, run.code(), run.out());
        assertTrue(run.err().contains(named), run.err());
    }
}
