// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.lowering.body.Slosh;
import bermwright.lowering.rig.ThermalAction;
import bermwright.lowering.rig.Tube;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Poles and lines worked by hand, to the digits worked. */
class StrengthTest {
    private static final double ROUNDING = 1e-9;
    private static final double CUT_AT_SIXTH_DECIMAL = 1e-6;

    @ParameterizedTest
    @CsvSource({"0.508, 0.016, 30, 1725.086, 1563.684, 1396.392", "0.4064, 0.0125, 30, 691.579, 641.306, 585.668",
        "0.3239, 0.010, 30, 279.995, 263.997, 245.481"})
    void tubesAsPoles(double diameter, double wall, double length, double euler, double hot, double cold) {
        Column column = Column.of(new Tube(diameter, wall, 355e6, 210e9), length);
        assertEquals(euler, column.euler() / 1000, 6e-4);
        assertEquals(hot, column.curve(Column.CURVE_A) / 1000, 6e-4);
        assertEquals(cold, column.curve(Column.CURVE_C) / 1000, 6e-4);
        assertEquals(column.curve(Column.CURVE_C), column.capacity(), column.capacity() * 0.2);
    }

    @ParameterizedTest
    @CsvSource({"0.508, 0.016, 30, 1296.772", "0.4064, 0.0125, 30, 519.869", "0.3239, 0.010, 30, 210.477",
        "0.508, 0.016, 12, 5524.468"})
    void tubesByTheAmericanCode(double diameter, double wall, double length, double design) {
        Column column = Column.of(new Tube(diameter, wall, 355e6, 200e9), length);
        assertEquals(design, 0.9 * column.flexural() / 1000, 6e-4);
    }

    @Test
    void sectionOfATube() {
        Tube tube = new Tube(0.508, 0.016, 355e6, 210e9);
        assertEquals(0.0247306, tube.area(), 6e-8);
        assertEquals(7.490904e-4, tube.secondMoment(), 6e-11);
        assertEquals(0.174040, Math.sqrt(tube.secondMoment() / tube.area()), 6e-7);
        assertEquals(2.255933, Column.of(tube, 30).slenderness(), 6e-7);
    }

    @Test
    void thinWallsBuckleBeforeTheyYield() {
        Tube stout = new Tube(0.5, 0.016, 355e6, 210e9);
        Tube thin = new Tube(0.5, 0.0005, 355e6, 210e9);
        assertEquals(355e6 * stout.area(), ThinTube.capacity(stout), 1e-6);
        assertTrue(ThinTube.capacity(thin) < 0.6 * 355e6 * thin.area());
        assertEquals(0.605, ThinTube.perfect(thin) * 0.24975 / (0.0005 * 210e9), 6e-4);
    }

    @ParameterizedTest
    @CsvSource({"1000, 4.308294, 0.000594", "5000, 0.861658, 0.069143", "20000, 0.215415, 0.826204",
        "89000, 0.048408, 0.997619"})
    void sagAndTheStiffnessLeft(double tension, double sag, double share) {
        assertEquals(sag, Catenary.sag(8.586, 63.358109, tension), CUT_AT_SIXTH_DECIMAL);
        assertEquals(share, Catenary.stiffnessShare(8.586, 58, 81_430_081.58, tension), 6e-7);
    }

    @Test
    void catenaryAndParabola() {
        assertEquals(3.885110, HandbookLines.levelSag(8.586, 60, 1000), 6e-7);
        assertEquals(60.665679, HandbookLines.levelLength(8.586, 60, 1000), 6e-7);
        assertEquals(1033.3576, HandbookLines.levelTension(8.586, 60, 1000), 6e-5);
        assertEquals(3.863700, Catenary.sag(8.586, 60, 1000), 6e-7);
    }

    @Test
    void stretchCoolingAndHeat() {
        assertEquals(0.103355, LineRules.stretch(89_194, 94.358, 81_430_081.58), 6e-7);
        assertEquals(0.144, new ThermalAction(200, ThermalAction.STEEL_EXPANSION, List.of()).shortening(60), 1e-12);
        assertEquals(195_400, new ThermalAction(200, ThermalAction.STEEL_EXPANSION, List.of()).gain(81_430_081.58), 50);
        assertEquals(12.7, HandbookLines.warming(3_110_400, 500, 490), 0.05);
        assertEquals(2.566332, HandbookLines.capstan(0.15, 2 * Math.PI), 6e-7);
        assertEquals(43.376212, HandbookLines.capstan(0.2, 6 * Math.PI), 6e-7);
        assertEquals(0.308669, HandbookLines.leadLine(4, 1.09), 6e-7);
        assertEquals(0.95, LineRules.bendShare(60));
        assertEquals(0.875, LineRules.bendShare(12.5), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"1, 12.3938", "4.5, 7.9143", "9, 7.7225"})
    void sloshPeriods(double depth, double period) {
        assertEquals(period, new Slosh(4.5, depth, 1.62).period(), 6e-5);
    }

    @ParameterizedTest
    @CsvSource({"2, 0.176786", "5, 0.442911", "10, 0.892655"})
    void sloshShift(double deg, double shift) {
        Slosh slosh = new Slosh(4.5, 1, 1.62);
        assertEquals(shift, slosh.shift(Math.toRadians(deg)), 6e-7);
        assertEquals(12.5288, Math.toDegrees(slosh.dryTilt()), 6e-5);
    }

    /** Uniform weight on base and lug at a share of the length, in units of q L2. */
    @ParameterizedTest
    @CsvSource({"0.60, 0.013889, 0.08", "0.88, 0.0932335, 0.0072", "0.707107, 0.0428932, 0.0428932"})
    void hullAsABeam(double share, double between, double atLugs) {
        double length = 50;
        double weight = 194_400;
        HullBeam beam = HullBeam.of(new HullBeam.Load(weight, length, 25), share * length);
        assertEquals(between, beam.between() / (weight * length), CUT_AT_SIXTH_DECIMAL);
        assertEquals(atLugs, beam.atLugs() / (weight * length), CUT_AT_SIXTH_DECIMAL);
        assertEquals(length / Math.sqrt(2), beam.bestLug(), 1e-9);
        assertEquals(weight * 0.5 / share, beam.lugLoad(), 1e-9 * weight);
    }

    /** Another centre of mass, against shear and moment summed slice by slice. */
    @ParameterizedTest
    @CsvSource({"20, 44", "20, 26", "30, 36", "17, 50"})
    void aHullWithItsCentreElsewhereAsABeam(double centre, double lug) {
        double length = 50;
        double weight = 194_400;
        HullBeam beam = HullBeam.of(new HullBeam.Load(weight, length, centre), lug);
        int n = 100_000;
        double step = length / n;
        double shear = weight - weight * centre / lug;
        double moment = 0;
        double most = 0;
        double least = 0;
        for (int i = 0; i < n; i++) {
            double s = (i + 0.5) * step;
            double q = 2 * weight / length * (2 - 3 * centre / length + 3 * s / length * (2 * centre / length - 1));
            moment += shear * step - q * step * step / 2;
            shear -= q * step;
            if (s <= lug && s + step > lug) {
                shear += weight * centre / lug;
            }
            most = Math.max(most, moment);
            least = Math.min(least, moment);
        }
        assertEquals(0, moment, 2e-4 * weight * length);
        assertEquals(most, beam.between(), 2e-4 * weight * length);
        assertEquals(-least, beam.atLugs(), 2e-4 * weight * length);
        assertTrue(HullBeam.of(new HullBeam.Load(weight, length, centre), beam.bestLug()).greatest()
                <= beam.greatest() + 1e-6);
    }

    /** The same beam by the equation of three moments. */
    @ParameterizedTest
    @CsvSource({"25, 44", "20, 44", "30, 36", "20, 30"})
    void twoSupportsAreTheBeamOnBaseAndLugs(double centre, double lug) {
        HullBeam.Load load = new HullBeam.Load(194_400, 50, centre);
        HullBeam base = HullBeam.of(load, lug);
        SupportedBeam beam = SupportedBeam.on(BeamLoad.weight(194_400, 50, centre), List.of(0.0, lug));
        assertEquals(base.lugLoad(), beam.reactions().get(1), ROUNDING * 194_400);
        assertEquals(base.between(), beam.sagging(), ROUNDING * 194_400 * 50);
        assertEquals(base.atLugs(), beam.hogging(), ROUNDING * 194_400 * 50);
    }

    /** Whatever the supports, they bear the weight and its moment about the base. */
    @ParameterizedTest
    @CsvSource({"25, 5, 45, 3", "20, 0, 50, 4", "30, 8, 41, 6", "23, 10, 40, 2", "9, 5, 45, 3", "44, 4, 45, 2"})
    void supportsBearTheWeightAndItsMoment(double centre, double first, double last, int count) {
        BeamLoad load = BeamLoad.weight(194_400, 50, centre);
        List<Double> places = IntStream.range(0, count).mapToObj(i -> first + (last - first) * i / (count - 1))
                .toList();
        SupportedBeam beam = SupportedBeam.on(load, places);
        double sum = 0;
        double moment = 0;
        for (int i = 0; i < count; i++) {
            sum += beam.reactions().get(i);
            moment += beam.reactions().get(i) * places.get(i);
        }
        assertEquals(194_400, sum, ROUNDING * 194_400);
        assertEquals(194_400 * centre, moment, ROUNDING * 194_400 * 50);
    }

    @ParameterizedTest
    @CsvSource({"25", "17", "33.3", "9", "44", "0.5"})
    void aWeightKeepsItsSizeAndCentreHoweverItSpreads(double centre) {
        BeamLoad load = BeamLoad.weight(194_400, 50, centre);
        assertEquals(194_400, load.total(), ROUNDING * 194_400);
        assertEquals(centre, load.centre(), ROUNDING * 50);
    }

    /** Cutting a load into stretches changes nothing, and shear and bending follow from each other. */
    @Test
    void stretchesAddUpToTheWholeAndBendingIsTheSumOfShear() {
        BeamLoad whole = new BeamLoad(40, List.of(new BeamLoad.Stretch(0, 40, 3000, 11_000)));
        BeamLoad cut = new BeamLoad(40, IntStream.range(0, 80).mapToObj(i -> new BeamLoad.Stretch(i / 2.0,
                (i + 1) / 2.0, 3000 + i * 100, 3100 + i * 100)).toList());
        List<Double> places = List.of(3.0, 14.0, 36.5);
        SupportedBeam one = SupportedBeam.on(whole, places);
        SupportedBeam other = SupportedBeam.on(cut, places);
        double moment = 0;
        int steps = 40_000;
        for (int i = 0; i < steps; i++) {
            moment += one.shearBeyond((i + 0.5) * 40 / steps) * 40 / steps;
            if (i % 1000 == 999) {
                double place = (i + 1) * 40.0 / steps;
                assertEquals(one.moment(place), moment, 1e-3 * one.hogging());
                assertEquals(one.moment(place), other.moment(place), ROUNDING * one.hogging());
            }
        }
        assertEquals(one.sagging(), other.sagging(), ROUNDING * one.sagging());
        assertEquals(0, one.shearBeyond(40), ROUNDING * whole.total());
        assertEquals(0, one.moment(40), ROUNDING * whole.total() * 40);
        assertEquals(Math.max(one.shearBeyond(14), -one.shearBefore(14)), one.greatestShear(),
                ROUNDING * whole.total());
    }

    /** Two spans with one loaded: the far end would be held down by wl/16; free to rise, it bears nothing. */
    @Test
    void supportsThatCanOnlyPushLetTheHullRise() {
        BeamLoad load = new BeamLoad(2, List.of(new BeamLoad.Stretch(0, 1, 1, 1)));
        SupportedBeam beam = SupportedBeam.resting(load, List.of(0.0, 1.0, 2.0));
        assertEquals(List.of(0.0, 1.0), beam.supports());
        assertEquals(0.5, beam.reactions().get(0), ROUNDING);
        assertEquals(0.125, beam.sagging(), ROUNDING);
        SupportedBeam tips = SupportedBeam.resting(load, List.of(1.0, 1.5, 2.0));
        assertEquals(2, tips.supports().size());
        assertTrue(tips.reactions().get(1) < 0);
    }
}
