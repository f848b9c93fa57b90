// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.finding.Finding;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.drawing.Svg;
import bermwright.report.drawing.Ticks;
import bermwright.site.arrangement.Arrangement;
import bermwright.site.arrangement.ArrangementSearch;
import bermwright.site.arrangement.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Arrangements none of which is better in all: machine hours against soil, each with its number and its warnings. The
 * axes fit the arrangements; the plan as it was given, which mostly lies far off, is told in words.
 *
 * @param found what was found
 */
public record ArrangementSheet(ArrangementSearch.Found found) {
    private static final double WIDTH = 860;
    private static final double LEFT = 84;
    private static final double RIGHT = 28;
    private static final double TOP = 74;
    private static final double HEIGHT = 320;
    private static final double MARK = 5.5;
    /** Room beside the outermost arrangements, as a share of what they span, and the least of a value. */
    private static final double ROOM = 0.2;
    private static final double LEAST_ROOM = 0.004;
    private static final double LETTER = 12;
    private static final List<Ink.Marker> MARKERS = List.of(Ink.Marker.CIRCLE, Ink.Marker.SQUARE, Ink.Marker.TRIANGLE);
    private static final List<String> COLOURS = List.of(Ink.BLUE, Ink.RED, Ink.GREEN, Ink.BLACK, Ink.PURPLE);

    /**
     * The chart.
     *
     * @return the drawing
     */
    public Drawing drawing() {
        Svg svg = new Svg("arrangements");
        String title = "Arrangements: machine hours against soil placed, with warnings";
        svg.heading(new Dot(12, 22), title, WIDTH - 20);
        Figures given = found.planned().figures();
        svg.text(new Dot(12, 42), "Left and down is better. Plan as given"
                + (found.planned().isPassed() ? "" : ", refused") + ": " + number(hours(given)) + " h, "
                + number(soil(given)) + " m\u00b3, " + warnings(given) + ".");
        Ticks across = ticks(ArrangementSheet::soil);
        Ticks up = ticks(ArrangementSheet::hours);
        axes(svg, across, up);
        List<Dot> taken = new ArrayList<>();
        for (int i = 0; i < found.arrangements().size(); i++) {
            Arrangement one = found.arrangements().get(i);
            Dot at = new Dot(x(across, soil(one.figures())), y(up, hours(one.figures())));
            Ink.scattered(COLOURS.get(i % COLOURS.size()), MARKERS.get(i % MARKERS.size())).mark(svg, at);
            words(svg, (i + 1) + ": " + warnings(one.figures()), at, taken);
        }
        return svg.drawing(title, new Dot(WIDTH, TOP + HEIGHT + 52));
    }

    /** Words beside a mark, lower where others stand there already. */
    private static void words(Svg svg, String words, Dot at, List<Dot> taken) {
        double wide = Svg.width(words, LETTER);
        double x = at.x() + MARK + 5 + wide < WIDTH - 4 ? at.x() + MARK + 5 : at.x() - MARK - 5 - wide;
        double y = at.y() + 4;
        for (double end = y + HEIGHT; y < end && isTaken(x, y, taken); ) {
            y += LETTER + 2;
        }
        taken.add(new Dot(x, y));
        if (y - at.y() > LETTER) {
            svg.line(at, new Dot(x - 1, y - 4), "stroke", Ink.DARK_GREY, "stroke-width", "0.7");
        }
        svg.text(new Dot(x, y), words, "stroke", "#ffffff", "stroke-width", "3", "paint-order", "stroke");
    }

    private static boolean isTaken(double x, double y, List<Dot> taken) {
        return taken.stream().anyMatch(t -> Math.abs(t.y() - y) < LETTER + 1 && Math.abs(t.x() - x) < 9 * LETTER);
    }

    private Ticks ticks(ToDoubleFunction<Figures> what) {
        double low = found.arrangements().stream().mapToDouble(a -> what.applyAsDouble(a.figures())).min().orElse(0);
        double high = found.arrangements().stream().mapToDouble(a -> what.applyAsDouble(a.figures())).max().orElse(1);
        double room = Math.max(ROOM * (high - low), Math.max(1, LEAST_ROOM * high));
        return Ticks.inside(Math.max(0, low - room), high + room, 8);
    }

    private static void axes(Svg svg, Ticks across, Ticks up) {
        double bottom = TOP + HEIGHT;
        for (double mark : across.marks()) {
            svg.line(new Dot(x(across, mark), TOP), new Dot(x(across, mark), bottom), "stroke", Ink.GREY,
                    "stroke-width", "0.8");
            svg.text(new Dot(x(across, mark), bottom + 17), across.words(mark), "text-anchor", "middle");
        }
        for (double mark : up.marks()) {
            svg.line(new Dot(LEFT, y(up, mark)), new Dot(WIDTH - RIGHT, y(up, mark)), "stroke", Ink.GREY,
                    "stroke-width", "0.8");
            svg.text(new Dot(LEFT - 7, y(up, mark) + 4), up.words(mark), "text-anchor", "end");
        }
        svg.line(new Dot(LEFT, TOP), new Dot(LEFT, bottom), "stroke", Ink.BLACK);
        svg.line(new Dot(LEFT, bottom), new Dot(WIDTH - RIGHT, bottom), "stroke", Ink.BLACK);
        svg.text(new Dot(12, TOP - 10), "machine hours (h)", "font-size", "13");
        svg.text(new Dot((LEFT + WIDTH - RIGHT) / 2, bottom + 38), "soil placed (m\u00b3)", "text-anchor", "middle",
                "font-size", "13");
    }

    private static double x(Ticks across, double soil) {
        return LEFT + (WIDTH - LEFT - RIGHT) * (soil - across.low()) / (across.high() - across.low());
    }

    private static double y(Ticks up, double hours) {
        return TOP + HEIGHT * (1 - (hours - up.low()) / (up.high() - up.low()));
    }

    private static double hours(Figures figures) {
        return figures.of(Figures.Weighed.HOURS);
    }

    private static double soil(Figures figures) {
        return figures.of(Figures.Weighed.SOIL);
    }

    private static String number(double value) {
        return Finding.Figures.number(value);
    }

    private static String warnings(Figures figures) {
        return figures.warnings() + (figures.warnings() == 1 ? " warning" : " warnings");
    }
}
