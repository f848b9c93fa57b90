// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering;

import bermwright.lowering.choice.Limits;
import bermwright.lowering.choice.Suggestions;
import bermwright.lowering.sequence.Lowered;
import bermwright.lowering.sequence.Lowering;
import bermwright.lowering.statics.LoweringCase;
import bermwright.regolith.LunarProfile;
import bermwright.regolith.Soils;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A whole lowering at tenths of a degree with all strength checks, and a suggestion; one thread. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class LoweringBenchmark {
    private final LoweringCase casus = new LoweringCase(ReferenceBody.onRim(), ReferenceBody.fullRig(-56),
            LunarProfile.with(Soils.strength(42, 500)), Math.toRadians(2) / 60);

    /** 901 tilts with forces, checks, sweep and words. */
    @Benchmark
    public Lowered wholeLowering() {
        return Lowering.of(casus, 0.1);
    }

    /** Poles for a winch rating, 101 places. */
    @Benchmark
    public Suggestions suggestion() {
        return Suggestions.of(casus, Limits.of(80_000, 50, 9));
    }
}
