// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.foundation.Point;
import bermwright.site.SamplePlans;
import bermwright.site.plan.Anchor;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.HullBody;
import bermwright.site.plan.HullPlacement;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.MassProperties;
import bermwright.site.plan.Pivot;
import bermwright.terrain.grid.ElevationGrid;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever a plan says, laying down answers in findings and never with an exception or a number that is none. */
class LaydownLawTest {
    private static final Annotations K = Annotations.NOTHING;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 120);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void wildPlansAreAnsweredInFindings(long seed) {
        Random random = new Random(seed);
        boolean wild = seed % 3 == 0;
        double slope = Math.tan(Math.toRadians((wild ? 25 : 3) * random.nextGaussian()));
        double across = (wild ? 0.1 : 0.02) * random.nextGaussian();
        ElevationGrid ground = SamplePlans.ground((e, n) -> slope * (n - 150) + across * (e - 150)
                + random(seed, e, n));
        Hull hull = hull(random, wild);
        Laydown laydown = LaydownOfHull.of(SamplePlans.plan(List.of(hull)), hull, ground);
        for (Finding f : laydown.findings()) {
            assertFalse(f.text().isBlank() || f.text().contains("NaN") || f.text().contains("Infinity")
                    || f.text().contains("null"), f.text());
            assertTrue(f.measured().isEmpty() || Double.isFinite(f.measured().getAsDouble()), f.toString());
        }
        numbers(laydown, "seed " + seed);
        LoweringWords words = LoweringWords.of(laydown);
        assertFalse(words.toString().contains("NaN"), words.toString());
        Alternatives other = Alternatives.of(SamplePlans.plan(List.of(hull)), hull, ground);
        assertFalse(other.toString().contains("NaN"), "seed " + seed);
    }

    private static double random(long seed, double e, double n) {
        return 0.5 * Math.sin(e * (seed % 7 + 1) / 40.0) * Math.cos(n / 9);
    }

    private static Hull hull(Random r, boolean wild) {
        double length = wild ? 5 + 60 * r.nextDouble() : 25 + 20 * r.nextDouble();
        Hull h = SamplePlans.hull("A", new Point(150, 150), 360 * r.nextDouble());
        Pivot.Kind kind = Pivot.Kind.values()[r.nextInt(3)];
        Pivot pivot = new Pivot(kind, OptionalDouble.of(8 * r.nextDouble() + 0.01), OptionalDouble.of(3),
                OptionalInt.of(3 + r.nextInt(5)), OptionalDouble.of(8 * r.nextDouble() + 0.01),
                maybe(r, 0.1 + r.nextDouble()), K);
        return new Hull("A", new HullBody(length,
                1 + 12 * r.nextDouble(), h.baseEnd(), h.farEnd(), h.skin(), h.stowage(), h.shell(),
                h.innerPressure()),
                new MassProperties(Math.exp(6 + 8 * r.nextDouble()),
                length * (wild ? 1.2 * r.nextDouble() - 0.05 : 0.3 + 0.2 * r.nextDouble()),
                (wild ? 2 : 0.1) * r.nextGaussian(), (wild ? 3 : 0.5) * r.nextDouble(), OptionalDouble.empty(),
                1000 * r.nextDouble()), new HullPlacement(h.baseCentre(), 4 * r.nextDouble(),
                h.layDownAzimuth(), 0, pivot, wild ? Hull.Arrival.values()[Math.min(2,
                r.nextInt(8) / 3)] : Hull.Arrival.LOWERED), Optional.of(gear(r, wild)), h.seat(), h.hatches(),
                h.stations(), h.cover(), false, K);
    }

    private static OptionalDouble maybe(Random r, double value) {
        return r.nextInt(4) == 0 ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private static Optional<Anchor> anchor(Random r) {
        Anchor anchor = new Anchor(Anchor.Kind.values()[r.nextInt(5)], maybe(r, 4 * r.nextDouble()),
                maybe(r, 3 * r.nextDouble()), maybe(r, 2 * r.nextDouble()), maybe(r, 4 * r.nextDouble()),
                maybe(r, 1e5 * r.nextDouble()), OptionalInt.of(r.nextInt(6)), maybe(r, r.nextDouble()), K);
        return r.nextInt(5) == 0 ? Optional.empty() : Optional.of(anchor);
    }

    private static LoweringGear gear(Random r, boolean wild) {
        LoweringGear.Line line = new LoweringGear.Line(maybe(r, 9e5 * r.nextDouble()), maybe(r, 5), maybe(r, 8e7),
                maybe(r, 0.03), K);
        LoweringGear.Lines lines = new LoweringGear.Lines(1 + r.nextInt(8),
                wild ? 60 * r.nextDouble() : 18 + 7 * r.nextDouble(),
                (wild ? 3 : 0.5) * r.nextGaussian(), 6 * r.nextDouble(), line,
                new LoweringGear.Winch(maybe(r, 3e5 * r.nextDouble()), maybe(r, 4e6),
                60 * r.nextDouble() - 5, anchor(r), K), 0.2 * r.nextDouble(), 0.5 + 0.5 * r.nextDouble(),
                new LoweringGear.Ends(0.8, maybe(r, 4e5), K), 0.2 * r.nextDouble(), K);
        LoweringGear.Poles poles = new LoweringGear.Poles(40 * r.nextDouble() + 0.1,
                wild ? 30 * r.nextGaussian() : 10 + 20 * r.nextDouble(),
                r.nextInt(3) * 4 * r.nextDouble(), maybe(r, 0.5),
                maybe(r, (wild ? 0.4 : 0.03) * r.nextDouble()), maybe(r, 355e6),
                maybe(r, 210e9), maybe(r, 3 * r.nextDouble()),
                OptionalInt.empty(), new LoweringGear.Head(maybe(r, 0.5), maybe(r, 5e5), maybe(r, 1e5), K), K);
        LoweringGear.Stay stay = new LoweringGear.Stay(50 * r.nextDouble(), 5, maybe(r, 5e5), anchor(r), K);
        LoweringGear.PullOver over = new LoweringGear.PullOver(50 * r.nextDouble(), 90 * r.nextDouble(),
                maybe(r, 5e4), anchor(r), K);
        LoweringGear.SideThrusters jets = new LoweringGear.SideThrusters(1 + r.nextInt(8), 3e4 * r.nextDouble(),
                40 * r.nextDouble(), r.nextDouble(), 300, 50, K);
        LoweringGear.Landing landing = new LoweringGear.Landing(Optional.of("P1"), maybe(r, 0.2 * r.nextDouble()),
                maybe(r, 3 * r.nextDouble()), maybe(r, 300), K);
        return new LoweringGear(LoweringGear.Means.values()[r.nextInt(2)], Math.toRadians(3 * r.nextDouble()), 0.05, 2,
                r.nextInt(6) == 0 ? Optional.empty() : Optional.of(lines),
                r.nextInt(4) == 0 ? Optional.empty() : Optional.of(poles),
                r.nextInt(4) == 0 ? List.of() : r.nextBoolean() ? List.of(stay) : List.of(stay, stay),
                r.nextInt(5) == 0 ? Optional.empty() : Optional.of(over),
                anchor(r).map(a -> new LoweringGear.PivotHold(a, K)),
                r.nextInt(3) == 0 ? Optional.empty() : Optional.of(jets),
                r.nextInt(3) == 0 ? Optional.empty() : Optional.of(landing),
                new LoweringGear.Temperature(300 * r.nextDouble(), 1e-5, r.nextBoolean() ? List.of() : List.of(
                        new LoweringGear.Light(0, r.nextDouble(), LoweringGear.Shade.SUN, K),
                        new LoweringGear.Light(r.nextDouble(), 1, LoweringGear.Shade.SHADE, K)), K), K);
    }

    /** Walks records and lists: no number that is none. */
    private static void numbers(Object value, String where) {
        if (value instanceof Double d) {
            assertFalse(Double.isNaN(d), where);
        } else if (value instanceof OptionalDouble d) {
            assertTrue(d.isEmpty() || Double.isFinite(d.getAsDouble()), where);
        } else if (value instanceof Optional<?> o) {
            o.ifPresent(v -> numbers(v, where));
        } else if (value instanceof Collection<?> c) {
            c.forEach(v -> numbers(v, where));
        } else if (value instanceof Record r && r.getClass().getName().startsWith("bermwright.lowering")
                || value instanceof Laydown) {
            for (RecordComponent part : value.getClass().getRecordComponents()) {
                try {
                    numbers(part.getAccessor().invoke(value), where + "." + part.getName());
                } catch (ReflectiveOperationException e) {
                    throw new AssertionError(where, e);
                }
            }
        }
    }
}
