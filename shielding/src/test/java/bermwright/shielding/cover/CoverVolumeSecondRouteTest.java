// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Vec3;
import bermwright.shielding.scene.HullEnd;
import bermwright.shielding.scene.HullPose;
import bermwright.shielding.scene.HullShape;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.Scenes;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Volume of random covers by their definition alone: over each place the highest of the cones that stand on spheres
 * of the cover's thickness about points of skin, summed over places, less the hull.
 */
class CoverVolumeSecondRouteTest {
    private static final double HALF = 60;
    private static final double STEP = 0.5;
    private static final int ALONG = 110;
    private static final int AROUND = 72;
    /** Dips between points of skin and the sum over places leave about 5 in 10,000. */
    private static final double SUMMED = 1e-3;

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15})
    void volumeIsThatOfTheHighestCones(long seed) {
        Random random = new Random(seed);
        double length = 10 + 12 * random.nextDouble();
        double radius = 1.5 + 1.5 * random.nextDouble();
        double thickness = 0.5 + 2 * random.nextDouble();
        double slope = Math.toRadians(28 + 12 * random.nextDouble());
        double east = 0.12 * (random.nextDouble() - 0.5);
        double north = 0.12 * (random.nextDouble() - 0.5);
        double cell = new double[] {0.5, 1, 2, 5, 10, 20}[random.nextInt(6)];
        HullPose pose = Scenes.lying(new Vec3(-8 + random.nextDouble(), -4 + random.nextDouble(), radius + 1.8),
                new Azimuth(2 * Math.PI * random.nextDouble()), 0.08 * (random.nextDouble() - 0.5));
        HullSolid hull = new HullSolid("A", new HullShape(length, radius, HullEnd.FLAT, HullEnd.FLAT, 40), pose);
        int nodes = (int) (2 * HALF / cell) + 1;
        ElevationGrid ground = ElevationGrid.sampled(new GridFrame(nodes, nodes, -HALF, -HALF, cell),
                (e, n) -> east * e + north * n);
        double volume = Mounds.over(ground, List.of(CoveredHull.uniform(hull, thickness)), slope, List.of())
                .placedVolume();
        double[] phase = {random.nextDouble() * STEP, random.nextDouble() * STEP};
        double summed = 0;
        double[][] skin = skin(pose, length, radius);
        for (double y = -HALF + phase[0]; y < HALF; y += STEP) {
            for (double x = -HALF + phase[1]; x < HALF; x += STEP) {
                summed += Math.max(0, highest(skin, new double[] {x, y}, thickness, slope) - east * x - north * y);
            }
        }
        double expected = summed * STEP * STEP - Math.PI * radius * radius * length;
        assertEquals(expected, volume, SUMMED * expected, "seed " + seed + ", cells of " + cell + " m");
    }

    private static double[][] skin(HullPose pose, double length, double radius) {
        double[][] skin = new double[3][(ALONG + 1) * AROUND];
        for (int i = 0; i <= ALONG; i++) {
            for (int k = 0; k < AROUND; k++) {
                double turn = 2 * Math.PI * k / AROUND;
                Vec3 p = pose.point(length * i / ALONG, radius * Math.sin(turn), radius * Math.cos(turn));
                skin[0][i * AROUND + k] = p.x();
                skin[1][i * AROUND + k] = p.y();
                skin[2][i * AROUND + k] = p.z();
            }
        }
        return skin;
    }

    private static double highest(double[][] skin, double[] place, double thickness, double slope) {
        double best = Double.NEGATIVE_INFINITY;
        double round = thickness * Math.sin(slope);
        double tip = thickness / Math.cos(slope);
        double tan = Math.tan(slope);
        for (int i = 0; i < skin[0].length; i++) {
            double dx = place[0] - skin[0][i];
            double dy = place[1] - skin[1][i];
            double square = dx * dx + dy * dy;
            double rise = square < round * round ? Math.sqrt(thickness * thickness - square)
                    : tip - tan * Math.sqrt(square);
            best = Math.max(best, skin[2][i] + rise);
        }
        return best;
    }
}
