// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

class HaulWaysTest {
    /** To sixteen neighbours a straight way is too long by at most 1/cos(13.28 deg) - 1. */
    private static final double SIXTEEN_NEIGHBOURS = 0.0275;
    private static final double STEEPEST = Math.toRadians(20);

    private static HaulGround ground(DoubleBinaryOperator height, Ring... obstacles) {
        return HaulGround.of(ElevationGrid.sampled(new GridFrame(201, 201, 0, 0, 1), height),
                new HaulGround.Mover(1, STEEPEST, 1 / (2 * HaulWays.ROLLING_RESISTANCE)), List.of(obstacles));
    }

    private static int at(HaulGround ground, double east, double north) {
        return ground.openNear(new Point(east, north), 1);
    }

    @Test
    void onLevelGroundTheWayIsTheStraightDistance() {
        HaulGround ground = ground((e, n) -> 0);
        HaulWays ways = HaulWays.from(ground, at(ground, 20, 20));
        for (double[] to : new double[][] {{150, 20}, {150, 150}, {120, 70}, {60, 190}, {33, 95}}) {
            double straight = Math.hypot(to[0] - 20, to[1] - 20);
            double cost = ways.costTo(at(ground, to[0], to[1]));
            assertTrue(cost >= straight - 1e-9 && cost <= straight * (1 + SIXTEEN_NEIGHBOURS), cost + " " + straight);
        }
    }

    @Test
    void aWallIsDrivenAroundByItsEnd() {
        Ring wall = new Ring(List.of(new Point(99, -1), new Point(101, -1), new Point(101, 150), new Point(99, 150)));
        HaulGround ground = ground((e, n) -> 0, wall);
        HaulWays ways = HaulWays.from(ground, at(ground, 50, 50));
        double around = 2 * Math.hypot(50, 100);
        double cost = ways.costTo(at(ground, 150, 50));
        assertTrue(cost >= around - 2 && cost <= around * (1 + SIXTEEN_NEIGHBOURS) + 6, cost + " " + around);
        for (int node : ways.wayTo(at(ground, 150, 50))) {
            assertFalse(wall.contains(ground.place(node)));
        }
    }

    @Test
    void thinWallsAreNotSlippedThrough() {
        Ring thin = new Ring(List.of(new Point(100.4, -1), new Point(100.6, -1), new Point(150.6, 201),
                new Point(150.4, 201)));
        HaulGround ground = ground((e, n) -> 0, thin);
        HaulWays ways = HaulWays.from(ground, at(ground, 20, 20));
        assertFalse(ways.isReached(at(ground, 190, 20)));
        assertTrue(ways.nearestReached(new Point(190, 20)) >= 0);
    }

    @Test
    void aBankBeyondTheMachinesGradeIsDrivenAround() {
        // A bank of 45 deg across the ground with a gap of level ground in the north.
        HaulGround ground = ground((e, n) -> n > 170 ? 0 : Math.max(0, Math.min(10, e - 95)) - Math.max(0,
                Math.min(10, e - 110)));
        HaulWays ways = HaulWays.from(ground, at(ground, 50, 50));
        assertTrue(ways.costTo(at(ground, 150, 50)) > 2 * Math.hypot(50, 118));
    }

    @Test
    void aRiseCostsAsMuchAsTheLengthThatItsWorkWouldCover() {
        double slope = 0.1;
        HaulGround ground = ground((e, n) -> slope * e);
        HaulWays ways = HaulWays.from(ground, at(ground, 50, 100));
        double length = 100 * Math.hypot(1, slope);
        double expected = length + 100 * slope / (2 * HaulWays.ROLLING_RESISTANCE);
        assertEquals(expected, ways.costTo(at(ground, 150, 100)), 1e-6 * expected);
    }

    @Test
    void theWayBackCostsTheSame() {
        HaulGround ground = ground((e, n) -> 3 * Math.sin(e / 15) + 2 * Math.cos(n / 11));
        int a = at(ground, 30, 40);
        int b = at(ground, 170, 150);
        assertEquals(HaulWays.from(ground, a).costTo(b), HaulWays.from(ground, b).costTo(a), 1e-9);
    }

    @Test
    void missingGroundIsNotDrivenOn() {
        HaulGround ground = ground((e, n) -> e > 90 && e < 110 ? Double.NaN : 0);
        assertFalse(HaulWays.from(ground, at(ground, 20, 20)).isReached(at(ground, 190, 20)));
    }

    @Test
    void aPulledWayHasTheStraightLengthWhereNothingIsInTheWay() {
        HaulGround ground = ground((e, n) -> 0);
        HaulWays ways = HaulWays.from(ground, at(ground, 20, 20));
        for (double[] to : new double[][] {{150, 20}, {150, 150}, {120, 70}, {60, 190}, {33, 95}}) {
            PulledWay pulled = PulledWay.of(ground, ways, ways.wayTo(at(ground, to[0], to[1])));
            double straight = Math.hypot(to[0] - 20, to[1] - 20);
            assertEquals(straight, pulled.length(), 0.01 * straight);
            assertTrue(pulled.length() >= straight - 1e-9);
        }
    }

    @Test
    void aPulledWayIsNeverDearerAndKeepsOutOfWalls() {
        Ring wall = new Ring(List.of(new Point(99, -1), new Point(101, -1), new Point(101, 150), new Point(99, 150)));
        HaulGround ground = ground((e, n) -> Math.sin(e / 9) + Math.cos(n / 7), wall);
        HaulWays ways = HaulWays.from(ground, at(ground, 50, 50));
        List<Integer> way = ways.wayTo(at(ground, 150, 50));
        PulledWay pulled = PulledWay.of(ground, ways, way);
        assertTrue(pulled.levelled() <= ways.costTo(at(ground, 150, 50)) + 1e-6);
        assertTrue(pulled.nodes().size() <= way.size());
        assertTrue(pulled.length() >= 2 * Math.hypot(49, 100));
    }

    /** Steps that do not divide the ground's sides, so that a lattice from a corner would lie elsewhere when turned. */
    @Test
    void turningOrMirroringTheGroundChangesNoWay() {
        int last = 200;
        DoubleBinaryOperator hills = (e, n) -> 4 * Math.sin(e / 17 + n / 60) + 3 * Math.cos(n / 13) + e * n / 9e3;
        Point from = new Point(31.3, 42.8);
        Point to = new Point(168.2, 151.7);
        double asItIs = way(hills, from, to);
        double turned = way((e, n) -> hills.applyAsDouble(last - n, e), new Point(from.north(), last - from.east()),
                new Point(to.north(), last - to.east()));
        double mirrored = way((e, n) -> hills.applyAsDouble(last - e, n), new Point(last - from.east(), from.north()),
                new Point(last - to.east(), to.north()));
        assertEquals(asItIs, turned, 1e-9 * asItIs);
        assertEquals(asItIs, mirrored, 1e-9 * asItIs);
    }

    private static double way(DoubleBinaryOperator height, Point from, Point to) {
        HaulGround ground = HaulGround.of(ElevationGrid.sampled(new GridFrame(201, 201, 0, 0, 1), height),
                new HaulGround.Mover(2.7, STEEPEST, 1 / (2 * HaulWays.ROLLING_RESISTANCE)), List.of());
        return HaulWays.from(ground, ground.openNear(from, 5)).costTo(ground.openNear(to, 5));
    }
}
