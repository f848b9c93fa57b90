// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.Require;
import bermwright.regolith.Strength;
import java.util.Objects;

/**
 * Whether soil stands: the long even slope and the upright cut, by the strength of Mohr and Coulomb.
 *
 * <p>Dry, uniform soil; leaves out shaking, water (there is none) and loads on the crest. Gravity counts only where
 * there is cohesion. Common practice in soil mechanics, no single source.
 */
public final class SlopeStability {
    private SlopeStability() {
    }

    /**
     * Strength and weight of a soil.
     *
     * @param strength strength
     * @param density  density (kg/m3), positive
     * @param gravity  gravity (m/s2), positive
     */
    public record Soil(Strength strength, double density, double gravity) {
        /** Refuses soils that cannot be. */
        public Soil {
            Objects.requireNonNull(strength, "strength");
            Require.positive("density", density, "kg/m3");
            Require.positive("gravity", gravity, "m/s2");
        }

        double frictionAngle() {
            return strength.frictionAngle();
        }

        double cohesion() {
            return strength.cohesion();
        }
    }

    /**
     * Factor of safety of a long slope against a slide at some depth along it:
     * {@code tan phi / tan beta + c / (gamma h sin beta cos beta)}.
     *
     * @param soil  the soil
     * @param slope slope (rad), above 0 and below pi/2
     * @param depth depth of the slide (m), positive
     * @return factor of safety (1); it stands at 1 or more
     */
    public static double longSlope(Soil soil, double slope, double depth) {
        Require.that(slope > 0 && slope < Math.PI / 2, "slope is %s rad; accepted: above 0 to below pi/2.", slope);
        Require.positive("depth of the slide", depth, "m");
        return Math.tan(soil.frictionAngle()) / Math.tan(slope) + soil.cohesion()
                / (soil.density * soil.gravity * depth * Math.sin(slope) * Math.cos(slope));
    }

    /**
     * The highest upright cut that stands by itself: {@code (4 c / gamma) tan(45 deg + phi / 2)}.
     *
     * @param soil the soil
     * @return height (m), zero where there is no cohesion
     */
    public static double uprightCut(Soil soil) {
        return 4 * soil.cohesion() / (soil.density * soil.gravity) * Math.tan(Math.PI / 4 + soil.frictionAngle() / 2);
    }
}
