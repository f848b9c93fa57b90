// SPDX-License-Identifier: Apache-2.0
package bermwright.site.burial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.foundation.Point;
import bermwright.site.SamplePlans;
import bermwright.site.exposure.SiteCover;
import bermwright.site.plan.Hull;
import bermwright.site.plan.HullBody;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import org.junit.jupiter.api.Test;

class HullBurialTest {
    /** Cells of the depth map are half a metre and five degrees: the pressure's summit lies between them. */
    private static final double MAP_SHARE = 0.02;
    private static final ElevationGrid GROUND = SamplePlans.ground((e, n) -> 0);

    private static HullBurial burial(Plan plan) {
        return HullBurial.of(plan, SiteCover.raised(plan, GROUND, GROUND)).get(0);
    }

    @Test
    void theCrownCarriesItsSoilAndTheFlankLess() {
        Plan plan = SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(120, 150), 90)));
        HullBurial burial = burial(plan);
        LiftLoad last = burial.lifts().get(burial.lifts().size() - 1);
        double crown = 1650 * 1.62 * 2.5;
        assertTrue(last.greatest() >= crown * (1 - MAP_SHARE), "greatest " + last.greatest());
        assertEquals(7.6 + 2.5, last.height(), 0.1);
        assertEquals((70e3 + burial.heldEnds().orElseThrow()) / last.greatest(), burial.shellFactor(), 1e-9);
        assertTrue(burial.lifts().get(0).pressurised() > 10 * burial.shellFactor());
        assertTrue(burial.findings().stream().anyMatch(f -> f.rule().id().equals("burial-needs-pressure")
                && f.level() == Finding.Level.WARN));
    }

    @Test
    void anEmptyThinHullUnderItsCoverIsRefused() {
        Plan plan = SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(120, 150), 90)));
        Plan flat = plan.withHull("A", h -> new Hull(h.id(),
                new HullBody(h.length(), h.diameter(), h.baseEnd(), h.farEnd(), h.skin(), h.stowage(), h.shell(),
                        0),
                h.massProperties(), h.placement(), h.lowering(), h.seat(), h.hatches(), h.stations(), h.cover(),
                h.held(), h.annotations()));
        HullBurial burial = burial(flat);
        assertTrue(burial.shellFactor() < 1);
        assertTrue(burial.findings().stream().anyMatch(f -> f.rule().id().equals("burial-crushed")
                && f.level() == Finding.Level.REFUSE));
    }

    @Test
    void heldEndsHelpAndLongTubesAreTheirLimit() {
        ShellBuckling.ThinShell shell = new ShellBuckling.ThinShell(0.005, 200e9, 350e6, 0.29);
        double longTube = ShellBuckling.longTube(shell, 3.8);
        assertTrue(ShellBuckling.heldEnds(shell, 3.8, 38) > 5 * longTube);
        assertEquals(longTube, ShellBuckling.heldEnds(shell, 3.8, 1e6), longTube * 1e-9);
    }
}
