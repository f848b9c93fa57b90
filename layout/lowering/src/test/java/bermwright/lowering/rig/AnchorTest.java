// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.regolith.Regolith;
import bermwright.regolith.Soils;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Anchors worked by hand, to the digits worked. */
class AnchorTest {
    private static final double MOON = 1.62;
    private static final double CENTI = 6e-3;
    /** Friction angle of a soil on which steel has one of 35 degrees. */
    private static final double FOR_35_ON_STEEL = 52.5;

    private static Regolith soil(double density, double phi, double cohesion) {
        return Soils.uniform(density, Soils.strength(phi, cohesion));
    }

    @Test
    void deadman() {
        Regolith earth = soil(17_000 / 9.81, 32, 0);
        assertEquals(125_984.04, BuriedAnchor.level(new Anchor.Plate(2, 1.5, 1.5), earth, 9.81), CENTI);
        assertEquals(27_465.76, BuriedAnchor.level(new Anchor.Plate(3, 1.2, 1.2), soil(1710, 40, 0), MOON), CENTI);
        assertEquals(27_465.76 + 9_398.93,
                BuriedAnchor.level(new Anchor.Plate(3, 1.2, 1.2), soil(1710, 40, 500), MOON), 2 * CENTI);
    }

    @ParameterizedTest
    @CsvSource({"0.5, 1.0, 4446.58", "0.5, 1.5, 11224.38", "1.0, 2.0, 35572.60"})
    void squarePlateUplift(double side, double depth, double pull) {
        double ours = BuriedAnchor.uplift(new BuriedAnchor.Flat(side, side, depth), Math.toRadians(40),
                1710 * MOON, 0);
        assertEquals(pull, ours, CENTI);
    }

    @Test
    void coneOverADisc() {
        double weight = HandbookAnchors.coneWeight(new BuriedAnchor.Flat(0.5, 0.5, 1.5), Math.toRadians(30), 2770.2);
        assertEquals(6905.79, weight, CENTI);
    }

    @ParameterizedTest
    @CsvSource({"0.10, 2.0, 0.2, 2316.35", "0.15, 2.5, 0.1, 5742.14"})
    void shortPiles(double diameter, double length, double height, double pull) {
        assertEquals(pull, BuriedAnchor.shortPile(new Anchor.Pile(1, diameter, length), height,
                soil(1710, 40, 0), MOON), CENTI);
    }

    @ParameterizedTest
    @CsvSource({"0, 34030.09", "10, 30757.56", "20, 28859.17", "30, 27982.30"})
    void ballastHoldsLeastAlongALineAtItsFrictionAngle(double elevation, double pull) {
        assertEquals(pull, new Anchor.Ballast(30_000).capacity(soil(1500, FOR_35_ON_STEEL, 0), MOON,
                Math.toRadians(elevation)),
                CENTI);
    }

    @Test
    void frictionAnchorsScaleWithGravityAndCohesionDoesNot() {
        Anchor plate = new Anchor.Plate(2, 1, 1.5);
        Regolith dry = soil(1700, 38, 0);
        assertEquals(plate.capacity(dry, MOON, 0.3) * 6, plate.capacity(dry, 6 * MOON, 0.3), 1e-6);
        Regolith sticky = soil(1700, 38, 500);
        assertTrue(plate.capacity(sticky, 6 * MOON, 0.3) < 6 * plate.capacity(sticky, MOON, 0.3));
    }

    @ParameterizedTest
    @CsvSource({"0, 34030.09", "5, 29664.82", "10, 25073.79"})
    void aSledgeSlidesDownhillTheMoreEasily(double slopeDeg, double pull) {
        Anchor sledge = new Anchor.OnSlope(new Anchor.Ballast(30_000), Math.toRadians(slopeDeg), 0);
        assertEquals(pull, sledge.capacity(soil(1700, FOR_35_ON_STEEL, 0), MOON, 0), 6e-3);
    }

    @Test
    void anchorsHoldLessWhereTheGroundFallsTowardsTheHull() {
        Regolith dry = soil(1700, 35, 0);
        for (Anchor level : List.of(new Anchor.Plate(2, 1, 1.5), new Anchor.Block(2, 1, 1, 1.5),
                new Anchor.Ballast(3e4), new Anchor.Screw(4, 0.4, 2), new Anchor.Pile(4, 0.2, 2))) {
            double before = level.capacity(dry, MOON, 0.2);
            assertEquals(before, new Anchor.OnSlope(level, 0, 0).capacity(dry, MOON, 0.2), 1e-9 * before);
            assertEquals(before, new Anchor.OnSlope(level, -0.3, 0).capacity(dry, MOON, 0.2), 1e-9 * before);
            double slides = Math.toRadians(level instanceof Anchor.Ballast ? 35 * 2 / 3.0 : 35);
            for (double slope = 0.05; slope < slides; slope += 0.05) {
                double now = new Anchor.OnSlope(level, slope, 0).capacity(dry, MOON, 0.2);
                assertTrue(now < before && now > 0, level.kind() + " at " + slope);
                before = now;
            }
            assertEquals(0, new Anchor.OnSlope(level, slides + 0.002, 0).capacity(dry, MOON, 0.2));
        }
    }
}
