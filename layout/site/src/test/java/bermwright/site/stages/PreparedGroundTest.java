// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.SamplePlans;
import bermwright.site.plan.Kept;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Preparation;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PreparedGroundTest {
    /** The sides' feet are known to a cell; one cell round a square of 40 m at 1 m of height. */
    private static final double SIDES = 0.02;

    @Test
    void aTrenchIsCutToItsLevelWithItsSides() {
        PreparedGround made = PreparedGround.of(plan(bench(Preparation.Kind.TRENCH, OptionalDouble.of(4), 100)),
                SamplePlans.ground((e, n) -> 5));
        assertEquals(4, made.surface().height(120, 120));
        assertEquals(5, made.surface().height(80, 80));
        double frustum = 1600 + 4 * 40 * 0.5 / Math.tan(Math.toRadians(30));
        assertEquals(frustum, made.moved().get(0).volumes().cut(), SIDES * frustum);
        assertEquals(0, made.moved().get(0).volumes().fill());
    }

    @Test
    void aBenchWithoutALevelCutsWhatItFills() {
        Plan plan = plan(bench(Preparation.Kind.BENCH, OptionalDouble.empty(), 100));
        PreparedGround made = PreparedGround.of(plan, SamplePlans.ground((e, n) -> 0.1 * e));
        double factor = plan.ground().regolith().bankDensity() / plan.ground().regolith().placedDensity();
        double cut = made.moved().get(0).volumes().cut();
        assertTrue(cut > 0);
        assertEquals(factor * cut, made.moved().get(0).volumes().fill(), 0.1 * cut);
    }

    @Test
    void aPreparationOffTheGridIsAFindingAndNothingIsMoved() {
        ElevationGrid ground = SamplePlans.ground((e, n) -> 5);
        PreparedGround made =
                PreparedGround.of(plan(bench(Preparation.Kind.BENCH, OptionalDouble.of(4), 290)), ground);
        assertEquals(ground, made.surface());
        assertEquals("preparation-no-ground", made.findings().get(0).rule());
    }

    private static Preparation bench(Preparation.Kind kind, OptionalDouble level, double corner) {
        Ring area = new Ring(List.of(new Point(corner, 100), new Point(corner + 40, 100),
                new Point(corner + 40, 140), new Point(corner, 140)));
        return new Preparation("bed", kind, area, level, Math.toRadians(1), Math.toRadians(30), Kept.NOTHING);
    }

    private static Plan plan(Preparation preparation) {
        Plan p = SamplePlans.plan(List.of());
        return new Plan(p.title(), p.ground(), p.hulls(), p.walls(), p.tunnels(), p.keepOuts(), p.corridors(),
                p.landingPads(), List.of(preparation), p.borrowGrounds(), p.stockpiles(), p.machines(), p.exposure(),
                p.rules(), p.orderOfWork(), p.kept());
    }
}
