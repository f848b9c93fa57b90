// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Progress;
import bermwright.foundation.Vec3;
import bermwright.regolith.BulkDensity;
import bermwright.regolith.LunarProfile;
import bermwright.shielding.cover.CoveredHull;
import bermwright.shielding.cover.Mound;
import bermwright.shielding.cover.Mounds;
import bermwright.shielding.dose.Response;
import bermwright.shielding.dose.Responses;
import bermwright.shielding.material.Layer;
import bermwright.shielding.material.Materials;
import bermwright.shielding.material.Shield;
import bermwright.shielding.raycast.SceneRays;
import bermwright.shielding.scene.HullEnd;
import bermwright.shielding.scene.HullShape;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.Scene;
import bermwright.shielding.scene.Scenes;
import bermwright.shielding.scene.Soil;
import bermwright.shielding.spectrum.EventSpectra;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Three hulls on 1,000 x 1,000 nodes at 0.5 m: the least cover over all (goal: under 150 ms), and 24 stations settled
 * to half a per cent of both cosmic rays and an event, several at a time (goal: under 300 ms on two cores).
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class BuriedHullsBenchmark {
    private static final double SKIN = 39.5;

    private ElevationGrid ground;
    private List<CoveredHull> hulls;
    private List<Vec3> stations;
    private List<Response> responses;
    private Soil soil;
    private Soil soilByDepth;

    /** Rolling ground, three hulls side by side, eight stations in each. */
    @Setup
    public void site() {
        ground = ElevationGrid.sampled(new GridFrame(1000, 1000, -250, -250, 0.5),
                (e, n) -> 0.01 * e + Math.sin(e / 17) * Math.cos(n / 23));
        hulls = new ArrayList<>();
        stations = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            double north = 22 * (i - 1);
            HullSolid hull = new HullSolid("H" + i, new HullShape(38, 3.8, HullEnd.FLAT, HullEnd.cone(3), SKIN),
                    Scenes.lying(new Vec3(-19, north, ground.height(0, north) + 3.8), Azimuth.ofDegrees(80 + 8 * i),
                            0));
            hulls.add(CoveredHull.uniform(hull, 2.5));
            for (int k = 0; k < 8; k++) {
                stations.add(hull.pose().point(3 + 4.5 * k, 0.3 * (k % 3 - 1), k % 2 - 0.5));
            }
        }
        Mound mound = leastCover();
        soil = new Soil(ground, mound.finished(), 1650, BulkDensity.uniform(1800));
        soilByDepth = new Soil(ground, mound.finished(), 1650, LunarProfile.bulkDensity());
        Shield shield = Shield.of("highland", List.of(new Layer(Materials.named("steel"), SKIN)));
        Responses made = new Responses(Path.of(System.getProperty("java.io.tmpdir")));
        responses = List.of(made.cosmic(shield, Responses.MINIMUM_W, Progress.NONE),
                made.event(shield, EventSpectra.named("august 1972"), Progress.NONE));
    }

    /** The least cover over all three. */
    @Benchmark
    public Mound leastCover() {
        return Mounds.over(ground, hulls, Math.toRadians(33), List.of());
    }

    /** All stations, soil in place of one density; making the scene ready counts. */
    @Benchmark
    public int stations() {
        return look(soil);
    }

    /** The same with soil in place that is denser with depth. */
    @Benchmark
    public int stationsOverSoilDenserWithDepth() {
        return look(soilByDepth);
    }

    private int look(Soil on) {
        SceneRays scene = SceneRays.of(new Scene(on, hulls.stream().map(CoveredHull::hull).toList()));
        return stations.parallelStream()
                .mapToInt(at -> SkyView.settled(scene, at, responses, 0.005).directions()).sum();
    }

    /** Runs it. */
    public static void main(String[] args) throws Exception {
        new Runner(new OptionsBuilder().include(BuriedHullsBenchmark.class.getSimpleName()).build()).run();
    }
}
