// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Vec3;
import bermwright.regolith.BulkDensity;
import bermwright.regolith.LunarProfile;
import bermwright.shielding.cover.CoveredHull;
import bermwright.shielding.cover.Mounds;
import bermwright.shielding.scene.HullEnd;
import bermwright.shielding.scene.HullShape;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.Scene;
import bermwright.shielding.scene.Scenes;
import bermwright.shielding.scene.Soil;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rays through the finer nodes of a mound and the ground beyond are those through fine nodes all over the site. */
class PatchedRaysLawTest {
    private static final double PLACED = 1650;
    /** The patch lifts round soil as far as its triangles lie low in the mean: at most 0.3 x 0.25 m / 12. */
    private static final double LIFTED = PLACED * 0.3 * 0.25 / 12;
    private static final double ROUNDING = 1e-3;

    private static double ground(double east, double north) {
        return 0.03 * east - 0.02 * north + (north > 40 ? 0.4 * (north - 40) : 0);
    }

    private static HullSolid hull() {
        return new HullSolid("A", new HullShape(18, 2.5, HullEnd.FLAT, HullEnd.cone(3), 60),
                Scenes.lying(new Vec3(-9, -3, 2.4), Azimuth.ofDegrees(75), 0.03));
    }

    private static ElevationGrid sampled(double spacing) {
        int nodes = (int) (120 / spacing) + 1;
        return ElevationGrid.sampled(new GridFrame(nodes, nodes, -60, -60, spacing), PatchedRaysLawTest::ground);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 2, 5, 10, 20})
    void agreeWithFineNodesAllOver(double cell) {
        CoveredHull covered = CoveredHull.uniform(hull(), 1.4);
        for (BulkDensity profile : List.of(BulkDensity.uniform(1800), LunarProfile.bulkDensity())) {
            ElevationGrid fine = sampled(0.25);
            ElevationGrid whole = Mounds.over(fine, List.of(covered), Math.toRadians(34), List.of()).finished()
                    .withPatches(List.of());
            ElevationGrid coarse = sampled(cell);
            ElevationGrid patched = Mounds.over(coarse, List.of(covered), Math.toRadians(34), List.of()).finished();
            compare(SceneRays.of(new Scene(new Soil(fine, whole, PLACED, profile), List.of(hull()))),
                    SceneRays.of(new Scene(new Soil(coarse, patched, PLACED, profile), List.of(hull()))));
        }
    }

    private static void compare(SceneRays expected, SceneRays rays) {
        Random random = new Random(3);
        Vec3 from = hull().pose().point(6, 0.3, 0.2);
        SkyRays one = new SkyRays();
        SkyRays other = new SkyRays();
        SkyRays single = new SkyRays();
        for (int a = 0; a < 40; a++) {
            double[] sines = random.doubles(30, 0.001, 0.999).sorted().toArray();
            Azimuth azimuth = new Azimuth(2 * Math.PI * random.nextDouble());
            expected.from(from).look(azimuth, sines, one);
            rays.from(from).look(azimuth, sines, other);
            double[] east = new double[sines.length];
            double[] north = new double[sines.length];
            for (int k = 0; k < sines.length; k++) {
                double cosine = Math.sqrt(1 - sines[k] * sines[k]);
                east[k] = cosine * azimuth.east();
                north[k] = cosine * azimuth.north();
            }
            rays.from(from).look(east, north, sines, single);
            for (int k = 0; k < sines.length; k++) {
                String where = azimuth + ", sine " + sines[k];
                double slant = Math.max(one.slant(k), other.slant(k));
                assertEquals(one.placed(k), other.placed(k), LIFTED * slant + ROUNDING, where);
                assertEquals(one.inPlace(k), other.inPlace(k), ROUNDING * Math.max(1, one.inPlace(k)), where);
                assertEquals(other.placed(k), single.placed(k), ROUNDING, where);
                assertEquals(other.inPlace(k), single.inPlace(k), ROUNDING, where);
                assertEquals(other.beyond(k), single.beyond(k), ROUNDING, where);
            }
        }
    }
}
