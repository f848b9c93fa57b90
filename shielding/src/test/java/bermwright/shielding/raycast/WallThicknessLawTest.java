// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Vec3;
import bermwright.regolith.BulkDensity;
import bermwright.regolith.LunarProfile;
import bermwright.shielding.scene.Scene;
import bermwright.shielding.scene.Scenes;
import bermwright.shielding.scene.Soil;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Soil of the cover over its slant is how thick the wall is, across it, in closed form. */
class WallThicknessLawTest {
    /** Share of a thickness that rounding may take on long ways. */
    private static final double EXACT = 1e-6;
    private static final double DENSITY = 1800;
    private static final double PLACED = 1650;
    private static final GridFrame FRAME = new GridFrame(201, 201, -100, -100, 1);

    private record Seen(double all, double slant, double beyond) {
        double across() {
            return (all - beyond) / slant;
        }
    }

    private static Vec3 direction(double azimuth, double sine) {
        double cosine = Math.sqrt(1 - sine * sine);
        return new Vec3(cosine * Math.sin(azimuth), cosine * Math.cos(azimuth), sine);
    }

    /** The same ray as part of a fan and by itself; nothing where it leaves soil beyond the known ground. */
    private static List<Seen> seen(SceneRays rays, Vec3 from, Vec3 way) {
        SkyRays fan = new SkyRays();
        rays.from(from).look(new Azimuth(Math.atan2(way.x(), way.y())),
                new double[] {way.z(), (1 + way.z()) / 2}, fan);
        SkyRays single = new SkyRays();
        rays.from(from).look(new double[] {way.x()}, new double[] {way.y()}, new double[] {way.z()}, single);
        List<Seen> seen = new ArrayList<>();
        for (SkyRays each : fan.beyondEdge() > 0 ? List.<SkyRays>of() : List.of(fan, single)) {
            seen.add(new Seen(each.placed(0) + each.inPlace(0), each.slant(0), each.beyond(0)));
        }
        return seen;
    }

    /** An even slope shows every ray how deep the station lies under it, square to it. */
    @ParameterizedTest
    @CsvSource({"0, 0", "33, 90", "33, 45", "20, 200", "33, 317"})
    void anEvenSlopeIsAsThickAsItIsAcross(double slopeDeg, double fallsToDeg) {
        double slope = Math.tan(Math.toRadians(slopeDeg));
        Azimuth down = Azimuth.ofDegrees(fallsToDeg);
        ElevationGrid plane = ElevationGrid.sampled(FRAME, (e, n) -> -slope * (e * down.east() + n * down.north()));
        SceneRays rays = SceneRays.of(new Scene(Scenes.bare(plane, BulkDensity.uniform(DENSITY)), List.of()));
        double depth = 2.5;
        double thick = depth * Math.cos(Math.toRadians(slopeDeg)) * DENSITY;
        Random random = new Random(3);
        int looked = 0;
        for (int i = 0; i < 600; i++) {
            Vec3 way = direction(i < 72 ? Math.toRadians(5 * i) : 2 * Math.PI * random.nextDouble(),
                    0.01 + 0.98 * random.nextDouble());
            for (Seen seen : seen(rays, new Vec3(0.3, -0.2, plane.height(0.3, -0.2) - depth), way)) {
                assertEquals(thick, seen.across(), EXACT * thick, "along " + way);
                assertEquals(0, seen.beyond(), 0);
                looked++;
            }
        }
        assertTrue(looked > 700, looked + " rays");
    }

    /** A long prism: each ray shows how far the station is from the flank it leaves through, along the ridge too. */
    @ParameterizedTest
    @ValueSource(doubles = {-3.3, 0.4, 5.2})
    void aFlankSeenAlongItsLengthIsAsThickAsItIsAcross(double east) {
        double angle = Math.toRadians(33);
        double crest = 10 * Math.tan(angle);
        ElevationGrid ridge = ElevationGrid.sampled(FRAME,
                (e, n) -> Math.max(0, crest - Math.tan(angle) * Math.abs(e)));
        SceneRays rays = SceneRays.of(new Scene(Scenes.bare(ridge, BulkDensity.uniform(DENSITY)), List.of()));
        Vec3 from = new Vec3(east, 0.3, 1);
        double toEast = (crest - 1) * Math.cos(angle) - east * Math.sin(angle);
        double toWest = (crest - 1) * Math.cos(angle) + east * Math.sin(angle);
        double alongFlank = 0;
        Random random = new Random(4);
        for (int i = 0; i < 600; i++) {
            Vec3 way = direction(0.3 * (random.nextDouble() - 0.5) + (i % 2) * Math.PI
                    + (i < 300 ? 0 : 6 * random.nextDouble()), 0.02 + 0.9 * random.nextDouble());
            double goesEast = way.x() * Math.sin(angle) + way.z() * Math.cos(angle);
            double goesWest = goesEast - 2 * way.x() * Math.sin(angle);
            boolean leavesEast = goesEast > 0 && (goesWest <= 0 || toEast / goesEast < toWest / goesWest);
            double expected = (leavesEast ? toEast : toWest) * DENSITY;
            for (Seen seen : seen(rays, from, way)) {
                assertEquals(expected, seen.across(), EXACT * expected, "along " + way);
                double upright = Math.hypot(way.x(), way.z());
                alongFlank = Math.max(alongFlank, Math.abs(way.y()) / upright);
            }
        }
        assertTrue(alongFlank > 5, "no ray along the flank: " + alongFlank);
    }

    private static double farRidge(double e) {
        return Math.max(0, Math.min(0.4 * (e - 60), 0.5 * (87 - e)));
    }

    /** Level cover shows its depth, whether or not the ray clips a ridge further out, whose soil is told by itself. */
    @Test
    void aFarRidgeDoesNotThickenALevelCover() {
        ElevationGrid ground = ElevationGrid.sampled(FRAME, (e, n) -> farRidge(e));
        SceneRays rays = SceneRays.of(new Scene(Scenes.bare(ground, BulkDensity.uniform(DENSITY)), List.of()));
        double depth = 1.5;
        Random random = new Random(5);
        int clipped = 0;
        for (int i = 0; i < 400; i++) {
            double sine = 0.04 + 0.2 * random.nextDouble();
            Vec3 way = direction(Math.PI / 2 + 0.6 * (random.nextDouble() - 0.5), sine);
            double rise = way.z() / way.x();
            // In the plane across the ridge: into its near face, out of its far one.
            double in = (0.4 * 60 - depth) / (0.4 - rise);
            double out = (0.5 * 87 + depth) / (0.5 + rise);
            double beyond = out > in ? (out - in) / way.x() * DENSITY : 0;
            for (Seen seen : seen(rays, new Vec3(0, 0.3, -depth), way)) {
                assertEquals(depth * DENSITY, seen.across(), EXACT * depth * DENSITY, "along " + way);
                assertEquals(beyond, seen.beyond(), EXACT * depth * DENSITY + EXACT * beyond, "along " + way);
                assertEquals(depth / way.z() * DENSITY + beyond, seen.all(), EXACT * seen.all(), "along " + way);
                clipped += beyond > 0 ? 1 : 0;
            }
        }
        assertTrue(clipped > 100, clipped + " rays clip the ridge");
    }

    /** The same with placed soil on the ground, whose density is one or grows with depth. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void placedSoilOverGroundIsAsThickAsBothTogether(boolean even) {
        BulkDensity profile = even ? BulkDensity.uniform(DENSITY) : LunarProfile.bulkDensity();
        ToDoubleFunction<Double> column = depth -> profile.columnMass(depth) - profile.columnMass(0);
        ElevationGrid natural = ElevationGrid.sampled(FRAME, (e, n) -> farRidge(e));
        ElevationGrid finished = ElevationGrid.sampled(FRAME, (e, n) -> farRidge(e) + (e < 50 || e > 70 ? 2 : 0));
        SceneRays rays = SceneRays.of(new Scene(new Soil(natural, finished, PLACED, profile), List.of()));
        double thick = 2 * PLACED + column.applyAsDouble(1.0);
        Random random = new Random(6);
        int clipped = 0;
        for (int i = 0; i < 400; i++) {
            Vec3 way = direction(Math.PI / 2 + 0.6 * (random.nextDouble() - 0.5), 0.07 + 0.2 * random.nextDouble());
            for (Seen seen : seen(rays, new Vec3(0, 0.3, -1), way)) {
                assertEquals(thick, seen.across(), EXACT * thick, "along " + way);
                clipped += seen.beyond() > 0 ? 1 : 0;
            }
        }
        assertTrue(clipped > 100, clipped + " rays clip the ridge");
    }
}
