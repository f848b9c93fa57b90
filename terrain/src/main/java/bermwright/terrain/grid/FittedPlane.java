// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.grid;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Vec3;

/**
 * The plane that fits the ground under a footprint best, by least squares of the heights.
 *
 * <p>The footprint is sampled evenly from the bilinear ground, so each part counts by its area. A feature smaller
 * than the grid's cell is not in the ground and so not in the plane or its residuals: it is not known, never clear.
 *
 * @param centre     centre of the samples
 * @param height     height of the plane at the centre (m)
 * @param gradient   rise of the plane
 * @param rms        root mean square of the residuals (m), zero or more
 * @param high       the sample farthest above the plane
 * @param low        the sample farthest below the plane
 * @param metreScale true metres in one projected metre (1), as of the grid
 */
public record FittedPlane(Point centre, double height, Gradient gradient, double rms, Spot high, Spot low,
        double metreScale) {
    /**
     * A place where the ground stands off the plane.
     *
     * @param place    where it lies
     * @param residual ground height less plane height (m), positive above the plane
     */
    public record Spot(Point place, double residual) {
    }

    /**
     * The height of the plane.
     *
     * @param place the place
     * @return the height (m)
     */
    public double height(Point place) {
        return height(place.east(), place.north());
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

    /**
     * The steepest slope of the plane.
     *
     * @return angle to the level (rad), 0 up to pi/2
     */
    public double slope() {
        return gradient.slope();
    }

    /**
     * The slope along an azimuth.
     *
     * @param azimuth the direction of travel
     * @return angle to the level (rad), positive where the plane falls along the azimuth
     */
    public double slopeAlong(Azimuth azimuth) {
        return gradient.fallAlong(azimuth);
    }

    /**
     * The slope across an azimuth.
     *
     * @param azimuth the direction of travel
     * @return angle to the level (rad), positive where the plane falls to the left of the azimuth
     */
    public double slopeAcross(Azimuth azimuth) {
        return gradient.fallToLeftOf(azimuth);
    }

    /**
     * The unit normal, pointing up.
     *
     * @return the normal in the site frame
     */
    public Vec3 normal() {
        return new Vec3(-gradient.east(), -gradient.north(), 1).direction();
    }
}
