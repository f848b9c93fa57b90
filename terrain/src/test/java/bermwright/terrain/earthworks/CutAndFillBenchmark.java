// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
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
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Cut and fill between two rolling surfaces of 2,000 x 2,000 cells; the goal is below 50 ms on two cores. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class CutAndFillBenchmark {
    private ElevationGrid before;
    private ElevationGrid after;
    private Ring outline;

    /** Makes two surfaces that cross each other, and an outline of 200 corners with 3 million cells inside. */
    @Setup
    public void make() {
        GridFrame frame = new GridFrame(2001, 2001, 0, 0, 1);
        before = ElevationGrid.sampled(frame, (e, n) -> 20 * Math.sin(e / 200) * Math.cos(n / 170));
        after = ElevationGrid.sampled(frame, (e, n) -> 15 * Math.cos(e / 150) + 0.01 * n - 8);
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            corners.add(new Point(1000, 1000).moved(new Azimuth(2 * Math.PI * i / 200), 960 + 30 * (i % 2), 0));
        }
        outline = new Ring(corners);
    }

    @Benchmark
    public CutAndFill wholeGrid() {
        return CutAndFill.between(before, after);
    }

    @Benchmark
    public CutAndFill insideAnOutline() {
        return CutAndFill.between(before, after, outline);
    }

    public static void main(String[] arguments) throws RunnerException {
        new Runner(new OptionsBuilder().include(CutAndFillBenchmark.class.getName()).jvmArgs("-Xmx3g").build()).run();
    }
}
