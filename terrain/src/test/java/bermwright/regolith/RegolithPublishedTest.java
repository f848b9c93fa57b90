// SPDX-License-Identifier: Apache-2.0
package bermwright.regolith;

import bermwright.published.Published;
import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;
import bermwright.published.PublishedValue;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Soil against printed tables and worked teaching examples. */
class RegolithPublishedTest {
    private static final String DATA = "/bermwright/regolith/published/";
    private static final String TEACHING = "public teaching examples of bearing capacity";
    private static final double HALF_DIGIT = 0.0005;
    /** Half of the last printed digit. */
    private static final double HALF_OF_MICRO = 0.6e-6;
    private static final double HALF_OF_MILLI = 0.6e-3;
    /** Half of the last printed digit of the volumes, and what the rounded factors leave. */
    private static final double VOLUMES = 0.6e-3;
    private static final double BANK = 1624;
    private static final double COVER = 13_480.103989;

    @PublishedTable(DATA + "bearing-factors.csv")
    void bearingFactors(PublishedRow row) {
        double phi = Math.toRadians(row.number("phi_deg"));
        row.assertNear("nc", Bearing.nc(phi), 0.05);
        row.assertNear("nq", Bearing.nq(phi), 0.05);
        row.assertNear("ng_vesic", Bearing.ngVesic(phi), 0.05);
        row.assertNear("ng_hansen", HandbookSoil.ngHansen(phi), 0.005);
        row.assertNear("ng_meyerhof", HandbookSoil.ngMeyerhof(phi), 0.05);
    }

    @PublishedTable(DATA + "terzaghi-factors.csv")
    void terzaghiFactors(PublishedRow row) {
        double phi = Math.toRadians(row.number("phi_deg"));
        row.assertNear("nc", HandbookSoil.ncTerzaghi(phi), 0.05);
        row.assertNear("nq", HandbookSoil.nqTerzaghi(phi), 0.05);
    }

    @PublishedTable(DATA + "sourcebook-density.csv")
    void densityProfileGivesTheLayersMeans(PublishedRow row) {
        row.assertNear("density", LunarRegolith.meanDensity(row.number("top_cm") / 100,
                row.number("bottom_cm") / 100) / 1000, row.number("spread"));
    }

    @PublishedTable(DATA + "rankine.csv")
    void rankineCoefficients(PublishedRow row) {
        double phi = Math.toRadians(row.number("phi_deg"));
        row.assertNear("active", EarthPressure.active(phi), HALF_DIGIT);
        row.assertNear("passive", EarthPressure.passive(phi), 0.005);
    }

    @Test
    @Published(work = "Coulomb's active coefficient, foundation-engineering textbooks",
            place = "table: friction 30 deg, wall friction 15 deg", printedValue = 0.3014, unit = "1",
            tolerance = 0.00005, remembered = true)
    void coulombActive(PublishedValue printed) {
        printed.assertEqualTo(HandbookSoil.coulombActive(Math.toRadians(30), Math.toRadians(15)));
    }

    @Test
    @Published(work = "Coulomb's passive coefficient, foundation-engineering textbooks",
            place = "table: friction 30 deg, wall friction 15 deg", printedValue = 4.977, unit = "1",
            tolerance = HALF_DIGIT, remembered = true)
    void coulombPassive(PublishedValue printed) {
        printed.assertEqualTo(HandbookSoil.coulombPassive(Math.toRadians(30), Math.toRadians(15)));
    }

    @Test
    @Published(work = TEACHING, place = "square footing of 2 m, local shear, c 24 kPa, phi 25, gamma 18",
            printedValue = 353.92, unit = "kPa", tolerance = 0.005)
    void localShear(PublishedValue printed) {
        printed.assertEqualTo(HandbookSoil.squareTerzaghi(24 * 2 / 3.0, 0, 18 * 2, new Bearing.Table(14.8, 0, 3.2)));
    }

    @Test
    @Published(work = TEACHING, place = "square footing of 1.2 m at 2.5 m, c 22 kPa, gamma 16, general shear",
            printedValue = 1412.619, unit = "kPa", tolerance = HALF_DIGIT)
    void generalShear(PublishedValue printed) {
        printed.assertEqualTo(HandbookSoil.squareTerzaghi(22, 16 * 2.5, 16 * 1.2, new Bearing.Table(25.80, 14.72,
                11.19)));
    }

    @Test
    @Published(work = TEACHING, place = "the same, local shear with 0.867 c Nc", printedValue = 1166.848, unit = "kPa",
            tolerance = HALF_DIGIT)
    void localShearDeep(PublishedValue printed) {
        printed.assertEqualTo(HandbookSoil.squareTerzaghi(22 * 0.867 / 1.3, 16 * 2.5, 16 * 1.2,
                new Bearing.Table(25.80, 14.72, 11.19)));
    }

    @Test
    @Published(work = TEACHING, place = "the same without cohesion", printedValue = 674.739, unit = "kPa",
            tolerance = HALF_DIGIT)
    void withoutCohesion(PublishedValue printed) {
        printed.assertEqualTo(HandbookSoil.squareTerzaghi(0, 16 * 2.5, 16 * 1.2, new Bearing.Table(25.80, 14.72,
                11.19)));
    }

    @Test
    @Published(work = TEACHING, place = "Nq at 25 deg", printedValue = 10.662, unit = "1", tolerance = HALF_DIGIT)
    void nqAtTwentyFive(PublishedValue printed) {
        printed.assertEqualTo(Bearing.nq(Math.toRadians(25)));
    }

    @Test
    @Published(work = TEACHING, place = "Nc at 25 deg", printedValue = 20.72, unit = "1", tolerance = 0.005)
    void ncAtTwentyFive(PublishedValue printed) {
        printed.assertEqualTo(Bearing.nc(Math.toRadians(25)));
    }

    @Test
    @Published(work = TEACHING, place = "Ng by Vesic at 25 deg", printedValue = 10.876, unit = "1",
            tolerance = HALF_DIGIT)
    void ngAtTwentyFive(PublishedValue printed) {
        printed.assertEqualTo(Bearing.ngVesic(Math.toRadians(25)));
    }

    @Test
    @Published(work = "Newmark (1935), influence factors, soil-mechanics textbooks", place = "table: m = n = 1",
            printedValue = 0.1752, unit = "1", tolerance = 0.00005, remembered = true)
    void newmarkSquare(PublishedValue printed) {
        printed.assertEqualTo(HandbookSoil.underCorner(1, 1));
    }

    @Test
    @Published(work = "Newmark (1935), influence factors, soil-mechanics textbooks", place = "table: m = 1, n = 2",
            printedValue = 0.1999, unit = "1", tolerance = 0.00005, remembered = true)
    void newmarkRectangle(PublishedValue printed) {
        printed.assertEqualTo(HandbookSoil.underCorner(1, 2));
    }

    @Test
    @Published(work = "Boussinesq (1885), influence factor, soil-mechanics textbooks",
            place = "table: straight under the load, stress x z2 / Q", printedValue = 0.4775, unit = "1",
            tolerance = 0.00005, remembered = true)
    void boussinesqUnderTheLoad(PublishedValue printed) {
        printed.assertEqualTo(HandbookSoil.underPoint(1, 2, 0) * 4);
    }

    @Test
    @Published(work = "Boussinesq (1885), influence factor, soil-mechanics textbooks",
            place = "table: away as far as deep, stress x z2 / Q", printedValue = 0.0844, unit = "1",
            tolerance = 0.00005, remembered = true)
    void boussinesqAway(PublishedValue printed) {
        printed.assertEqualTo(HandbookSoil.underPoint(1, 1, 1));
    }

    @Test
    @Published(work = "Prandtl (1921), as in every soil-mechanics textbook", place = "Nc without friction",
            printedValue = 5.14, unit = "1", tolerance = 0.005, remembered = true)
    void ncWithoutFriction(PublishedValue printed) {
        printed.assertEqualTo(Bearing.nc(0));
    }

    @Test
    @Published(work = "student worksheet on laterally loaded piles by Broms (1964)", place = "Kp at 35 deg",
            printedValue = 3.69, unit = "1", tolerance = 0.005)
    void passiveAtThirtyFive(PublishedValue printed) {
        printed.assertEqualTo(EarthPressure.passive(Math.toRadians(35)));
    }

    @Test
    @Published(work = "Rankine's active coefficient under inclined backfill, foundation-engineering textbooks",
            place = "table: slope 10 deg, friction 30 deg", printedValue = 0.350, unit = "1",
            tolerance = HALF_DIGIT, remembered = true)
    void rankineActiveUnderSlope(PublishedValue printed) {
        printed.assertEqualTo(EarthPressure.activeUnderSlope(Math.toRadians(30), Math.toRadians(10)));
    }

    @Test
    @Published(work = "Rankine's passive coefficient under inclined backfill, foundation-engineering textbooks",
            place = "table: slope 10 deg, friction 30 deg", printedValue = 2.775, unit = "1",
            tolerance = HALF_DIGIT, remembered = true)
    void rankinePassiveUnderSlope(PublishedValue printed) {
        printed.assertEqualTo(EarthPressure.passiveUnderSlope(Math.toRadians(30), Math.toRadians(10)));
    }

    @PublishedTable("/bermwright/terrain/published/shrink-and-swell.csv")
    void shrinkAndSwell(PublishedRow row) {
        SoilStates states = new SoilStates(BANK, 1000 * row.number("loose"), 1000 * row.number("placed"), 0.1);
        row.assertNear("shrink", states.shrink(), HALF_OF_MICRO);
        row.assertNear("swell", states.swell(), HALF_OF_MICRO);
        row.assertNear("bank_m3", states.bankFromPlaced(COVER).best(), VOLUMES);
        row.assertNear("loose_m3", states.bankFromPlaced(COVER).best() * states.swell(), VOLUMES);
        row.assertNear("mass_t", states.bankFromPlaced(COVER).best() * states.bank() / 1000, HALF_OF_MILLI);
    }

    @Test
    @Published(work = "Carrier, Olhoeft and Mendell (1991), Lunar Sourcebook, chapter 9",
            place = "1.92 (z + 12.2)/(z + 18), z in cm, mean of the upper 50 cm", printedValue = 1.623975,
            unit = "g/cm3", tolerance = HALF_OF_MICRO, remembered = true)
    void meanDensityOfTheUpperHalfMetre(PublishedValue printed) {
        printed.assertEqualTo(LunarRegolith.meanDensity(0, 0.5) / 1000);
    }

    @Test
    @Published(work = "Carrier, Olhoeft and Mendell (1991), Lunar Sourcebook, chapter 9",
            place = "the same, 50 to 100 cm", printedValue = 1.797242, unit = "g/cm3", tolerance = HALF_OF_MICRO,
            remembered = true)
    void meanDensityOfTheSecondHalfMetre(PublishedValue printed) {
        printed.assertEqualTo(LunarRegolith.meanDensity(0.5, 1) / 1000);
    }

    @Test
    @Published(work = "Carrier, Olhoeft and Mendell (1991), Lunar Sourcebook, chapter 9",
            place = "integral of 1.92 (z + 12.2) / (z + 18) over the upper metre, worked by hand",
            printedValue = 171.0608, unit = "g/cm2", tolerance = 0.005, remembered = true)
    void massOfTheUpperMetre(PublishedValue printed) {
        printed.assertEqualTo(LunarProfile.bulkDensity().columnMass(1) / 10);
    }

    @PublishedTable(DATA + "sourcebook-density.csv")
    void profileInStepsGivesTheLayersMeans(PublishedRow row) {
        row.assertNear("density", LunarProfile.bulkDensity().mean(row.number("top_cm") / 100,
                row.number("bottom_cm") / 100) / 1000, row.number("spread"));
    }

    /**
     * A profile stated by the rows 0 to 15 and 30 to 60 cm at their middles lies within the printed range of each layer
     * at its middle. The row 0 to 60 cm is left out: the two rows give 2.0 kPa at 30 cm, against 1.3 to 1.9 printed.
     */
    @PublishedTable(DATA + "sourcebook-strength.csv")
    void strengthByDepthKeepsTheLayersRanges(PublishedRow row) {
        StrengthProfile stated = StrengthProfile.of(List.of(
                new StrengthProfile.At(0.075, Soils.strength(42, 520)),
                new StrengthProfile.At(0.45, Soils.strength(54, 3000))));
        Strength middle = stated.at((row.number("top_cm") + row.number("bottom_cm")) / 200);
        row.assertNear("cohesion", middle.cohesion() / 1000, range(row, "cohesion"));
        row.assertNear("friction", Math.toDegrees(middle.frictionAngle()), range(row, "friction"));
    }

    /** The wider side of a printed range. */
    private static double range(PublishedRow row, String name) {
        return Math.max(row.number(name + "_high") - row.number(name), row.number(name) - row.number(name + "_low"));
    }
}
