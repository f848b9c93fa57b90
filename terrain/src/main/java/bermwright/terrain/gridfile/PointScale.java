// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.Azimuth;
import java.util.Optional;

/**
 * What a projected metre is worth at a place, and where true north lies.
 *
 * @param east      true metres in one projected metre towards grid east (1), positive
 * @param north     true metres in one projected metre towards grid north (1), positive
 * @param trueNorth azimuth of true north, clockwise from grid north; absent at a pole and where no reference system
 *                  is known
 */
public record PointScale(double east, double north, Optional<Azimuth> trueNorth) {
    /** Projected metres taken as true metres, true north unknown. */
    public static final PointScale UNKNOWN = new PointScale(1, 1, Optional.empty());

    /**
     * The scale that serves both directions.
     *
     * @return the mean of both (1), positive
     */
    public double mean() {
        return (east + north) / 2;
    }

    /**
     * How far the two scales lie apart.
     *
     * @return the difference as a share of the mean (1), zero or more
     */
    public double difference() {
        return Math.abs(east - north) / mean();
    }
}
