// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.finding.PairingRule;
import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.site.SamplePlans;
import bermwright.site.arrangement.ArrangedSite.Turned;
import bermwright.site.clearance.Clearance;
import bermwright.site.clearance.QuickClearance.Pose;
import bermwright.site.exposure.CoverForm;
import bermwright.site.exposure.SiteCover;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the quick engines say against what the full ones say. */
class QuickEnginesLawTest {
    /** Raster of 2 m and ground of 1 m against the mound's own nodes: share of the soil. */
    private static final double RASTER = 0.02;
    private static final int SITES = 60;

    /** Whatever clearance in plan refuses, the quick check sees. */
    @Test
    void seesWhateverClearanceInPlanRefuses() {
        Turned not = Turned.NOT;
        ArrangedSite site = ArrangedSite.of(not, Optional.empty(), List.of(not.hull("A", 80, 100, 75),
                not.hull("B", 90, 260, 75)));
        QuickSite quick = site.quick(Set.of(0, 1));
        Random random = new Random(5);
        int refused = 0;
        int let = 0;
        for (int i = 0; i < SITES; i++) {
            List<Pose> poses = new ArrayList<>();
            for (int k = 0; k < 2; k++) {
                poses.add(MovedPlan.rounded(Pose.of(new Point(60 + 280 * random.nextDouble(),
                        60 + 280 * random.nextDouble()), Azimuth.ofDegrees(360 * random.nextDouble()))));
            }
            List<Finding> found = Clearance.of(SiteShapes.of(quick.moves().at(poses), Optional.empty(), Map.of()),
                    Optional.empty()).findings().stream().filter(f -> f.level() == Finding.Level.REFUSE
                            && f.rule() instanceof PairingRule).toList();
            boolean quickly = quick.clearance().check(poses, new double[2]).shortfall() > 0;
            refused += found.isEmpty() ? 0 : 1;
            let += quickly ? 0 : 1;
            assertTrue(found.isEmpty() || quickly, () -> poses + " " + found);
        }
        assertTrue(refused > SITES / 10 && let > SITES / 10, refused + " refused, " + let + " let pass");
    }

    /** Two covers laid over each other on level ground hold the soil of the mound over both. */
    @Test
    void coversLaidOverEachOtherHoldTheSoilOfOneMound() {
        ElevationGrid level = SamplePlans.ground((x, y) -> 0);
        Hull a = SamplePlans.hull("A", new Point(90, 120), 90);
        Hull b = SamplePlans.hull("B", new Point(100, 142), 70);
        Plan plan = SamplePlans.plan(List.of(a, b));
        double whole = SiteCover.raised(plan, level, level).volume();
        double[] laid = CoverForm.volumes(List.of(placed(plan, a), placed(plan, b)), 1);
        assertEquals(whole, laid[0] + laid[1], RASTER * whole);
        double alone = SiteCover.raised(plan.withHulls(List.of(a)), level, level).volume();
        assertEquals(alone, CoverForm.of(plan, a).orElseThrow().volume(), RASTER * alone);
        assertTrue(laid[0] + laid[1] < 1.95 * alone, "they share soil");
    }

    private static CoverForm.Placed placed(Plan plan, Hull hull) {
        return new CoverForm.Placed(CoverForm.of(plan, hull).orElseThrow(), hull.baseCentre(), hull.layDownAzimuth());
    }

    @Test
    void saysWhatAnArrangementGivesUp() {
        Figures one = new Figures(OptionalDouble.of(1000), 500, 12, 20, 0, OptionalDouble.of(0.05));
        Figures other = new Figures(OptionalDouble.of(1100), 480, 10, 20, 0, OptionalDouble.of(0.05));
        Figures worse = new Figures(OptionalDouble.of(1100), 500, 12, 20, 0, OptionalDouble.of(0.05));
        List<Figures> all = List.of(one, other);
        assertEquals("4.2 % more soil placed, 2 more warnings than the best of these", one.givenUp(all));
        assertEquals("10.0 % more machine hours than the best of these", other.givenUp(all));
        assertFalse(one.isDominatedBy(other) || other.isDominatedBy(one));
        assertTrue(worse.isDominatedBy(one) && worse.isDominatedBy(other));
    }
}
