// SPDX-License-Identifier: Apache-2.0
package bermwright.report.drawing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The order of work drawn over time: one lying bar a step, arrows from what must come before.
 *
 * @param name  file-safe name of the drawing
 * @param title title for people
 * @param unit  words and unit of the time axis
 * @param steps the steps, from the top
 */
public record TimeBars(String name, String title, String unit, List<Step> steps) {
    private static final double WIDTH = 960;
    private static final double ROW = 34;
    private static final double LABEL = 300;
    private static final double LABEL_SIZE = 11.5;
    private static final double LINE = 13;
    private static final double TOP = 62;
    private static final double RIGHT = 24;

    /** Copies the steps. */
    public TimeBars {
        steps = List.copyOf(steps);
    }

    /**
     * A step of the work.
     *
     * @param id       its id
     * @param name     what is done, in words
     * @param span     when it starts and ends
     * @param critical whether the whole job ends later when this step does
     * @param after    ids of the steps that come before
     */
    public record Step(String id, String name, Span span, boolean critical, List<String> after) {
        /** Copies what comes before. */
        public Step {
            after = List.copyOf(after);
        }
    }

    /**
     * From when to when.
     *
     * @param start  start, in the unit of the drawing, zero or more
     * @param finish end, in the unit of the drawing, not before the start
     */
    public record Span(double start, double finish) {
    }

    /**
     * The time bars as a picture.
     *
     * @return the drawing
     */
    public Drawing drawing() {
        Svg svg = new Svg(name);
        double left = 28 + steps.stream().flatMap(s -> lines(s.name).stream())
                .mapToDouble(l -> Svg.width(l, LABEL_SIZE)).max().orElse(80);
        double bottom = TOP + ROW * Math.max(1, steps.size());
        double end = steps.stream().mapToDouble(s -> s.span.finish).max().orElse(1);
        Ticks ticks = Ticks.linear(0, end > 0 ? end : 1, 10);
        double scale = (WIDTH - RIGHT - left) / ticks.high();
        svg.heading(new Dot(12, 22), title, WIDTH - 12 - 8);
        Patterns.RISING.define(svg, "critical", Ink.RED, "#f7ddc9");
        Patterns.DOTTED.define(svg, "other", Ink.BLUE, "#dcebf5");
        legend(svg);
        for (double mark : ticks.marks()) {
            double x = left + mark * scale;
            svg.line(new Dot(x, TOP), new Dot(x, bottom), "stroke", Ink.GREY, "stroke-width", "0.8");
            svg.text(new Dot(x, bottom + 16), ticks.words(mark), "text-anchor", "middle");
        }
        Map<String, Integer> rows = new HashMap<>();
        for (int i = 0; i < steps.size(); i++) {
            rows.put(steps.get(i).id, i);
        }
        for (int i = 0; i < steps.size(); i++) {
            step(svg, i, left, scale);
        }
        for (int i = 0; i < steps.size(); i++) {
            for (String before : steps.get(i).after) {
                if (rows.containsKey(before)) {
                    arrow(svg, rows.get(before), i, left, scale);
                }
            }
        }
        svg.text(new Dot((left + WIDTH - RIGHT) / 2, bottom + 36), unit, "text-anchor", "middle", "font-size", "13");
        return svg.drawing(title, new Dot(WIDTH, bottom + 48));
    }

    private static void legend(Svg svg) {
        svg.box(new Dot(12, 34), new Dot(26, 14), "fill", svg.reference("critical"), "stroke", Ink.BLACK,
                "stroke-width", "1.8");
        svg.text(new Dot(44, 46), "critical path: the work ends later when this does");
        svg.box(new Dot(350, 34), new Dot(26, 14), "fill", svg.reference("other"), "stroke", Ink.BLACK);
        svg.text(new Dot(382, 46), "has time to spare");
    }

    private void step(Svg svg, int row, double left, double scale) {
        Step step = steps.get(row);
        double y = TOP + row * ROW;
        double x = left + step.span.start * scale;
        svg.line(new Dot(12, y + ROW), new Dot(WIDTH - RIGHT, y + ROW), "stroke", "#eeeeee");
        List<String> lines = lines(step.name);
        for (int i = 0; i < lines.size(); i++) {
            svg.text(new Dot(left - 8, y + ROW / 2 + 4 + LINE * (i - (lines.size() - 1) / 2.0)), lines.get(i),
                    "text-anchor", "end", "font-size", Svg.number(LABEL_SIZE));
        }
        svg.box(new Dot(x, y + 5), new Dot(Math.max(2, (step.span.finish - step.span.start) * scale), ROW - 10),
                "fill", svg.reference(step.critical ? "critical" : "other"), "stroke", Ink.BLACK, "stroke-width",
                step.critical ? "1.8" : "0.8");
    }

    private void arrow(Svg svg, int from, int to, double left, double scale) {
        double x = left + steps.get(from).span.finish * scale;
        double end = left + steps.get(to).span.start * scale;
        double y = TOP + from * ROW + ROW / 2;
        double under = TOP + to * ROW + (to > from ? 5 : ROW - 5);
        svg.curve(List.of(new Dot(x, y), new Dot(Math.max(end, x) + 3, y), new Dot(Math.max(end, x) + 3, under)),
                "fill", "none", "stroke", Ink.DARK_GREY, "stroke-width", "0.9");
        double tip = Math.max(end, x) + 3;
        double back = to > from ? -4 : 4;
        svg.outline(List.of(new Dot(tip, under), new Dot(tip - 3, under + back), new Dot(tip + 3, under + back)),
                "fill", Ink.DARK_GREY);
    }

    /** A name on at most two lines, broken between words. */
    private static List<String> lines(String name) {
        if (Svg.width(name, LABEL_SIZE) <= LABEL) {
            return List.of(name);
        }
        int end = name.lastIndexOf(' ');
        while (end > 0 && Svg.width(name.substring(0, end), LABEL_SIZE) > LABEL) {
            end = name.lastIndexOf(' ', end - 1);
        }
        return end <= 0 ? List.of(Svg.cut(name, LABEL_SIZE, LABEL)) : List.of(name.substring(0, end),
                Svg.cut(name.substring(end + 1), LABEL_SIZE, LABEL));
    }
}
