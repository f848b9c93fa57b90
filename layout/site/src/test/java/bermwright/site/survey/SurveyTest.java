// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Azimuth;
import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import bermwright.site.pose.LyingPose;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.NodeRange;
import bermwright.terrain.grid.TrueMetres;
import bermwright.terrain.gridfile.GeoTiffWriter;
import bermwright.terrain.gridfile.GeographicPlace;
import bermwright.terrain.gridfile.GroundFiles;
import bermwright.terrain.gridfile.ReferenceSystem;
import bermwright.terrain.relief.FootprintSurface;
import bermwright.terrain.relief.SunPlace;
import bermwright.terrain.relief.SurfaceStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SurveyTest {
    /** Heights are rounded to 1/4096 m in sums and to 32 bits in the file. */
    private static final double SLOPE_ROUNDING_DEG = 1e-3;
    private static final int NODES = 180;
    private static final DoubleBinaryOperator ROLLING = (e, n) -> 3 * Math.sin(e / 47) * Math.cos(n / 61) + 0.02 * n
            + 0.15 * Math.sin(e / 5 + n / 9);

    @TempDir
    Path folder;

    @Test
    void slopesAreThoseOfThePlaneThroughTheNodesUnderTheHull() throws IOException {
        Path file = Regions.write(folder, NODES, 2, ROLLING);
        SurveyPlace place = Regions.run(Regions.order(file, Regions.BARE, Regions.headings(36), NODES), 1, folder)
                .places().get(0);
        ElevationGrid grid = GroundFiles.read(file, GroundFiles.Knowledge.NONE, Progress.NONE).grid();
        int column = (int) Math.rint((place.centre().east() - grid.frame().west()) / 2);
        int row = (int) Math.rint((place.centre().north() - grid.frame().south()) / 2);
        FootprintSurface.Rectangle under = new FootprintSurface.Rectangle(40, 8, place.heading());
        for (FootprintSurface.Quantity what : List.of(FootprintSurface.Quantity.SLOPE_ALONG,
                FootprintSurface.Quantity.SLOPE_ACROSS)) {
            float[] slopes = SurfaceStream.block(grid, new FootprintSurface(what, under, 2), new NodeRange(row, column,
                    1, 1));
            assertEquals(slopes[0], Regions.measured(place, what == FootprintSurface.Quantity.SLOPE_ALONG
                    ? Criterion.SLOPE_ALONG : Criterion.SLOPE_ACROSS), SLOPE_ROUNDING_DEG);
        }
    }

    @Test
    void aPlaceIsAPlanWhoseHullLiesOnTheGroundThatWasJudged() throws IOException {
        Path file = Regions.write(folder, NODES, 2, ROLLING);
        SurveyPlace place = Regions.run(Regions.order(file, Regions.BARE, Regions.headings(36), NODES), 1, folder)
                .places().get(0);
        Plan plan = PlanFiles.read(PlanFiles.text(place.plan()), "place");
        assertEquals("region.tif", plan.ground().elevationFile());
        Hull hull = plan.hulls().get(0);
        LyingPose pose = LyingPose.of(hull, GroundFiles.read(file, GroundFiles.Knowledge.NONE,
                Progress.NONE).grid()).orElseThrow();
        // The plan's plane is fitted to the bilinear ground, the survey's to its nodes.
        assertEquals(Regions.measured(place, Criterion.SLOPE_ALONG), Math.toDegrees(pose.slopeAlong()), 0.05);
        assertEquals(Regions.measured(place, Criterion.SLOPE_ACROSS), Math.toDegrees(pose.slopeAcross()), 0.3);
        Point middle = hull.lyingAt(TrueMetres.SAME, 20, 0);
        assertEquals(0, middle.distance(place.centre()), 2e-3);
    }

    @Test
    void onASlopeTheHullLiesAcrossOrAlongAsItsLimitsAllow() throws IOException {
        Path file = Regions.write(folder, NODES, 2, (e, n) -> -n * Math.tan(Math.toRadians(6)));
        SurveyResult result = Regions.run(Regions.order(file, Regions.BARE, Regions.headings(36), NODES), 1, folder);
        // 6 deg is more than 5 deg along or across, but not both ways at 45 deg: 4.25 deg each; 50 deg is nearest.
        double grade = Math.tan(Math.toRadians(6)) * Math.sin(Math.toRadians(50)) / Math.tan(Math.toRadians(5));
        assertEquals(1 - grade, result.places().get(0).score(), 2e-4);
        assertEquals(5, Math.abs(result.places().get(0).heading().degrees() % 90 - 45), 1e-9);
    }

    @Test
    void findsTheOnlyLevelPlaceOfSteepGround() throws IOException {
        Path file = Regions.write(folder, NODES, 2, (e, n) -> {
            double d = Math.hypot(e - 40, n + 30);
            return Math.max(0, d - 45) * 0.4;
        });
        SurveyResult result = Regions.run(Regions.order(file, Regions.BARE, Regions.headings(12), NODES), 5, folder);
        // The level disc has a radius of 45 m and the hull a half width of 4 m.
        assertEquals(0, result.places().get(0).centre().distance(new Point(40, -30)), 45 - 4);
        assertTrue(result.tally().tooSteep() > result.tally().admitted(), result.tally().toString());
        for (SurveyPlace place : result.places()) {
            assertEquals(0, place.centre().distance(new Point(40, -30)), 50, place.centre().toString());
        }
    }

    @Test
    void aScoreDoesNotHangOnHowTheGroundIsCut() throws IOException {
        Path file = Regions.write(folder, NODES, 2, ROLLING);
        SurveyOrder order = Regions.order(file, Survey.builtIn(), Regions.headings(12), NODES);
        float[] whole = new float[NODES * NODES];
        short[] ways = new short[NODES * NODES];
        float[] part = new float[NODES * NODES];
        short[] way = new short[NODES * NODES];
        try (SurveySetup setup = SurveySetup.open(order, Progress.NONE)) {
            new BlockScorer(setup, NODES, true).cells(new NodeRange(0, 0, NODES, NODES), whole, ways);
            BlockScorer small = new BlockScorer(setup, 70, true);
            for (int r = 0; r < NODES; r += 70) {
                for (int c = 0; c < NODES; c += 70) {
                    NodeRange block = new NodeRange(r, c, Math.min(70, NODES - r), Math.min(70, NODES - c));
                    float[] scores = new float[(int) block.nodes()];
                    short[] headings = new short[scores.length];
                    small.cells(block, scores, headings);
                    for (int i = 0; i < block.rows(); i++) {
                        System.arraycopy(scores, i * block.columns(), part, (r + i) * NODES + c, block.columns());
                        System.arraycopy(headings, i * block.columns(), way, (r + i) * NODES + c, block.columns());
                    }
                }
            }
        }
        assertArrayEquals(whole, part, 0);
        assertArrayEquals(ways, way);
    }

    @Test
    void aQuarterTurnOfTheGroundTurnsThePlaces() throws IOException {
        SurveyLimits limits = Regions.headings(36);
        SurveyPlace one = Regions.run(Regions.order(Regions.write(folder, NODES, 2, ROLLING), Regions.BARE, limits,
                NODES), 1, folder).places().get(0);
        // What lay at (e, n) lies at (n, -e).
        SurveyPlace other = Regions.run(Regions.order(Regions.write(folder, NODES, 2, (e, n) ->
                ROLLING.applyAsDouble(-n, e)), Regions.BARE, limits, NODES), 1, folder).places().get(0);
        assertEquals(one.score(), other.score(), 1e-6);
        assertEquals(0, other.centre().distance(new Point(one.centre().north(), -one.centre().east())), 1e-6);
        assertEquals(0, Math.IEEEremainder(one.heading().degrees() + 90 - other.heading().degrees(), 180), 1e-6);
    }

    @Test
    void keepOutsAndPadsKeepHullsAway() throws IOException {
        Path file = Regions.write(folder, NODES, 2, (e, n) -> 0.001 * e * e / 100);
        String kept = Regions.BARE.strip();
        kept = kept.substring(0, kept.length() - 1) + """
                , "keep_outs": [{"id": "rocks", "kind": "boulder field",
                    "area": [[-200, -200], [200, -200], [200, 60], [-200, 60]]}],
                  "landing_pads": [{"id": "P", "centre": {"east_m": -150, "north_m": 120}, "radius_m": 10,
                    "stand_off_m": 150}]}
                """;
        SurveyResult result = Regions.run(Regions.order(file, kept, Regions.headings(12), NODES), 5, folder);
        assertTrue(result.places().size() > 0);
        for (SurveyPlace place : result.places()) {
            assertTrue(place.centre().north() > 60 + 4, place.centre().toString());
            assertTrue(place.centre().distance(new Point(-150, 120)) > 150, place.centre().toString());
        }
        assertEquals(1, result.places().get(0).plan().keepOuts().size());
    }

    @Test
    void whatMayNotBeKnownIsNotSurveyed() throws IOException {
        Path file = Regions.write(folder, NODES, 2, (e, n) -> Math.hypot(e, n) < 20 ? Double.NaN : 0);
        SurveyResult result = Regions.run(Regions.order(file, Regions.BARE, Regions.headings(12), NODES), 30, folder);
        assertTrue(result.tally().unknown() > 300);
        for (SurveyPlace place : result.places()) {
            // Nearest point of the hull's axis to the gap, less its radius.
            Point base = place.centre().moved(place.heading(), -20, 0);
            Point tip = place.centre().moved(place.heading(), 20, 0);
            assertTrue(new Point(0, 0).distance(base, tip) > 20 + 4 - 2, place.centre().toString());
        }
    }

    @Test
    void aRelayBehindARidgeIsNotSeen() throws IOException {
        Path file = Regions.write(folder, NODES, 8, (e, n) -> n > 300 ? 70 : 10);
        String wide = Regions.BARE.replace("\"diameter_m\": 8", "\"diameter_m\": 16");
        SurveyLimits u = Regions.headings(4);
        SurveyLimits limits = new SurveyLimits(4, u.mostBench(), u.soilReach(), u.borrowDepth(), u.borrowYield(),
                u.borrowGrade(), List.of(new SurveyLimits.Relay(0, Math.toRadians(10), 2)), List.of(), 1000);
        SurveyResult result = Regions.run(Regions.order(file, wide, limits, NODES), 3, folder);
        assertTrue(result.tally().noSight() > 1000, result.tally().toString());
        double seen = 60 - 2;
        for (SurveyPlace place : result.places()) {
            double away = 300 - place.centre().north();
            assertTrue(away < 0 || Math.atan2(seen, away + 12) < Math.toRadians(10), place.centre().toString());
        }
    }

    @Test
    void hoursOfSunlightAreThoseOfTheSunOverTheHorizon() throws IOException {
        // A sphere of the Moon's radius 30 km from its south pole; heights of 10 m, as exact 0 reads as fill.
        GridFrame frame = new GridFrame(60, 60, 0, 30_000, 4);
        Path file = folder.resolve("polar.tif");
        GeoTiffWriter.write(file, ElevationGrid.sampled(frame, (e, n) -> 10), ReferenceSystem.lunarSouthPolar(),
                Progress.NONE);
        Instant from = Instant.parse("2030-01-01T00:00:00Z");
        Instant to = Instant.parse("2030-01-11T00:00:00Z");
        SurveyLimits u = SurveyLimits.USUAL;
        SurveyLimits limits = new SurveyLimits(2, u.mostBench(), u.soilReach(), u.borrowDepth(), u.borrowYield(),
                u.borrowGrade(), List.of(), List.of(new SurveyLimits.Sunlight(from, to, 1)), 100);
        GeographicPlace middle = ReferenceSystem.lunarSouthPolar().geographic(frame.centre());
        double hours = 0;
        for (Instant time = from.plusSeconds(900); time.isBefore(to); time = time.plusSeconds(1800)) {
            double elevation = SunPlace.at(time).elevation(Math.toRadians(middle.latitudeDeg()),
                    Math.toRadians(middle.longitudeDeg()));
            hours += elevation > 0 ? 0.5 : 0;
        }
        SurveyResult result = Regions.run(Regions.order(file, Regions.BARE, limits, 60), 1, folder);
        if (hours < 1) {
            assertTrue(result.places().isEmpty() && result.tally().noSight() > 0, result.tally().toString());
        } else {
            // The disc counts by its share, so that rising and setting take a day here.
            assertEquals(hours, Regions.measured(result.places().get(0), Criterion.LIGHT), 24);
        }
    }

    @Test
    void cellsThatHideTheHullAreRefused() throws IOException {
        Path file = Regions.write(folder, 60, 5, ROLLING);
        SurveyOrder order = Regions.order(file, Regions.BARE, Regions.headings(12), 60);
        InputException bad = assertThrows(InputException.class, () -> Regions.run(order, 1, folder));
        assertTrue(bad.getMessage().contains("cell size") && bad.getMessage().contains("at most 4.00 m"),
                bad.getMessage());
    }

    @Test
    void aReachWithTooLittleSoilIsRefused() throws IOException {
        Path file = Regions.write(folder, 60, 2, ROLLING);
        SurveyLimits u = SurveyLimits.USUAL;
        SurveyOrder order = Regions.order(file, Survey.builtIn(), new SurveyLimits(4, u.mostBench(), 50,
                u.borrowDepth(), u.borrowYield(), u.borrowGrade(), List.of(), List.of(), 1000), 60);
        InputException bad = assertThrows(InputException.class, () -> Regions.run(order, 1, folder));
        assertTrue(bad.getMessage().contains("--soil-reach"), bad.getMessage());
    }

    @Test
    void stopsWhenAskedTo() throws IOException {
        Path file = Regions.write(folder, 60, 2, ROLLING);
        SurveyOrder order = Regions.order(file, Regions.BARE, Regions.headings(4), 60);
        Progress cancelled = new Progress() {
            @Override
            public void report(double share, String step) {
                // nobody looks
            }

            @Override
            public boolean isCancelled() {
                return true;
            }
        };
        assertThrows(CancellationException.class, () -> Survey.run(order, 1, new PlanFolders(folder, folder),
                new LocalSpread(), cancelled));
    }

    @Test
    void aGroupKeepsItsHullsInPlaceToEachOther() throws IOException {
        String two = Regions.BARE.strip();
        int hull = two.indexOf("[{") + 1;
        String first = two.substring(hull, two.lastIndexOf("]"));
        String second = first.replace("\"A\"", "\"B\"").replace("\"east_m\": 0", "\"east_m\": 30")
                .replace("\"lay_down_azimuth_deg\": 0", "\"lay_down_azimuth_deg\": 25");
        String plan = two.substring(0, hull) + first + "," + second + two.substring(two.lastIndexOf("]"));
        Path file = Regions.write(folder, NODES, 2, ROLLING);
        SurveyPlace place = Regions.run(Regions.order(file, plan, Regions.headings(8), NODES), 1, folder).places()
                .get(0);
        Hull a = place.plan().hulls().get(0);
        Hull b = place.plan().hulls().get(1);
        assertEquals(30, a.baseCentre().distance(b.baseCentre()), 2e-3);
        Azimuth way = Azimuth.from(a.baseCentre(), b.baseCentre());
        assertEquals(0, Math.IEEEremainder(way.degrees() - a.layDownAzimuth().degrees() - 90, 360), 1e-2);
        assertEquals(0, Math.IEEEremainder(b.layDownAzimuth().degrees() - a.layDownAzimuth().degrees() - 25, 360),
                1e-9);
    }
}
