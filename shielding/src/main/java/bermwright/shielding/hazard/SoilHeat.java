// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.hazard;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Require;

/**
 * Heat in soil of one conductivity: how deep the lunar day is felt, and what a buried hull loses.
 *
 * @param conductivity conductivity (W/(m K)), positive
 * @param density      density (kg/m3), positive
 * @param heat         specific heat (J/(kg K)), positive
 * @see "Carslaw and Jaeger (1959), Conduction of Heat in Solids, 2.6: the harmonic wave in a half-space"
 */
public record SoilHeat(double conductivity, double density, double heat) {
    /** From noon to noon (s). */
    static final double LUNAR_DAY = 29.530589 * 86_400;

    /** Refuses soils that cannot be. */
    public SoilHeat {
        Require.positive("conductivity", conductivity, "W/(m K)");
        Require.positive("density", density, "kg/m3");
        Require.positive("specific heat", heat, "J/(kg K)");
    }

    /**
     * Depth in which the swing of the lunar day falls to 1/e: {@code sqrt(k P / (pi rho c))}.
     *
     * @return depth (m), positive
     */
    double skinDepth() {
        return Math.sqrt(conductivity * LUNAR_DAY / (Math.PI * density * heat));
    }

    /**
     * The swing of the lunar day at a depth.
     *
     * @param surface swing at the surface, half of it either way (K), zero or more
     * @param depth   depth (m), zero or more
     * @return swing either way (K)
     */
    public double swing(double surface, double depth) {
        return Require.notNegative("swing", surface, "K")
                * Math.exp(-Require.notNegative("depth", depth, "m") / skinDepth());
    }

    /**
     * Depth at which the lunar day is no longer felt.
     *
     * @param surface swing at the surface (K), zero or more
     * @param felt    the swing that counts as none (K), positive
     * @return depth (m), zero or more
     */
    public double notFelt(double surface, double felt) {
        return Math.max(0, skinDepth() * Math.log(surface / Require.positive("swing that counts", felt, "K")));
    }

    /**
     * Steady heat through a square metre of level soil.
     *
     * @param gradient temperature gradient (K/m)
     * @return heat (W/m2)
     */
    double flux(double gradient) {
        return conductivity * gradient;
    }

    /**
     * Shape factor of a long cylinder in deep soil below a surface of one temperature: {@code 2 pi L / acosh(z / r)}.
     *
     * @param length length (m), positive
     * @param radius radius (m), positive
     * @param cover  soil over its crown (m), positive
     * @return shape factor (m); its heat is that times conductivity and difference of temperature
     * @see "Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, table 4.1, case 2"
     */
    public static double shapeFactor(double length, double radius, double cover) {
        Require.positive("length", length, "m");
        Require.positive("radius", radius, "m");
        double ratio = 1 + Require.positive("cover", cover, "m") / radius;
        return 2 * Math.PI * length / Math.log(ratio + Math.sqrt(ratio * ratio - 1));
    }

    /**
     * Where the model holds.
     *
     * @return the note
     */
    public static ModelNote note() {
        return new ModelNote("soil-heat", "harmonic wave of the lunar day into level soil, and steady conduction from a"
                + " long cylinder below a surface of one temperature",
                "one conductivity at every depth and temperature; a mound is taken as level soil as deep as its least"
                        + " cover; ends, hatches, cradles and bare skin left out, heat from below too",
                "conductivity a factor of 3 either way: 0.0034 W/(m K) from orbit, 0.014 to 0.025 in the first drill"
                        + " holes", ModelNote.Status.COMPUTED,
                "Hayne et al. (2017), JGR Planets 122, 2371; Apollo 15 Preliminary Science Report (heat flow);"
                        + " Incropera and DeWitt, table 4.1");
    }
}
