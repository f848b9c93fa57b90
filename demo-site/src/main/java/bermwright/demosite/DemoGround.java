// SPDX-License-Identifier: Apache-2.0
package bermwright.demosite;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.shape.Crater;
import bermwright.terrain.shape.InclinedPlane;
import bermwright.terrain.shape.Landform;
import bermwright.terrain.shape.RollingGround;
import bermwright.terrain.shape.Scarp;
import bermwright.terrain.shape.SyntheticGround;
import java.util.List;

/**
 * The invented ground of the demo site: rolling, strewn with worn craters, with one scarp; it stands for no place.
 *
 * <p>Heights are kept to 1/64 m, finer than the 0.1 m that the plan says they are known to, so that the file is small.
 */
public final class DemoGround {
    /** The seed of the ground. */
    static final long SEED = 20;
    /** South-west corner of the site. */
    static final Point CORNER = new Point(18_000, -12_400);
    private static final GridFrame FRAME = new GridFrame(660, 700, CORNER.east(), CORNER.north(), 1);
    private static final double STEP = 1.0 / 64;

    private DemoGround() {
    }

    /**
     * The ground.
     *
     * @return 660 rows of 700 heights, 1 m apart; the same every time
     */
    public static ElevationGrid grid() {
        Landform land = SyntheticGround.of(recipe(), SEED);
        return ElevationGrid.sampled(FRAME,
                (east, north) -> StrictMath.rint(land.height(east, north) / STEP) * STEP);
    }

    private static SyntheticGround.Recipe recipe() {
        Point northeast = new Point(FRAME.eastEdge(), FRAME.northEdge());
        return new SyntheticGround.Recipe(CORNER, northeast,
                new InclinedPlane(at(0, 0), -86, Math.toRadians(1.1), Azimuth.ofDegrees(118)),
                new RollingGround.Roughness(1.7, 480, 46, 0.9),
                new SyntheticGround.Strewing(2.5, 34, 0.3, 0.1, 0.55),
                List.of(new SyntheticGround.Clearing(at(235, 250), 105),
                        new SyntheticGround.Clearing(at(318, 470), 62),
                        new SyntheticGround.Clearing(at(590, 560), 45)),
                List.of(Crater.worn(at(478, 432), 74, 0.62), Crater.worn(at(96, 588), 48, 0.4),
                        Crater.worn(at(392, 74), 58, 0.45), Crater.worn(at(655, 330), 36, 0.8),
                        new Scarp(at(600, 150), Azimuth.ofDegrees(140), 16, Math.toRadians(23))));
    }

    /** A place by its distance from the south-west corner (m). */
    static Point at(double east, double north) {
        return new Point(CORNER.east() + east, CORNER.north() + north);
    }
}
