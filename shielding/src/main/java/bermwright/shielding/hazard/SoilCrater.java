// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.hazard;

import bermwright.foundation.Require;
import bermwright.numeric.Bracket;

/**
 * The crater that a body leaves in dry soil, by scaling of gravity and strength:
 * {@code rho V / m = K (g a / U^2 + (Y / rho U^2)^((2 + mu)/2))^(-3 mu / (2 + mu))}.
 *
 * <p>Dry sand and soil: {@code K = 0.132}, {@code mu = 0.41}; depth 0.6 and radius 1.1 times the cube root of the
 * volume, the rim 1.3 times as wide. Made for speeds well above that of sound in the soil; head-on. Craters of one
 * impact scatter by some 20 % in width about it.
 *
 * @param density  density of the soil (kg/m3), positive
 * @param strength its effective strength Y (Pa), zero or more; its cohesion
 * @param gravity  gravity (m/s2), positive
 * @see "Holsapple (1993), Annual Reviews of Earth and Planetary Sciences 21, 333-373; constants as printed beside his
 *     worksheet of crater sizes"
 */
public record SoilCrater(double density, double strength, double gravity) {
    /** Soil that keeps the wall below whole, over the crater's depth in deep soil (1): the rule for thick walls. */
    public static final double MARGIN = 1.8;
    private static final double K = 0.132;
    private static final double MU = 0.41;
    private static final double DEPTH = 0.6;
    private static final double RIM_RADIUS = 1.1 * 1.3;
    private static final double LEAST_MASS = 1e-15;
    private static final double GREATEST_MASS = 1e9;
    private static final int HALVINGS = 60;

    /** Refuses soils that cannot be. */
    public SoilCrater {
        Require.positive("density of the soil", density, "kg/m3");
        Require.notNegative("strength of the soil", strength, "Pa");
        Require.positive("gravity", gravity, "m/s2");
    }

    /**
     * What strikes.
     *
     * @param mass    mass (kg), positive
     * @param speed   speed (m/s), positive
     * @param density density (kg/m3), positive
     */
    public record Body(double mass, double speed, double density) {
        /** Refuses bodies that cannot be. */
        public Body {
            Require.positive("mass", mass, "kg");
            Require.positive("speed", speed, "m/s");
            Require.positive("density of the body", density, "kg/m3");
        }

        double radius() {
            return Math.cbrt(3 * mass / (4 * Math.PI * density));
        }
    }

    /**
     * Volume below the ground as it was.
     *
     * @param body what strikes
     * @return volume (m3), positive
     */
    double volume(Body body) {
        double square = body.speed * body.speed;
        double weight = gravity * body.radius() / square;
        double hold = Math.pow(strength / (density * square), (2 + MU) / 2);
        return K * body.mass / density * Math.pow(weight + hold, -3 * MU / (2 + MU));
    }

    /**
     * Depth below the ground as it was.
     *
     * @param body what strikes
     * @return depth (m), positive
     */
    public double depth(Body body) {
        return DEPTH * Math.cbrt(volume(body));
    }

    /**
     * Width from rim to rim.
     *
     * @param body what strikes
     * @return diameter (m), positive
     */
    double rimDiameter(Body body) {
        return 2 * RIM_RADIUS * Math.cbrt(volume(body));
    }

    /**
     * The greatest meteoroid that a depth of soil stops with the margin on the crater's depth.
     *
     * @param soil depth of soil (m), zero or more
     * @return mass (kg), 0 without soil
     */
    public double stopped(double soil) {
        if (!(soil > MARGIN * depth(meteoroid(LEAST_MASS)))) {
            return 0;
        }
        return Math.exp(Bracket.halved(Math.log(LEAST_MASS), Math.log(GREATEST_MASS), HALVINGS,
                log -> MARGIN * depth(meteoroid(Math.exp(log))) <= soil).low());
    }

    private static Body meteoroid(double mass) {
        return new Body(mass, MeteoroidFlux.SPEED, MeteoroidFlux.DENSITY);
    }
}
