// SPDX-License-Identifier: Apache-2.0
package bermwright.report.section;

import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.drawing.Labels;
import bermwright.report.drawing.Patterns;
import bermwright.report.drawing.Svg;
import bermwright.report.drawing.Ticks;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/**
 * A section through a hull under its cover, both scales equal: natural soil, placed cover, hull, stations, depths.
 *
 * @param name       file-safe name of the drawing
 * @param title      title for people
 * @param across     words and unit of the way across
 * @param ground     natural ground, from left to right: way (m), height (m)
 * @param cover      surface with the cover on it, over the same ways; empty where there is none
 * @param hulls      outlines of hulls cut: way (m), height (m)
 * @param walls      walls cut
 * @param passages   what passes through the cover or lies on the skin, as seen in this section
 * @param stations   places where people stay, as seen in this section
 * @param dimensions distances to be shown
 */
public record HullSection(String name, String title, String across, List<Dot> ground, List<Dot> cover,
        List<List<Dot>> hulls, List<CutWall> walls, List<Passage> passages, List<Station> stations,
        List<Dimension> dimensions) {
    private static final double WIDTH = 1100;
    private static final double LEFT = 70;
    private static final double RIGHT = 20;
    private static final double TOP = 84;
    private static final double GREATEST_HEIGHT = 520;
    private static final String[] WALL = {"fill", Ink.DARK_GREY, "stroke", Ink.BLACK, "stroke-width", "1.2"};

    /** Copies the lists. */
    public HullSection {
        ground = List.copyOf(ground);
        cover = List.copyOf(cover);
        hulls = hulls.stream().map(List::copyOf).toList();
        walls = List.copyOf(walls);
        passages = List.copyOf(passages);
        stations = List.copyOf(stations);
        dimensions = List.copyOf(dimensions);
    }

    /**
     * A wall where the section cuts it.
     *
     * @param label   its words
     * @param outline its outline: way and height (m)
     */
    public record CutWall(String label, List<Dot> outline) {
        /** Copies the outline. */
        public CutWall {
            outline = List.copyOf(outline);
        }
    }

    /**
     * Something on the skin or through the cover.
     *
     * @param label   its words
     * @param outline its outline: way and height (m)
     * @param isOpen  whether it is open, so that no soil lies in it
     */
    public record Passage(String label, List<Dot> outline, boolean isOpen) {
        /** Copies the outline. */
        public Passage {
            outline = List.copyOf(outline);
        }
    }

    /**
     * A place where people stay.
     *
     * @param label its words
     * @param at    way and height (m)
     */
    public record Station(String label, Dot at) {
    }

    /**
     * A distance.
     *
     * @param from  one end: way and height (m)
     * @param to    the other end: way and height (m)
     * @param label its words with the unit
     */
    public record Dimension(Dot from, Dot to, String label) {
    }

    /**
     * The section as a picture.
     *
     * @return the drawing
     */
    public Drawing drawing() {
        Svg svg = new Svg(name);
        Paper paper = paper();
        svg.heading(new Dot(14, 22), title, WIDTH - 14 - 8);
        String natural = Patterns.DOTTED.define(svg, "natural", "#6b4a1f", "#eadfce");
        String placed = Patterns.FALLING.define(svg, "placed", "#a0783c", "#f6eedd");
        svg.window("frame", new Dot(paper.left, TOP), new Dot(paper.width, paper.height));
        axes(svg, paper);
        svg.openInside("frame");
        if (!cover.isEmpty()) {
            List<Dot> outline = new ArrayList<>(paper.all(cover));
            List<Dot> back = new ArrayList<>(paper.all(ground));
            Collections.reverse(back);
            outline.addAll(back);
            svg.outline(outline, "fill", placed, "stroke", "none");
        }
        List<Dot> soil = new ArrayList<>(paper.all(ground).stream().filter(Dot::isKnown).toList());
        if (!soil.isEmpty()) {
            soil.add(new Dot(soil.get(soil.size() - 1).x(), TOP + paper.height));
            soil.add(new Dot(soil.get(0).x(), TOP + paper.height));
            svg.outline(soil, "fill", natural, "stroke", "none");
        }
        svg.curve(paper.all(cover), "fill", "none", "stroke", "#7a4a00", "stroke-width", "2");
        svg.curve(paper.all(ground), "fill", "none", "stroke", Ink.BLACK, "stroke-width", "1.4", "stroke-dasharray",
                "6 3");
        walls.forEach(wall -> svg.outline(paper.all(wall.outline), WALL));
        hulls.forEach(hull -> svg.outline(paper.all(hull), "fill", "#ffffff", "stroke", Ink.BLACK, "stroke-width",
                "2.6", "stroke-linejoin", "round"));
        for (Passage passage : passages) {
            svg.outline(paper.all(passage.outline), "fill", passage.isOpen ? "#ffffff" : Ink.BLUE, "fill-opacity",
                    passage.isOpen ? "1" : "0.45", "stroke", Ink.BLUE, "stroke-width", "1.6", "stroke-dasharray",
                    passage.isOpen ? "5 3" : "none");
        }
        svg.close();
        words(svg, paper);
        legend(svg, natural, placed);
        return svg.drawing(title, new Dot(WIDTH, TOP + paper.height + 46));
    }

    private void words(Svg svg, Paper paper) {
        Labels labels = new Labels(new Dot(paper.left, TOP), new Dot(paper.left + paper.width, TOP + paper.height));
        for (Dimension dimension : dimensions) {
            Dot from = paper.at(dimension.from);
            Dot to = paper.at(dimension.to);
            arrow(svg, from, to);
            labels.avoid(List.of(from, to));
        }
        walls.forEach(wall -> labels.avoid(paper.at(wall.outline.get(0)), paper.at(wall.outline.get(2))));
        stations.forEach(s -> labels.avoid(new Dot(paper.at(s.at).x() - 6, paper.at(s.at).y() - 6),
                new Dot(paper.at(s.at).x() + 6, paper.at(s.at).y() + 6)));
        for (Dimension dimension : dimensions) {
            Dot from = paper.at(dimension.from);
            Dot to = paper.at(dimension.to);
            say(svg, labels, new Dot((from.x() + to.x()) / 2, (from.y() + to.y()) / 2), dimension.label);
        }
        for (CutWall wall : walls) {
            say(svg, labels, paper.at(wall.outline.get(0)), wall.label);
        }
        for (Passage passage : passages) {
            say(svg, labels, paper.at(passage.outline.get(0)), passage.label);
        }
        for (Station station : stations) {
            Dot at = paper.at(station.at);
            svg.circle(at, 4.5, "fill", Ink.BLUE, "stroke", "#ffffff");
            say(svg, labels, at, station.label);
        }
    }

    private static void say(Svg svg, Labels labels, Dot at, String words) {
        Dot room = labels.near(at, new Dot(Svg.width(words, 12) + 2, 14), 7);
        svg.text(new Dot(room.x(), room.y() + 4), words, "text-anchor", "middle", "stroke", "#ffffff", "stroke-width",
                "3.5", "paint-order", "stroke", "stroke-linejoin", "round");
    }

    private static void arrow(Svg svg, Dot from, Dot to) {
        double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
        if (length < 1) {
            return;
        }
        double x = (to.x() - from.x()) / length;
        double y = (to.y() - from.y()) / length;
        svg.line(from, to, "stroke", Ink.RED, "stroke-width", "1.4");
        for (int side = -1; side <= 1; side += 2) {
            Dot tip = side > 0 ? to : from;
            double back = Math.min(7, length / 2);
            svg.outline(List.of(tip, new Dot(tip.x() - side * back * x - 3 * y, tip.y() - side * back * y + 3 * x),
                    new Dot(tip.x() - side * back * x + 3 * y, tip.y() - side * back * y - 3 * x)), "fill", Ink.RED);
        }
    }

    private void axes(Svg svg, Paper paper) {
        double bottom = TOP + paper.height;
        Ticks ways = Ticks.inside(paper.west, paper.west + paper.width / paper.scale, 12);
        Ticks heights = Ticks.inside(paper.low, paper.low + paper.height / paper.scale, 6);
        for (double mark : ways.marks()) {
            double x = paper.left + (mark - paper.west) * paper.scale;
            svg.line(new Dot(x, TOP), new Dot(x, bottom), "stroke", "#e6e6e6");
            svg.text(new Dot(x, bottom + 16), ways.words(mark), "text-anchor", "middle");
        }
        for (double mark : heights.marks()) {
            double y = bottom - (mark - paper.low) * paper.scale;
            svg.line(new Dot(paper.left, y), new Dot(paper.left + paper.width, y), "stroke", "#e6e6e6");
            svg.text(new Dot(paper.left - 6, y + 4), heights.words(mark), "text-anchor", "end");
        }
        svg.box(new Dot(paper.left, TOP), new Dot(paper.width, paper.height), "fill", "none", "stroke", Ink.DARK_GREY);
        svg.text(new Dot(paper.left + paper.width / 2, bottom + 36), across + "; both scales equal", "text-anchor",
                "middle", "font-size", "13");
        double middle = TOP + paper.height / 2;
        double x = Math.max(14, paper.left - 52);
        svg.text(new Dot(x, middle), "height (m)", "text-anchor", "middle", "font-size", "13", "transform",
                "rotate(-90 " + Svg.number(x) + " " + Svg.number(middle) + ")");
    }

    private void legend(Svg svg, String natural, String placed) {
        double y = 42;
        svg.box(new Dot(14, y), new Dot(30, 15), "fill", natural, "stroke", Ink.DARK_GREY);
        svg.text(new Dot(50, y + 12), "natural ground");
        svg.box(new Dot(160, y), new Dot(30, 15), "fill", placed, "stroke", "#7a4a00", "stroke-width", "1.6");
        svg.text(new Dot(196, y + 12), cover.isEmpty() ? "placed cover: none" : "placed cover");
        svg.box(new Dot(310, y), new Dot(30, 15), "fill", "#ffffff", "stroke", Ink.BLACK, "stroke-width", "2.6");
        svg.text(new Dot(346, y + 12), "hull");
        svg.line(new Dot(400, y + 8), new Dot(434, y + 8), "stroke", Ink.BLACK, "stroke-width", "1.4",
                "stroke-dasharray", "6 3");
        svg.text(new Dot(440, y + 12), "natural surface");
        svg.circle(new Dot(566, y + 8), 4.5, "fill", Ink.BLUE);
        svg.text(new Dot(576, y + 12), "crew station");
        arrow(svg, new Dot(672, y + 8), new Dot(704, y + 8));
        svg.text(new Dot(712, y + 12), "depth or distance");
        if (!passages.isEmpty()) {
            svg.box(new Dot(840, y), new Dot(30, 15), "fill", Ink.BLUE, "fill-opacity", "0.45", "stroke", Ink.BLUE);
            svg.text(new Dot(876, y + 12), "passes through (dashed: open)");
        }
        if (!walls.isEmpty()) {
            svg.box(new Dot(14, y + 20), new Dot(30, 15), WALL);
            svg.text(new Dot(50, y + 32), "wall");
        }
    }

    private Paper paper() {
        List<Dot> all = Stream.of(List.of(ground), List.of(cover), hulls,
                walls.stream().map(CutWall::outline).toList()).flatMap(List::stream).flatMap(List::stream)
                .filter(Dot::isKnown).toList();
        double west = all.stream().mapToDouble(Dot::x).min().orElse(0);
        double east = all.stream().mapToDouble(Dot::x).max().orElse(1);
        double low = all.stream().mapToDouble(Dot::y).min().orElse(0);
        double high = all.stream().mapToDouble(Dot::y).max().orElse(1);
        double span = Math.max(1, high - low);
        double base = low - 0.12 * span;
        double tall = 1.27 * span;
        double wide = Math.max(1, east - west);
        double scale = Math.min((WIDTH - LEFT - RIGHT) / wide, GREATEST_HEIGHT / tall);
        double left = LEFT + (WIDTH - LEFT - RIGHT - wide * scale) / 2;
        return new Paper(west, base, scale, left, new Dot(wide * scale, tall * scale));
    }

    /** Where ways and heights stand on the paper. */
    private static final class Paper {
        private final double west;
        private final double low;
        private final double scale;
        private final double left;
        private final double width;
        private final double height;

        Paper(double west, double low, double scale, double left, Dot size) {
            this.west = west;
            this.low = low;
            this.scale = scale;
            this.left = left;
            this.width = size.x();
            this.height = size.y();
        }

        Dot at(Dot point) {
            return point.isKnown() ? new Dot(left + (point.x() - west) * scale,
                    TOP + height - (point.y() - low) * scale) : point;
        }

        List<Dot> all(List<Dot> points) {
            return points.stream().map(this::at).toList();
        }
    }
}
