// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.soil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.lowering.rig.Anchor;
import bermwright.lowering.rig.BuriedAnchor;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Soil, footings and anchors worked by hand, to the digits worked. */
class SoilTest {
    private static final double MOON = 1.62;
    private static final double CENTI = 6e-3;

    private static Regolith soil(double density, double phi, double cohesion) {
        return Regolith.uniform(density, Regolith.Strength.ofDegrees(phi, cohesion));
    }

    @ParameterizedTest
    @CsvSource({"0, 1301.333", "15, 1582.545", "30, 1688.000", "60, 1777.231", "100, 1825.627", "300, 1884.981"})
    void densityRisesWithDepth(double cm, double density) {
        assertEquals(density, Regolith.lunarDensity(cm / 100), 6e-4);
    }

    @ParameterizedTest
    @CsvSource({"0, 15, 1470.005", "0, 30, 1555.916", "30, 60, 1739.779", "0, 60, 1647.848", "0, 100, 1710.608",
        "0, 300, 1813.403"})
    void meanDensityIsTheIntegral(double top, double bottom, double density) {
        assertEquals(density, Regolith.lunarMeanDensity(top / 100, bottom / 100), 6e-4);
    }

    @Test
    void sampledProfileKeepsTheMean() {
        Regolith lunar = Regolith.lunarMean(Regolith.Strength.ofDegrees(42, 500));
        assertEquals(1710.608, lunar.meanDensity(1), 0.5);
        assertEquals(1813.403, lunar.meanDensity(3), 0.5);
        assertTrue(lunar.cohesion(1) > 5 * lunar.cohesion(0));
        assertEquals(Math.PI / 4, lunar.frictionAngle(2), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"0.5, 42, 1500, 1.848590", "1.0, 42, 1600, 3.466106", "0.17, 35, 1500, 0.537559"})
    void verticalCuts(double kPa, double phi, double density, double height) {
        assertEquals(height, EarthPressure.standingCut(soil(density, phi, kPa * 1000), MOON), 6e-7);
    }

    @ParameterizedTest
    @CsvSource({"35, 17.5, 0.246123", "40, 20, 0.199405"})
    void coulombActive(double phi, double delta, double coefficient) {
        assertEquals(coefficient, EarthPressure.coulombActive(Math.toRadians(phi), Math.toRadians(delta)), 6e-7);
    }

    @Test
    void coulombWithoutWallFrictionIsRankine() {
        double phi = Math.toRadians(37);
        assertEquals(EarthPressure.active(phi), EarthPressure.coulombActive(phi, 0), 1e-14);
        assertEquals(EarthPressure.passive(phi), EarthPressure.coulombPassive(phi, 0), 1e-12);
        assertEquals(11.771499, EarthPressure.coulombPassive(Math.toRadians(40), Math.toRadians(20)), 6e-7);
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
        double weight = BuriedAnchor.coneWeight(new BuriedAnchor.Flat(0.5, 0.5, 1.5), Math.toRadians(30), 2770.2);
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
        assertEquals(pull, new Anchor.Ballast(30_000).capacity(soil(1500, 35, 0), MOON, Math.toRadians(elevation)),
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
    @CsvSource({"1, 0, 0, 42, 1500, 113.390", "1, 0, 520, 42, 1500, 206.512", "1, 0, 170, 35, 1500, 48.514",
        "0.6, 0, 520, 42, 1500, 161.156", "1, 0.3, 520, 42, 1500, 342.958", "1, 0, 1600, 49, 1660, 1287.331"})
    void lunarFootings(double side, double depth, double cohesion, double phi, double density, double kPa) {
        assertEquals(kPa, Bearing.ultimate(new Bearing.Footing(side, side, depth), soil(density, phi, cohesion), MOON,
                0).sum() / 1000, 6e-4);
    }

    @Test
    void earthFootingWithDepth() {
        assertEquals(1667.436320, Bearing.ultimate(new Bearing.Footing(2, 2, 1), soil(18_000 / 9.81, 35, 0), 9.81, 0)
                .sum() / 1000, 6e-7);
    }

    @Test
    void inclinationFactors() {
        assertEquals(0.790123, Bearing.inclined(Math.toRadians(10), Math.PI / 2), 6e-7);
        assertEquals(0.580499, Bearing.inclined(Math.toRadians(10), Math.toRadians(42)), 6e-7);
        assertEquals(0, Bearing.inclined(Math.toRadians(43), Math.toRadians(42)));
    }

    @Test
    void stressAndSettlement() {
        assertEquals(11_936.6207, Settlement.underPoint(100_000, 2, 0), 6e-5);
        assertEquals(0.549815, Settlement.underStrip(0.5, 1), 6e-7);
        assertEquals(2475.1777, Settlement.underLine(3888, 1), 6e-5);
        assertEquals(0.0102102, Settlement.elastic(20_000, 1, 2e6, 0.3, 1.122), 6e-8);
        assertEquals(0.0074620, Settlement.elastic(20_000, 1, 2e6, 0.3, 0.82), 6e-8);
        assertEquals(0.0243487, Settlement.plate(20_000, 1), 6e-8);
    }

    @Test
    void aLyingHullSinksAFingersWidth() {
        double sunk = Settlement.cylinder(3888, 4.5, 820_000);
        double half = Settlement.cylinderHalfWidth(sunk, 4.5);
        assertEquals(0.0112004, sunk, 6e-8);
        assertEquals(0.317496, half, 6e-7);
        assertEquals(6122.9, 3888 / (2 * half), 0.06);
        assertEquals(9184.4, 820_000 * sunk, 0.06);
        assertEquals(1.348, Math.toDegrees(Math.asin(half / 13.5)), 6e-4);
        assertEquals(4.046, Math.toDegrees(Math.asin(half / 4.5)), 6e-4);
    }

    /** The corner's closed form against pressure summed over the sunken part of base and side. */
    @Test
    void aTiltedCornerCarriesWhatItsPressureSumsTo() {
        double r = 4;
        double k = 820_000;
        double tilt = Math.toRadians(50);
        double sunk = Settlement.corner(50_000, r, k, tilt);
        double force = 0;
        double area = 0;
        int n = 4000;
        double longest = sunk / Math.sin(tilt);
        for (int i = 0; i < n; i++) {
            double u = longest * (i + 0.5) / n;
            double width = 2 * Math.sqrt(2 * r * u);
            force += k * (sunk - u * Math.sin(tilt)) * width * Math.cos(tilt) * longest / n;
            area += width * Math.cos(tilt) * longest / n;
        }
        double side = sunk / Math.cos(tilt);
        for (int i = 0; i < n; i++) {
            double d = sunk - side * (i + 0.5) / n * Math.cos(tilt);
            double width = 2 * Math.sqrt(2 * r * d / Math.sin(tilt));
            force += k * 2 / 3 * d * width * Math.sin(tilt) * side / n;
            area += width * Math.sin(tilt) * side / n;
        }
        assertEquals(50_000, force, 20);
        assertEquals(Settlement.cornerArea(sunk, r, tilt), area, 1e-3 * area);
    }

    @ParameterizedTest
    @CsvSource({"0, 34030.09", "5, 29664.82", "10, 25073.79"})
    void aSledgeSlidesDownhillTheMoreEasily(double slopeDeg, double pull) {
        Anchor sledge = new Anchor.OnSlope(new Anchor.Ballast(30_000), Math.toRadians(slopeDeg), 0);
        assertEquals(pull, sledge.capacity(soil(1700, 35, 0), MOON, 0), 6e-3);
    }

    @Test
    void anchorsHoldLessWhereTheGroundFallsTowardsTheHull() {
        Regolith dry = soil(1700, 35, 0);
        for (Anchor level : List.of(new Anchor.Plate(2, 1, 1.5), new Anchor.Block(2, 1, 1, 1.5),
                new Anchor.Ballast(3e4), new Anchor.Screw(4, 0.4, 2), new Anchor.Pile(4, 0.2, 2))) {
            double before = level.capacity(dry, MOON, 0.2);
            assertEquals(before, new Anchor.OnSlope(level, 0, 0).capacity(dry, MOON, 0.2), 1e-9 * before);
            assertEquals(before, new Anchor.OnSlope(level, -0.3, 0).capacity(dry, MOON, 0.2), 1e-9 * before);
            for (double slope = 0.05; slope < Math.toRadians(34); slope += 0.05) {
                double now = new Anchor.OnSlope(level, slope, 0).capacity(dry, MOON, 0.2);
                assertTrue(now < before && now > 0, level.kind() + " at " + slope);
                before = now;
            }
            assertEquals(0, new Anchor.OnSlope(level, Math.toRadians(35.1), 0).capacity(dry, MOON, 0.2));
        }
    }
}
