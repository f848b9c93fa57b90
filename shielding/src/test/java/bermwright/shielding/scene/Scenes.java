// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.scene;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Vec3;
import bermwright.regolith.BulkDensity;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.List;

/** Places and grounds that tests make. */
public final class Scenes {
    private Scenes() {
    }

    /**
     * Ground without a mound.
     *
     * @param ground  the ground
     * @param inPlace its density by depth
     * @return the soil
     */
    public static Soil bare(ElevationGrid ground, BulkDensity inPlace) {
        return new Soil(ground, ground, inPlace.density(0), inPlace);
    }

    /**
     * A lying hull with its crown up.
     *
     * @param base    centre of the base plane
     * @param azimuth direction from base to far end in plan
     * @param rise    angle by which the axis rises towards the far end (rad), -pi/2 to pi/2
     * @return the pose
     */
    public static HullPose lying(Vec3 base, Azimuth azimuth, double rise) {
        double c = Math.cos(rise);
        double s = Math.sin(rise);
        return new HullPose(base, new Vec3(c * azimuth.east(), c * azimuth.north(), s),
                new Vec3(-s * azimuth.east(), -s * azimuth.north(), c));
    }

    /**
     * Hulls that a point lies in.
     *
     * @param point the point
     * @return the hulls, none where it lies outside all
     */
    public static List<HullSolid> around(Scene scene, Vec3 point) {
        List<HullSolid> found = new ArrayList<>();
        for (HullSolid hull : scene.hulls()) {
            if (hull.contains(point)) {
                found.add(hull);
            }
        }
        return found;
    }
}
