// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.scene;

import java.util.List;
import java.util.Objects;

/**
 * Everything a ray can cross: soil, hulls and tunnels, walls.
 *
 * @param soil  ground and mound
 * @param hulls hulls and tunnels; where two overlap the skin of one inside the other is taken as cut away
 * @param walls walls that stand on the ground
 */
public record Scene(Soil soil, List<HullSolid> hulls, List<WallSolid> walls) {
    /** Copies the lists. */
    public Scene {
        Objects.requireNonNull(soil, "soil");
        hulls = List.copyOf(hulls);
        walls = List.copyOf(walls);
    }

    /**
     * A scene without walls.
     *
     * @param soil  ground and mound
     * @param hulls hulls and tunnels
     */
    public Scene(Soil soil, List<HullSolid> hulls) {
        this(soil, hulls, List.of());
    }
}
