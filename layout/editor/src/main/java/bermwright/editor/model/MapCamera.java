// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.foundation.Point;
import bermwright.foundation.Require;

/**
 * What part of the site a map picture shows; grid north is up.
 *
 * <p>Screen places are in pixels from the upper left corner, x to the right and y down.
 *
 * @param centre         the place in the middle of the picture
 * @param metresPerPixel projected metres in one pixel (m), 1e-4 to 1e6
 * @param width          width of the picture (pixels), 1 or more
 * @param height         height of the picture (pixels), 1 or more
 */
public record MapCamera(Point centre, double metresPerPixel, double width, double height) {
    private static final double CLOSEST = 1e-4;
    private static final double FARTHEST = 1e6;

    /** Refuses pictures of no size and keeps the scale inside its range. */
    public MapCamera {
        Require.atLeast("width of the map", width, 1, "pixels");
        Require.atLeast("height of the map", height, 1, "pixels");
        Require.positive("metres in a pixel", metresPerPixel, "m");
        metresPerPixel = Math.max(CLOSEST, Math.min(FARTHEST, metresPerPixel));
    }

    /**
     * The x of a place on the screen.
     *
     * @param east east (m)
     * @return x (pixels)
     */
    public double x(double east) {
        return (east - centre.east()) / metresPerPixel + width / 2;
    }

    /**
     * The y of a place on the screen.
     *
     * @param north north (m)
     * @return y (pixels), down
     */
    public double y(double north) {
        return (centre.north() - north) / metresPerPixel + height / 2;
    }

    /**
     * The place under a pixel.
     *
     * @param x x (pixels)
     * @param y y (pixels), down
     * @return the place
     */
    public Point place(double x, double y) {
        return new Point(centre.east() + (x - width / 2) * metresPerPixel,
                centre.north() - (y - height / 2) * metresPerPixel);
    }

    /**
     * The map dragged by the pointer.
     *
     * @param dx how far the pointer went right (pixels)
     * @param dy how far the pointer went down (pixels)
     * @return the moved camera
     */
    public MapCamera panned(double dx, double dy) {
        return at(new Point(centre.east() - dx * metresPerPixel, centre.north() + dy * metresPerPixel));
    }

    /**
     * The map drawn larger or smaller about a pixel that keeps its place.
     *
     * @param factor how many times larger (1), above 0
     * @param x      x of the pixel (pixels)
     * @param y      y of the pixel (pixels), down
     * @return the changed camera
     */
    public MapCamera zoomed(double factor, double x, double y) {
        Point kept = place(x, y);
        MapCamera scaled = new MapCamera(centre, metresPerPixel / factor, width, height);
        Point moved = scaled.place(x, y);
        return scaled.at(new Point(centre.east() + kept.east() - moved.east(),
                centre.north() + kept.north() - moved.north()));
    }

    /**
     * The same scale elsewhere.
     *
     * @param place the place in the middle
     * @return the moved camera
     */
    public MapCamera at(Point place) {
        return new MapCamera(place, metresPerPixel, width, height);
    }

    /**
     * The same middle and scale in a picture of another size.
     *
     * @param w width (pixels)
     * @param h height (pixels)
     * @return the changed camera
     */
    public MapCamera sized(double w, double h) {
        return new MapCamera(centre, metresPerPixel, Math.max(1, w), Math.max(1, h));
    }

    /**
     * A camera that shows a box whole, with a rim around it.
     *
     * @param box   the box
     * @param share share of the picture the box may fill (1), above 0, at most 1
     * @return the camera
     */
    public MapCamera fitting(Box box, double share) {
        double wide = Math.max(box.east() - box.west(), 1);
        double high = Math.max(box.north() - box.south(), 1);
        double scale = Math.max(wide / width, high / height) / share;
        return new MapCamera(box.centre(), scale, width, height);
    }

    /**
     * The box of ground in the picture.
     *
     * @return the box
     */
    public Box box() {
        double halfWidth = width / 2 * metresPerPixel;
        double halfHeight = height / 2 * metresPerPixel;
        return new Box(centre.east() - halfWidth, centre.north() - halfHeight, centre.east() + halfWidth,
                centre.north() + halfHeight);
    }

    /**
     * A camera on the way from this one to another.
     *
     * @param goal  where it goes
     * @param share share of the way (1), 0 to 1
     * @return the camera there; the scale changes by even factors
     */
    public MapCamera onTheWay(MapCamera goal, double share) {
        double eased = share * share * (3 - 2 * share);
        return new MapCamera(new Point(centre.east() + eased * (goal.centre.east() - centre.east()),
                centre.north() + eased * (goal.centre.north() - centre.north())),
                metresPerPixel * Math.pow(goal.metresPerPixel / metresPerPixel, eased), width, height);
    }

    /**
     * A box of ground along east and north.
     *
     * @param west  west edge (m)
     * @param south south edge (m)
     * @param east  east edge (m), not west of {@code west}
     * @param north north edge (m), not south of {@code south}
     */
    public record Box(double west, double south, double east, double north) {
        /**
         * The middle.
         *
         * @return the middle
         */
        public Point centre() {
            return new Point((west + east) / 2, (south + north) / 2);
        }

        /**
         * Whether two boxes touch or overlap.
         *
         * @param other the other box
         * @return true where they do
         */
        public boolean meets(Box other) {
            return west <= other.east && other.west <= east && south <= other.north && other.south <= north;
        }

        /**
         * Whether another box lies in this one.
         *
         * @param other the other box
         * @return true where it does
         */
        public boolean contains(Box other) {
            return west <= other.west && other.east <= east && south <= other.south && other.north <= north;
        }

        /**
         * This box with a rim.
         *
         * @param rim width of the rim (m)
         * @return the larger box
         */
        public Box grown(double rim) {
            return new Box(west - rim, south - rim, east + rim, north + rim);
        }

        /**
         * The smallest box around both.
         *
         * @param other the other box
         * @return the box
         */
        public Box with(Box other) {
            return new Box(Math.min(west, other.west), Math.min(south, other.south), Math.max(east, other.east),
                    Math.max(north, other.north));
        }
    }
}
