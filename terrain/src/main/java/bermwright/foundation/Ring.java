// SPDX-License-Identifier: Apache-2.0
package bermwright.foundation;

import java.util.List;

/**
 * A closed outline in plan; the last corner joins the first and is not repeated.
 *
 * @param corners corners in order, at least three; either way round
 */
public record Ring(List<Point> corners) {
    /** Copies the corners, drops a repeated last corner, and refuses fewer than three. */
    public Ring {
        corners = List.copyOf(corners);
        if (corners.size() > 1 && corners.get(0).equals(corners.get(corners.size() - 1))) {
            corners = List.copyOf(corners.subList(0, corners.size() - 1));
        }
        Require.that(corners.size() >= 3, "a ring has %s corners; at least 3 are needed.", corners.size());
    }

    /**
     * The upright box around a ring.
     *
     * @param west  west end (m)
     * @param south south end (m)
     * @param east  east end (m)
     * @param north north end (m)
     */
    public record Box(double west, double south, double east, double north) {
        /**
         * The box with its sides moved out.
         *
         * @param by how far (m)
         * @return the wider box
         */
        public Box wider(double by) {
            return new Box(west - by, south - by, east + by, north + by);
        }

        /**
         * The south-west corner.
         *
         * @return the corner
         */
        public Point southwest() {
            return new Point(west, south);
        }

        /**
         * The north-east corner.
         *
         * @return the corner
         */
        public Point northeast() {
            return new Point(east, north);
        }
    }

    /**
     * The upright box that just holds this ring.
     *
     * @return the box
     */
    public Box box() {
        Box box = new Box(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY,
                Double.NEGATIVE_INFINITY);
        for (Point p : corners) {
            box = new Box(Math.min(box.west, p.east()), Math.min(box.south, p.north()),
                    Math.max(box.east, p.east()), Math.max(box.north, p.north()));
        }
        return box;
    }

    /**
     * The area with its sign.
     *
     * @return the area (m2), positive where the corners run anticlockwise seen from above
     */
    public double signedArea() {
        Point origin = corners.get(0);
        double twice = 0;
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            twice += (a.east() - origin.east()) * (b.north() - origin.north())
                    - (b.east() - origin.east()) * (a.north() - origin.north());
        }
        return twice / 2;
    }

    /**
     * The area enclosed.
     *
     * @return the area (m2), zero or more
     */
    public double area() {
        return Math.abs(signedArea());
    }

    /**
     * The centre of the enclosed area; the mean of the corners where the area is nothing.
     *
     * @return the centre
     */
    public Point centre() {
        double area = signedArea();
        Point o = corners.get(0);
        double east = 0;
        double north = 0;
        if (Math.abs(area) < 1e-12) {
            for (Point p : corners) {
                east += p.east() / corners.size();
                north += p.north() / corners.size();
            }
            return new Point(east, north);
        }
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            double cross = (a.east() - o.east()) * (b.north() - o.north())
                    - (b.east() - o.east()) * (a.north() - o.north());
            east += (a.east() + b.east() - 2 * o.east()) * cross;
            north += (a.north() + b.north() - 2 * o.north()) * cross;
        }
        return new Point(o.east() + east / (6 * area), o.north() + north / (6 * area));
    }

    /**
     * Whether a place lies inside; a place on the outline may count either way.
     *
     * @param place the place asked about
     * @return true where it lies inside
     */
    public boolean contains(Point place) {
        boolean inside = false;
        for (int i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
            Point a = corners.get(i);
            Point b = corners.get(j);
            if ((a.north() > place.north()) != (b.north() > place.north())
                    && place.east() < (b.east() - a.east()) * (place.north() - a.north())
                    / (b.north() - a.north()) + a.east()) {
                inside = !inside;
            }
        }
        return inside;
    }
}
