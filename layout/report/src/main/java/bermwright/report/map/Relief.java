// SPDX-License-Identifier: Apache-2.0
package bermwright.report.map;

import bermwright.foundation.Point;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Labels;
import bermwright.report.drawing.Picture;
import bermwright.report.drawing.Svg;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.relief.ContourLine;
import bermwright.terrain.relief.Contours;
import bermwright.terrain.relief.Hillshade;
import bermwright.terrain.relief.Light;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The ground in a window as light shading under contour lines.
 *
 * @param window   the window
 * @param ground   the part of the ground in it; empty where the window lies off the ground
 * @param shades   shades of its nodes, as unsigned bytes
 * @param interval height between two contour lines (m); 0 for none
 */
record Relief(MapWindow window, Optional<ElevationGrid> ground, byte[] shades, double interval) {
    private static final int WANTED_LINES = 12;
    private static final int HEAVY = 5;
    private static final int LEAST_LENGTH = 14;
    /** Shading stays in the light half, so that lines and words on it can be read in print. */
    private static final double DARKEST = 0.56;
    /** Steps of the shading, finer than the eye tells apart; more only makes files larger. */
    private static final int SHADES = 40;
    /** A line may be off by so much of a dot. */
    private static final double UNSEEN = 0.25;

    static Relief of(ElevationGrid all, MapWindow window) {
        GridFrame frame = all.frame();
        boolean apart = window.southwest().east() >= frame.eastEdge() || window.northeast().east() <= frame.west()
                || window.southwest().north() >= frame.northEdge() || window.northeast().north() <= frame.south();
        if (apart) {
            return new Relief(window, Optional.empty(), new byte[0], 0);
        }
        ElevationGrid part = all.window(window.southwest(), window.northeast());
        double rise = part.highest() - part.lowest();
        double interval = rise > 0 ? interval(rise / WANTED_LINES) : 0;
        return new Relief(window, Optional.of(part), Hillshade.of(part, Light.OF_MAPS, 1), interval);
    }

    private static double interval(double rough) {
        double decade = Math.pow(10, Math.floor(Math.log10(rough)));
        double share = rough / decade;
        return decade * (share >= 5 ? 5 : share >= 2 ? 2 : 1);
    }

    /** The shading as an embedded picture over the whole window. */
    String picture(int columns) {
        int rows = (int) Math.round(columns * window.height() / window.width());
        return Picture.address(columns, rows, (column, row) -> colour(
                window.southwest().east() + (column + 0.5) * window.width() / columns,
                window.northeast().north() - (row + 0.5) * window.height() / rows));
    }

    private int colour(double east, double north) {
        if (ground.isEmpty()) {
            return Picture.CLEAR;
        }
        GridFrame frame = ground.get().frame();
        double x = (east - frame.west()) / frame.spacing();
        double y = (north - frame.south()) / frame.spacing();
        if (!(x >= 0 && y >= 0 && x <= frame.columns() - 1 && y <= frame.rows() - 1)) {
            return Picture.CLEAR;
        }
        int column = Math.min((int) x, frame.columns() - 2);
        int row = Math.min((int) y, frame.rows() - 2);
        double u = x - column;
        double v = y - row;
        double[] shade = new double[4];
        for (int i = 0; i < shade.length; i++) {
            int at = (row + i / 2) * frame.columns() + column + i % 2;
            if (shades[at] == Hillshade.UNKNOWN) {
                return Picture.CLEAR;
            }
            shade[i] = (shades[at] & 0xFF) / 255.0;
        }
        double light = (1 - v) * ((1 - u) * shade[0] + u * shade[1]) + v * ((1 - u) * shade[2] + u * shade[3]);
        return Picture.grey(DARKEST + (1 - DARKEST) * Math.rint(light * SHADES) / SHADES);
    }

    /** Draws the contour lines; heavy ones carry their height. */
    void contours(Svg svg, Function<Point, Dot> paper, Labels labels) {
        if (ground.isEmpty() || interval <= 0) {
            return;
        }
        List<List<Dot>> heavy = new ArrayList<>();
        List<String> heights = new ArrayList<>();
        for (ContourLine line : Contours.every(ground.get(), interval)) {
            List<Dot> dots = new ArrayList<>(line.points().stream().map(paper).toList());
            if (line.isClosed()) {
                dots.add(dots.get(0));
            }
            boolean isHeavy = Math.abs(Math.IEEEremainder(line.level(), HEAVY * interval)) < 1e-6 * interval;
            svg.curve(Thinning.of(dots, UNSEEN), "fill", "none", "stroke", "#6b4a1f", "stroke-width",
                    isHeavy ? "1.1" : "0.5", "stroke-opacity", isHeavy ? "0.85" : "0.6");
            if (isHeavy) {
                heavy.add(dots);
                heights.add(Drawing.figure(line.level(), 6));
            }
        }
        for (int i = 0; i < heavy.size(); i++) {
            label(svg, heavy.get(i), heights.get(i), labels);
        }
    }

    private static void label(Svg svg, List<Dot> dots, String words, Labels labels) {
        if (dots.size() < LEAST_LENGTH) {
            return;
        }
        double half = Svg.width(words, 10) / 2;
        for (int i = dots.size() / 2; i < dots.size() - 4; i += Math.max(1, dots.size() / 16)) {
            Dot at = dots.get(i);
            Dot corner = new Dot(at.x() - half - 2, at.y() - 8);
            Dot far = new Dot(at.x() + half + 2, at.y() + 8);
            if (labels.holds(corner, far) && labels.isFree(corner, far)) {
                Dot next = dots.get(i + 3);
                double angle = Math.toDegrees(Math.atan2(next.y() - at.y(), next.x() - at.x()));
                angle = angle > 90 ? angle - 180 : angle < -90 ? angle + 180 : angle;
                labels.avoid(corner, far);
                svg.text(new Dot(at.x(), at.y() + 3.5), words, "text-anchor", "middle", "font-size", "10", "fill",
                        "#4f3510", "stroke", "#e6e6e6", "stroke-width", "3", "paint-order", "stroke", "transform",
                        "rotate(" + Svg.number(angle) + " " + Svg.number(at.x()) + " " + Svg.number(at.y()) + ")");
                return;
            }
        }
    }
}
