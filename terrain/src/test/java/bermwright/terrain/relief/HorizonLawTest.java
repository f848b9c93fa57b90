// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class HorizonLawTest {
    /** The ground between nodes is bilinear, steps are half a cell (rad). */
    private static final double CELL = Math.toRadians(0.02);

    /** A cone of 100 m and 30 degrees, 1 km north of the eye. */
    private static ElevationGrid cone(Point top) {
        return ElevationGrid.sampled(new GridFrame(801, 801, -1000, -400, 2.5), (e, n) ->
                Math.max(0, 100 - Math.tan(Math.toRadians(30)) * Math.hypot(e - top.east(), n - top.north())));
    }

    @Test
    void theTopOfAConeIsSeenWhereGeometryPutsIt() {
        Point top = new Point(0, 1000);
        Horizon.Sight sight = Horizon.towards(cone(top), new Point(0, 0), 2, 1500, new Azimuth(0));
        double drop = 1000.0 * 1000 / 2 / Horizon.MOON_RADIUS;
        assertEquals(Math.atan((100 - 2 - drop) / 1000), sight.elevation(), CELL);
        assertEquals(1000, sight.distance(), 6);
    }

    @Test
    void theFlankOfAConeIsSeenWhereGeometryPutsIt() {
        // Along an azimuth that passes the axis at a distance p the cone's section is a hyperbola: the elevation is
        // greatest where d = (h0 + sqrt(...)), found here by a fine search over the formula.
        Point top = new Point(0, 1000);
        Azimuth azimuth = Azimuth.ofDegrees(4);
        double best = -1;
        for (double d = 1; d < 1500; d += 0.01) {
            double height = Math.max(0, 100 - Math.tan(Math.toRadians(30)) * Math.hypot(d * azimuth.east(),
                    d * azimuth.north() - 1000));
            best = Math.max(best, Horizon.elevation(2, height, d));
        }
        assertEquals(best, Horizon.towards(cone(top), new Point(0, 0), 2, 1500, azimuth).elevation(), CELL);
    }

    @Test
    void theElevationOfAFarPeakIsThatOfTheSphere() {
        // facts 8.4, worked by two ways: exact sphere and the square of the distance
        assertEquals(5.693941, Math.toDegrees(Horizon.elevation(0, 100, 1000)), 5e-4);
        assertEquals(2.697097, Math.toDegrees(Horizon.elevation(0, 500, 10_000)), 1e-3);
        assertEquals(2.605992, Math.toDegrees(Horizon.elevation(0, 3000, 50_000)), 6e-3);
    }

    @Test
    void aLevelSeaFallsAway() {
        List<Horizon.Sight> sights = Horizon.around(ElevationGrid.sampled(new GridFrame(401, 401, 0, 0, 50),
                (e, n) -> 0), new Point(10_000, 10_000), 2, 9000, 8);
        // The dip of the horizon for an eye 2 m over a sphere: sqrt(2 h / R), reached at 2.6 km.
        double dip = -Math.sqrt(2 * 2 / Horizon.MOON_RADIUS);
        assertEquals(8, sights.size());
        sights.forEach(s -> assertEquals(dip, s.elevation(), 0.01 * Math.abs(dip)));
    }

    @Test
    void aWallTakesTheSunAndOpenGroundKeepsIt() {
        LightSurface.Stay stay = new LightSurface.Stay(Math.toRadians(-60), 0, new Azimuth(0),
                Instant.parse("2030-01-01T00:00:00Z"), Instant.parse("2031-01-01T00:00:00Z"));
        ElevationGrid open = ElevationGrid.sampled(new GridFrame(41, 41, 0, 0, 10), (e, n) -> 0);
        ElevationGrid wall = ElevationGrid.sampled(new GridFrame(41, 41, 0, 0, 10), (e, n) -> n > 230 ? 400 : 0);
        float[] free = SurfaceStream.whole(open, new LightSurface(stay, 300, 10));
        float[] shaded = SurfaceStream.whole(wall, new LightSurface(stay, 300, 10));
        double year = Duration.between(stay.from(), stay.to()).toHours();
        // On level ground the sun is up half of the time, but for its disc and the year's tilt.
        assertEquals(0.5 * year, free[20 * 41 + 20], 0.02 * year);
        assertTrue(shaded[20 * 41 + 20] < 0.5 * free[20 * 41 + 20], "a wall to the north takes the noon sun at 60 S");
        assertEquals(free[0], free[20 * 41 + 20]);
    }
}
