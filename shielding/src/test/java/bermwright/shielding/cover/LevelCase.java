// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Vec3;
import bermwright.shielding.scene.HullEnd;
import bermwright.shielding.scene.HullShape;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.Scenes;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.List;

/** A lying hull in the middle of level ground, for tests. */
final class LevelCase {
    private LevelCase() {
    }

    static HullSolid hull(double length, double radius, HullEnd end, Azimuth azimuth, double axisHeight) {
        Vec3 along = new Vec3(azimuth.east(), azimuth.north(), 0);
        Vec3 base = new Vec3(0, 0, axisHeight).minus(along.times(length / 2));
        return new HullSolid("A", new HullShape(length, radius, end, end, 50), Scenes.lying(base, azimuth, 0));
    }

    static ElevationGrid level(double halfWidth, double spacing) {
        int nodes = (int) Math.round(2 * halfWidth / spacing) + 1;
        return ElevationGrid.sampled(new GridFrame(nodes, nodes, -halfWidth, -halfWidth, spacing), (e, n) -> 0);
    }

    static Mound mound(CoveredHull hull, double slopeDeg, ElevationGrid ground) {
        return Mounds.over(ground, List.of(hull), Math.toRadians(slopeDeg), List.of());
    }
}
