// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.shielding.dose.Responses;
import bermwright.site.SamplePlans;
import bermwright.site.finding.Finding;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SiteDoseTest {
    @TempDir
    Path directory;

    private SiteDose dose(Plan plan, SiteCover cover) {
        return SiteDose.of(plan, cover, new DoseSources(new Responses(directory), directory), Progress.NONE);
    }

    @Test
    void coverTakesMostOfTheDoseAway() {
        ElevationGrid ground = SamplePlans.ground((e, n) -> 0.01 * e);
        Plan plan = SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(120, 150), 75)));
        SiteCover cover = SiteCover.raised(plan, ground, ground);
        SiteDose dose = dose(plan, cover);
        StationDose bunks = dose.stations().get(0);
        assertTrue(bunks.reduction() > 0.5);
        assertEquals(1, dose.stations().size());
        assertTrue(cover.findings().stream().noneMatch(f -> f.level() == Finding.Level.REFUSE
                && !f.rule().equals("cover-hatch-buried")));
    }
}
