// SPDX-License-Identifier: Apache-2.0
package bermwright.report.section;

import bermwright.foundation.Require;
import bermwright.report.drawing.Classes;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.drawing.Patterns;
import bermwright.report.drawing.Svg;
import bermwright.report.drawing.Ticks;
import java.util.ArrayList;
import java.util.List;

/**
 * Depth of cover over a hull's skin, unrolled: along the hull to the right, around it upwards, the crown in the middle.
 *
 * @param name   file-safe name of the drawing
 * @param title  title for people
 * @param length length of the skin along the hull (m), above zero
 * @param rows   depth (m) in rows around the hull, the first at the lowest turn (180 degrees to the right), the last at
 *               180 degrees to the left, cells of equal turn; all rows of one length, cells of equal length along;
 *               {@code NaN} where the skin is not covered or the depth is not known
 * @param wanted required depth (m), above zero
 * @param patches what lies on the skin or passes through the cover
 */
public record UnrolledDepth(String name, String title, double length, List<List<Double>> rows, double wanted,
        List<Patch> patches) {
    private static final double WIDTH = 960;
    private static final double LEFT = 96;
    private static final double RIGHT = 20;
    private static final double TOP = 86;
    private static final double HEIGHT = 300;
    /** A depth this little below what is required counts as met (m): grids do not carry more. */
    private static final double KNOWN_TO = 0.01;
    /** A depth under this is not said in figures (m): there the cover runs out. */
    private static final double LEAST_SAID = 0.1;

    /** What is smaller on the paper is drawn this large (pixels). */
    private static final double LEAST_PATCH = 6;

    /** Copies the rows; refuses none and rows of unlike length. */
    public UnrolledDepth {
        Require.positive("length of skin", length, "m");
        Require.positive("required depth", wanted, "m");
        rows = rows.stream().map(List::copyOf).toList();
        patches = List.copyOf(patches);
        Require.that(!rows.isEmpty() && !rows.get(0).isEmpty(), "no depth to draw.");
        for (List<Double> row : rows) {
            Require.that(row.size() == rows.get(0).size(), "rows of %s and %s depths.", row.size(),
                    rows.get(0).size());
        }
    }

    /**
     * Something on the skin or through the cover.
     *
     * @param label   its words
     * @param along   its middle, from the base plane (m)
     * @param turnDeg its middle, turn from the crown, positive to the left (degrees)
     * @param length  length along the hull (m), above zero
     * @param wideDeg width around the hull (degrees), above zero
     */
    public record Patch(String label, double along, double turnDeg, double length, double wideDeg) {
    }

    /**
     * The map as a picture.
     *
     * @return the drawing
     */
    public Drawing drawing() {
        Svg svg = new Svg(name);
        Classes classes = new Classes(List.of(0.5 * wanted, wanted, 1.25 * wanted, 1.75 * wanted, 2.5 * wanted),
                "m");
        svg.heading(new Dot(14, 22), title, WIDTH - 14 - 8);
        String thin = Patterns.CROSSED.define(svg, "thin", Ink.RED, "none");
        String none = Patterns.RISING.define(svg, "none", "#999999", "#ffffff");
        double keyEnd = classes.key(svg, new Dot(14, 32), 800);
        svg.box(new Dot(LEFT, 55), new Dot(26, 14), "fill", thin, "stroke", Ink.BLACK, "stroke-width", "0.7");
        svg.text(new Dot(LEFT + 31, 66), "below what is required", "font-size", "11");
        svg.box(new Dot(LEFT + 170, 55), new Dot(26, 14), "fill", none, "stroke", Ink.BLACK, "stroke-width", "0.7");
        svg.text(new Dot(LEFT + 201, 66), "bare skin", "font-size", "11");
        Require.that(keyEnd < 55, "the key ends at %s px.", keyEnd);
        svg.box(new Dot(LEFT, TOP), new Dot(WIDTH - LEFT - RIGHT, HEIGHT), "fill", none);
        svg.open("shape-rendering", "crispEdges");
        for (int row = 0; row < rows.size(); row++) {
            cells(svg, classes, row, thin);
        }
        svg.close();
        figures(svg, classes);
        patches.forEach(patch -> patch(svg, patch));
        least(svg);
        axes(svg);
        return svg.drawing(title, new Dot(WIDTH, TOP + HEIGHT + 46));
    }

    private int columns() {
        return rows.get(0).size();
    }

    private double x(double column) {
        return LEFT + (WIDTH - LEFT - RIGHT) * column / columns();
    }

    private double y(double row) {
        return TOP + HEIGHT * (1 - row / rows.size());
    }

    private void cells(Svg svg, Classes classes, int row, String thin) {
        List<Double> depths = rows.get(row);
        int start = 0;
        for (int column = 1; column <= columns(); column++) {
            boolean ends = column == columns() || kind(classes, depths.get(column)) != kind(classes, depths.get(start));
            if (ends) {
                int kind = kind(classes, depths.get(start));
                if (kind >= 0) {
                    Dot corner = new Dot(x(start), y(row + 1));
                    Dot size = new Dot(x(column) - x(start) + 0.3, y(row) - y(row + 1) + 0.3);
                    svg.box(corner, size, "fill", classes.hex(kind));
                    if (kind < 2) {
                        svg.box(corner, size, "fill", thin);
                    }
                }
                start = column;
            }
        }
    }

    private static int kind(Classes classes, double depth) {
        return Double.isNaN(depth) ? -1 : classes.of(depth + KNOWN_TO);
    }

    private void figures(Svg svg, Classes classes) {
        int acrossStep = Math.max(1, (int) Math.ceil(columns() / 10.0));
        int upStep = Math.max(1, (int) Math.ceil(rows.size() / 9.0));
        for (int row = upStep / 2; row < rows.size(); row += upStep) {
            for (int column = acrossStep / 2; column < columns() - acrossStep / 4; column += acrossStep) {
                double depth = rows.get(row).get(column);
                if (!Double.isNaN(depth)) {
                    boolean dark = classes.isDark(kind(classes, depth));
                    svg.text(new Dot(x(column + 0.5), y(row + 0.5) + 4), Drawing.figure(depth, depth < 1 ? 2 : 3),
                            "text-anchor", "middle", "font-size", "11", "fill", dark ? "#ffffff" : Ink.BLACK,
                            "stroke", dark ? Ink.BLACK : "#ffffff", "stroke-width", dark ? "0" : "2.5", "paint-order",
                            "stroke");
                }
            }
        }
    }

    private void patch(Svg svg, Patch patch) {
        double perMetre = (WIDTH - LEFT - RIGHT) / length;
        double perDegree = HEIGHT / 360;
        double turn = Math.IEEEremainder(patch.turnDeg, 360);
        double left = Math.max(LEFT, LEFT + (patch.along - patch.length / 2) * perMetre);
        double right = Math.min(WIDTH - RIGHT, LEFT + (patch.along + patch.length / 2) * perMetre);
        double middle = TOP + HEIGHT / 2 - turn * perDegree;
        double half = Math.max(LEAST_PATCH, patch.wideDeg * perDegree) / 2;
        double top = Math.max(TOP, middle - half);
        double bottom = Math.min(TOP + HEIGHT, middle + half);
        Dot corner = new Dot(Math.min(left, right - LEAST_PATCH), top);
        svg.box(corner, new Dot(right - corner.x(), bottom - top), "fill", "none", "stroke", "#ffffff",
                "stroke-width", "4");
        svg.box(corner, new Dot(right - corner.x(), bottom - top), "fill", "none", "stroke", Ink.BLUE,
                "stroke-width", "2", "stroke-dasharray", "5 2");
        svg.text(new Dot((left + right) / 2, top > TOP + 20 ? top - 5 : bottom + 14), patch.label, "text-anchor",
                "middle", "font-size", "11", "fill", Ink.BLUE, "font-weight", "bold", "stroke", "#ffffff",
                "stroke-width", "3", "paint-order", "stroke");
    }

    private void least(Svg svg) {
        int leastRow = -1;
        int leastColumn = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < columns(); column++) {
                if (rows.get(row).get(column) < least) {
                    least = rows.get(row).get(column);
                    leastRow = row;
                    leastColumn = column;
                }
            }
        }
        if (leastRow >= 0) {
            Dot at = new Dot(x(leastColumn + 0.5), y(leastRow + 0.5));
            svg.circle(at, 8, "fill", "none", "stroke", "#ffffff", "stroke-width", "4.5");
            svg.circle(at, 8, "fill", "none", "stroke", Ink.RED, "stroke-width", "2.4");
            boolean right = at.x() < WIDTH - 170;
            svg.text(new Dot(at.x() + (right ? 13 : -13), at.y() - 8), least < LEAST_SAID ? "runs out to bare skin"
                    : "least shown " + Drawing.figure(least, 3) + " m",
                    "text-anchor", right ? "start" : "end", "font-weight", "bold", "stroke", "#ffffff", "stroke-width",
                    "3.5", "paint-order", "stroke");
        }
    }

    private void axes(Svg svg) {
        double bottom = TOP + HEIGHT;
        Ticks along = Ticks.inside(0, length, 10);
        for (double mark : along.marks()) {
            double x = LEFT + along.share(mark) * (WIDTH - LEFT - RIGHT);
            svg.line(new Dot(x, bottom), new Dot(x, bottom + 5), "stroke", Ink.BLACK);
            svg.text(new Dot(x, bottom + 18), along.words(mark), "text-anchor", "middle");
        }
        List<String> turns = new ArrayList<>(List.of("−180 under", "−90 right", "0 crown", "90 left", "180 under"));
        for (int i = 0; i < turns.size(); i++) {
            double y = bottom - HEIGHT * i / 4;
            svg.line(new Dot(LEFT - 5, y), new Dot(LEFT, y), "stroke", Ink.BLACK);
            svg.text(new Dot(LEFT - 8, y + 4), turns.get(i), "text-anchor", "end");
        }
        svg.box(new Dot(LEFT, TOP), new Dot(WIDTH - LEFT - RIGHT, HEIGHT), "fill", "none", "stroke", Ink.BLACK);
        svg.text(new Dot((LEFT + WIDTH - RIGHT) / 2, bottom + 38), "along the hull from its base plane (m)",
                "text-anchor", "middle", "font-size", "13");
        double middle = TOP + HEIGHT / 2;
        svg.text(new Dot(14, middle), "around, from the crown (°)", "text-anchor", "middle", "font-size", "13",
                "transform", "rotate(-90 14 " + Svg.number(middle) + ")");
    }
}
