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
        double fromBase = along - hull.shape().barrelStart();
        double fromFar = hull.shape().barrelEnd() - along;
        if (fromBase < 0) {
            return base == EndCover.COVERED ? thickness.baseEnd() : 0;
        }
        if (fromFar < 0) {
            return far == EndCover.COVERED ? thickness.farEnd() : 0;
        }
        double part = Math.abs(around) <= CoverThickness.CROWN_HALF_ANGLE ? thickness.crown() : thickness.flank();
        if (base == EndCover.COVERED) {
            part = Math.min(part, thickness.baseEnd() + fromBase / CoverThickness.RUN_OUT);
        }
        return far == EndCover.COVERED ? Math.min(part, thickness.farEnd() + fromFar / CoverThickness.RUN_OUT) : part;
    }

    /** Stretch of barrel over which a part's thickness runs out to a thinner end's; at most half the barrel (m). */
    double runOut(boolean atFar, double part) {
        EndCover what = atFar ? far : base;
        double end = atFar ? thickness.farEnd() : thickness.baseEnd();
        double half = (hull.shape().barrelEnd() - hull.shape().barrelStart()) / 2;
        return what == EndCover.COVERED && end < part ? Math.min(half, (part - end) * CoverThickness.RUN_OUT) : 0;
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
