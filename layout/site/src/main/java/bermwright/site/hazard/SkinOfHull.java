// SPDX-License-Identifier: Apache-2.0
package bermwright.site.hazard;

import bermwright.shielding.hazard.SkinWall;
import bermwright.shielding.material.Materials;
import bermwright.site.plan.Hull;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/**
 * The heaviest layer of a hull's skin, which alone is counted against small fast bodies.
 *
 * @param wall      what it is made of
 * @param thickness its thickness (m)
 */
record SkinOfHull(SkinWall wall, double thickness) {
    static Optional<SkinOfHull> of(Hull hull) {
        return hull.skin().stream().filter(l -> Materials.names().contains(l.material().toLowerCase(
                Locale.ROOT))).max(Comparator.comparingDouble(Hull.SkinLayer::arealDensity)).map(l -> {
                    double density = Materials.named(l.material()).density();
                    return new SkinOfHull(SkinWall.of(density), l.arealDensity() / density);
                });
    }
}
