// SPDX-License-Identifier: Apache-2.0
package bermwright.report.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Lying bars made of parts, with the range each may have and limits across them.
 *
 * @param name   file-safe name of the drawing
 * @param title  title for people
 * @param along  words and unit of the values
 * @param parts  names of the parts, in the order they stand in a bar; at most six
 * @param bars   the bars, from the top
 * @param limits values that are limits
 */
public record Bars(String name, String title, String along, List<String> parts, List<Bar> bars,
        List<Chart.Mark> limits) {
    private static final double WIDTH = 860;
    private static final double RIGHT = 24;
    private static final double ROW = 34;
    private static final String[] LINES = {Ink.BLUE, Ink.RED, Ink.GREEN, Ink.PURPLE, Ink.BLACK, Ink.ORANGE};
    private static final String[] GROUNDS = {"#cfe3f0", "#f7ddc9", "#cfeae2", "#f5e3ec", "#e8e8e8", "#fbeccb"};

    /** Copies the lists. */
    public Bars {
        parts = List.copyOf(parts);
        bars = List.copyOf(bars);
        limits = limits.stream().sorted(Comparator.comparing(Chart.Mark::value)).toList();
    }

    /**
     * A bar.
     *
     * @param name   its words
     * @param values one value for each part, in the unit of the drawing, zero or more; {@code NaN} is left out
     * @param low    lower end of the range; {@code NaN} for no range
     * @param high   upper end of the range; {@code NaN} for no range
     * @param note   small words behind the bar
     */
    public record Bar(String name, List<Double> values, double low, double high, String note) {
        /** Copies the values. */
        public Bar {
            values = List.copyOf(values);
        }

        double total() {
            return values.stream().filter(Double::isFinite).mapToDouble(Double::doubleValue).sum();
        }
    }

    /**
     * The bars as a picture.
     *
     * @return the drawing
     */
    public Drawing drawing() {
        Svg svg = new Svg(name);
        double left = Math.min(260, 24 + bars.stream().mapToDouble(b -> Svg.width(b.name, 12)).max().orElse(60));
        double top = 74 + 16 * limits.size();
        double bottom = top + ROW * Math.max(1, bars.size());
        double greatest = DoubleStream.concat(bars.stream().flatMapToDouble(b -> DoubleStream.of(b.total(),
                Double.isFinite(b.high) ? b.high : 0)), limits.stream().mapToDouble(Chart.Mark::value)).max().orElse(1);
        Ticks ticks = Ticks.linear(0, greatest > 0 ? greatest : 1, 8);
        double scale = (WIDTH - right(greatest) - left) / ticks.high();
        svg.heading(new Dot(12, 22), title, WIDTH - 12 - 8);
        for (int i = 0; i < parts.size(); i++) {
            Patterns.values()[i].define(svg, "part" + i, LINES[i], GROUNDS[i]);
        }
        legend(svg);
        for (double mark : ticks.marks()) {
            double x = left + mark * scale;
            svg.line(new Dot(x, top), new Dot(x, bottom), "stroke", Ink.GREY, "stroke-width", "0.8");
            svg.text(new Dot(x, bottom + 16), ticks.words(mark), "text-anchor", "middle");
        }
        for (int i = 0; i < bars.size(); i++) {
            bar(svg, bars.get(i), new Dot(left, top + i * ROW + 5), scale);
        }
        limits(svg, left, new Dot(top, bottom), scale);
        for (int i = 0; i < bars.size(); i++) {
            note(svg, bars.get(i), new Dot(left, top + i * ROW + 5), scale);
        }
        svg.line(new Dot(left, top), new Dot(left, bottom), "stroke", Ink.BLACK);
        svg.text(new Dot((left + WIDTH - right(greatest)) / 2, bottom + 36), along, "text-anchor", "middle",
                "font-size", "13");
        return svg.drawing(title, new Dot(WIDTH, bottom + 48));
    }

    /** Room to the right for the words behind the longest bars. */
    private double right(double greatest) {
        return Math.max(RIGHT, bars.stream().filter(b -> Math.max(b.total(), Double.isFinite(b.high) ? b.high : 0)
                > 0.6 * greatest).mapToDouble(b -> Math.min(240, Svg.width(b.note, 11) + 18)).max().orElse(0));
    }

    private void legend(Svg svg) {
        double x = 12;
        for (int i = 0; i < parts.size(); i++) {
            svg.box(new Dot(x, 34), new Dot(26, 14), "fill", svg.reference("part" + i), "stroke", Ink.BLACK);
            svg.text(new Dot(x + 32, 46), parts.get(i));
            x += 32 + Svg.width(parts.get(i), 12) + 22;
        }
        if (bars.stream().anyMatch(b -> Double.isFinite(b.low))) {
            svg.line(new Dot(x, 41), new Dot(x + 30, 41), "stroke", Ink.BLACK, "stroke-width", "2");
            svg.line(new Dot(x, 36), new Dot(x, 46), "stroke", Ink.BLACK, "stroke-width", "2");
            svg.line(new Dot(x + 30, 36), new Dot(x + 30, 46), "stroke", Ink.BLACK, "stroke-width", "2");
            svg.text(new Dot(x + 36, 46), "low to high");
        }
    }

    private void bar(Svg svg, Bar bar, Dot at, double scale) {
        double height = ROW - 12;
        double x = at.x();
        svg.text(new Dot(at.x() - 8, at.y() + height / 2 + 4), shortened(bar.name), "text-anchor", "end");
        for (int i = 0; i < parts.size() && i < bar.values.size(); i++) {
            double value = bar.values.get(i);
            if (Double.isFinite(value) && value > 0) {
                svg.box(new Dot(x, at.y()), new Dot(value * scale, height), "fill", svg.reference("part" + i),
                        "stroke", Ink.BLACK, "stroke-width", "0.8");
                x += value * scale;
            }
        }
        double middle = at.y() + height / 2;
        if (Double.isFinite(bar.low) && Double.isFinite(bar.high)) {
            double low = at.x() + bar.low * scale;
            double high = at.x() + bar.high * scale;
            svg.line(new Dot(low, middle), new Dot(high, middle), "stroke", "#ffffff", "stroke-width", "4");
            svg.line(new Dot(low, middle), new Dot(high, middle), "stroke", Ink.BLACK, "stroke-width", "2");
            svg.line(new Dot(low, middle - 5), new Dot(low, middle + 5), "stroke", Ink.BLACK, "stroke-width", "2");
            svg.line(new Dot(high, middle - 5), new Dot(high, middle + 5), "stroke", Ink.BLACK, "stroke-width", "2");
        }
    }

    private void note(Svg svg, Bar bar, Dot at, double scale) {
        double middle = at.y() + (ROW - 12) / 2;
        double x = at.x() + Math.max(bar.total(), Double.isFinite(bar.high) ? bar.high : 0) * scale;
        boolean room = x + 10 + Svg.width(bar.note, 11) < WIDTH - 4;
        svg.text(new Dot(room ? x + 8 : WIDTH - 6, room ? middle + 4 : middle - (ROW - 12) / 2 - 1), bar.note,
                "font-size", "11", "text-anchor", room ? "start" : "end", "stroke", "#ffffff", "stroke-width", "3",
                "paint-order", "stroke");
    }

    /** The smallest limit stands lowest and words stand left of their line, so that no line runs through words. */
    private void limits(Svg svg, double left, Dot topAndBottom, double scale) {
        for (int i = 0; i < limits.size(); i++) {
            Chart.Mark limit = limits.get(i);
            double x = left + limit.value() * scale;
            double y = topAndBottom.x() - 6 - 16 * i;
            svg.line(new Dot(x, y - 10), new Dot(x, topAndBottom.y()), "stroke", Ink.BLACK, "stroke-width", "1.8",
                    "stroke-dasharray", i % 2 == 0 ? "9 4" : "3 3");
            boolean before = x - Svg.width(limit.words(), 12) > 10;
            svg.text(new Dot(before ? x - 6 : x + 6, y), limit.words(), "text-anchor", before ? "end" : "start",
                    "stroke", "#ffffff", "stroke-width", "3", "paint-order", "stroke");
        }
    }

    private static String shortened(String words) {
        return words.length() > 38 ? words.substring(0, 37) + "…" : words;
    }
}
