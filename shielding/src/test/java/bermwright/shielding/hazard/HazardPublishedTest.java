// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.hazard;

import bermwright.published.Published;
import bermwright.published.PublishedValue;
import org.junit.jupiter.api.Test;

class HazardPublishedTest {
    private static final double MOON_AREA = 4 * Math.PI * ThrownSoil.MOON_RADIUS * ThrownSoil.MOON_RADIUS;
    private static final double YEAR = 365.25 * 86_400;
    private static final double GRAVITY = 1.62;
    /** Craters of single impacts scatter by a fifth in width about the scaling. */
    private static final double CRATER_SCATTER = 0.2;
    /** Soil of the Moon's surface as craters of some metres meet it. */
    private static final SoilCrater GROUND = new SoilCrater(1500, 1000, GRAVITY);

    @Test
    @Published(work = "NASA Lunar Impact Monitoring, intent of the programme (web page)",
            place = "meteoroids of more than 1 kg that strike the Moon in a year: \"over 260\"", printedValue = 260,
            unit = "1", tolerance = 5)
    void kilogramsOnTheWholeMoonInAYear(PublishedValue printed) {
        printed.assertEqualTo(MeteoroidFlux.atLeast(1) * MOON_AREA * YEAR);
    }

    /** Half of the last digit that the coefficients carry, over three decades: 0.05 in the logarithm. */
    @Test
    @Published(work = "Cour-Palais (1969), NASA SP-8013", place = "log N = -14.37 - 1.213 log m, at 1 mg",
            printedValue = -10.731, unit = "log10 of 1/(m2 s)", tolerance = 0.05, remembered = true)
    void aMilligramByTheOlderModel(PublishedValue printed) {
        printed.assertEqualTo(Math.log10(MeteoroidFlux.atLeast(1e-6)));
    }

    /** Counted from some hundred flashes: a tenth by number alone, and as much for the mass. */
    @Test
    @Published(work = "Suggs et al. (2014), Icarus 238, 23", place = "abstract: flashes to a limit of 30 g",
            printedValue = 1.03e-7, unit = "1/(km2 h)", tolerance = 0.2e-7, remembered = true)
    void flashesSeenOnTheDarkMoon(PublishedValue printed) {
        printed.assertEqualTo(MeteoroidFlux.atLeast(0.030) * 1e6 * 3600);
    }

    @Test
    @Published(work = "Whitaker (1972) and Moore (1972), Apollo 16 Preliminary Science Report, NASA SP-315, 29-I and"
            + " 29-J", place = "crater of a probe of 366 kg at 2.6 km/s", printedValue = 14, unit = "m",
            tolerance = CRATER_SCATTER * 14, remembered = true)
    void craterOfAHeavyProbe(PublishedValue printed) {
        printed.assertEqualTo(GROUND.rimDiameter(new SoilCrater.Body(366, 2620, 200)));
    }

    @Test
    @Published(work = "LROC team, report on a rocket stage's double crater (2022), spaceref.com",
            place = "craters of four spent upper stages: more than 35 m", printedValue = 35, unit = "m",
            tolerance = CRATER_SCATTER * 35)
    void craterOfASpentStage(PublishedValue printed) {
        printed.assertEqualTo(GROUND.rimDiameter(new SoilCrater.Body(13_450, 2580, 100)));
    }

    @Test
    @Published(work = "Robinson et al. (2015), Icarus 252, 229, doi:10.1016/j.icarus.2015.01.019",
            place = "abstract: crater of 17 March 2013; 40 kg at 25 km/s as announced then, from memory",
            printedValue = 18.8, unit = "m", tolerance = CRATER_SCATTER * 18.8)
    void craterOfAMeteoroidSeenToStrike(PublishedValue printed) {
        printed.assertEqualTo(GROUND.rimDiameter(new SoilCrater.Body(40, 25_000, 2000)));
    }

    @Test
    @Published(work = "Pike (1974), Geophysical Research Letters 1, 291, doi:10.1029/GL001i007p00291",
            place = "abstract: depth over diameter of fresh small craters", printedValue = 0.2, unit = "1",
            tolerance = 0.05)
    void depthOverWidth(PublishedValue printed) {
        SoilCrater.Body body = new SoilCrater.Body(40, 25_000, 2000);
        printed.assertEqualTo(GROUND.depth(body) / GROUND.rimDiameter(body));
    }

    @Test
    @Published(work = "Impact damage of dust on spacecraft, a chapter with the isotropic reference model (fossilhunters"
            + ".xyz, from ESABASE's model)", place = "foil of aluminium perforated at 20 km/s by 2500 kg/m3: some 5"
            + " diameters", printedValue = 5, unit = "diameters", tolerance = 0.5)
    void foilPerforatedByDust(PublishedValue printed) {
        double grain = 10e-6;
        printed.assertEqualTo(SkinWall.of(2700).required(grain, 20_000, 2500) / grain);
    }

    @Test
    @Published(work = "NASA Moon fact sheet", place = "escape velocity", printedValue = 2.38, unit = "km/s",
            tolerance = 0.01, remembered = true)
    void speedAtWhichGrainsLeaveTheMoon(PublishedValue printed) {
        printed.assertEqualTo(ThrownSoil.escape(GRAVITY) / 1000);
    }

    @Test
    @Published(work = "common practice, no source", place = "circular speed at the Moon's surface",
            printedValue = 1.68, unit = "km/s", tolerance = 0.005, remembered = true)
    void speedRoundTheMoon(PublishedValue printed) {
        printed.assertEqualTo(ThrownSoil.roundTheMoon(GRAVITY) / 1000);
    }

    /** "Nearly": nine tenths at least. */
    @Test
    @Published(work = "Metzger et al., Lunar Soil Erosion Physics for Landing Rockets on the Moon (core.ac.uk 4495658)",
            place = "abstract: soil at up to 2000 m/s at low angles travels nearly the circumference of the Moon",
            printedValue = 1, unit = "circumferences", tolerance = 0.1)
    void fineSoilFliesNearlyRoundTheMoon(PublishedValue printed) {
        printed.assertEqualTo(ThrownSoil.range(2000, ThrownSoil.RISE, GRAVITY));
    }

    /** The abstract prints 1.4 to 2.5 in the holes: the middle and half of that range. */
    @Test
    @Published(work = "Langseth et al. (1972), The Apollo 15 lunar heat-flow measurement", place = "abstract: 3.3e-6"
            + " W/cm2 at 1.75 K/m; conductivities measured in place", printedValue = 0.0195, unit = "W/(m K)",
            tolerance = 0.0055)
    void conductivityBehindTheHeatFlow(PublishedValue printed) {
        double perConductivity = new SoilHeat(1, 1800, 670).flux(1.75);
        printed.assertEqualTo(3.3e-6 * 1e4 / perConductivity);
    }

    /** "4 to 7 cm": the middle and half of the range. */
    @Test
    @Published(work = "Hayne et al. (2017), JGR Planets 122, 2371, doi:10.1002/2017JE005387",
            place = "abstract: 3.4e-3 W/(m K) and 1800 kg/m3; layer that the day is felt in", printedValue = 5.5,
            unit = "cm", tolerance = 1.5)
    void layerThatTheDayIsFeltIn(PublishedValue printed) {
        printed.assertEqualTo(new SoilHeat(3.4e-3, 1800, 670).skinDepth() * 100);
    }

    /** The middle of what was measured in the holes; "no significant" is read as under half a kelvin. */
    @Test
    @Published(work = "Heiken et al. (1991), Lunar Sourcebook, as quoted by Barnett et al. (2022), AusRock",
            place = "no significant swing below 80 cm with more than 200 K from day to night at the surface",
            printedValue = 0, unit = "K", tolerance = 0.5)
    void theDayIsNotFeltBelowEightyCentimetres(PublishedValue printed) {
        printed.assertEqualTo(new SoilHeat(0.0195, 1800, 670).swing(100, 0.8));
    }

    @Test
    @Published(work = "Engineering heat transfer, worked example 3.2, as solved in an open code companion",
            place = "pipe of 10.74 in, axis 18 in deep, 0.072 BTU/(h ft R), 140 to 65 deg F", printedValue = 18.05,
            unit = "BTU/(h ft)", tolerance = 0.02)
    void heatOfABuriedPipe(PublishedValue printed) {
        double radius = 10.74 / 24;
        printed.assertEqualTo(0.072 * SoilHeat.shapeFactor(1, radius, 1.5 - radius) * (140 - 65));
    }

    @Test
    @Published(work = "Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, problem on a buried oil line",
            place = "0.5 m, axis 1.5 m deep, 0.5 W/(m K), 120 to 0 deg C", printedValue = 152, unit = "W/m",
            tolerance = 0.5, remembered = true)
    void heatOfABuriedOilLine(PublishedValue printed) {
        printed.assertEqualTo(0.5 * SoilHeat.shapeFactor(1, 0.25, 1.25) * 120);
    }
}
