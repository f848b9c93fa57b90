// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.foundation.Progress;
import bermwright.site.example.SiteExample;
import bermwright.site.example.SiteExample.Change;
import bermwright.site.plan.BorrowGround;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
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

/** Ways and allocation for ten borrow grounds and ten fills on 2,000 x 2,000 cells; goal: under 2 s. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 3, time = 4)
@Fork(1)
public class EarthworksBenchmark {
    private EarthworksInput input;

    /** Rolling ground with ten pits along its south and ten fills along its north. */
    @Setup
    public void site() {
        ElevationGrid ground = ElevationGrid.sampled(new GridFrame(2001, 2001, 0, 0, 1),
                (e, n) -> 6 * Math.sin(e / 60) * Math.cos(n / 45));
        List<BorrowGround> borrow = new ArrayList<>();
        List<SoilNeed> needs = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            borrow.add(SiteExample.borrow("B" + i, SiteExample.square(150 + 180 * i, 200 + 37 * (i % 4), 80), 0.8));
            needs.add(new SoilNeed("F" + i, SoilNeed.Kind.COVER, 2000 + 250 * i, 1650,
                    List.of(SiteExample.square(170 + 175 * i, 1700 - 41 * (i % 5), 50))));
        }
        Change change = new Change();
        change.borrow = borrow;
        Plan plan = SiteExample.with(SiteExample.plan(), change);
        input = new EarthworksInput(plan, ground, needs, List.of(), EarthworksInput.Objective.MACHINE_HOURS);
    }

    /** The whole: lattice, ways, allocation. */
    @Benchmark
    public double waysAndAllocation() {
        return Earthworks.of(input, Progress.NONE).machineHours().orElseThrow();
    }

    public static void main(String[] args) throws Exception {
        new Runner(new OptionsBuilder().include(EarthworksBenchmark.class.getSimpleName()).build()).run();
    }
}
