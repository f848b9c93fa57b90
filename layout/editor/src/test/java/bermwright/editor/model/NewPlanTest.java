// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewPlanTest {
    @TempDir
    private Path folder;

    @Test
    void holdsTheGroundAndWritesEveryDefaultOut() {
        Path file = folder.resolve("plans/new.json");
        Plan plan = NewPlan.on(folder.resolve("rim.tif"), file);
        assertEquals("../rim.tif", plan.ground().elevationFile());
        assertTrue(plan.hulls().isEmpty());
        String text = PlanFiles.text(plan);
        for (String key : new String[] {"elevation_spread_m", "gravity_m_s2", "placed_density_kg_m3",
            "stable_slope_deg", "stay_days", "pivot_hold_factor"}) {
            assertTrue(text.contains("\"" + key + "\""), key + " is not printed in\n" + text);
        }
        Plan bare = PlanFiles.read("{\"bermwright_plan\":1,\"ground\":{\"elevation_file\":\"x.tif\"}}", "");
        assertEquals(bare.ground().gravity(), plan.ground().gravity());
        assertEquals(bare.ground().regolith().stableSlope(), plan.ground().regolith().stableSlope());
        assertEquals(plan, PlanFiles.read(text, ""));
    }

    @Test
    void neverTakesTheNameOfAFileThatIsThere() throws IOException {
        Path elevation = folder.resolve("rim.v2.tif");
        assertEquals("rim.v2-plan.json", NewPlan.beside(elevation).getFileName().toString());
        Files.writeString(NewPlan.beside(elevation), "{}");
        assertEquals("rim.v2-plan-2.json", NewPlan.beside(elevation).getFileName().toString());
        assertTrue(NewPlan.isPlan(Path.of("a.JSON")));
        assertFalse(NewPlan.isPlan(elevation));
    }
}
