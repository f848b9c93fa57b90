// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.List;
import org.junit.jupiter.api.Test;

class LandformTest {
    private static final double ROUNDING = 1e-9;
    private static final Point ORIGIN = new Point(0, 0);

    @Test
    void aCraterHasFloorRimAndReach() {
        Crater crater = new Crater(new Point(10, 20), 30, 6, 1);
        assertEquals(-5, crater.height(10, 20), ROUNDING);
        assertEquals(1, crater.height(25, 20), ROUNDING);
        assertEquals(1, crater.height(25 + 1e-12, 20), ROUNDING);
        assertEquals(0, crater.height(10 + 15 * 6, 20), ROUNDING);
        assertTrue(crater.height(10 + 15 * 5.9, 20) > 0);
    }

    @Test
    void refusesACraterDeeperThanItsRadius() {
        IllegalArgumentException thrown = assertThrows(IllegalArgumentException.class,
                () -> new Crater(ORIGIN, 10, 6, 0));
        assertEquals("depth is 6 m; it must be less than the rim radius, 5 m. Were diameter and radius swapped?",
                thrown.getMessage());
    }

    @Test
    void aPlaneFallsAlongItsAzimuth() {
        InclinedPlane plane = new InclinedPlane(new Point(5, 5), 100, Math.atan(0.1), Azimuth.ofDegrees(90));
        assertEquals(99, plane.height(15, 5), ROUNDING);
        assertEquals(100, plane.height(5, 77), ROUNDING);
        assertEquals(42, new InclinedPlane(new Point(0, 0), 42, 0, new Azimuth(0)).height(1e4, -3), ROUNDING);
    }

    @Test
    void aScarpDropsAndIsSteepestOnItsLine() {
        Scarp scarp = new Scarp(ORIGIN, Azimuth.ofDegrees(180), 12, Math.toRadians(20));
        assertEquals(6, scarp.height(0, 1000), ROUNDING);
        assertEquals(-6, scarp.height(0, -1000), ROUNDING);
        double step = 1e-4;
        double slope = (scarp.height(3, step) - scarp.height(3, -step)) / (2 * step);
        assertEquals(Math.tan(Math.toRadians(20)), slope, 1e-6);
    }

    @Test
    void moundsAndBermsKeepTheirSlope() {
        Mound mound = new Mound(ORIGIN, 3, 2, Math.toRadians(35));
        assertEquals(3, mound.height(1.9, 0), ROUNDING);
        assertEquals(0, mound.height(mound.toeRadius(), 0), ROUNDING);
        Berm berm = new Berm(ORIGIN, new Point(20, 0), 3, 1, Math.toRadians(35));
        assertEquals(3, berm.height(10, 0.5), ROUNDING);
        assertEquals(3 - Math.tan(Math.toRadians(35)), berm.height(10, 1.5), ROUNDING);
        assertEquals(3 - Math.tan(Math.toRadians(35)), berm.height(21.5, 0), ROUNDING);
    }

    @Test
    void clearingsStayFreeOfRims() {
        Point clear = new Point(150, 150);
        SyntheticGround.Recipe recipe = new SyntheticGround.Recipe(ORIGIN, new Point(300, 300),
                new InclinedPlane(new Point(0, 0), 0, 0, new Azimuth(0)), new RollingGround.Roughness(0, 50, 10, 0.8),
                new SyntheticGround.Strewing(3, 30, 1, 0.5, 1), List.of(new SyntheticGround.Clearing(clear, 40)),
                List.of());
        Landforms ground = SyntheticGround.of(recipe, 3);
        List<Crater> craters = ground.parts().stream().filter(Crater.class::isInstance).map(Crater.class::cast)
                .toList();
        assertTrue(craters.size() > 300, craters.size() + " craters");
        assertTrue(craters.stream().allMatch(c -> c.centre().distance(clear) >= 40 + c.rimDiameter() / 2));
        assertTrue(craters.stream().allMatch(c -> c.rimDiameter() >= 3 && c.rimDiameter() <= 30));
    }

    @Test
    void theSeedDecides() {
        RollingGround.Roughness roughness = new RollingGround.Roughness(2, 200, 5, 0.85);
        GridFrame frame = new GridFrame(20, 20, 0, 0, 3);
        ElevationGrid one = ElevationGrid.sampled(frame, RollingGround.of(1, roughness)::height);
        assertEquals(one, ElevationGrid.sampled(frame, RollingGround.of(1, roughness)::height));
        assertTrue(!one.equals(ElevationGrid.sampled(frame, RollingGround.of(2, roughness)::height)));
    }
}
