// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.hazard;

import bermwright.foundation.Require;

/**
 * A single wall of metal that small fast bodies strike.
 *
 * <p>Crater depth in thick metal {@code p = 5.24 d^(19/18) H^(-1/4) (rho_p / rho_t)^(1/2) (v / c)^(2/3)}, d and p in
 * centimetres; a wall of 1.8 p is not perforated. Made for aluminium at 1 to 12 km/s and used to 20 km/s; other metals
 * by their own density, hardness and speed of sound.
 *
 * @param density  density (kg/m3), positive
 * @param hardness Brinell hardness (1), positive
 * @param sound    speed of sound (m/s), positive
 * @see "Christiansen (2009), NASA/TM-2009-214785, single walls, from memory"
 */
public record SkinWall(double density, double hardness, double sound) {
    /** Wall not perforated, over the crater's depth in thick metal (1). */
    static final double NOT_PERFORATED = 1.8;
    private static final SkinWall ALUMINIUM = new SkinWall(2700, 95, 5100);
    private static final double LIGHT = 4000;
    private static final double STEEL_HARDNESS = 160;
    private static final double STEEL_SOUND = 4580;
    private static final double SIZE_POWER = 19.0 / 18;
    private static final double CENTIMETRE = 0.01;

    /** Refuses walls that cannot be. */
    public SkinWall {
        Require.positive("density of the wall", density, "kg/m3");
        Require.positive("hardness of the wall", hardness, "1");
        Require.positive("speed of sound in the wall", sound, "m/s");
    }

    /**
     * The wall that a material makes: light ones are taken as aluminium of their density, heavy ones as steel.
     *
     * @param density density (kg/m3), positive
     * @return the wall
     */
    public static SkinWall of(double density) {
        return density < LIGHT ? new SkinWall(density, ALUMINIUM.hardness, ALUMINIUM.sound)
                : new SkinWall(density, STEEL_HARDNESS, STEEL_SOUND);
    }

    /**
     * The wall that a body does not perforate.
     *
     * @param diameter diameter of the body (m), positive
     * @param speed    its speed (m/s), positive
     * @param density  its density (kg/m3), positive
     * @return thickness (m), positive
     */
    public double required(double diameter, double speed, double density) {
        double size = Math.pow(Require.positive("diameter", diameter, "m") / CENTIMETRE, SIZE_POWER) * CENTIMETRE;
        return NOT_PERFORATED * 5.24 * size * strike(speed, density);
    }

    /**
     * The greatest meteoroid that a thickness stops.
     *
     * @param thickness thickness of the wall (m), zero or more
     * @return mass (kg), 0 without a wall
     */
    public double stopped(double thickness) {
        double size = thickness / CENTIMETRE
                / (NOT_PERFORATED * 5.24 * strike(MeteoroidFlux.SPEED, MeteoroidFlux.DENSITY));
        double diameter = Math.pow(Math.max(size, 0), 1 / SIZE_POWER) * CENTIMETRE;
        return MeteoroidFlux.DENSITY * Math.PI / 6 * diameter * diameter * diameter;
    }

    private double strike(double speed, double other) {
        return Math.pow(hardness, -0.25) * Math.sqrt(other / density)
                * Math.pow(Require.positive("speed", speed, "m/s") / sound, 2.0 / 3);
    }
}
