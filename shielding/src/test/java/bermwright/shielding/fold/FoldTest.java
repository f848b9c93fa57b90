// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Vec3;
import bermwright.regolith.BulkDensity;
import bermwright.regolith.LunarProfile;
import bermwright.shielding.cover.CoveredHull;
import bermwright.shielding.cover.Mounds;
import bermwright.shielding.dose.Band;
import bermwright.shielding.dose.Response;
import bermwright.shielding.raycast.SceneRays;
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
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FoldTest {
    /** What a fold is asked to settle to. */
    private static final double SETTLED = 0.005;
    /** Gauss nodes in 8 panels or more leave less of E2 than this. */
    private static final double QUADRATURE = 1e-3;
    private static final double EXACT = 1e-9;
    /** The pin that a slab's scene needs is a millimetre of no soil, on ways of half a metre or more. */
    private static final double PIN = 0.002;
    /** Share of the sky whose rays, below 1.2 degrees, come out of the ridge before they come out of level ground. */
    private static final double UNDER_THE_RIDGE = 0.006;
    private static final double DENSITY = 1600;
    private static final GridFrame FRAME = new GridFrame(121, 121, -60, -60, 1);

    /** A station under a slab of soil that reaches past the grid's edge: level ground above its head. */
    private static SceneRays slab(double thickness, double skin) {
        ElevationGrid flat = ElevationGrid.sampled(FRAME, (e, n) -> 0);
        HullSolid pin = new HullSolid("A", new HullShape(1e-3, 1e-3, HullEnd.FLAT, HullEnd.FLAT, skin),
                Scenes.lying(new Vec3(0.1, 0.1, -thickness), Azimuth.ofDegrees(0), 0));
        return SceneRays.of(new Scene(Scenes.bare(flat, BulkDensity.uniform(DENSITY)), List.of(pin)));
    }

    private static double skyShare(SceneRays scene, Vec3 station, Response response) {
        SkyView view = SkyView.settled(scene, station, List.of(response), SETTLED);
        return FoldedDose.of(view, response, scene.scene().soil(), Tolerances.NONE).skyShare();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.3, 1, 2.5})
    void flatSlabGivesTheSecondExponentialIntegral(double thickness) {
        double length = 500;
        double x = thickness * DENSITY / length;
        double secondIntegral = new SimpsonIntegrator(1e-10, 1e-14, 3, 40).integrate(100_000_000,
                mu -> mu == 0 ? 0 : Math.exp(-x / mu), 0, 1);
        double share = skyShare(slab(thickness, 0), new Vec3(0, 0, -thickness), new Decay(length));
        assertEquals(secondIntegral, share, secondIntegral * SETTLED);
    }

    /** Independent doubts join as the root of the sum of their squares, and each is told by itself. */
    @Test
    void lowAndHighAreMadeOfModelSunDensityAndThickness() {
        SceneRays scene = slab(1, 0);
        Response sunny = new Decay(900, 1e9, 0, 0, new Band(0.8, 1.5));
        SkyView view = SkyView.settled(scene, new Vec3(0, 0, -1), List.of(sunny), SETTLED);
        FoldedDose dose = FoldedDose.of(view, sunny, scene.scene().soil(), new Tolerances(0.1, 0.1));
        assertEquals(0.8, dose.uncertainty().sun().low(), EXACT);
        assertEquals(1.5, dose.uncertainty().sun().high(), EXACT);
        assertEquals(2, dose.uncertainty().model().high(), EXACT);
        assertTrue(dose.uncertainty().density().low() < 1 && dose.uncertainty().density().high() > 1);
        double up = 0;
        double down = 0;
        for (DoseUncertainty.Term term : DoseUncertainty.Term.values()) {
            up += Math.pow(Math.log(dose.uncertainty().of(term).high()), 2);
            down += Math.pow(Math.log(dose.uncertainty().of(term).low()), 2);
        }
        assertEquals(dose.total() * Math.exp(Math.sqrt(up)), dose.high(), EXACT);
        assertEquals(dose.total() * Math.exp(-Math.sqrt(down)), dose.low(), EXACT);
        assertEquals(DoseUncertainty.Term.MODEL, dose.uncertainty().greatest());
        assertEquals(DoseUncertainty.Term.SUN,
                new DoseUncertainty(Band.NONE, dose.uncertainty().sun(), new Band(0.9, 1.1), Band.NONE)
                .greatest());
    }

    /** The identity that ties slab and ball: half the integral of the response over the cosine. */
    @Test
    void flatSlabGivesHalfTheIntegralOverTheCosine() {
        Response response = new Decay(900);
        double thickness = 1.2;
        double half = 0.5 * new SimpsonIntegrator(1e-10, 1e-14, 3, 40).integrate(100_000_000,
                mu -> mu == 0 ? 0 : response.isotropicDose(DENSITY * thickness / mu), 0, 1);
        SceneRays scene = slab(thickness, 0);
        SkyView view = SkyView.settled(scene, new Vec3(0, 0, -thickness), List.of(response), SETTLED);
        assertEquals(half, FoldedDose.of(view, response, scene.scene().soil(), Tolerances.NONE).fromSky(),
                half * QUADRATURE);
    }

    @Test
    void soilThatIsRadioactiveGivesTwiceItsOpenGroundUnderADeepCoverAndLessUnderAThinOne() {
        Response response = new Decay(900, 1e9, 0, 0, Band.NONE, 0.25);
        double before = 0.25;
        for (double thickness : new double[] {0.02, 0.2, 3}) {
            SceneRays scene = slab(thickness, 0);
            SkyView view = SkyView.settled(scene, new Vec3(0, 0, -thickness), List.of(response), SETTLED);
            double ground = FoldedDose.of(view, response, scene.scene().soil(), Tolerances.NONE).groundReturn();
            assertTrue(ground > before && ground <= 0.5 * (1 + EXACT), thickness + " m: " + ground);
            before = ground;
        }
        assertEquals(0.5, before, 0.5 * QUADRATURE);
    }

    /** Half of what flies straight, by rays, and the whole of what diffuses through the cover, across it. */
    @Test
    void slowNeutronsUnderASlabAreNotThinnedBySlantedRays() {
        Decay straight = new Decay(500);
        Decay slow = new Decay(900);
        Response both = new Decay(500, 1e9, 0, 900);
        double thickness = 0.8;
        SceneRays scene = slab(thickness, 0);
        SkyView view = SkyView.settled(scene, new Vec3(0, 0, -thickness), List.of(both), SETTLED);
        Soil soil = scene.scene().soil();
        double flown = FoldedDose.of(view, straight, soil, Tolerances.NONE).fromSky();
        FoldedDose folded = FoldedDose.of(view, both, soil, Tolerances.NONE);
        double diffused = folded.total() - flown;
        double expected = slow.isotropicDose(DENSITY * thickness);
        assertEquals(expected, diffused, expected * EXACT);
        assertTrue(folded.low() <= folded.total() && folded.high() >= folded.total());
    }

    /** A ridge on the skyline takes from what flies straight, but lets no fewer slow neutrons through the cover. */
    @Test
    void aFarRidgeShieldsOnlyWhatFliesStraight() {
        double thickness = 0.8;
        Decay straight = new Decay(500);
        Decay slow = new Decay(900);
        Response both = new Decay(500, 1e9, 0, 900);
        ElevationGrid ground = ElevationGrid.sampled(FRAME, (e, n) -> Math.max(0, 2 * Math.min(e - 40, 58 - e)));
        SceneRays scene = SceneRays.of(new Scene(Scenes.bare(ground, BulkDensity.uniform(DENSITY)), List.of()));
        Vec3 station = new Vec3(0.3, 0.2, -thickness);
        SkyView view = SkyView.settled(scene, station, List.of(both), SETTLED);
        double flown = FoldedDose.of(view, straight, scene.scene().soil(), Tolerances.NONE).fromSky();
        FoldedDose folded = FoldedDose.of(view, both, scene.scene().soil(), new Tolerances(0.1, 0));
        double expected = slow.isotropicDose(DENSITY * thickness);
        assertEquals(expected, folded.total() - flown, expected * UNDER_THE_RIDGE);
        double[] beyond = {0};
        view.forEach(d -> beyond[0] += d.beyond() > 0 ? 2 * d.share() : 0);
        assertTrue(beyond[0] > 10 * UNDER_THE_RIDGE, "no ray clips the ridge: " + beyond[0]);
    }

    /** However low the ray, what it crosses over its slant is how deep the station lies. */
    @Test
    void everyRayUnderLevelGroundShowsTheDepthOfTheStation() {
        double thickness = 0.8;
        SkyView view = SkyView.settled(slab(thickness, 0), new Vec3(0, 0, -thickness), List.of(new Decay(500)),
                SETTLED);
        double[] lowest = {1};
        view.forEach(direction -> {
            assertEquals(1, direction.across(1) / (DENSITY * thickness), PIN, "sine " + direction.sine());
            lowest[0] = Math.min(lowest[0], direction.sine());
        });
        assertTrue(lowest[0] < 0.01, "lowest ray " + lowest[0]);
    }

    /** A half ball of skin around the station: every direction crosses the same mass. */
    @Test
    void domeGivesTheResponseItself() {
        double skin = 700;
        ElevationGrid flat = ElevationGrid.sampled(FRAME, (e, n) -> -20);
        HullSolid ball = new HullSolid("A", new HullShape(10, 5, HullEnd.dome(5), HullEnd.dome(5), skin),
                Scenes.lying(new Vec3(-5, 0, 0), Azimuth.ofDegrees(90), 0));
        SceneRays scene = SceneRays.of(new Scene(Scenes.bare(flat, BulkDensity.uniform(DENSITY)), List.of(ball)));
        Decay response = new Decay(500);
        assertEquals(Math.exp(-skin * response.skinEquivalence() / 500),
                skyShare(scene, new Vec3(0, 0, 0), response), EXACT);
    }

    /** Skin of a long cylinder seen from its axis: mass over the sine of the angle to the axis. */
    @Test
    void longCylinderGivesItsOwnIntegral() {
        double skin = 600;
        ElevationGrid flat = ElevationGrid.sampled(FRAME, (e, n) -> -50);
        HullSolid pipe = new HullSolid("A", new HullShape(8000, 2, HullEnd.FLAT, HullEnd.FLAT, skin),
                Scenes.lying(new Vec3(-4000, 0, 0), Azimuth.ofDegrees(90), 0));
        SceneRays scene = SceneRays.of(new Scene(Scenes.bare(flat, BulkDensity.uniform(DENSITY)), List.of(pipe)));
        Decay response = new Decay(500);
        double x = skin * response.skinEquivalence() / 500;
        double expected = new SimpsonIntegrator(1e-10, 1e-14, 3, 40).integrate(100_000_000,
                a -> a == 0 ? 0 : Math.sin(a) * Math.exp(-x / Math.sin(a)), 0, Math.PI / 2);
        assertEquals(expected, skyShare(scene, new Vec3(0, 0, 0), response), expected * SETTLED);
    }

    @Test
    void openSkyGivesOneAndTheWholeGroundReturn() {
        SceneRays scene = slab(0, 0);
        Decay response = new Decay(500, 1e9, 0.25);
        SkyView view = SkyView.settled(scene, new Vec3(3, 3, 1), List.of(response), SETTLED);
        FoldedDose dose = FoldedDose.of(view, response, scene.scene().soil(), Tolerances.NONE);
        assertEquals(1, dose.fromSky(), EXACT);
        assertEquals(0.25, dose.groundReturn(), EXACT);
        assertEquals(1.25 * 0.5, dose.low(), EXACT);
        assertEquals(1.25 * 2, dose.high(), EXACT);
    }

    /** The claim of half a per cent, held against a million random directions cast one by one. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12})
    void settlesToHalfAPerCentOfAMillionDirections(long seed) {
        SceneRays scene = covered(Math.toRadians(20 + 40 * (seed - 11)));
        HullSolid hull = scene.scene().hulls().get(0);
        Vec3 station = hull.pose().point(seed - 10, 0.7, -1);
        Response response = new Decay(300);
        SkyView view = SkyView.settled(scene, station, List.of(response), SETTLED);
        double ours = FoldedDose.of(view, response, scene.scene().soil(), Tolerances.NONE).fromSky();
        Random random = new Random(seed);
        int many = 1_000_000;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < many; i++) {
            double turn = 2 * Math.PI * random.nextDouble();
            double sine = random.nextDouble();
            double cosine = Math.sqrt(1 - sine * sine);
            double dose = response.isotropicDose(scene.ray(station,
                    new Vec3(cosine * Math.sin(turn), cosine * Math.cos(turn), sine))
                    .arealDensity(response.skinEquivalence())) / 2;
            sum += dose;
            squares += dose * dose;
        }
        double mean = sum / many;
        double chance = 3 * Math.sqrt((squares / many - mean * mean) / many);
        assertEquals(mean, ours, SETTLED * mean + chance, "seed " + seed + ", " + view.directions() + " directions");
        assertTrue(chance < SETTLED * mean, "a million directions leave " + chance / mean);
        assertTrue(view.openShare() < SETTLED);
    }

    private static SceneRays covered(double azimuth) {
        ElevationGrid ground = ElevationGrid.sampled(FRAME,
                (e, n) -> 0.03 * e + 0.4 * Math.sin(e / 9) * Math.cos(n / 7));
        HullSolid hull = new HullSolid("A", new HullShape(16, 2.5, HullEnd.FLAT, HullEnd.cone(2), 60),
                Scenes.lying(new Vec3(0, 0, 2.6), new Azimuth(azimuth), 0.03));
        CoveredHull wish = new CoveredHull(hull, bermwright.shielding.cover.CoverThickness.uniform(1.5),
                bermwright.shielding.cover.EndCover.OPEN, bermwright.shielding.cover.EndCover.COVERED, 0);
        ElevationGrid finished = Mounds.over(ground, List.of(wish), Math.toRadians(33), List.of()).finished();
        return SceneRays.of(new Scene(new Soil(ground, finished, DENSITY, LunarProfile.bulkDensity()),
                List.of(hull)));
    }
}
