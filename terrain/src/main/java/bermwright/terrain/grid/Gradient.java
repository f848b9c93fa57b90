// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.grid;

import bermwright.foundation.Azimuth;
import java.util.Optional;

/**
 * How the ground rises at a place.
 *
 * @param east  rise per true metre towards east (1), {@code NaN} where the ground is not known
 * @param north rise per true metre towards north (1), {@code NaN} where the ground is not known
 */
public record Gradient(double east, double north) {
    /** The gradient where the ground is not known. */
    public static final Gradient UNKNOWN = new Gradient(Double.NaN, Double.NaN);

    /**
     * The steepest slope.
     *
     * @return angle to the level (rad), 0 up to pi/2; {@code NaN} where the ground is not known
     */
    public double slope() {
        return Math.atan(Math.sqrt(east * east + north * north));
    }

    /**
     * The direction in which the ground falls most steeply.
     *
     * @return the downslope direction, absent on level ground and where the ground is not known
     */
    public Optional<Azimuth> aspect() {
        if (!(east * east + north * north > 0)) {
            return Optional.empty();
        }
        return Optional.of(new Azimuth(Math.atan2(-east, -north)));
    }

    /**
     * The slope met when going along an azimuth.
     *
     * @param azimuth the direction of travel
     * @return angle to the level (rad), positive where the ground falls; {@code NaN} where the ground is not known
     */
    public double fallAlong(Azimuth azimuth) {
        return Math.atan(-(east * azimuth.east() + north * azimuth.north()));
    }

    /**
     * The slope met when going square to an azimuth, to its left.
     *
     * @param azimuth the direction of travel
     * @return angle to the level (rad), positive where the ground falls to the left; {@code NaN} where not known
     */
    public double fallToLeftOf(Azimuth azimuth) {
        return Math.atan(east * azimuth.north() - north * azimuth.east());
    }

    /**
     * Whether the ground is known here.
     *
     * @return true where both parts are numbers
     */
    boolean isKnown() {
        return !Double.isNaN(east) && !Double.isNaN(north);
    }
}
