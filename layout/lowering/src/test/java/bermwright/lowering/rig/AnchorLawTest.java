// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.regolith.Soils;
import bermwright.regolith.Strength;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of anchors in soil as stated: every kind feels its friction; more of what the soil gives never holds less. */
class AnchorLawTest {
    private static final double MOON = 1.62;

    static Stream<Anchor> anchors() {
        return Stream.of(new Anchor.Plate(2, 1, 1.5), new Anchor.Plate(2, 1, 4), new Anchor.Block(2, 1, 1, 1.5),
                new Anchor.Ballast(3e4), new Anchor.Screw(4, 0.4, 2), new Anchor.Pile(4, 0.2, 2),
                new Anchor.OnSlope(new Anchor.Plate(2, 1, 1.5), 0.15, 0.05));
    }

    private static void rises(String kind, double from, double to, DoubleUnaryOperator holds) {
        int steps = 400;
        double before = holds.applyAsDouble(from);
        for (int i = 1; i <= steps; i++) {
            double at = from + (to - from) * i / steps;
            double now = holds.applyAsDouble(at);
            assertTrue(now > before, kind + " at " + at + ": " + now + " after " + before);
            assertTrue(now < 1.05 * before, kind + " steps at " + at + " from " + before + " to " + now);
            before = now;
        }
    }

    @ParameterizedTest
    @MethodSource("anchors")
    void holdsMoreWithEachDegreeOfFriction(Anchor anchor) {
        for (double elevation : new double[] {0, 0.5}) {
            rises(anchor.kind(), Math.toRadians(20), Math.toRadians(60), phi -> anchor.capacity(
                    Soils.uniform(1700, new Strength(phi, 400)), MOON, elevation));
        }
    }

    @ParameterizedTest
    @MethodSource("anchors")
    void holdsMoreInCohesiveAndInHeavySoilButForTheSledge(Anchor anchor) {
        if (anchor instanceof Anchor.Ballast) {
            assertEquals(anchor.capacity(Soils.uniform(1200, Soils.strength(38, 0)), MOON, 0.3),
                    anchor.capacity(Soils.uniform(1800, Soils.strength(38, 900)), MOON, 0.3));
            return;
        }
        rises(anchor.kind(), 1000, 2000, rho -> anchor.capacity(
                Soils.uniform(rho, Soils.strength(38, 300)), MOON, 0.3));
        if (!(anchor instanceof Anchor.Pile)) {
            rises(anchor.kind(), 0, 2000, c -> anchor.capacity(
                    Soils.uniform(1700, Soils.strength(38, c)), MOON, 0.3));
        }
    }

    @Test
    void anchorsWithoutCohesionHoldInProportionToBankDensity() {
        Anchor plate = new Anchor.Plate(2, 1, 1.5);
        Strength dry = Soils.strength(40, 0);
        assertEquals(1.5 * plate.capacity(Soils.uniform(1200, dry), MOON, 0.4),
                plate.capacity(Soils.uniform(1800, dry), MOON, 0.4), 1e-8);
    }
}
