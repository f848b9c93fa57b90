// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.example.SiteExample;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

/** Following a drag of one hull among twenty, all with poles, stays, lines and covers; goal: under 10 ms a frame. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ClearanceBenchmark {
    private static final int HULLS = 20;

    private Plan plan;
    private Optional<ElevationGrid> ground;
    private Map<String, List<Ring>> toes;
    private SiteShapes shapes;
    private Clearance clearance;
    private double moved;

    /** Twenty hulls in rows 100 m by 80 m apart, so that fall zones and snap-back zones overlap. */
    @Setup
    public void site() {
        List<Hull> hulls = new ArrayList<>();
        toes = new HashMap<>();
        for (int i = 0; i < HULLS; i++) {
            double east = 100 + 100 * (i % 5);
            double north = 100 + 100 * (i / 5);
            hulls.add(SiteExample.hull("H" + i, east, north, 20 * i));
            toes.put("H" + i, List.of(SiteExample.square(east, north, 70)));
        }
        plan = SiteExample.plan(hulls.toArray(Hull[]::new));
        ground = Optional.of(SiteExample.ground((e, n) -> Math.sin(e / 40) + Math.cos(n / 30)));
        shapes = SiteShapes.of(plan, ground, toes);
        clearance = Clearance.of(shapes, ground);
    }

    /** One frame of a drag. */
    @Benchmark
    public int drag() {
        moved = (moved + 0.7) % 60;
        plan = plan.withHull("H7", h -> h.withBaseCentre(new Point(260 + moved, 190 + moved)));
        shapes = shapes.withPlan(plan, toes);
        clearance = clearance.with(shapes);
        return clearance.findings().size();
    }

    /** A whole check from the plan. */
    @Benchmark
    public int afresh() {
        return Clearance.of(SiteShapes.of(plan, ground, toes), ground).findings().size();
    }

    public static void main(String[] args) throws Exception {
        new Runner(new OptionsBuilder().include(ClearanceBenchmark.class.getSimpleName()).build()).run();
    }
}
