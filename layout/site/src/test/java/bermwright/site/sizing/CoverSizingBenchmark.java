// SPDX-License-Identifier: Apache-2.0
package bermwright.site.sizing;

import bermwright.foundation.Progress;
import bermwright.site.assessment.CoverSearch;
import bermwright.site.assessment.SiteGround;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
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
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * The least cover of a whole plan, such as the demo's, responses from the cache; goal: under 10 s.
 *
 * <p>Use: {@code CoverSizingBenchmark PLAN}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 1)
@Measurement(iterations = 2)
public class CoverSizingBenchmark {
    private static final String PLAN = "bermwright.plan";

    private Plan plan;
    private SiteGround ground;

    /** Reads plan and ground. */
    @Setup
    public void read() {
        Path file = Path.of(System.getProperty(PLAN));
        plan = PlanFiles.read(file);
        ground = SiteGround.read(plan, file, Progress.NONE);
    }

    /** The whole search. */
    @Benchmark
    public SizedCover leastCover() {
        return CoverSearch.least(plan, ground, Progress.NONE);
    }

    /** Runs it on a plan. */
    public static void main(String[] args) throws Exception {
        new Runner(new OptionsBuilder().include(CoverSizingBenchmark.class.getSimpleName())
                .jvmArgsAppend("-D" + PLAN + "=" + Path.of(args[0]).toAbsolutePath()).build()).run();
    }
}
