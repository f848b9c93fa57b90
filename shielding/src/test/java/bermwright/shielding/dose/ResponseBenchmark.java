// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.Progress;
import bermwright.shielding.material.Layer;
import bermwright.shielding.material.Materials;
import bermwright.shielding.material.Shield;
import bermwright.shielding.spectrum.CosmicSpectrum;
import bermwright.shielding.spectrum.EventSpectra;
import bermwright.shielding.transport.Beam;
import bermwright.shielding.transport.Penetration;
import java.util.List;
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

/** A full response, 28 charges and neutrons to 1500 g/cm2, and an event, without the cache; one thread. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-XX:+UseSerialGC")
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ResponseBenchmark {
    private final Shield shield =
            Shield.of("highland", List.of(new Layer(Materials.named("steel"), 39.5)));
    private final Penetration ready = penetration();

    private Penetration penetration() {
        return new Penetration(shield, Responses.skinEquivalence(shield), Penetration.Resolution.STANDARD);
    }

    /** Materials made ready, cosmic rays carried in, doses at 35 depths. */
    @Benchmark
    public double fullResponse() {
        Penetration penetration = penetration();
        return dose(penetration, Beam.cosmic(new CosmicSpectrum(10), penetration.grid(), 0));
    }

    /** An event, the materials made ready before. */
    @Benchmark
    public double event() {
        return dose(ready, Beam.event(EventSpectra.named("august 1972"), ready.grid()));
    }

    private static double dose(Penetration penetration, Beam beam) {
        Penetration.Outcome outcome = penetration.carry(beam, TransportResponse.DEPTHS_GCM2, Progress.NONE);
        BodyDose body = new BodyDose(penetration);
        return outcome.fields().stream().mapToDouble(f -> body.effective(f).total()).sum();
    }
}
