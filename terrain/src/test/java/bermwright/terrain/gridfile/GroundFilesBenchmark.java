// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.Progress;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Reading and writing 4,000 x 4,000 heights as deflated tiles with predictor 3. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 4, time = 2)
public class GroundFilesBenchmark {
    private ElevationGrid ground;
    private Path file;
    private Path other;

    @Setup
    public void make() throws IOException {
        ground = ElevationGrid.sampled(new GridFrame(4000, 4000, 0, 0, 1),
                (e, n) -> 100 * Math.sin(e / 300) * Math.cos(n / 200) + 30 * Math.sin(e / 47 + n / 90));
        file = Files.createTempFile("ground", ".tif");
        other = Files.createTempFile("other", ".tif");
        GeoTiffWriter.write(file, ground, ReferenceSystem.lunarSouthPolar(), Progress.NONE);
    }

    @TearDown
    public void remove() throws IOException {
        Files.delete(file);
        Files.delete(other);
    }

    @Benchmark
    public GroundFile read() {
        return GroundFiles.read(file, GroundFiles.Knowledge.NONE, Progress.NONE);
    }

    @Benchmark
    public void write() throws IOException {
        GeoTiffWriter.write(other, ground, ReferenceSystem.lunarSouthPolar(), Progress.NONE);
    }

    public static void main(String[] arguments) throws RunnerException {
        new Runner(new OptionsBuilder().include(GroundFilesBenchmark.class.getName()).jvmArgs("-Xmx4g").build()).run();
    }
}
