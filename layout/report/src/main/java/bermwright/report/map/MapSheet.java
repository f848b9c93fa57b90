// SPDX-License-Identifier: Apache-2.0
package bermwright.report.map;

import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.drawing.Labels;
import bermwright.report.drawing.Patterns;
import bermwright.report.drawing.Svg;
import bermwright.report.drawing.Ticks;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The plan drawing: shaded ground with contours, what stands, lies and moves on it, findings by number, scale bar, grid
 * north and true north, legend.
 *
 * @param name          file-safe name of the drawing
 * @param title         title for people
 * @param window        the part of the site shown
 * @param ground        the ground
 * @param trueNorth     azimuth of true north, clockwise from grid north; empty where it is not known
 * @param items         what is drawn, in any order
 * @param findings      findings; those with a place in the window carry their number on the drawing
 */
public record MapSheet(String name, String title, MapWindow window, ElevationGrid ground, Optional<Azimuth> trueNorth,
        List<MapItem> items, List<Numbered> findings) {
    private static final double WIDTH = 1200;
    private static final double PANEL = 236;
    private static final double LEFT = 58;
    private static final double TOP = 40;
    private static final double BOTTOM = 42;
    private static final double MAP_WIDTH = WIDTH - PANEL - LEFT - 12;
    private static final int PICTURE_COLUMNS = 600;
    /** Half a symbol (px). */
    private static final double SYMBOL = 6;
    /** Words further from their thing than this are joined to it by a line (px). */
    private static final double FAR_OFF = 16;

    /** Copies the lists; the window is shown no flatter than 2 to 1 and no taller than 1 to 1.1. */
    public MapSheet {
        window = window.shaped(0.9, 2.0);
        items = items.stream().sorted(Comparator.comparing(MapItem::style)).map(MapItem::shortened).toList();
        findings = List.copyOf(findings);
    }

    /**
     * The sheet as a picture.
     *
     * @return the drawing
     */
    public Drawing drawing() {
        Svg svg = new Svg(name);
        double bottom = TOP + window.height() * scale();
        Dot corner = new Dot(LEFT, TOP);
        Dot size = new Dot(MAP_WIDTH, bottom - TOP);
        svg.heading(new Dot(LEFT, 22), title, WIDTH - LEFT - 8);
        svg.window("map", corner, size);
        String blank = Patterns.RISING.define(svg, "no-ground", "#bbbbbb", "#ffffff");
        svg.box(corner, size, "fill", blank);
        Relief relief = Relief.of(ground, window);
        svg.image(corner, size, relief.picture(PICTURE_COLUMNS), "preserveAspectRatio", "none");
        Labels labels = new Labels(corner, new Dot(LEFT + MAP_WIDTH, bottom));
        svg.openInside("map");
        grid(svg, bottom);
        relief.contours(svg, this::paper, labels);
        items(svg);
        svg.close();
        MapFurniture furniture = new MapFurniture(svg, ground.metreScale(), scale());
        furniture.scaleBar(new Dot(LEFT + 12, bottom - 14), labels);
        furniture.norths(new Dot(LEFT + MAP_WIDTH - 58, TOP + 78), trueNorth, labels);
        List<MapItem> named = items.stream().filter(i -> !i.label().isEmpty() && window.contains(place(i))).toList();
        List<Numbered> numbered = findings.stream()
                .filter(n -> n.finding().place().filter(window::contains).isPresent()).toList();
        symbols(labels, numbered);
        List<Dot> words = named.stream().map(item -> beside(svg, labels, item)).toList();
        List<Dot> numbers = numbered.stream().map(finding -> beside(svg, labels, finding)).toList();
        words(svg, named, words);
        numbers(svg, numbered, numbers);
        svg.box(corner, size, "fill", "none", "stroke", Ink.BLACK, "stroke-width", "1.2");
        double legendEnd = furniture.legend(new Dot(LEFT + MAP_WIDTH + 18, TOP + 8),
                items.stream().map(MapItem::style).distinct().toList(), levels(), legendNotes(relief));
        return svg.drawing(title, new Dot(WIDTH, Math.max(bottom + BOTTOM, legendEnd + 12)));
    }

    private double scale() {
        return MAP_WIDTH / window.width();
    }

    private Dot paper(Point place) {
        return window.paper(place, new Dot(LEFT, TOP), scale());
    }

    private static List<String> legendNotes(Relief relief) {
        List<String> notes = new ArrayList<>();
        if (relief.interval() > 0) {
            notes.add("contours every " + Drawing.figure(relief.interval(), 3) + " m");
        }
        notes.add("light from the north-west");
        notes.add("hatched grey: ground not known");
        return notes;
    }

    private void grid(Svg svg, double bottom) {
        Ticks across = Ticks.inside(window.southwest().east(), window.northeast().east(), 8);
        Ticks up = Ticks.inside(window.southwest().north(), window.northeast().north(), 6);
        svg.close();
        for (double east : across.marks()) {
            double x = paper(new Point(east, window.southwest().north())).x();
            svg.line(new Dot(x, TOP), new Dot(x, bottom), "stroke", "#ffffff", "stroke-width", "0.6", "stroke-opacity",
                    "0.7");
            svg.text(new Dot(x, bottom + 15), across.words(east), "text-anchor", "middle", "font-size", "11");
        }
        for (double north : up.marks()) {
            double y = paper(new Point(window.southwest().east(), north)).y();
            svg.line(new Dot(LEFT, y), new Dot(LEFT + MAP_WIDTH, y), "stroke", "#ffffff", "stroke-width", "0.6",
                    "stroke-opacity", "0.7");
            svg.text(new Dot(LEFT - 5, y + 4), up.words(north), "text-anchor", "end", "font-size", "11");
        }
        svg.text(new Dot(LEFT + MAP_WIDTH / 2, bottom + 33), "east (m, projected)", "text-anchor", "middle");
        double middle = (TOP + bottom) / 2;
        svg.text(new Dot(12, middle), "north (m, projected)", "text-anchor", "middle", "transform",
                "rotate(-90 12 " + Svg.number(middle) + ")");
        svg.openInside("map");
    }

    private void items(Svg svg) {
        items.stream().map(MapItem::style).distinct().forEach(style -> style.define(svg));
        for (MapItem item : items) {
            List<Dot> dots = item.places().stream().map(this::paper).toList();
            if (item instanceof MapItem.Area area) {
                svg.outline(dots, item.style().attributes(svg, true));
                if (item.style().isMark()) {
                    item.style().mark(svg, paper(area.ring().centre()));
                }
            } else if (item instanceof MapItem.Line) {
                svg.curve(dots, item.style().attributes(svg, false));
            } else if (item instanceof MapItem.Spot) {
                item.style().mark(svg, dots.get(0));
            } else {
                throw new AssertionError("no drawing for " + item);
            }
        }
    }

    /** Levels of the findings that are drawn, the worst first. */
    private List<Finding.Level> levels() {
        return findings.stream().filter(n -> n.finding().place().filter(window::contains).isPresent())
                .map(n -> n.finding().level()).distinct().sorted().toList();
    }

    /** Room for a finding's number, joined to its place by a line. */
    private Dot beside(Svg svg, Labels labels, Numbered numbered) {
        Dot at = paper(numbered.finding().place().orElseThrow());
        Dot room = labels.near(at, new Dot(27, 27), 6);
        svg.line(at, room, "stroke", Ink.BLACK, "stroke-width", "1");
        svg.circle(at, 2, "fill", Ink.BLACK);
        return room;
    }

    private static void numbers(Svg svg, List<Numbered> numbered, List<Dot> rooms) {
        for (int i = 0; i < numbered.size(); i++) {
            Finding finding = numbered.get(i).finding();
            svg.openTitled(finding.rule().id() + ": " + finding.text());
            FindingMark.draw(svg, rooms.get(i), finding.level(), numbered.get(i).number());
            svg.close();
        }
    }

    /** Symbols and the places findings tell of stay seen: neither numbers nor words may cover them. */
    private void symbols(Labels labels, List<Numbered> numbered) {
        items.stream().filter(i -> i.style().isMark() && window.contains(place(i)))
                .forEach(i -> keep(labels, paper(place(i)), SYMBOL));
        numbered.forEach(n -> keep(labels, paper(n.finding().place().orElseThrow()), SYMBOL / 2));
    }

    private static void keep(Labels labels, Dot at, double half) {
        labels.avoid(new Dot(at.x() - half, at.y() - half), new Dot(at.x() + half, at.y() + half));
    }

    private static Point place(MapItem item) {
        return item instanceof MapItem.Area area ? area.ring().centre() : item.places().get(item.places().size() / 2);
    }

    /** Room for the words of a thing, joined to it by a thin line where it is further off. */
    private Dot beside(Svg svg, Labels labels, MapItem item) {
        Dot at = paper(place(item));
        Dot size = new Dot(Svg.width(item.label(), 12) + 4, 15);
        Dot room = labels.near(at, size, SYMBOL + 1);
        Dot end = new Dot(nearest(at.x(), room.x(), size.x() / 2), nearest(at.y(), room.y(), size.y() / 2));
        if (Math.hypot(end.x() - at.x(), end.y() - at.y()) > FAR_OFF) {
            svg.line(at, end, "stroke", Ink.DARK_GREY, "stroke-width", "0.9");
        }
        return room;
    }

    private static void words(Svg svg, List<MapItem> named, List<Dot> rooms) {
        for (int i = 0; i < named.size(); i++) {
            svg.text(new Dot(rooms.get(i).x(), rooms.get(i).y() + 4), named.get(i).label(), "text-anchor", "middle",
                    "stroke", "#ffffff", "stroke-width", "3", "paint-order", "stroke", "stroke-linejoin", "round");
        }
    }

    /** The value nearest to another within a half of a middle. */
    private static double nearest(double to, double middle, double half) {
        return Math.max(middle - half, Math.min(middle + half, to));
    }
}
