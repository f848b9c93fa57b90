// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.foundation.Require;
import bermwright.shielding.scene.HullSolid;
import java.util.Objects;

/**
 * A hull and the cover it is to have.
 *
 * @param hull       the hull
 * @param thickness  the thickness wanted over each part
 * @param base       what becomes of the soil at the base end
 * @param far        what becomes of the soil at the far end
 * @param crownWidth width of a level strip along the crown, for a machine (m); 0 for none
 */
public record CoveredHull(HullSolid hull, CoverThickness thickness, EndCover base, EndCover far, double crownWidth) {
    /** Refuses missing parts. */
    public CoveredHull {
        Objects.requireNonNull(hull, "hull");
        Objects.requireNonNull(thickness, "thickness");
        Objects.requireNonNull(base, "base");
        Objects.requireNonNull(far, "far");
        Require.notNegative("width of the crown", crownWidth, "m");
    }

    /**
     * A hull covered alike everywhere, both ends included.
     *
     * @param hull      the hull
     * @param thickness the thickness (m), zero or more
     * @return the covered hull
     */
    public static CoveredHull uniform(HullSolid hull, double thickness) {
        return new CoveredHull(hull, CoverThickness.uniform(thickness), EndCover.COVERED, EndCover.COVERED, 0);
    }

    /**
     * The thickness wanted over a place on the skin.
     *
     * @param along  distance from the base plane (m)
     * @param around angle from the crown (rad)
     * @return thickness (m); 0 on an end that is open or held
     */
    public double wanted(double along, double around) {
        if (along < hull.shape().barrelStart()) {
            return base == EndCover.COVERED ? thickness.baseEnd() : 0;
        }
        if (along > hull.shape().barrelEnd()) {
            return far == EndCover.COVERED ? thickness.farEnd() : 0;
        }
        return Math.abs(around) <= CoverThickness.CROWN_HALF_ANGLE ? thickness.crown() : thickness.flank();
    }

    /**
     * This hull with another thickness.
     *
     * @param other the thickness
     * @return the changed hull
     */
    public CoveredHull with(CoverThickness other) {
        return new CoveredHull(hull, other, base, far, crownWidth);
    }
}
