// SPDX-License-Identifier: Apache-2.0
package bermwright.report.map;

import bermwright.foundation.Point;
import bermwright.foundation.Require;
import bermwright.report.drawing.Dot;
import java.util.Collection;

/**
 * The part of the site a sheet shows, north up.
 *
 * @param southwest its south-west corner
 * @param northeast its north-east corner, east and north of the other
 */
public record MapWindow(Point southwest, Point northeast) {
    /** Refuses windows without area. */
    public MapWindow {
        Require.positive("width of a map", northeast.east() - southwest.east(), "m");
        Require.positive("height of a map", northeast.north() - southwest.north(), "m");
    }

    /**
     * The window around places.
     *
     * @param places one place or more
     * @param margin kept around them (m, projected), above zero
     * @return the window
     */
    public static MapWindow around(Collection<Point> places, double margin) {
        Require.positive("margin of a map", margin, "m");
        Require.that(!places.isEmpty(), "no place to draw a map around.");
        double west = places.stream().mapToDouble(Point::east).min().orElseThrow() - margin;
        double east = places.stream().mapToDouble(Point::east).max().orElseThrow() + margin;
        double south = places.stream().mapToDouble(Point::north).min().orElseThrow() - margin;
        double north = places.stream().mapToDouble(Point::north).max().orElseThrow() + margin;
        return new MapWindow(new Point(west, south), new Point(east, north));
    }

    /**
     * Whether a place lies in the window.
     *
     * @param place the place
     * @return true where it does
     */
    public boolean contains(Point place) {
        return place.east() >= southwest.east() && place.east() <= northeast.east()
                && place.north() >= southwest.north() && place.north() <= northeast.north();
    }

    /**
     * The width.
     *
     * @return east to west (m, projected)
     */
    public double width() {
        return northeast.east() - southwest.east();
    }

    /**
     * The height.
     *
     * @return north to south (m, projected)
     */
    public double height() {
        return northeast.north() - southwest.north();
    }

    /**
     * This window made no flatter and no taller than a shape allows, by showing more around it.
     *
     * @param leastShape    least width over height (1), above zero
     * @param greatestShape greatest width over height (1), at least {@code leastShape}
     * @return the grown window
     */
    public MapWindow shaped(double leastShape, double greatestShape) {
        double moreWide = Math.max(0, height() * leastShape - width()) / 2;
        double moreHigh = Math.max(0, width() / greatestShape - height()) / 2;
        return new MapWindow(new Point(southwest.east() - moreWide, southwest.north() - moreHigh),
                new Point(northeast.east() + moreWide, northeast.north() + moreHigh));
    }

    /**
     * Where a place stands on paper.
     *
     * @param place  the place
     * @param corner upper left corner of the map (px)
     * @param scale  paper for a projected metre (px/m)
     * @return the place on paper (px)
     */
    Dot paper(Point place, Dot corner, double scale) {
        return new Dot(corner.x() + (place.east() - southwest.east()) * scale,
                corner.y() + (northeast.north() - place.north()) * scale);
    }
}
