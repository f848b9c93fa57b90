// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.SamplePlans;
import bermwright.site.clearance.CorridorGrade;
import bermwright.site.plan.Corridor;
import bermwright.site.plan.Annotations;
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
        assertEquals("preparation-no-ground", made.findings().get(0).rule().id());
    }

    /** A ridge 4 m high with flanks of 20 degrees, and a way over it that may have 8. */
    @Test
    void aCorridorIsCutToItsGradeAndBalances() {
        ElevationGrid ridge = SamplePlans.ground((e, n) -> Math.max(0,
                4 - Math.abs(e - 150) * Math.tan(Math.toRadians(20))));
        Corridor road = new Corridor("road", 6, Math.toRadians(8), List.of(new Point(100, 150), new Point(200, 150)),
                Annotations.NOTHING);
        Plan plan = plan(List.of(), List.of(road));
        PreparedGround made = PreparedGround.of(plan, ridge);
        assertTrue(CorridorGrade.steepest(road, ridge).grade() > Math.toRadians(15));
        assertTrue(CorridorGrade.steepest(road, made.surface()).grade() <= Math.toRadians(8) + 1e-6);
        assertEquals("road", made.moved().get(0).id());
        assertTrue(made.moved().get(0).volumes().cut() > 50 && made.moved().get(0).volumes().fill() > 50);
        assertEquals("corridor-cut", made.findings().get(0).rule().id());
        assertEquals(0, made.surface().height(150, 50) - ridge.height(150, 50));
        Corridor gentle = new Corridor("lane", 6, Math.toRadians(25), road.line(), Annotations.NOTHING);
        assertTrue(PreparedGround.of(plan(List.of(), List.of(gentle)), ridge).moved().isEmpty());
    }

    private static Preparation bench(Preparation.Kind kind, OptionalDouble level, double corner) {
        Ring area = new Ring(List.of(new Point(corner, 100), new Point(corner + 40, 100),
                new Point(corner + 40, 140), new Point(corner, 140)));
        return new Preparation("bed", kind, area, level, Math.toRadians(1), Math.toRadians(30), Annotations.NOTHING);
    }

    private static Plan plan(Preparation preparation) {
        return plan(List.of(preparation), List.of());
    }

    private static Plan plan(List<Preparation> preparations, List<Corridor> corridors) {
        Plan p = SamplePlans.plan(List.of());
        return new Plan(p.title(), p.ground(), p.hulls(), p.walls(), p.tunnels(), p.keepOuts(), corridors,
                p.landingPads(), preparations, p.borrowGrounds(), p.stockpiles(), p.machines(), p.exposure(),
                p.rules(), p.orderOfWork(), p.arrangeWithin(), p.annotations());
    }
}
