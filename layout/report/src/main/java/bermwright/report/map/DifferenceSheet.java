// SPDX-License-Identifier: Apache-2.0
package bermwright.report.map;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Require;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.drawing.Labels;
import bermwright.report.drawing.Patterns;
import bermwright.report.drawing.Svg;
import bermwright.report.drawing.Ticks;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Where surveyed ground stands lower and where higher than the plan has it: bands of one sign each, every band with a
 * hatching of its own and with figures, so that it reads in black and white.
 *
 * @param name      file-safe name of the drawing
 * @param title     title for people
 * @param window    the part of the site shown
 * @param apart     surveyed less planned height (m); {@code NaN} where it was not surveyed
 * @param level     how far off counts as built to plan (m), above zero
 * @param trueNorth azimuth of true north, clockwise from grid north; empty where it is not known
 * @param items     outlines drawn over it: hulls and toes of covers
 */
public record DifferenceSheet(String name, String title, MapWindow window, ElevationGrid apart, double level,
        Optional<Azimuth> trueNorth, List<MapItem> items) {
    private static final double WIDTH = 1200;
    private static final double PANEL = 236;
    private static final double LEFT = 58;
    private static final double TOP = 40;
    private static final double BOTTOM = 42;
    private static final double MAP_WIDTH = WIDTH - PANEL - LEFT - 12;
    /** Bands end at these multiples of what counts as built to plan. */
    private static final double[] STEPS = {1, 2.5, 5};
    private static final int WITHIN = STEPS.length;
    private static final String[] COLOURS = {"#b24a00", "#d98032", "#f2c79a", "#ffffff", "#b8d8ee", "#5aa0d0",
        "#1f6398"};
    private static final Patterns[] HATCHINGS = {Patterns.CROSSED, Patterns.FALLING, Patterns.LEVEL, null,
        Patterns.DOTTED, Patterns.RISING, Patterns.UPRIGHT};
    private static final String UNKNOWN = "#dddddd";
    /** Cells across at most; each shows the greatest difference in it. */
    private static final int MOST_CELLS = 180;
    private static final int FIGURES = 12;

    /** Copies the list; the window is shown so flat that a table has room on the same sheet. */
    public DifferenceSheet {
        Require.positive("difference that counts as built to plan", level, "m");
        window = window.shaped(1.7, 2.2);
        items = List.copyOf(items);
    }

    /** One cell of the picture: its greatest difference, NaN where it was not surveyed. */
    private record Cells(int columns, int rows, double[] values) {
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
        svg.box(corner, size, "fill", UNKNOWN);
        List<String> fills = new ArrayList<>();
        for (int band = 0; band < COLOURS.length; band++) {
            fills.add(HATCHINGS[band] == null ? COLOURS[band]
                    : HATCHINGS[band].define(svg, "band" + band, Ink.BLACK, COLOURS[band]));
        }
        Cells cells = cells();
        svg.openInside("map");
        bands(svg, cells, fills);
        outlines(svg);
        svg.close();
        axes(svg, bottom);
        Labels labels = new Labels(corner, new Dot(LEFT + MAP_WIDTH, bottom));
        MapFurniture furniture = new MapFurniture(svg, apart.metreScale(), scale());
        furniture.scaleBar(new Dot(LEFT + 12, bottom - 14), labels);
        furniture.norths(new Dot(LEFT + MAP_WIDTH - 58, TOP + 78), trueNorth, labels);
        extremes(svg, cells, labels);
        names(svg, labels);
        figures(svg, cells, labels);
        svg.box(corner, size, "fill", "none", "stroke", Ink.BLACK, "stroke-width", "1.2");
        double end = key(svg, fills);
        return svg.drawing(title, new Dot(WIDTH, Math.max(bottom + BOTTOM, end + 12)));
    }

    private double scale() {
        return MAP_WIDTH / window.width();
    }

    private Dot paper(Point place) {
        return window.paper(place, new Dot(LEFT, TOP), scale());
    }

    /** Number of a difference's band: 0 for the lowest; -1 where it is not known. */
    private int band(double value) {
        if (Double.isNaN(value)) {
            return -1;
        }
        int steps = 0;
        while (steps < STEPS.length && Math.abs(value) > STEPS[steps] * level) {
            steps++;
        }
        return WITHIN + (value < 0 ? -steps : steps);
    }

    private Cells cells() {
        GridFrame frame = apart.frame();
        int columns = Math.max(1, Math.min(MOST_CELLS, (int) Math.round(window.width() / frame.spacing())));
        int rows = Math.max(1, (int) Math.round(columns * window.height() / window.width()));
        double[] values = new double[columns * rows];
        java.util.Arrays.fill(values, Double.NaN);
        double[] heights = apart.heights();
        for (int node = 0; node < heights.length; node++) {
            Point place = new Point(frame.east(node % frame.columns()), frame.north(node / frame.columns()));
            if (window.contains(place) && Double.isFinite(heights[node])) {
                int column = Math.min(columns - 1, (int) ((place.east() - window.southwest().east())
                        / window.width() * columns));
                int row = Math.min(rows - 1, (int) ((place.north() - window.southwest().north())
                        / window.height() * rows));
                int at = row * columns + column;
                if (!(Math.abs(values[at]) >= Math.abs(heights[node]))) {
                    values[at] = heights[node];
                }
            }
        }
        return new Cells(columns, rows, values);
    }

    private Dot corner(Cells cells, int column, int row) {
        return new Dot(LEFT + MAP_WIDTH * column / cells.columns,
                TOP + window.height() * scale() * (1 - (double) row / cells.rows));
    }

    private void bands(Svg svg, Cells cells, List<String> fills) {
        for (int row = 0; row < cells.rows; row++) {
            int start = 0;
            for (int column = 1; column <= cells.columns; column++) {
                int band = band(cells.values[row * cells.columns + start]);
                if (column == cells.columns || band(cells.values[row * cells.columns + column]) != band) {
                    if (band >= 0) {
                        Dot from = corner(cells, start, row + 1);
                        Dot to = corner(cells, column, row);
                        svg.box(from, new Dot(to.x() - from.x() + 0.2, to.y() - from.y() + 0.2), "fill",
                                fills.get(band));
                    }
                    start = column;
                }
            }
        }
    }

    private void outlines(Svg svg) {
        for (MapItem item : items) {
            boolean isToe = item.style() == MapStyle.COVER_TOE;
            svg.outline(item.places().stream().map(this::paper).toList(), "fill", "none", "stroke", Ink.BLACK,
                    "stroke-width", isToe ? "1.4" : "2.2", "stroke-dasharray", isToe ? "7 4" : "none");
        }
    }

    private void names(Svg svg, Labels labels) {
        for (MapItem item : items) {
            if (!item.label().isEmpty() && item.style() != MapStyle.COVER_TOE) {
                Dot room = labels.near(paper(((MapItem.Area) item).ring().centre()),
                        new Dot(Svg.width(item.label(), 12) + 4, 15), 2);
                words(svg, new Dot(room.x(), room.y() + 4), item.label(), "12");
            }
        }
    }

    private static void words(Svg svg, Dot at, String words, String size) {
        svg.text(at, words, "text-anchor", "middle", "font-size", size, "font-weight", "bold", "stroke", "#ffffff",
                "stroke-width", "3.5", "paint-order", "stroke", "stroke-linejoin", "round");
    }

    /** The lowest and the highest place, where they are off by more than counts as built to plan. */
    private void extremes(Svg svg, Cells cells, Labels labels) {
        int[] at = {-1, -1};
        for (int i = 0; i < cells.values.length; i++) {
            for (int k = 0; k < 2; k++) {
                double here = (k == 0 ? -1 : 1) * cells.values[i];
                if (here > level && (at[k] < 0 || here > (k == 0 ? -1 : 1) * cells.values[at[k]])) {
                    at[k] = i;
                }
            }
        }
        for (int k = 0; k < 2; k++) {
            if (at[k] >= 0) {
                Dot place = middle(cells, at[k]);
                svg.circle(place, 7, "fill", "none", "stroke", "#ffffff", "stroke-width", "4.5");
                svg.circle(place, 7, "fill", "none", "stroke", Ink.BLACK, "stroke-width", "2.2");
                labels.avoid(new Dot(place.x() - 9, place.y() - 9), new Dot(place.x() + 9, place.y() + 9));
                String said = (k == 0 ? "lowest " : "highest ") + signed(cells.values[at[k]]) + " m";
                Dot room = labels.near(place, new Dot(Svg.width(said, 13) + 8, 17), 12);
                words(svg, new Dot(room.x(), room.y() + 4), said, "13");
            }
        }
    }

    private Dot middle(Cells cells, int at) {
        Dot from = corner(cells, at % cells.columns, at / cells.columns);
        Dot to = corner(cells, at % cells.columns + 1, at / cells.columns + 1);
        return new Dot((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
    }

    /** Differences as figures here and there, where they count. */
    private void figures(Svg svg, Cells cells, Labels labels) {
        int step = Math.max(1, cells.columns / FIGURES);
        for (int row = step / 2; row < cells.rows; row += Math.max(1, step / 2)) {
            for (int column = step / 2; column < cells.columns; column += step) {
                int at = row * cells.columns + column;
                Dot place = middle(cells, at);
                Dot from = new Dot(place.x() - 19, place.y() - 8);
                Dot to = new Dot(place.x() + 19, place.y() + 8);
                if (Math.abs(cells.values[at]) > level && labels.holds(from, to) && labels.isFree(from, to)) {
                    labels.avoid(from, to);
                    words(svg, new Dot(place.x(), place.y() + 4), signed(cells.values[at]), "11");
                }
            }
        }
    }

    private static String signed(double value) {
        return String.format(Locale.ROOT, value < 0 ? "\u2212%.2f" : "+%.2f", Math.abs(value));
    }

    private void axes(Svg svg, double bottom) {
        Ticks across = Ticks.inside(window.southwest().east(), window.northeast().east(), 8);
        Ticks up = Ticks.inside(window.southwest().north(), window.northeast().north(), 6);
        for (double east : across.marks()) {
            double x = paper(new Point(east, window.southwest().north())).x();
            svg.line(new Dot(x, bottom), new Dot(x, bottom + 5), "stroke", Ink.BLACK);
            svg.text(new Dot(x, bottom + 16), across.words(east), "text-anchor", "middle", "font-size", "11");
        }
        for (double north : up.marks()) {
            double y = paper(new Point(window.southwest().east(), north)).y();
            svg.line(new Dot(LEFT - 4, y), new Dot(LEFT, y), "stroke", Ink.BLACK);
            svg.text(new Dot(LEFT - 6, y + 4), up.words(north), "text-anchor", "end", "font-size", "11");
        }
        svg.text(new Dot(LEFT + MAP_WIDTH / 2, bottom + 33), "east (m, projected)", "text-anchor", "middle");
        double middle = (TOP + bottom) / 2;
        svg.text(new Dot(12, middle), "north (m, projected)", "text-anchor", "middle", "transform",
                "rotate(-90 12 " + Svg.number(middle) + ")");
    }

    /** The key; its lower end. */
    private double key(Svg svg, List<String> fills) {
        double x = LEFT + MAP_WIDTH + 18;
        double y = TOP + 14;
        svg.text(new Dot(x, y), "Surveyed against planned", "font-size", "13", "font-weight", "bold");
        for (int band = fills.size() - 1; band >= 0; band--) {
            y += 24;
            box(svg, new Dot(x, y), fills.get(band), said(band));
        }
        y += 24;
        box(svg, new Dot(x, y), UNKNOWN, "not surveyed, or a bare hull");
        for (String[] line : new String[][] {{"2.2", "none", "hull"}, {"1.4", "7 4", "toe of the finished cover"}}) {
            y += 24;
            svg.line(new Dot(x, y), new Dot(x + 34, y), "stroke", Ink.BLACK, "stroke-width", line[0],
                    "stroke-dasharray", line[1]);
            svg.text(new Dot(x + 44, y + 4), line[2]);
        }
        y += 24;
        svg.text(new Dot(x, y + 4), "figures: metres, surveyed less planned", "font-size", "11", "fill",
                Ink.DARK_GREY);
        return y + 4;
    }

    private static void box(Svg svg, Dot at, String fill, String words) {
        svg.box(new Dot(at.x(), at.y() - 8), new Dot(34, 17), "fill", fill, "stroke", Ink.BLACK, "stroke-width",
                "0.7");
        svg.text(new Dot(at.x() + 44, at.y() + 4), words);
    }

    private String said(int band) {
        if (band == WITHIN) {
            return "within " + Drawing.figure(level, 3) + " m of the plan";
        }
        int step = Math.abs(band - WITHIN);
        String from = (band < WITHIN ? "lower by " : "higher by ") + Drawing.figure(STEPS[step - 1] * level, 3);
        return step == STEPS.length ? from + " m and more"
                : from + " to " + Drawing.figure(STEPS[step] * level, 3) + " m";
    }
}
