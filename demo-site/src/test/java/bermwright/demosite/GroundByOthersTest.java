// SPDX-License-Identifier: Apache-2.0
package bermwright.demosite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Progress;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import bermwright.site.planfile.PlanValues;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.gridfile.GroundFiles;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An elevation file that this project did not write goes through {@code ground} and {@code assess}. */
class GroundByOthersTest {
    /** Both sides print the same 32-bit numbers; the text of one has nine digits or more. */
    private static final double SAME_FLOAT = 1e-6;

    @TempDir
    Path folder;
    private Path file;

    @BeforeEach
    void unpack() throws IOException {
        file = folder.resolve("by-gdal.tif");
        try (InputStream in = GroundByOthersTest.class.getResourceAsStream("by-gdal.tif")) {
            Files.copy(Objects.requireNonNull(in), file);
        }
    }

    @Test
    void holdsTheHeightsThatItsWriterReads() throws IOException {
        ElevationGrid grid = GroundFiles.read(file, GroundFiles.Knowledge.NONE, Progress.NONE).grid();
        List<String> lines;
        try (InputStream in = GroundByOthersTest.class.getResourceAsStream("by-gdal-heights.csv")) {
            lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines()
                    .filter(l -> Character.isDigit(l.charAt(0))).toList();
        }
        assertEquals(6, lines.size());
        for (String line : lines) {
            String[] cells = line.split(",");
            int row = grid.frame().rows() - 1 - Integer.parseInt(cells[1]);
            int column = Integer.parseInt(cells[0]);
            assertEquals(Double.parseDouble(cells[2]), grid.nodeHeight(row, column), SAME_FLOAT, line);
        }
    }

    @Test
    void isLookedOver() {
        JsonNode ground = Cli.run("ground", file.toString(), "--json").json();
        assertEquals(160, ground.get("rows").asInt());
        assertEquals(120, ground.get("columns").asInt());
        assertEquals(1.5, ground.get("spacing_m").asDouble());
        assertEquals(0, ground.get("missing").asInt());
        assertEquals("IAU_2015:30135", ground.get("reference_system").get("code").asText());
        assertEquals(18_150.75, ground.get("west_m").asDouble(), SAME_FLOAT);
        assertEquals(-12_299.25, ground.get("south_m").asDouble(), SAME_FLOAT);
    }

    @Test
    void carriesAPlan() {
        Plan demo = PlanFiles.read(Cli.DEMO.resolve("plan.json"));
        Plan two = PlanValues.without(PlanValues.with(demo, "ground.elevation_file", "\"by-gdal.tif\""), "hulls[2]");
        for (int i = 0; i < two.orderOfWork().size(); i++) {
            if (two.orderOfWork().get(i).asBuilt().isPresent()) {
                two = PlanValues.without(two, "order_of_work[" + i + "].as_built");
            }
        }
        Path plan = folder.resolve("plan.json");
        PlanFiles.write(two, plan);
        JsonNode here = Cli.run("assess", plan.toString(), "--json").json();
        assertEquals(2, here.get("hulls").size());
        for (JsonNode hull : here.get("hulls")) {
            assertTrue(Math.abs(hull.get("lying").get("slope_along_deg").asDouble()) < 3, hull.get("id").asText());
            assertTrue(hull.get("cover").get("volume_m3").asDouble() > 1000, hull.get("id").asText());
        }
    }
}
