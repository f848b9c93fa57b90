// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.Point;
import bermwright.terrain.grid.Gradient;

/**
 * A plane to which ground is to be made.
 *
 * @param centre     a place on it
 * @param height     its height there (m)
 * @param gradient   its rise
 * @param metreScale true metres in one projected metre (1), as of the grid
 */
public record GradePlane(Point centre, double height, Gradient gradient, double metreScale) {
    /**
     * A level plane.
     *
     * @param height its height (m)
     * @return the plane
     */
    public static GradePlane level(double height) {
        return new GradePlane(new Point(0, 0), height, new Gradient(0, 0), 1);
    }

    /**
     * The height of the plane.
     *
     * @param east  east (m, projected)
     * @param north north (m, projected)
     * @return the height (m)
     */
    public double height(double east, double north) {
        return height + metreScale
                * (gradient.east() * (east - centre.east()) + gradient.north() * (north - centre.north()));
    }
}
