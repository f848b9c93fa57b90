// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.foundation.Ring;
import bermwright.shielding.dose.Responses;
import bermwright.site.SamplePlans;
import bermwright.site.example.SiteExample;
import bermwright.site.example.SiteExample.Change;
import bermwright.site.exposure.DoseSources;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.SiteCover;
import bermwright.site.exposure.SiteDose;
import bermwright.site.haulage.DugGround;
import bermwright.site.haulage.Earthworks;
import bermwright.site.haulage.EarthworksInput;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.haulage.SoilNeed;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.Corridor;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Preparation;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.TrueMetres;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Benches, ways, pits and part-built mounds do not hang on the cell of the elevation file either. */
class BuiltCellLawTest {
    private static final double SIDE = 280;
    private static final double COARSEST = 20;
    private static final double DEPTH = 0.02;
    private static final double DOSE = 0.02;
    private static final double VOLUME = 0.005;
    /** Area under one piece of work (m2), for what a coarse file hides of the ground there. */
    private static final double WORKED = 700;

    @TempDir
    static Path directory;

    private final Responses responses = new Responses(directory);

    private static double plane(double east, double north) {
        return 0.04 * east - 0.03 * north;
    }

    private static double smooth(double east, double north) {
        return plane(east, north) + 0.8 * Math.sin(east / 70) * Math.cos(north / 60);
    }

    private static ElevationGrid sampled(DoubleBinaryOperator height, double cell, double from) {
        int nodes = (int) ((SIDE - 2 * from) / cell) + 1;
        ElevationGrid file = ElevationGrid.sampled(new GridFrame(nodes, nodes, from, from, cell), height);
        return file.refined((int) Math.max(1, Math.ceil(cell)));
    }

    private static Ring box(Point middle, double azimuthDeg, double halfLength, double halfWidth) {
        Azimuth way = Azimuth.ofDegrees(azimuthDeg);
        return new Ring(List.of(middle.moved(way, -halfLength, -halfWidth), middle.moved(way, halfLength, -halfWidth),
                middle.moved(way, halfLength, halfWidth), middle.moved(way, -halfLength, halfWidth)));
    }

    private static Preparation bench(String id, Ring area, OptionalDouble level) {
        return new Preparation(id, Preparation.Kind.BENCH, area, level, Math.toRadians(1), Math.toRadians(30),
                Annotations.NOTHING);
    }

    /** A bench half a metre into the ground under the hull, a fitted one, a way down to its grade and a pit. */
    private static Plan plan(DoubleBinaryOperator ground) {
        Hull hull = SamplePlans.hull("A", new Point(110, 150), 75);
        Point under = hull.lyingAt(TrueMetres.SAME, hull.length() / 2, 0);
        Change change = new Change();
        change.borrow = List.of(SiteExample.borrow("B", SiteExample.square(230, 60, 50.3), 0.8));
        change.corridors = List.of(new Corridor("road", 6, Math.toRadians(1), List.of(new Point(40, 250.2),
                new Point(160.3, 252), new Point(200, 230)), Annotations.NOTHING));
        change.preparations = List.of(bench("under", box(under, 75, 24.3, 7.1), OptionalDouble.of(
                ground.applyAsDouble(under.east(), under.north()) - 0.5)),
                bench("yard", box(new Point(70.2, 60.7), 20, 18.2, 11.4), OptionalDouble.empty()));
        return SiteExample.with(SamplePlans.plan(List.of(hull)), change);
    }

    /** Everything that is built, by name: depths begin with "depth", doses with "dose", the rest are volumes. */
    private Map<String, Double> answers(Plan plan, ElevationGrid ground, boolean withDose) {
        Map<String, Double> all = new LinkedHashMap<>();
        PreparedGround prepared = PreparedGround.of(plan, ground);
        for (PreparedGround.Moved moved : prepared.moved()) {
            all.put("cut of " + moved.id(), moved.volumes().cut());
            all.put("fill of " + moved.id(), moved.volumes().fill());
        }
        all.put("depth of the yard", prepared.surface().height(70.2, 60.7));
        SiteCover cover = SiteCover.raised(plan, ground, prepared.surface());
        HullCover hull = cover.hull("A").orElseThrow();
        all.put("cover", hull.volume());
        all.put("depth of cover", hull.least().depth());
        EarthworksResult soil = Earthworks.of(new EarthworksInput(plan, prepared.surface(), List.of(new SoilNeed("A",
                SoilNeed.Kind.COVER, 1000, 1650, cover.toes())), List.of(), EarthworksInput.Objective.MACHINE_HOURS),
                Progress.NONE);
        DugGround pit = soil.dug().get(0);
        all.put("pit", pit.usable());
        all.put("depth of the pit", pit.depth());
        all.put("depth in the pit", pit.dugIn(prepared.surface()).height(230, 60));
        StagesResult work = Stages.of(StagesInput.under(plan, cover, Optional.of(soil)), Progress.NONE);
        for (int i = 10; i <= 30; i += 10) {
            StagesResult.LiftCurve.Point lift = work.lifts().get(0).points().get(i);
            all.put("depth of lift " + i, lift.height());
            all.put("lifts to " + i, lift.placed());
        }
        Stage half = work.stages().get(work.stages().size() * 2 / 3);
        all.put("depth of soil beside the hull, part-built", half.surface().height(128.3, 145));
        if (withDose) {
            DoseSources sources = new DoseSources(responses, directory);
            all.put("dose", SiteDose.of(plan, cover, sources, Progress.NONE).stations().get(0).covered().best());
            SiteCover standing = SiteCover.standing(plan, cover.natural(), cover.prepared(), half.surface());
            all.put("part-built cover", standing.volume());
            all.put("dose part-built",
                    SiteDose.of(plan, standing, sources, Progress.NONE).stations().get(0).covered().best());
        }
        return all;
    }

    /** Volumes may differ by what the ground itself differs under them. */
    private static void assertAlike(Map<String, Double> known, Map<String, Double> other, double off, String where) {
        other.forEach((name, value) -> {
            double one = known.get(name);
            double allowed = name.startsWith("depth") ? DEPTH : name.startsWith("dose") ? DOSE * one
                    : VOLUME * one + off * WORKED;
            assertEquals(one, value, allowed, where + ": " + name);
        });
    }

    /** How far the bilinear ground of a file is off in the mean under the hull (m). */
    private static double off(DoubleBinaryOperator ground, ElevationGrid sampled) {
        double sum = 0;
        int count = 0;
        for (double east = 105; east < 155; east += 1.1) {
            for (double north = 140; north < 166; north += 1.3) {
                sum += Math.abs(sampled.height(east, north) - ground.applyAsDouble(east, north));
                count++;
            }
        }
        return sum / count;
    }

    private void check(DoubleBinaryOperator ground, double[] cells, boolean withDose) {
        Plan plan = plan(ground);
        Map<String, Double> known = answers(plan, sampled(ground, 1, 0), withDose);
        assertTrue(known.size() > 18 && known.get("cut of under") > 50 && known.get("fill of yard") > 50
                && known.get("cut of road") > 50, known.toString());
        for (double cell : cells) {
            ElevationGrid file = sampled(ground, cell, 0);
            double off = off(ground, file);
            assertTrue(off < DEPTH, "a ground that smooth is known to " + off + " m");
            assertAlike(known, answers(plan, file, withDose && cell == COARSEST), off, cell + " m");
        }
        assertAlike(known, answers(plan, sampled(ground, 1, 0.37), false), 0, "1 m, nodes elsewhere");
    }

    @Test
    void onAPlaneEveryCellGivesTheSame() {
        check(BuiltCellLawTest::plane, new double[] {0.25, COARSEST}, false);
    }

    @Test
    void onASmoothSlopeEveryCellGivesTheSame() {
        check(BuiltCellLawTest::smooth, new double[] {5, COARSEST}, true);
    }
}
