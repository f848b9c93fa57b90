// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.hazard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class HazardLawTest {
    private static final SoilCrater SOIL = new SoilCrater(1600, 500, 1.62);

    @Test
    void whatADepthStopsLeavesACraterOfThatDepthOverTheMargin() {
        double mass = SOIL.stopped(1);
        assertEquals(1 / SoilCrater.MARGIN, SOIL.depth(new SoilCrater.Body(mass, MeteoroidFlux.SPEED,
                MeteoroidFlux.DENSITY)), 1e-6);
        assertEquals(0, SOIL.stopped(0));
    }

    @Test
    void weakerLighterSoilAndLessGravityGiveDeeperCraters() {
        SoilCrater.Body body = new SoilCrater.Body(1e-3, 20_000, 2500);
        double depth = SOIL.depth(body);
        assertTrue(new SoilCrater(1600, 100, 1.62).depth(body) > depth);
        assertTrue(new SoilCrater(1400, 500, 1.62).depth(body) > depth);
        assertTrue(new SoilCrater(1600, 500, 0.5).depth(body) > depth);
    }

    @Test
    void aWallStopsTheGrainItWasMadeFor() {
        SkinWall wall = SkinWall.of(7850);
        double diameter = 1e-3;
        double thickness = wall.required(diameter, MeteoroidFlux.SPEED, MeteoroidFlux.DENSITY);
        assertEquals(MeteoroidFlux.DENSITY * Math.PI / 6 * Math.pow(diameter, 3), wall.stopped(thickness), 1e-12);
    }

    @Test
    void skyAndChance() {
        assertEquals(1, MeteoroidFlux.seen(0));
        assertEquals(0.5, MeteoroidFlux.seen(Math.PI / 2), 1e-15);
        assertEquals(0, MeteoroidFlux.seen(Math.PI), 1e-15);
        assertEquals(1e-9, MeteoroidFlux.chance(1e-9), 1e-15);
    }

    @Test
    void slowGrainsFlyAsOnFlatGround() {
        double flat = 50 * 50 * Math.sin(2 * ThrownSoil.RISE) / 1.62;
        assertEquals(flat / (2 * Math.PI * ThrownSoil.MOON_RADIUS),
                ThrownSoil.range(50, ThrownSoil.RISE, 1.62), 1e-3 * flat / (2 * Math.PI * ThrownSoil.MOON_RADIUS));
        assertEquals(4, ThrownSoil.onUpright(1000, 100) / ThrownSoil.onUpright(1000, 200), 1e-12);
    }

    @Test
    void atTheDepthWhereTheDayIsNotFeltItsSwingIsWhatCountsAsNone() {
        SoilHeat soil = new SoilHeat(0.01, 1600, 670);
        assertEquals(1, soil.swing(145, soil.notFelt(145, 1)), 1e-12);
        assertEquals(0, soil.notFelt(0.5, 1));
        assertEquals(2, new SoilHeat(0.04, 1600, 670).skinDepth() / soil.skinDepth(), 1e-12);
    }
}
