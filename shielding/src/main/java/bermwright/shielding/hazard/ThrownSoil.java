// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.hazard;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Require;

/**
 * Soil that a landing throws about: a flat sheet that rises at up to three degrees on all sides and thins with the
 * square of the distance.
 *
 * <p>Nothing stands in its way: slopes and mounds between pad and hull are left out, which is on the safe side.
 */
public final class ThrownSoil {
    /** Steepest rise of the sheet (rad). */
    static final double RISE = Math.toRadians(3);
    /** Greatest speed of fine grains (m/s). */
    public static final double SPEED = 2000;
    /** Size of the coarse grain taken at that speed (m): the coarse end of sand, on the safe side. */
    public static final double GRAIN = 1e-3;
    /** Density of a grain (kg/m3). */
    public static final double GRAIN_DENSITY = 3000;
    /** Mean radius of the Moon (m). */
    static final double MOON_RADIUS = 1_737_400;

    private ThrownSoil() {
    }

    /**
     * Soil that crosses an upright surface.
     *
     * @param mass     soil thrown by all landings (kg), zero or more
     * @param distance distance from the pad's middle (m), positive
     * @return mass on a square metre (kg/m2), {@code M / (2 pi r^2 tan 3 deg)}
     */
    public static double onUpright(double mass, double distance) {
        Require.notNegative("soil thrown", mass, "kg");
        Require.positive("distance", distance, "m");
        return mass / (2 * Math.PI * distance * distance * Math.tan(RISE));
    }

    /**
     * Speed at which a grain goes round the Moon at its surface.
     *
     * @param gravity gravity (m/s2), positive
     * @return speed (m/s)
     */
    static double roundTheMoon(double gravity) {
        return Math.sqrt(Require.positive("gravity", gravity, "m/s2") * MOON_RADIUS);
    }

    /**
     * Speed at which a grain leaves the Moon.
     *
     * @param gravity gravity (m/s2), positive
     * @return speed (m/s)
     */
    static double escape(double gravity) {
        return Math.sqrt(2) * roundTheMoon(gravity);
    }

    /**
     * How far a grain flies over the round Moon.
     *
     * @param speed   speed (m/s), positive, below that of escape
     * @param rise    angle to the level (rad), above 0 to pi/2
     * @param gravity gravity (m/s2), positive
     * @return share of the Moon's circumference (1), 0 to 1
     */
    static double range(double speed, double rise, double gravity) {
        double energy = Math.pow(Require.positive("speed", speed, "m/s") / roundTheMoon(gravity), 2);
        Require.that(energy < 2, "speed is %s m/s; accepted: below that of escape, %s m/s", speed, escape(gravity));
        double along = energy * Math.pow(Math.cos(rise), 2);
        double farHalf = Math.atan2(energy * Math.sin(rise) * Math.cos(rise), 1 - along);
        return farHalf / Math.PI;
    }

    /**
     * Where the model holds.
     *
     * @return the note
     */
    public static ModelNote note() {
        return new ModelNote("thrown-soil", "soil thrown by landings as a sheet of up to 3 degrees, thinned by the"
                + " square of the distance; grains of 1 mm at 2 km/s against skin and soil",
                "landers of the size of those that have landed people, open ground between pad and hull; heavier"
                        + " landers throw more and coarser soil",
                "a factor of 2.5 in the soil thrown (11 to 26 t a landing), more in speed: 300 to 2000 m/s",
                ModelNote.Status.EXTRAPOLATED, "NASA's recommendations on historic lunar sites (2011), p. 11: 1 to 3"
                        + " degrees, 300 to 2000 m/s; soil thrown: Metzger (2024), Icarus 417, from memory; walls as"
                        + " for meteoroids, below their range of speed");
    }
}
