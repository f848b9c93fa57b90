// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.HornSlope;
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
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Pictures of 4,000 x 4,000 heights; the goal is below 0.5 s each on two cores. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 4, time = 2)
public class ReliefBenchmark {
    private ElevationGrid ground;

    /** Makes rolling ground of some 260 m relief. */
    @Setup
    public void make() {
        ground = ElevationGrid.sampled(new GridFrame(4000, 4000, 0, 0, 1),
                (e, n) -> 100 * Math.sin(e / 300) * Math.cos(n / 200) + 30 * Math.sin(e / 47 + n / 90));
    }

    @Benchmark
    public byte[] hillshade() {
        return Hillshade.of(ground, Light.OF_MAPS, 1);
    }

    @Benchmark
    public SlopeBands slopeBands() {
        return SlopeBands.of(ground, 0.1, 0.2, 0.3);
    }

    @Benchmark
    public double[] hornSlopes() {
        return HornSlope.slopes(ground);
    }

    @Benchmark
    public List<ContourLine> contoursEveryFiveMetres() {
        return Contours.every(ground, 5);
    }

    public static void main(String[] arguments) throws RunnerException {
        new Runner(new OptionsBuilder().include(ReliefBenchmark.class.getName()).jvmArgs("-Xmx5g").build()).run();
    }
}
