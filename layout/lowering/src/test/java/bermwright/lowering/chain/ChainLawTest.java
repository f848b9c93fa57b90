// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.chain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.lowering.RandomRigs;
import bermwright.lowering.body.Body;
import bermwright.lowering.body.MassCentre;
import bermwright.lowering.review.LineReview;
import bermwright.lowering.review.Reviews;
import bermwright.lowering.rig.LoweringLines;
import bermwright.lowering.rig.Lug;
import bermwright.lowering.rig.Poles;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.rig.Stay;
import bermwright.lowering.sequence.Lowering;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.statics.LoweringCase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Small inputs, small changes; more load, less factor: over hulls and gear drawn at random. */
class ChainLawTest {
    private static final double STEP = 1e-7;
    /** Greatest relative change of an output for a relative step of 1e-7; ten thousand times as much is a jump. */
    private static final double SMALL = 1e-3;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    private static Body moved(Body body, double factor) {
        MassCentre c = body.centre();
        return body.withCentre(new MassCentre(c.along() * factor, c.offAxis(), c.spread()));
    }

    private static LoweringCase lines(LoweringCase setup, double rate, DoubleFunction<LoweringLines> changed) {
        Rig r = setup.rig();
        return new LoweringCase(setup.tipping(), new Rig(changed.apply(1), r.poles(), r.stays(), r.pullOver(),
                r.pivotHold(), r.factors()), setup.soil(), rate, setup.shell());
    }

    private static LoweringLines efficiency(LoweringLines l, double factor) {
        return new LoweringLines(l.count(), l.lug(), l.line(), l.winch(), l.payOutMismatch(),
                Math.max(0.1, Math.min(1, l.sheaveEfficiency() * factor)), l.ends(), l.slack());
    }

    private static LoweringLines lug(LoweringLines l, double factor) {
        return new LoweringLines(l.count(), new Lug(l.lug().along() * factor, l.lug().offAxis(),
                l.lug().halfSpread()), l.line(), l.winch(), l.payOutMismatch(), l.sheaveEfficiency(), l.ends(),
                l.slack());
    }

    private static Rig splayed(Rig r, double factor) {
        List<Stay> stays = r.stays().stream().map(s -> new Stay(s.anchorAt(), s.halfSpread() * factor,
                s.breakingLoad(), s.anchor())).toList();
        return new Rig(r.lines(), r.poles(), stays, r.pullOver(), r.pivotHold(), r.factors());
    }

    private static Map<String, DoubleFunction<LoweringCase>> changes(LoweringCase setup) {
        Map<String, DoubleFunction<LoweringCase>> changes = new LinkedHashMap<>();
        changes.put("centre of mass", f -> setup.with(setup.tipping().with(moved(setup.tipping().body(), f))));
        changes.put("mass", f -> setup.with(setup.tipping().with(setup.tipping().body().withMass(
                setup.tipping().body().mass() * f))));
        changes.put("rate", f -> new LoweringCase(setup.tipping(), setup.rig(), setup.soil(), setup.rate() * f,
                setup.shell()));
        changes.put("sheave", f -> lines(setup, setup.rate(), one -> efficiency(setup.rig().lines(), 2 - f)));
        changes.put("lug", f -> lines(setup, setup.rate(), one -> lug(setup.rig().lines(), f)));
        changes.put("splay", f -> setup.with(splayed(setup.rig(), f)));
        return changes;
    }

    private static Map<String, Double> outputs(LoweringCase setup) {
        Map<String, Double> outputs = new LinkedHashMap<>();
        Optional<LoweringResult> found = Lowering.of(setup, 5).result();
        if (found.isEmpty()) {
            return outputs;
        }
        LoweringResult result = found.get();
        LineReview lines = Reviews.of(setup, result).lines();
        outputs.put("paid out", lines.paidOut());
        outputs.put("sag at hand-over", lines.sagAtHandOver());
        put(outputs, "stiffness at hand-over", lines.stiffnessShare());
        outputs.put("line", result.greatestLineTension());
        outputs.put("hand-over", result.handOverTilt());
        for (ChainRow row : result.chain().rows()) {
            put(outputs, row.part().words() + ", " + row.load().word(), row.demand());
        }
        return outputs;
    }

    private static void put(Map<String, Double> outputs, String name, OptionalDouble value) {
        value.ifPresent(v -> outputs.put(name, v));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyOutputMovesSmoothly(long seed) {
        LoweringCase setup = RandomRigs.of(seed);
        Map<String, Double> before = outputs(setup);
        changes(setup).forEach((input, change) -> {
            Map<String, Double> after = outputs(change.apply(1 + STEP));
            double weight = setup.tipping().weight();
            before.forEach((output, value) -> {
                if (after.containsKey(output)) {
                    double scale = output.contains(",") || output.equals("line") ? Math.abs(value) + 1e-3 * weight
                            : Math.abs(value) + 1e-3;
                    assertTrue(Math.abs(after.get(output) - value) < SMALL * scale, () -> "seed " + seed + ": " + input
                            + " moves " + output + " from " + value + " to " + after.get(output));
                }
            });
        });
    }

    /** More mass, a faster rate and a worse sheave never ask less of a part. */
    @ParameterizedTest
    @MethodSource("seeds")
    void moreLoadNeverAsksLess(long seed) {
        LoweringCase setup = RandomRigs.of(seed);
        List<String> fell = new ArrayList<>();
        Chain before = Chain.of(setup);
        for (String input : List.of("mass", "rate", "sheave")) {
            Chain after = Chain.of(changes(setup).get(input).apply(1.02));
            for (Part part : List.of(Part.LOWERING_LINE, Part.WINCH, Part.WINCH_ANCHOR, Part.STAY)) {
                worst(before, part).ifPresent(a -> worst(after, part).filter(b -> b < a * (1 - 1e-9))
                        .ifPresent(b -> fell.add(input + ": " + part.words() + " from " + a + " to " + b)));
            }
        }
        assertEquals(List.of(), fell, () -> "seed " + seed);
    }

    private static Optional<Double> worst(Chain chain, Part part) {
        return chain.intact().stream().filter(r -> r.part() == part && r.load() != LoadCase.SNATCH)
                .map(r -> r.demand().orElse(0)).max(Double::compare);
    }

    /** A splay of the stays is felt: true tension by the angle in space, and the pull across at the head. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theSplayOfStaysIsFelt(long seed) {
        LoweringCase setup = RandomRigs.of(seed);
        Optional<Poles> poles = setup.rig().poles().filter(p -> p.count() == 2);
        if (poles.isEmpty() || setup.rig().stays().isEmpty()) {
            return;
        }
        Chain wide = Chain.of(setup.with(splayed(setup.rig(), 3)));
        Chain narrow = Chain.of(setup.with(splayed(setup.rig(), 0)));
        worst(wide, Part.STAY).ifPresent(w -> worst(narrow, Part.STAY).ifPresent(n -> assertTrue(
                Math.abs(w - n) > 1e-6 * n, () -> "seed " + seed + ": " + n + " and " + w)));
    }
}
