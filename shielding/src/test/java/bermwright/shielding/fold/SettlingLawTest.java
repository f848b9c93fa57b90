// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Vec3;
import bermwright.regolith.BulkDensity;
import bermwright.shielding.cover.CoverThickness;
import bermwright.shielding.cover.CoveredHull;
import bermwright.shielding.cover.EndCover;
import bermwright.shielding.cover.Mounds;
import bermwright.shielding.dose.Response;
import bermwright.shielding.raycast.SceneRays;
import bermwright.shielding.raycast.SkyRays;
import bermwright.shielding.raycast.SkySweep;
import bermwright.shielding.scene.HullEnd;
import bermwright.shielding.scene.HullShape;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.Scene;
import bermwright.shielding.scene.Scenes;
import bermwright.shielding.scene.Soil;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The claim of half a per cent, held against a million directions, where the sky comes in through narrow ways. */
class SettlingLawTest {
    private static final double SETTLED = 0.005;
    /** A dose below this share of the open sky's is held against that share. */
    private static final double FAINT = 1e-6;
    /** A million directions: a thousand azimuths, each with a thousand elevations, each drawn within its own step. */
    private static final int STEPS = 1000;
    private static final double DENSITY = 1700;
    private static final GridFrame FRAME = new GridFrame(261, 281, -35, -32.5, 0.25);
    /** A response that reaches into the soil, as of cosmic rays, and one that stops in a little, as of an event. */
    private static final List<Response> RESPONSES = List.of(new Decay(600), new Decay(150));
    private static final HullSolid HULL = new HullSolid("A", new HullShape(16, 2.5, HullEnd.FLAT, HullEnd.dome(1.5),
            60), Scenes.lying(new Vec3(-8, 0.3, 2.6), Azimuth.ofDegrees(83), 0.01));

    private static ElevationGrid ground(double rough) {
        Random random = new Random(3);
        return ElevationGrid.sampled(FRAME, (e, n) -> 0.02 * e + 0.3 * Math.sin(e / 9) * Math.cos(n / 7)
                + rough * random.nextGaussian());
    }

    /** Surfaces to look through. */
    private static ElevationGrid finished(String kind, ElevationGrid ground) {
        EndCover base = kind.contains("end") ? EndCover.OPEN : EndCover.COVERED;
        CoveredHull wish = new CoveredHull(HULL, CoverThickness.uniform(2.2), base, EndCover.COVERED, 0);
        ElevationGrid mound = Mounds.over(ground, List.of(wish), Math.toRadians(33), List.of()).finished();
        return ElevationGrid.sampled(FRAME, (e, n) -> {
            double height = mound.height(e, n);
            Vec3 local = HULL.pose().local(new Vec3(e, n, height));
            switch (kind) {
                case "shaft overhead":
                    return inShaft(local, 7) ? HULL.pose().base().z() + 2.6 : height;
                case "shaft oblique":
                    return inShaft(local, 10) ? HULL.pose().base().z() + 2.6 : height;
                case "corridor":
                    return Math.abs(local.x() - 9.2) < 0.5 && local.y() > 0 ? Math.min(height, 2.9) : height;
                case "rough part-built":
                    return Math.min(height, Math.max(ground.height(e, n), 4.1));
                default:
                    return height;
            }
        });
    }

    private static boolean inShaft(Vec3 local, double along) {
        return Math.abs(local.x() - along) < 0.5 && Math.abs(local.y()) < 0.5;
    }

    private static SceneRays scene(String kind) {
        ElevationGrid ground = ground(kind.contains("rough") ? 0.25 : 0);
        return SceneRays.of(new Scene(new Soil(ground, finished(kind, ground), DENSITY,
                BulkDensity.uniform(1800)), List.of(HULL)));
    }

    /** Mean of each response over the sky, halved, and one standard deviation of it by the spread of ten parts. */
    private static double[][] million(SceneRays scene, Vec3 station) {
        Random random = new Random(7);
        SkySweep sweep = scene.from(station);
        SkyRays rays = new SkyRays();
        int parts = 10;
        double[][] sums = new double[RESPONSES.size()][parts];
        for (int a = 0; a < STEPS; a++) {
            double[] sines = new double[STEPS];
            for (int k = 0; k < STEPS; k++) {
                sines[k] = (k + 0.001 + 0.998 * random.nextDouble()) / STEPS;
            }
            sweep.look(new Azimuth(2 * Math.PI * (a + random.nextDouble()) / STEPS), sines, rays);
            for (int r = 0; r < sums.length; r++) {
                Response response = RESPONSES.get(r);
                for (int k = 0; k < STEPS; k++) {
                    sums[r][a % parts] += response.isotropicDose(rays.placed(k) + rays.inPlace(k)
                            + rays.skin(k) * response.skinEquivalence()) / 2;
                }
            }
        }
        double[][] result = new double[RESPONSES.size()][2];
        for (int r = 0; r < sums.length; r++) {
            double mean = java.util.Arrays.stream(sums[r]).sum() / parts;
            double square = java.util.Arrays.stream(sums[r]).map(s -> (s - mean) * (s - mean)).sum() / parts;
            result[r][0] = mean * parts / STEPS / STEPS;
            result[r][1] = Math.sqrt(square / (parts - 1)) * parts / STEPS / STEPS;
        }
        return result;
    }

    @ParameterizedTest
    @CsvSource({"uniform, 7", "open end, 12", "open end, 4", "shaft overhead, 7", "shaft oblique, 7",
        "shaft oblique, 5.5", "corridor, 7", "rough ground before an open end, 4", "rough part-built, 7"})
    void settlesToHalfAPerCentOfAMillionDirections(String kind, double along) {
        SceneRays scene = scene(kind);
        Vec3 station = HULL.pose().point(along, 0.4, -1);
        SkyView view = SkyView.settled(scene, station, RESPONSES, SETTLED);
        double[][] million = million(scene, station);
        List<String> off = new ArrayList<>();
        for (int r = 0; r < RESPONSES.size(); r++) {
            double ours = FoldedDose.of(view, RESPONSES.get(r), scene.scene().soil(), Tolerances.NONE).fromSky();
            double share = Math.abs(ours - million[r][0]) / Math.max(million[r][0], FAINT);
            if (!(share <= SETTLED)) {
                off.add(String.format("response %d: %.5g, a million directions give %.5g +- %.2g %%, off by %.2f %%",
                        r, ours, million[r][0], 100 * million[r][1] / million[r][0], 100 * share));
            }
        }
        assertEquals(List.of(), off, view.directions() + " directions, open share " + view.openShare());
        assertTrue(view.isSettled(), "open share " + view.openShare());
    }

    /** A tolerance that no number of directions reaches through a narrow way: said, not passed over. */
    @Test
    void saysWhatHasNotSettled() {
        SkyView view = SkyView.settled(scene("shaft overhead"), HULL.pose().point(7, 0.4, -1), RESPONSES, 1e-9);
        assertFalse(view.isSettled());
        assertTrue(view.openShare() > 1e-9, "open share " + view.openShare());
    }
}
