// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.foundation.Require;
import bermwright.foundation.Vec3;
import bermwright.shielding.scene.HullSolid;
import java.util.ArrayList;
import java.util.List;
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
    /** Sine of the rise up to which a hull counts as lying. */
    private static final double LIES_FLAT = 0.7;

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
     * The thickness wanted over a place on the skin; beside an end that a wall holds no more than its distance from
     * the wall, through which the way out leads there.
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
        double part = full(along, around);
        // Nobody can place more soil between a place and a wall than there is room.
        return Math.max(0, Math.min(part, heldWithin(along, around)));
    }

    /** How far the upright face of the nearer end that a wall holds is from a place (m); without bound for none. */
    private double heldWithin(double along, double around) {
        double nearest = Double.POSITIVE_INFINITY;
        if (base == EndCover.HELD || far == EndCover.HELD) {
            Vec3 place = hull.skin(along, around);
            for (UprightFace face : faces()) {
                nearest = Math.min(nearest, -face.ahead(place.x(), place.y()));
            }
        }
        return nearest;
    }

    /** The faces of soil that walls hold, at the ends of a lying hull. */
    List<UprightFace> faces() {
        List<UprightFace> faces = new ArrayList<>();
        Vec3 axis = hull.pose().axis();
        if (Math.abs(axis.z()) < LIES_FLAT) {
            if (base == EndCover.HELD) {
                faces.add(UprightFace.across(hull.pose().point(0, 0, 0), axis.times(-1)));
            }
            if (far == EndCover.HELD) {
                faces.add(UprightFace.across(hull.pose().point(hull.shape().length(), 0, 0), axis));
            }
        }
        return faces;
    }

    /** Whether the way out of a place leads through the wall at an end, not through the surface. */
    boolean isBesideWall(double along, double around) {
        return heldWithin(along, around) < full(along, around);
    }

    private double full(double along, double around) {
        double fromBase = along - hull.shape().barrelStart();
        double fromFar = hull.shape().barrelEnd() - along;
        double part = Math.abs(around) <= CoverThickness.CROWN_HALF_ANGLE ? thickness.crown() : thickness.flank();
        if (base == EndCover.COVERED) {
            part = Math.min(part, thickness.baseEnd() + fromBase / CoverThickness.RUN_OUT);
        }
        return far == EndCover.COVERED ? Math.min(part, thickness.farEnd() + fromFar / CoverThickness.RUN_OUT) : part;
    }

    /** Stretch of barrel over which a part's thickness runs out to a thinner end's; at most half the barrel (m). */
    double runOut(boolean atFar, double part) {
        EndCover cover = atFar ? far : base;
        double end = atFar ? thickness.farEnd() : thickness.baseEnd();
        double half = (hull.shape().barrelEnd() - hull.shape().barrelStart()) / 2;
        return cover == EndCover.COVERED && end < part ? Math.min(half, (part - end) * CoverThickness.RUN_OUT) : 0;
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
