// SPDX-License-Identifier: Apache-2.0
package bermwright.regolith;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Laws of the soil: it is what was stated, and more strength or weight never bears less. */
class RegolithLawTest {
    private static final double MOON = 1.62;
    private static final double ROUNDING = 1e-9;
    private static final StrengthProfile RISING = StrengthProfile.of(List.of(
            new StrengthProfile.At(0.075, Soils.strength(42, 520)),
            new StrengthProfile.At(0.45, Soils.strength(54, 3000))));

    private static double bearing(Strength strength, double density, double lean) {
        return Bearing.ultimate(new Bearing.Footing(1, 2, 0.3), Soils.uniform(density, strength), MOON, lean).sum();
    }

    private static void rises(double from, double to, int steps, DoubleUnaryOperator figure) {
        double before = figure.applyAsDouble(from);
        double widest = 0;
        for (int i = 1; i <= steps; i++) {
            double now = figure.applyAsDouble(from + (to - from) * i / steps);
            assertTrue(now > before, from + (to - from) * i / steps + ": " + now + " after " + before);
            widest = Math.max(widest, now / before);
            before = now;
        }
        assertTrue(widest < 1.08, "a step of " + widest);
    }

    @Test
    void bearingRisesWithoutAStepWithFrictionCohesionAndDensity() {
        rises(Math.toRadians(15), Math.toRadians(60), 450, phi -> bearing(new Strength(phi, 500), 1500, 0.1));
        rises(0, 3000, 300, c -> bearing(Soils.strength(35, c), 1500, 0.1));
        rises(900, 2200, 130, rho -> bearing(Soils.strength(35, 300), rho, 0.1));
    }

    @Test
    void bearingFallsWithTheLeanOfTheLoad() {
        rises(-0.8, 0, 400, lean -> bearing(Soils.strength(42, 500), 1500, -lean));
    }

    @Test
    void pressuresOfEarthPartFromThatAtRest() {
        rises(0, Math.PI / 3, 600, EarthPressure::passive);
        rises(-Math.PI / 3 + 0.01, 0, 600, phi -> EarthPressure.active(-phi));
        for (double deg = 1; deg <= 60; deg++) {
            double phi = Math.toRadians(deg);
            assertTrue(EarthPressure.active(phi) < EarthPressure.atRest(phi)
                    && EarthPressure.atRest(phi) < EarthPressure.passive(phi));
        }
    }

    @Test
    void groundIsWhatWasStatedAtEveryDepth() {
        Regolith ground = Soils.uniform(1700, Soils.strength(33, 250));
        for (double depth = 0; depth < 8; depth += 0.07) {
            assertEquals(Math.toRadians(33), ground.frictionAngle(depth), 0);
            assertEquals(250, ground.cohesion(depth), 0);
            assertEquals(1700, ground.meanDensity(depth), ROUNDING);
        }
    }

    @Test
    void strengthByDepthGoesStraightBetweenItsPointsAndStaysLevelBeyond() {
        assertEquals(Soils.strength(42, 520), RISING.at(0));
        assertEquals(Math.toRadians(48), RISING.at(0.2625).frictionAngle(), ROUNDING);
        assertEquals(1760, RISING.at(0.2625).cohesion(), ROUNDING);
        assertEquals(Soils.strength(54, 3000).cohesion(), RISING.at(7).cohesion(), ROUNDING);
        rises(0.075, 0.45, 100, depth -> RISING.at(depth).frictionAngle());
        assertTrue(RISING.greatest().isBeyondDesign());
    }

    @Test
    void aChangeOfStrengthIsAsMuchAtEveryDepthWithinWhatSoilCanHave() {
        StrengthProfile changed = RISING.changed(Math.toRadians(-2), -600);
        assertEquals(Math.toRadians(40), changed.at(0).frictionAngle(), ROUNDING);
        assertEquals(Math.toRadians(52), changed.at(1).frictionAngle(), ROUNDING);
        assertEquals(0, changed.at(0).cohesion());
        assertEquals(2400, changed.at(1).cohesion(), ROUNDING);
        assertEquals(Strength.GREATEST_FRICTION_ANGLE, RISING.changed(1, 0).at(0).frictionAngle());
    }

    @Test
    void theMassOfAColumnIsTheSumOfItsLayers() {
        BulkDensity soil = BulkDensity.of(List.of(new BulkDensity.At(0.1, 1300), new BulkDensity.At(0.5, 1700),
                new BulkDensity.At(1.2, 1900)));
        double sum = 0;
        int slices = 40_000;
        for (int i = 0; i < slices; i++) {
            sum += soil.density(2.0 * (i + 0.5) / slices) * 2 / slices;
        }
        assertEquals(sum, soil.columnMass(2), 1e-4);
        assertEquals(soil.columnMass(2) - soil.columnMass(0.3), 1.7 * soil.mean(0.3, 2), ROUNDING);
        assertEquals(-130, soil.columnMass(-0.1), ROUNDING);
        assertEquals(soil.density(0.3), soil.mean(0.3, 0.3), 0);
        assertEquals(2 * soil.columnMass(0.7), soil.times(2).columnMass(0.7), ROUNDING);
    }

    @Test
    void refusesDepthsThatDoNotGrow() {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, () -> BulkDensity.of(
                List.of(new BulkDensity.At(1, 1500), new BulkDensity.At(1, 1600))));
        assertEquals("depths of bulk density do not grow: 1 m after 1 m", refused.getMessage());
        assertThrows(IllegalArgumentException.class, () -> StrengthProfile.of(List.of()));
    }
}
