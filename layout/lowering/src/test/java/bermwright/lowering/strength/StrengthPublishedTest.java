// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.strength;

import bermwright.lowering.body.Slosh;
import bermwright.published.Published;
import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;
import bermwright.published.PublishedValue;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Columns, slings, tackles and friction against printed examples. */
class StrengthPublishedTest {
    private static final String DATA = "/bermwright/lowering/published/";
    private static final String STATICS_BOOK = "Beer and Johnston, Vector Mechanics for Engineers: Statics";
    private static final String EUROPE = "Steel Buildings in Europe, multi-storey part 4";
    private static final String WORKED = "column of 14.9e-3 m2, S235, Ncr 8151.2 and 5657.4 kN, page 105";
    private static final double HALF_DIGIT = 0.0005;

    /** A section by its area and Euler load: second moment and length chosen to give that load. */
    private static Column section(double area, double yield, double critical) {
        return new Column(area, critical / (Math.PI * Math.PI * 210e9), yield, 210e9, 1);
    }

    @PublishedTable(DATA + "buckling-curves.csv")
    void europeanCurves(PublishedRow row) {
        row.assertNear("reduction", Column.reduction(1, row.number("imperfection")), 0.00005);
    }

    @Test
    @Published(work = EUROPE, place = WORKED + ": slenderness y", printedValue = 0.655, unit = "1",
            tolerance = HALF_DIGIT)
    void slendernessStrongAxis(PublishedValue printed) {
        printed.assertEqualTo(section(14_900e-6, 235e6, 8_151_200).slenderness());
    }

    @Test
    @Published(work = EUROPE, place = WORKED + ": slenderness z", printedValue = 0.787, unit = "1",
            tolerance = HALF_DIGIT)
    void slendernessWeakAxis(PublishedValue printed) {
        printed.assertEqualTo(section(14_900e-6, 235e6, 5_657_400).slenderness());
    }

    @Test
    @Published(work = EUROPE, place = WORKED + ": reduction y, curve b", printedValue = 0.808, unit = "1",
            tolerance = 0.0006)
    void reductionStrongAxis(PublishedValue printed) {
        printed.assertEqualTo(Column.reduction(0.655, Column.CURVE_B));
    }

    @Test
    @Published(work = "European column benchmark page: UC 152x152x30, S275, 4 m, curve c",
            place = "Phi at slenderness 1.203", printedValue = 1.46934, unit = "1", tolerance = 0.000005)
    void phiOfABenchmark(PublishedValue printed) {
        double l = 1.203;
        double reduction = Column.reduction(l, Column.CURVE_C);
        // chi = 1/(Phi + sqrt(Phi2 - l2)) turned round.
        printed.assertEqualTo((1 / reduction + l * l * reduction) / 2);
    }

    @Test
    @Published(work = "McCormac, Structural Steel Design, 5th edition, example 5-3 (load worked from its inputs)",
            place = "HSS16x16x1/2, 18 ft: design load 0.9 Pn", printedValue = 1082.8, unit = "kip", tolerance = 0.5,
            remembered = true)
    void americanColumn(PublishedValue printed) {
        double inch = 0.0254;
        double ksi = 6_894_757.29;
        double area = 28.3 * inch * inch;
        Column column = new Column(area, area * Math.pow(6.31 * inch, 2), 46 * ksi, 29_000 * ksi, 216 * inch);
        printed.assertEqualTo(0.9 * column.flexural() / 4448.2216);
    }

    @PublishedTable(DATA + "sling-table.csv")
    void slingLoads(PublishedRow row) {
        double force = HandbookLines.slingForce(row.number("diameter_mm") / 1000, 1.77e9, 0.9, 1, 5);
        // The table rounds down; its own formula is 1 % above it at most.
        row.assertShare("load_t", force / 9810, 0.01);
    }

    @Test
    @Published(work = "Wire Rope Users Manual, 4th edition", place = "page 88: lead line of 4 parts, plain sheaves",
            printedValue = 0.309, unit = "1", tolerance = HALF_DIGIT)
    void leadLineOfFourParts(PublishedValue printed) {
        printed.assertEqualTo(HandbookLines.leadLine(4, 1.09));
    }

    @Test
    @Published(work = "Wire Rope Users Manual, 4th edition", place = "page 88: with two more lead sheaves",
            printedValue = 0.367, unit = "1", tolerance = HALF_DIGIT)
    void leadLineWithMoreSheaves(PublishedValue printed) {
        printed.assertEqualTo(HandbookLines.leadLine(4, 1.09) * 1.09 * 1.09);
    }

    @Test
    @Published(work = "Wire Rope Users Manual, 4th edition", place = "page 88: 6000 lb at the printed 0.367",
            printedValue = 2202, unit = "lb", tolerance = 3)
    void leadLinePull(PublishedValue printed) {
        // The book multiplies by its rounded factor; half a unit of it is 3 lb.
        printed.assertEqualTo(6000 * HandbookLines.leadLine(4, 1.09) * 1.09 * 1.09);
    }

    @Test
    @Published(work = STATICS_BOOK, place = "sample problem, hawser with two turns from 150 N to 7500 N: friction",
            printedValue = 0.311, unit = "1", tolerance = HALF_DIGIT, remembered = true)
    void hawserFriction(PublishedValue printed) {
        printed.assertEqualTo(Math.log(50) / Math.log(HandbookLines.capstan(1, 4 * Math.PI)));
    }

    @Test
    @Published(work = STATICS_BOOK, place = "the same with three turns: tension", printedValue = 52.7, unit = "kN",
            tolerance = 0.05, remembered = true)
    void hawserWithThreeTurns(PublishedValue printed) {
        printed.assertEqualTo(0.150 * HandbookLines.capstan(0.311, 6 * Math.PI));
    }

    @Test
    @Published(work = "open knowledge page on belt friction", place = "question: one turn at friction 0.3",
            printedValue = 6.6, unit = "1", tolerance = 0.05)
    void oneTurnAroundABollard(PublishedValue printed) {
        printed.assertEqualTo(HandbookLines.capstan(0.3, 2 * Math.PI));
    }

    @Test
    @Published(work = STATICS_BOOK, place = "sample problem, cable of 3 lb/ft, span 500 ft, parameter 328 ft: sag",
            printedValue = 100, unit = "ft", tolerance = 0.5, remembered = true)
    void catenarySag(PublishedValue printed) {
        printed.assertEqualTo(HandbookLines.levelSag(3, 500, 3 * 328));
    }

    @Test
    @Published(work = STATICS_BOOK, place = "the same: greatest tension", printedValue = 1284, unit = "lb",
            tolerance = 1.5, remembered = true)
    void catenaryTension(PublishedValue printed) {
        printed.assertEqualTo(HandbookLines.levelTension(3, 500, 3 * 328));
    }

    @Test
    @Published(work = STATICS_BOOK, place = "the same: length", printedValue = 550, unit = "ft", tolerance = 0.5,
            remembered = true)
    void catenaryLength(PublishedValue printed) {
        printed.assertEqualTo(HandbookLines.levelLength(3, 500, 3 * 328));
    }

    @PublishedTable(DATA + "lunar-slosh.csv")
    void sloshRoot(PublishedRow row) {
        // In a deep tank the frequency is the root alone.
        double period = new Slosh(1, 100, 1).period();
        row.assertNear("root", Math.pow(2 * Math.PI / period, 2), 0.0005);
    }

    /** Two units of the sixth decimal: the row at 0.88 prints 1.5 of them above (1 - 1/1.76)^2 / 2 = 0.0932335. */
    private static final double SIXTH_DECIMAL = 2e-6;

    @PublishedTable(DATA + "two-support-beam.csv")
    void beamOnTwoSupports(PublishedRow row) {
        SupportedBeam beam = SupportedBeam.on(BeamLoad.weight(1, 1, 0.5), List.of(0.0, row.number("support")));
        row.assertNear("between", beam.sagging(), SIXTH_DECIMAL);
        row.assertNear("over_support", beam.hogging(), SIXTH_DECIMAL);
    }

    @PublishedTable(DATA + "continuous-beam.csv")
    void beamOnManySupports(PublishedRow row) {
        double spans = row.number("spans");
        SupportedBeam beam = SupportedBeam.on(BeamLoad.weight(spans, spans, spans / 2),
                IntStream.rangeClosed(0, (int) spans).mapToObj(i -> (double) i).toList());
        row.assertNear("end", beam.reactions().get(0), HALF_DIGIT);
        row.assertNear("next", beam.reactions().get(1), HALF_DIGIT);
        row.assertNear("over_support", beam.hogging(), HALF_DIGIT);
        row.assertNear("in_span", beam.sagging(), HALF_DIGIT);
    }

    @PublishedTable(DATA + "piecewise-beam.csv")
    void beamUnderStretchesOfLoad(PublishedRow row) {
        BeamLoad load = new BeamLoad(row.number("length"), List.of(new BeamLoad.Stretch(row.number("from"),
                row.number("to"), row.number("at_from"), row.number("at_to"))));
        SupportedBeam beam = SupportedBeam.on(load, Stream.of("first", "middle", "last").filter(row::has)
                .map(row::number).toList());
        double tolerance = row.number("tolerance");
        row.assertNear("reaction_first", beam.reactions().get(0), tolerance);
        row.assertNear("reaction_last", beam.reactions().get(beam.reactions().size() - 1), tolerance);
        row.assertNear("hogging", beam.hogging(), tolerance);
        row.assertNear("sagging", beam.sagging(), tolerance);
    }
}
