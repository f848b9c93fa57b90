// SPDX-License-Identifier: Apache-2.0
package bermwright.report.section;

import bermwright.foundation.Azimuth;
import bermwright.report.drawing.Classes;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.drawing.Picture;
import bermwright.report.drawing.Svg;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;

/**
 * The sky as stations see it through skin and soil: areal density by direction on an equal-area hemisphere, the zenith
 * in the middle, grid north up and east to the right as on the plan.
 *
 * @param name    file-safe name of the drawing
 * @param title   title for people
 * @param views   one view a station
 * @param classes classes of areal density
 * @param trueNorth azimuth of true north, clockwise from grid north; empty where it is not known
 */
public record SkyPictures(String name, String title, List<View> views, Classes classes, Optional<Azimuth> trueNorth) {
    private static final double WIDTH = 960;
    private static final double CELL = 236;
    private static final double RADIUS = 92;
    private static final int PICTURE = 220;
    private static final double TOP = 62;

    /** Copies the views. */
    public SkyPictures {
        views = List.copyOf(views);
    }

    /**
     * What a station sees.
     *
     * @param label     the station's words
     * @param density   areal density from azimuth (rad, clockwise from grid north) and elevation (rad, 0 to pi/2), in
     *                  the unit of the classes; {@code NaN} where it is not known
     * @param weakest   direction of the least areal density: azimuth
     * @param elevation direction of the least areal density: elevation (rad)
     * @param least     least areal density, in the unit of the classes
     */
    public record View(String label, DoubleBinaryOperator density, Azimuth weakest, double elevation, double least) {
    }

    /**
     * The views as one picture.
     *
     * @return the drawing
     */
    public Drawing drawing() {
        Svg svg = new Svg(name);
        svg.heading(new Dot(14, 22), title, WIDTH - 14 - 8);
        classes.key(svg, new Dot(14, 34), WIDTH - 28);
        int inRow = (int) ((WIDTH - 8) / CELL);
        for (int i = 0; i < views.size(); i++) {
            view(svg, views.get(i), new Dot(8 + CELL * (i % inRow) + CELL / 2,
                    TOP + 18 + (CELL + 30) * (i / inRow) + CELL / 2));
        }
        int rowCount = (views.size() + inRow - 1) / inRow;
        double end = TOP + 18 + (CELL + 30) * rowCount;
        svg.text(new Dot(14, end + 8), "Equal areas are equal parts of the sky. Rings at 0°, 30° and 60° elevation. "
                + "The cross marks the weakest direction.", "font-size", "11", "fill", Ink.DARK_GREY);
        svg.text(new Dot(14, end + 24), trueNorth.map(n -> "N is grid north, from which azimuths run clockwise; the"
                + " arrow TN points to true north, " + Math.round(n.degrees()) + "° clockwise from it.")
                .orElse("N is grid north, from which azimuths run clockwise; true north is not known."), "font-size",
                "11", "fill", Ink.DARK_GREY);
        return svg.drawing(title, new Dot(WIDTH, end + 34));
    }

    private void view(Svg svg, View view, Dot middle) {
        svg.image(new Dot(middle.x() - RADIUS, middle.y() - RADIUS), new Dot(2 * RADIUS, 2 * RADIUS),
                Picture.address(PICTURE, PICTURE, (column, row) -> colour(view, column, row)));
        for (int elevation = 0; elevation <= 60; elevation += 30) {
            svg.circle(middle, RADIUS * reach(Math.toRadians(elevation)), "fill", "none", "stroke",
                    elevation == 0 ? Ink.BLACK : "#ffffff", "stroke-width", elevation == 0 ? "1.4" : "0.8");
        }
        trueNorth.ifPresent(north -> trueNorth(svg, middle, north));
        String[] letters = {"grid N", "E", "S", "W"};
        for (int i = 0; i < letters.length; i++) {
            double turn = Math.PI / 2 * i;
            svg.text(new Dot(middle.x() + (RADIUS + 10) * Math.sin(turn), middle.y() - (RADIUS + 10) * Math.cos(turn)
                    + 4),
                    letters[i], "text-anchor", "middle", "font-size", "11");
        }
        Dot weak = new Dot(middle.x() + RADIUS * reach(view.elevation) * view.weakest.east(),
                middle.y() - RADIUS * reach(view.elevation) * view.weakest.north());
        for (String[] pen : new String[][] {{"#ffffff", "4.5"}, {Ink.RED, "2.2"}}) {
            svg.line(new Dot(weak.x() - 6, weak.y()), new Dot(weak.x() + 6, weak.y()), "stroke", pen[0],
                    "stroke-width", pen[1]);
            svg.line(new Dot(weak.x(), weak.y() - 6), new Dot(weak.x(), weak.y() + 6), "stroke", pen[0],
                    "stroke-width", pen[1]);
        }
        svg.text(new Dot(middle.x(), middle.y() - RADIUS - 22), view.label, "text-anchor", "middle", "font-weight",
                "bold");
        svg.text(new Dot(middle.x(), middle.y() + RADIUS + 30), "least " + Drawing.figure(view.least, 3) + " "
                + classes.unit(), "text-anchor", "middle", "font-size", "11");
        svg.text(new Dot(middle.x(), middle.y() + RADIUS + 44), "towards azimuth "
                + Math.round(view.weakest.degrees()) + "°, elevation " + Math.round(Math.toDegrees(view.elevation))
                + "°", "text-anchor", "middle", "font-size", "11");
    }

    /** An arrow inside the horizon towards true north, seen on dark and on light. */
    private static void trueNorth(Svg svg, Dot middle, Azimuth north) {
        double x = north.east();
        double y = -north.north();
        Dot tip = new Dot(middle.x() + RADIUS * x, middle.y() + RADIUS * y);
        Dot back = new Dot(middle.x() + (RADIUS - 22) * x, middle.y() + (RADIUS - 22) * y);
        svg.line(back, tip, "stroke", "#ffffff", "stroke-width", "5");
        svg.line(back, tip, "stroke", Ink.BLACK, "stroke-width", "2");
        svg.outline(List.of(tip, new Dot(tip.x() - 9 * x - 4 * y, tip.y() - 9 * y + 4 * x),
                new Dot(tip.x() - 9 * x + 4 * y, tip.y() - 9 * y - 4 * x)), "fill", Ink.BLACK, "stroke", "#ffffff",
                "stroke-width", "0.8");
        svg.text(new Dot(middle.x() + (RADIUS - 32) * x, middle.y() + (RADIUS - 32) * y + 4), "TN", "text-anchor",
                "middle", "font-size", "11", "font-weight", "bold", "stroke", "#ffffff", "stroke-width", "3",
                "paint-order", "stroke");
    }

    private int colour(View view, int column, int row) {
        double x = (column + 0.5) / PICTURE * 2 - 1;
        double y = 1 - (row + 0.5) / PICTURE * 2;
        double r = Math.hypot(x, y);
        if (r >= 1) {
            return Picture.CLEAR;
        }
        double elevation = Math.PI / 2 - 2 * Math.asin(r / Math.sqrt(2));
        double azimuth = Math.floorMod(Math.round(Math.toDegrees(Math.atan2(x, y)) * 1e6), 360_000_000L) / 1e6;
        double density = view.density.applyAsDouble(Math.toRadians(azimuth), elevation);
        return Double.isNaN(density) ? Picture.grey(1) : 0xFF000000 | classes.colour(classes.of(density));
    }

    /** Share of the radius at which an elevation lies, so that equal areas are equal solid angles. */
    private static double reach(double elevation) {
        return Math.sqrt(2) * Math.sin((Math.PI / 2 - elevation) / 2);
    }
}
