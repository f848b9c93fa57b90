// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.published.Published;
import bermwright.published.PublishedValue;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.shape.Berm;
import bermwright.terrain.shape.HandbookCraters;
import bermwright.terrain.shape.Mound;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class VolumesPublishedTest {
    private static final String WIKIBOOK = "Fundamentals of Transportation (wikibook), Earthwork, solution";
    private static final String BY_HAND = "common practice, no source";
    /** Half of the last printed digit. */
    private static final double HALF_OF_TENTH = 0.05;
    private static final double HALF_OF_MICRO = 0.6e-6;
    /** Sums of a few exact products. */
    private static final double EXACT = 1e-9;
    private static final double CUBIC_YARD_IN_CUBIC_FEET = 27;

    private static List<EndAreas.Section> sections(double... stationsAndAreas) {
        return IntStream.range(0, stationsAndAreas.length / 2)
                .mapToObj(i -> new EndAreas.Section(stationsAndAreas[2 * i], stationsAndAreas[2 * i + 1])).toList();
    }

    private static double wikibookFill() {
        return EndAreas.averageWithPyramids(sections(0, 60, 50, 50, 75, 25, 100, 5, 115, 0));
    }

    private static double wikibookCut() {
        return EndAreas.averageWithPyramids(sections(75, 0, 100, 10, 115, 15, 150, 30));
    }

    @Test
    @Published(work = WIKIBOOK, place = "fill", printedValue = 4087.5, unit = "m3", tolerance = HALF_OF_TENTH)
    void fillByEndAreas(PublishedValue printed) {
        printed.assertEqualTo(wikibookFill());
    }

    @Test
    @Published(work = WIKIBOOK, place = "cut", printedValue = 1058.3, unit = "m3", tolerance = HALF_OF_TENTH)
    void cutByEndAreas(PublishedValue printed) {
        printed.assertEqualTo(wikibookCut());
    }

    @Test
    @Published(work = WIKIBOOK, place = "dirt needed", printedValue = 3029.2, unit = "m3", tolerance = HALF_OF_TENTH)
    void deficitByEndAreas(PublishedValue printed) {
        printed.assertEqualTo(wikibookFill() - wikibookCut());
    }

    @Test
    @Published(work = BY_HAND, place = "pit 10 x 20 to 16 x 26, 3 deep, sides 1:1, prismoidal", printedValue = 906.0,
            unit = "m3", tolerance = EXACT)
    void pitByThePrismoidalRule(PublishedValue printed) {
        printed.assertEqualTo(EndAreas.prismoidal(sections(0, 200, 1.5, 13 * 23, 3, 16 * 26)));
    }

    @Test
    @Published(work = BY_HAND, place = "the same pit by end areas", printedValue = 924.0, unit = "m3",
            tolerance = EXACT)
    void pitByEndAreas(PublishedValue printed) {
        printed.assertEqualTo(EndAreas.average(sections(0, 200, 3, 16 * 26)));
    }

    /** The pit as a surface: the grid prisms are a third route to the same volume. */
    @Test
    @Published(work = BY_HAND, place = "pit 10 x 20 to 16 x 26, 3 deep, sides 1:1, by prisms on a 0.5 m grid",
            printedValue = 906.0, unit = "m3", tolerance = 0.5)
    void pitByGridPrisms(PublishedValue printed) {
        GridFrame frame = new GridFrame(61, 81, 0, 0, 0.5);
        ElevationGrid level = ElevationGrid.sampled(frame, (e, n) -> 0);
        ElevationGrid pit = ElevationGrid.sampled(frame, (e, n) -> {
            double side = Math.max(Math.abs(e - 20) - 10, Math.abs(n - 15) - 5);
            return -Math.max(0, Math.min(3, 3 - side));
        });
        printed.assertEqualTo(CutAndFill.between(level, pit).cut());
    }

    @Test
    @Published(work = BY_HAND, place = "cone r 4, h 3, exact", printedValue = 50.265482, unit = "m3",
            tolerance = HALF_OF_MICRO)
    void coneByThePrismoidalRule(PublishedValue printed) {
        printed.assertEqualTo(EndAreas.prismoidal(sections(0, 16 * Math.PI, 1.5, 4 * Math.PI, 3, 0)));
    }

    @Test
    @Published(work = BY_HAND, place = "cone r 4, h 3, as a frustum without a crown", printedValue = 50.265482,
            unit = "m3", tolerance = HALF_OF_MICRO)
    void coneByTheFrustumRule(PublishedValue printed) {
        printed.assertEqualTo(HandRules.frustum(3, 16 * Math.PI, 0));
    }

    @Test
    @Published(work = BY_HAND, place = "cone r 4, h 3, by end areas", printedValue = 75.398224, unit = "m3",
            tolerance = HALF_OF_MICRO)
    void coneByEndAreas(PublishedValue printed) {
        printed.assertEqualTo(EndAreas.average(sections(0, 16 * Math.PI, 3, 0)));
    }

    /** The tolerance is what a grid of 0.1 m loses at the tip and the toe. */
    @Test
    @Published(work = BY_HAND, place = "cone r 4, h 3, by prisms on a 0.1 m grid", printedValue = 50.265482,
            unit = "m3", tolerance = 0.03)
    void coneByGridPrisms(PublishedValue printed) {
        GridFrame frame = new GridFrame(101, 101, -5, -5, 0.1);
        Mound cone = new Mound(new Point(0, 0), 3, 0, Math.atan(0.75));
        printed.assertEqualTo(CutAndFill.between(ElevationGrid.sampled(frame, (e, n) -> 7),
                ElevationGrid.sampled(frame, (e, n) -> 7 + cone.height(e, n))).fill());
    }

    @Test
    @Published(work = "Four-point grid method, (A/4)(h1 + 2 h2 + 3 h3 + 4 h4), common practice",
            place = "2 x 2 cells of 10 m, worked by hand", printedValue = 337.5, unit = "m3", tolerance = EXACT)
    void fourPointGrid(PublishedValue printed) {
        GridFrame frame = new GridFrame(3, 3, 0, 0, 10);
        ElevationGrid cut = ElevationGrid.of(frame, new double[] {0.4, 0.7, 0.5, 0.6, 0.9, 1.1, 1.0, 1.2, 0.8});
        printed.assertEqualTo(CutAndFill.between(cut, ElevationGrid.sampled(frame, (e, n) -> 0)).cut());
    }

    @Test
    @Published(work = "Practice question on the borrow for a parking lot, expertsmind.com, question 30170481",
            place = "50 ft grid, corners 87.6, 87.6, 87.6, 88.6 ft raised to 90 ft", printedValue = 199,
            unit = "yd3", tolerance = 0.5)
    void borrowForAParkingLot(PublishedValue printed) {
        GridFrame frame = new GridFrame(2, 2, 0, 0, 50);
        ElevationGrid ground = ElevationGrid.of(frame, new double[] {87.6, 87.6, 87.6, 88.6});
        Ring lot = new Ring(List.of(new Point(0, 0), new Point(50, 0), new Point(50, 50), new Point(0, 50)));
        printed.assertEqualTo(CutAndFill.between(ground, ElevationGrid.sampled(frame, (e, n) -> 90), lot).fill()
                / CUBIC_YARD_IN_CUBIC_FEET);
    }

    @Test
    @Published(work = "Mixed cell rule, (A/4)(sum c)^2 / (sum c + sum f), common practice",
            place = "c 2, 1; f 1, 1; A 100: cut", printedValue = 45, unit = "m3", tolerance = EXACT)
    void mixedCellCut(PublishedValue printed) {
        printed.assertEqualTo(HandRules.mixedCellCut(100, 3, 2));
    }

    @Test
    @Published(work = "Mixed cell rule, (A/4)(sum f)^2 / (sum c + sum f), common practice",
            place = "c 2, 1; f 1, 1; A 100: fill", printedValue = 20, unit = "m3", tolerance = EXACT)
    void mixedCellFill(PublishedValue printed) {
        printed.assertEqualTo(HandRules.mixedCellCut(100, 2, 3));
    }

    @Test
    @Published(work = "Mixed cell rule, common practice", place = "c 2, 1; f 1, 1; A 100: cut less fill, by prisms",
            printedValue = 25, unit = "m3", tolerance = EXACT)
    void mixedCellNet(PublishedValue printed) {
        GridFrame frame = new GridFrame(2, 2, 0, 0, 10);
        ElevationGrid ground = ElevationGrid.of(frame, new double[] {2, 1, -1, -1});
        CutAndFill moved = CutAndFill.between(ground, ElevationGrid.sampled(frame, (e, n) -> 0));
        printed.assertEqualTo(moved.cut() - moved.fill());
    }

    @Test
    @Published(work = "Stockpile cone at its slope, common practice", place = "h 3, 35 degrees: radius",
            printedValue = 4.284444, unit = "m", tolerance = HALF_OF_MICRO)
    void stockpileRadius(PublishedValue printed) {
        printed.assertEqualTo(new Mound(new Point(0, 0), 3, 0, Math.toRadians(35)).toeRadius());
    }

    @Test
    @Published(work = "Stockpile cone at its slope, common practice", place = "h 3, 35 degrees: volume",
            printedValue = 57.668522, unit = "m3", tolerance = HALF_OF_MICRO)
    void stockpileVolume(PublishedValue printed) {
        printed.assertEqualTo(HandbookCraters.volume(new Mound(new Point(0, 0), 3, 0, Math.toRadians(35))));
    }

    @Test
    @Published(work = "Ridge with a level crown, common practice", place = "h 3, crown 1, 35 degrees: section",
            printedValue = 15.853332, unit = "m2", tolerance = HALF_OF_MICRO)
    void ridgeSection(PublishedValue printed) {
        printed.assertEqualTo(HandbookCraters.sectionArea(new Berm(new Point(0, 0), new Point(9, 0), 3, 1,
                Math.toRadians(35))));
    }

    /** The same section cut out of a grid; the tolerance is what a 0.25 m grid loses at crown and toe. */
    @Test
    @Published(work = "Ridge with a level crown, common practice",
            place = "h 3, crown 1, 35 degrees: section, from a grid",
            printedValue = 15.853332, unit = "m2", tolerance = 0.03)
    void ridgeSectionOnAGrid(PublishedValue printed) {
        GridFrame frame = new GridFrame(101, 81, -5, -12.5, 0.25);
        Berm ridge = new Berm(new Point(-50, 0), new Point(50, 0), 3, 1, Math.toRadians(35));
        AxisSections sections = AxisSections.between(ElevationGrid.sampled(frame, (e, n) -> 0),
                ElevationGrid.sampled(frame, ridge::height),
                new AxisSections.Axis(new Point(0, 0), new Point(10, 0), 9), 5);
        printed.assertEqualTo(EndAreas.prismoidal(sections.fill()) / 10);
    }

    @Test
    @Published(work = "Mass-haul curve, common practice",
            place = "cut 0, 120, 200, 80, 0, 0, fill 0, 0, 0, 60, 180, 160: greatest ordinate", printedValue = 340,
            unit = "m3", tolerance = EXACT)
    void massOrdinates(PublishedValue printed) {
        double[] ordinates = ordinates();
        printed.assertEqualTo(ordinates[4]);
        assertArrayEquals(new double[] {0, 0, 120, 320, 340, 160, 0}, ordinates,
                EXACT);
    }

    @Test
    @Published(work = "Mass-haul curve, common practice", place = "the same at stations of 20 m: haul moment",
            printedValue = 18_800, unit = "m3 m", tolerance = EXACT)
    void haulMoment(PublishedValue printed) {
        printed.assertEqualTo(MassHaul.moment(ordinates(), 20));
    }

    private static double[] ordinates() {
        return MassHaul.ordinates(new double[] {0, 120, 200, 80, 0, 0}, new double[] {0, 0, 0, 60, 180, 160});
    }
}
