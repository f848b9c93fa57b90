// SPDX-License-Identifier: Apache-2.0
package bermwright.report.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Curves over a common axis, with limits, marked places and bands.
 *
 * @param name     file-safe name of the drawing
 * @param title    title for people
 * @param across   words and unit of the axis across
 * @param up       words and unit of the axis upwards
 * @param curves   the curves
 * @param limits   values upwards that are limits or ratings
 * @param places   values across that are marked, such as a balance tilt
 * @param scale    range and kind of the upward axis
 */
public record Chart(String name, String title, String across, String up, List<Curve> curves, List<Mark> limits,
        List<Mark> places, Scale scale) {
    private static final double LEFT = 78;
    private static final double RIGHT = 22;
    private static final double TOP = 42;
    private static final double WIDTH = 860;
    private static final double PLOT_HEIGHT = 340;
    private static final double LEGEND_ROW = 18;

    /** Copies the lists. */
    public Chart {
        curves = List.copyOf(curves);
        limits = List.copyOf(limits);
        places = List.copyOf(places);
    }

    /**
     * A curve.
     *
     * @param name   its name in the legend; empty to leave it out there
     * @param points its points in the units of the axes; {@code NaN} breaks it
     * @param ink    how it is drawn
     */
    public record Curve(String name, List<Dot> points, Ink ink) {
        /** Copies the points. */
        public Curve {
            points = List.copyOf(points);
        }
    }

    /**
     * A limit or a marked place.
     *
     * @param name  its words, without the value
     * @param value its value, in the unit of its axis
     * @param unit  its unit
     */
    public record Mark(String name, double value, String unit) {
        String words() {
            return name + " " + Drawing.figure(value, 4) + ("°".equals(unit) ? unit : " " + unit);
        }
    }

    /**
     * The upward axis.
     *
     * @param logarithmic whether equal ways are equal factors; values at or below zero are then left out
     * @param least       least value shown; empty to take it from curves and limits
     * @param greatest    greatest value shown; empty to take it from curves and limits
     */
    public record Scale(boolean logarithmic, OptionalDouble least, OptionalDouble greatest) {
        /** From zero or the least value to the greatest. */
        public static final Scale LINEAR = new Scale(false, OptionalDouble.empty(), OptionalDouble.empty());
        /** Logarithmic, from the least value to the greatest. */
        public static final Scale LOGARITHMIC = new Scale(true, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * The chart as a picture.
     *
     * @return the drawing
     */
    public Drawing drawing() {
        Svg svg = new Svg(name);
        Paper paper = new Paper(acrossTicks(), upTicks());
        svg.heading(new Dot(LEFT, 22), title, WIDTH - LEFT - 8);
        axes(svg, paper);
        svg.window("plot", new Dot(LEFT, TOP), new Dot(paper.width(), PLOT_HEIGHT)).openInside("plot");
        for (Curve curve : curves) {
            List<Dot> dots = curve.points.stream().map(paper::at).toList();
            if (!curve.ink.isScattered()) {
                svg.curve(dots, curve.ink.stroke());
                thinned(dots).forEach(dot -> curve.ink.mark(svg, dot));
            }
        }
        svg.close();
        curves.stream().filter(curve -> curve.ink.isScattered()).forEach(curve -> curve.points.stream().map(paper::at)
                .filter(paper::holds).forEach(dot -> curve.ink.mark(svg, dot)));
        marks(svg, paper);
        double bottom = legend(svg, TOP + PLOT_HEIGHT + 62);
        return svg.drawing(title, new Dot(WIDTH, bottom + 6));
    }

    private Ticks acrossTicks() {
        double[] known = DoubleStream.concat(points().mapToDouble(Dot::x), places.stream().mapToDouble(Mark::value))
                .filter(Double::isFinite).toArray();
        double low = DoubleStream.of(known).min().orElse(0);
        double high = DoubleStream.of(known).max().orElse(1);
        return Ticks.inside(low, high > low ? high : low + 1, 10);
    }

    private Ticks upTicks() {
        double[] known = DoubleStream.concat(points().mapToDouble(Dot::y), limits.stream().mapToDouble(Mark::value))
                .filter(v -> Double.isFinite(v) && (!scale.logarithmic || v > 0)).toArray();
        double high = scale.greatest.orElse(DoubleStream.of(known).max().orElse(1));
        double low = scale.least.orElse(DoubleStream.of(known).min().orElse(0));
        if (scale.logarithmic) {
            return Ticks.decades(low > 0 ? low : 1, Math.max(high, low > 0 ? low * 2 : 2));
        }
        return Ticks.linear(Math.min(scale.least.orElse(0), low), high, 6);
    }

    private Stream<Dot> points() {
        return curves.stream().flatMap(curve -> curve.points.stream()).filter(Dot::isKnown);
    }

    private void axes(Svg svg, Paper paper) {
        double bottom = TOP + PLOT_HEIGHT;
        for (double mark : paper.across.marks()) {
            double x = paper.x(mark);
            svg.line(new Dot(x, TOP), new Dot(x, bottom), "stroke", Ink.GREY, "stroke-width", "0.8");
            svg.text(new Dot(x, bottom + 17), paper.across.words(mark), "text-anchor", "middle");
        }
        for (double mark : paper.up.marks()) {
            double y = paper.y(mark);
            svg.line(new Dot(LEFT, y), new Dot(WIDTH - RIGHT, y), "stroke", mark == 0 ? Ink.DARK_GREY : Ink.GREY,
                    "stroke-width", "0.8");
            svg.text(new Dot(LEFT - 7, y + 4), paper.up.words(mark), "text-anchor", "end");
        }
        svg.box(new Dot(LEFT, TOP), new Dot(paper.width(), PLOT_HEIGHT), "fill", "none", "stroke", Ink.DARK_GREY);
        svg.text(new Dot(LEFT + paper.width() / 2, bottom + 36), across, "text-anchor", "middle", "font-size", "13");
        double middle = TOP + PLOT_HEIGHT / 2;
        svg.text(new Dot(18, middle), up, "text-anchor", "middle", "font-size", "13", "transform",
                "rotate(-90 18 " + Svg.number(middle) + ")");
    }

    private void marks(Svg svg, Paper paper) {
        Labels labels = new Labels(new Dot(LEFT, TOP), new Dot(WIDTH - RIGHT, TOP + PLOT_HEIGHT));
        curves.forEach(curve -> labels.avoid(curve.points.stream().map(paper::at).filter(Dot::isKnown).toList()));
        places.forEach(place -> labels.avoid(List.of(new Dot(paper.x(place.value), TOP),
                new Dot(paper.x(place.value), TOP + PLOT_HEIGHT))));
        for (Mark limit : limits) {
            double y = paper.y(limit.value);
            if (y >= TOP - 0.5 && y <= TOP + PLOT_HEIGHT + 0.5) {
                svg.line(new Dot(LEFT, y), new Dot(WIDTH - RIGHT, y), "stroke", Ink.BLACK, "stroke-width", "1.6",
                        "stroke-dasharray", "12 4");
                labels.alongRow(svg, y, limit.words());
            }
        }
        for (Mark place : places) {
            double x = paper.x(place.value);
            svg.line(new Dot(x, TOP), new Dot(x, TOP + PLOT_HEIGHT), "stroke", Ink.DARK_GREY, "stroke-width", "1.2",
                    "stroke-dasharray", "2 3");
            labels.alongColumn(svg, x, place.words());
        }
    }

    private double legend(Svg svg, double top) {
        double x = LEFT;
        double y = top;
        for (Curve curve : curves) {
            if (curve.name.isEmpty()) {
                continue;
            }
            double width = 46 + Svg.width(curve.name, 12) + 18;
            if (x > LEFT && x + width > WIDTH - RIGHT) {
                x = LEFT;
                y += LEGEND_ROW;
            }
            if (!curve.ink.isScattered()) {
                svg.line(new Dot(x, y - 4), new Dot(x + 38, y - 4), curve.ink.stroke());
            }
            curve.ink.mark(svg, new Dot(x + 19, y - 4));
            svg.text(new Dot(x + 46, y), curve.name);
            x += width;
        }
        return y + 8;
    }

    private static List<Dot> thinned(List<Dot> dots) {
        List<Dot> kept = new ArrayList<>();
        Dot last = new Dot(-1000, -1000);
        for (Dot dot : dots) {
            if (dot.isKnown() && Math.hypot(dot.x() - last.x(), dot.y() - last.y()) > 30) {
                kept.add(dot);
                last = dot;
            }
        }
        return kept;
    }

    /** Where values stand on the paper. */
    private record Paper(Ticks across, Ticks up) {
        double width() {
            return WIDTH - LEFT - RIGHT;
        }

        double x(double value) {
            return LEFT + across.share(value) * width();
        }

        double y(double value) {
            return TOP + (1 - up.share(value)) * PLOT_HEIGHT;
        }

        boolean holds(Dot dot) {
            return dot.x() >= LEFT - 0.5 && dot.x() <= LEFT + width() + 0.5 && dot.y() >= TOP - 0.5
                    && dot.y() <= TOP + PLOT_HEIGHT + 0.5;
        }

        Dot at(Dot point) {
            boolean shown = point.isKnown() && (!up.logarithmic() || point.y() > 0);
            return shown ? new Dot(x(point.x()), y(point.y())) : new Dot(Double.NaN, Double.NaN);
        }
    }
}
