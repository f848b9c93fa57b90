// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.edit.Part;
import bermwright.foundation.Point;
import java.util.List;
import java.util.Optional;

/**
 * Something drawn on the map.
 *
 * @param look     how it is drawn and what it means
 * @param part     the part of the plan it belongs to, empty where it is nobody's
 * @param label    short text beside it, may be empty
 * @param corners  its corners; one for a mark
 * @param isClosed whether the last corner joins the first
 * @param box      the box around it
 */
public record MapFigure(FigureLook look, Optional<Part> part, String label, List<Point> corners, boolean isClosed,
        MapCamera.Box box) {
    /** Copies the corners. */
    public MapFigure {
        corners = List.copyOf(corners);
    }

    /**
     * A closed area.
     *
     * @param look    how it is drawn
     * @param part    the part it belongs to
     * @param label   short text beside it, may be empty
     * @param corners its corners
     * @return the figure
     */
    public static MapFigure area(FigureLook look, Part part, String label, List<Point> corners) {
        return new MapFigure(look, Optional.of(part), label, corners, true, around(corners));
    }

    /**
     * An open line.
     *
     * @param look    how it is drawn
     * @param part    the part it belongs to
     * @param label   short text beside it, may be empty
     * @param corners its corners
     * @return the figure
     */
    public static MapFigure line(FigureLook look, Part part, String label, List<Point> corners) {
        return new MapFigure(look, Optional.of(part), label, corners, false, around(corners));
    }

    /**
     * A mark at a place.
     *
     * @param look  how it is drawn
     * @param part  the part it belongs to
     * @param label short text beside it, may be empty
     * @param place the place
     * @return the figure
     */
    public static MapFigure mark(FigureLook look, Part part, String label, Point place) {
        return new MapFigure(look, Optional.of(part), label, List.of(place), false, around(List.of(place)));
    }

    /** The box around places. */
    static MapCamera.Box around(List<Point> corners) {
        double west = Double.POSITIVE_INFINITY;
        double south = Double.POSITIVE_INFINITY;
        double east = Double.NEGATIVE_INFINITY;
        double north = Double.NEGATIVE_INFINITY;
        for (Point p : corners) {
            west = Math.min(west, p.east());
            east = Math.max(east, p.east());
            south = Math.min(south, p.north());
            north = Math.max(north, p.north());
        }
        return new MapCamera.Box(west, south, east, north);
    }

    /**
     * How far a place is from this figure.
     *
     * @param place the place
     * @return distance to its nearest edge (m); nothing inside a closed area
     */
    public double distance(Point place) {
        double least = Double.POSITIVE_INFINITY;
        int n = corners.size();
        boolean inside = false;
        for (int i = 0; i < n; i++) {
            Point a = corners.get(i);
            if (i == n - 1 && !isClosed) {
                least = Math.min(least, place.distance(a));
                break;
            }
            Point b = corners.get((i + 1) % n);
            least = Math.min(least, place.distance(a, b));
            if ((a.north() > place.north()) != (b.north() > place.north()) && place.east()
                    < (b.east() - a.east()) * (place.north() - a.north()) / (b.north() - a.north()) + a.east()) {
                inside = !inside;
            }
        }
        return isClosed && inside ? 0 : least;
    }

    /**
     * Whether a place lies inside a closed figure.
     *
     * @param place the place
     * @return true where it does
     */
    public boolean contains(Point place) {
        return isClosed && distance(place) == 0;
    }
}
