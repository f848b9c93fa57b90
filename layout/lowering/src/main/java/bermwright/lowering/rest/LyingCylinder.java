// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rest;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Require;
import java.util.Objects;

/**
 * A cylinder about to lie on ground.
 *
 * @param base    ground point under the lower edge of its base plane
 * @param azimuth direction from base to far end
 * @param length  length (m), positive
 * @param radius  radius (m), positive
 * @param load     what loads it
 * @param baseLift how far legs or shoes hold the base's edge off the ground (m), zero or more
 */
public record LyingCylinder(Point base, Azimuth azimuth, double length, double radius, Load load,
        double baseLift) {
    /** Refuses cylinders without size. */
    public LyingCylinder {
        Objects.requireNonNull(base, "base");
        Objects.requireNonNull(azimuth, "azimuth");
        Objects.requireNonNull(load, "load");
        Require.positive("hull length", length, "m");
        Require.positive("hull radius", radius, "m");
        Require.notNegative("lift of the base", baseLift, "m");
        Require.within("centre of mass from the base", load.centre, 0, length, "m");
    }

    /**
     * The load of the cylinder.
     *
     * @param weight weight (N), positive
     * @param centre centre of mass from the base (m)
     */
    public record Load(double weight, double centre) {
        /** Refuses loads without weight. */
        public Load {
            Require.positive("weight", weight, "N");
        }
    }
}
