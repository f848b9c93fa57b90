// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.mend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.SampleSite;
import bermwright.finding.Finding;
import bermwright.foundation.Progress;
import bermwright.site.assessment.LiveSite;
import bermwright.site.assessment.SiteGround;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import bermwright.site.planfile.PlanValues;
import bermwright.terrain.grid.ElevationGrid;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GearKitTest {
    @TempDir
    private Path folder;

    @Test
    void hullsOfTwoSizesGetAKitThatRefusesNothing() {
        Path file = SampleSite.write(folder);
        Plan sample = PlanFiles.read(file);
        ElevationGrid grid = SiteGround.read(sample, file, Progress.NONE).grid();
        for (double scale : new double[] {1, 1.5}) {
            Plan bare = PlanValues.without(sample, "hulls[0].lowering");
            bare = PlanValues.with(bare, java.util.Map.of("hulls[0].length_m", 38 * scale, "hulls[0].diameter_m",
                    7.4 * scale, "hulls[0].mass_t", 74 * scale * scale, "hulls[0].centre_of_mass_from_base_m",
                    20 * scale));
            assertTrue(refusals(bare, grid).size() > 0, "a hull without gear is refused");
            GearKit kit = GearKit.of(bare, "A", grid, Progress.NONE);
            assertEquals(List.of(), kit.left().stream().map(Finding::text).toList(), "scale " + scale);
            assertEquals(List.of(), refusals(kit.edit().applied(bare), grid));
            assertTrue(kit.words().stream().anyMatch(w -> w.startsWith("Poles ")), kit.words().toString());
        }
    }

    private static List<String> refusals(Plan plan, ElevationGrid grid) {
        return LiveSite.laydownAsPlanned(plan, plan.hull("A").orElseThrow(), grid).findings().stream()
                .filter(f -> f.level() == Finding.Level.REFUSE).map(Finding::text).toList();
    }
}
