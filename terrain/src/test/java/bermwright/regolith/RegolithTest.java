// SPDX-License-Identifier: Apache-2.0
package bermwright.regolith;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Soil and footings worked by hand, to the digits worked. */
class RegolithTest {
    private static final double MOON = 1.62;
    private static final double CENTI = 6e-3;

    private static Regolith soil(double density, double phi, double cohesion) {
        return Soils.uniform(density, Soils.strength(phi, cohesion));
    }

    @ParameterizedTest
    @CsvSource({"0, 1301.333", "15, 1582.545", "30, 1688.000", "60, 1777.231", "100, 1825.627", "300, 1884.981"})
    void densityRisesWithDepth(double cm, double density) {
        assertEquals(density, HandbookSoil.density(cm / 100), 6e-4);
    }

    @ParameterizedTest
    @CsvSource({"0, 15, 1470.005", "0, 30, 1555.916", "30, 60, 1739.779", "0, 60, 1647.848", "0, 100, 1710.608",
        "0, 300, 1813.403"})
    void meanDensityIsTheIntegral(double top, double bottom, double density) {
        assertEquals(density, LunarRegolith.meanDensity(top / 100, bottom / 100), 6e-4);
    }

    @Test
    void sampledProfileKeepsTheMean() {
        assertEquals(1710.608, LunarProfile.bulkDensity().mean(0, 1), 0.05);
        assertEquals(1813.403, LunarProfile.bulkDensity().mean(0, 3), 0.05);
    }

    @ParameterizedTest
    @CsvSource({"35, 17.5, 0.246123", "40, 20, 0.199405"})
    void coulombActive(double phi, double delta, double coefficient) {
        assertEquals(coefficient, HandbookSoil.coulombActive(Math.toRadians(phi), Math.toRadians(delta)), 6e-7);
    }

    @Test
    void coulombWithoutWallFrictionIsRankine() {
        double phi = Math.toRadians(37);
        assertEquals(EarthPressure.active(phi), HandbookSoil.coulombActive(phi, 0), 1e-14);
        assertEquals(EarthPressure.passive(phi), HandbookSoil.coulombPassive(phi, 0), 1e-12);
        assertEquals(11.771499, HandbookSoil.coulombPassive(Math.toRadians(40), Math.toRadians(20)), 6e-7);
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
        assertEquals(11_936.6207, HandbookSoil.underPoint(100_000, 2, 0), 6e-5);
        assertEquals(0.549815, HandbookSoil.underStrip(0.5, 1), 6e-7);
        assertEquals(2475.1777, HandbookSoil.underLine(3888, 1), 6e-5);
        assertEquals(0.0102102, HandbookSoil.elastic(20_000, 1, 2e6, 0.3, 1.122), 6e-8);
        assertEquals(0.0074620, HandbookSoil.elastic(20_000, 1, 2e6, 0.3, 0.82), 6e-8);
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
}
