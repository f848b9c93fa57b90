// SPDX-License-Identifier: Apache-2.0
package bermwright.report.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ChartTest {
    static final Path LOOK = Path.of("target", "look");

    static void keep(Drawing drawing) throws IOException {
        Files.createDirectories(LOOK);
        drawing.write(LOOK);
    }

    private static List<Dot> curve(double from, double to, DoubleUnaryOperator value) {
        return IntStream.rangeClosed(0, 90).mapToObj(i -> from + (to - from) * i / 90.0)
                .map(x -> new Dot(x, value.applyAsDouble(x))).toList();
    }

    private static Chart tension() {
        return new Chart("tension-A", "Hull A: tension against tilt", "tilt from standing (°)", "pull (kN)", List.of(
                new Chart.Curve("all lowering lines, full moment balance", curve(0, 90, t -> t < 12 ? Double.NaN
                        : 190 * Math.sin(Math.toRadians(t - 10))), Ink.of(0)),
                new Chart.Curve("all lowering lines, hand balance", curve(0, 90, t -> t < 12 ? Double.NaN
                        : 230 * Math.sin(Math.toRadians(t - 8))), Ink.of(1)),
                new Chart.Curve("pull-over line", curve(0, 90, t -> t > 12 ? Double.NaN : 60 - 5 * t), Ink.of(2))),
                List.of(new Chart.Mark("winch rating, all lines", 500, "kN"), new Chart.Mark("pull-over winch", 60,
                        "kN")),
                List.of(new Chart.Mark("balance", 9.7, "°"), new Chart.Mark("hand-over", 12, "°")), Chart.Scale.LINEAR);
    }

    @Test
    void aChartIsValidAndKeepsItsWordsOnThePaper() throws IOException {
        Drawing drawing = tension().drawing();
        keep(drawing);
        assertEquals(List.of(), DrawingXml.troubles(drawing));
        List<String> texts = DrawingXml.texts(DrawingXml.read(drawing.file()));
        assertTrue(texts.containsAll(List.of("pull-over line", "winch rating, all lines 500 kN", "balance 9.7°",
                "tilt from standing (°)", "pull (kN)")), texts::toString);
    }

    @Test
    void aCurveBreaksWhereItIsNotKnownAndLeavesLonelyPointsOut() {
        double gap = Double.NaN;
        String svg = new Svg("gap").curve(List.of(new Dot(0, 0), new Dot(1, 1), new Dot(2, gap), new Dot(3, 3),
                new Dot(4, 4), new Dot(gap, 5), new Dot(6, 6))).drawing("gap", new Dot(9, 9)).svg();
        assertTrue(svg.contains(" d=\"M0 0L1 1M3 3L4 4\""), svg);
    }

    @Test
    void eightInksDifferInColourAndInDashOrMarker() {
        Set<String> looks = new HashSet<>();
        for (int i = 0; i < 8; i++) {
            looks.add(Ink.of(i).dash() + Ink.of(i).marker());
        }
        assertEquals(8, looks.size());
        assertNotEquals(Ink.of(0).colour(), Ink.of(1).colour());
    }

    @Test
    void aLogarithmicAxisLeavesOutWhatIsNotAboveZero() throws IOException {
        Chart chart = new Chart("dose-depth", "Dose against cover", "cover (m)", "dose (mSv)", List.of(
                new Chart.Curve("high", curve(0, 6, x -> 400 * Math.exp(-x / 1.2)), Ink.of(1)),
                new Chart.Curve("best", curve(0, 6, x -> 300 * Math.exp(-x / 1.2)), Ink.of(0)),
                new Chart.Curve("nothing", List.of(new Dot(0, 0), new Dot(6, -1)), Ink.of(5))),
                List.of(new Chart.Mark("limit", 150, "mSv")), List.of(), Chart.Scale.LOGARITHMIC);
        Drawing drawing = chart.drawing();
        keep(drawing);
        assertEquals(List.of(), DrawingXml.troubles(drawing));
    }

    @Test
    void aChartOfNothingStillIsAChart() {
        Drawing drawing = new Chart("empty", "Nothing", "x", "y", List.of(), List.of(), List.of(), Chart.Scale.LINEAR)
                .drawing();
        assertEquals(List.of(), DrawingXml.troubles(drawing));
    }

    @Test
    void barsShowPartsRangeAndLimits() throws IOException {
        Bars bars = new Bars("dose", "Dose by station over the stay", "effective dose (mSv)", List.of("cosmic rays",
                "solar particle event", "ground return"), List.of(
                new Bars.Bar("A/bunks", List.of(40.0, 12.0, 6.0), 45, 80, "58 mSv (upright 310)"),
                new Bars.Bar("A/bridge with a very long name that runs on and on and on", List.of(90.0, 70.0, 6.0), 130,
                        210, "166 mSv (upright 330)"),
                new Bars.Bar("B/work", List.of(Double.NaN, 2.0, 1.0), Double.NaN, Double.NaN, "not computed")),
                List.of(new Chart.Mark("limit, all sources over the stay", 150, "mSv"),
                        new Chart.Mark("limit, one event", 100, "mSv")));
        Drawing drawing = bars.drawing();
        keep(drawing);
        assertEquals(List.of(), DrawingXml.troubles(drawing));
    }

    @Test
    void timeBarsShowWhatComesBefore() throws IOException {
        Drawing drawing = new TimeBars("order", "Order of work", "days of work", List.of(
                new TimeBars.Step("1", "1 prepare bench under A", new TimeBars.Span(0, 3), true, List.of()),
                new TimeBars.Step("2", "2 lower A", new TimeBars.Span(3, 4), true, List.of("1")),
                new TimeBars.Step("3", "3 lower B", new TimeBars.Span(0, 1), false, List.of()),
                new TimeBars.Step("4", "4 cover A, lift 1", new TimeBars.Span(4, 22), true, List.of("2",
                        "3")))).drawing();
        keep(drawing);
        assertEquals(List.of(), DrawingXml.troubles(drawing));
    }
}
