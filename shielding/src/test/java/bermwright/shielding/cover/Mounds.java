// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.terrain.grid.ElevationGrid;
import java.util.List;

/** Mounds that tests raise. */
public final class Mounds {
    private Mounds() {
    }

    /**
     * Raises the cover.
     *
     * @param ground      the ground, cuts included; missing heights stay missing
     * @param hulls       hulls and the cover each is to have; none gives bare ground
     * @param stableSlope steepest slope at which placed soil stands (rad), above 0 and below pi/2
     * @param keptClear   strips that no soil may lie on
     * @return the mound
     * @throws IllegalArgumentException if the slope is out of range
     */
    public static Mound over(ElevationGrid ground, List<CoveredHull> hulls, double stableSlope,
            List<KeptClear> keptClear) {
        return LeastCover.on(LeastCover.FINE_SPACING).raised(ground, hulls, stableSlope, keptClear);
    }
}
