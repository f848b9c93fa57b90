// SPDX-License-Identifier: Apache-2.0
package bermwright.site.hazard;

/**
 * The figures behind what a hull is judged for besides radiation; one that is not known is not a number.
 *
 * @param hull       the hull
 * @param meteoroids meteoroids
 * @param thrown     thrown soil
 * @param heat       heat and cold
 * @param quake      the mound while the ground shakes
 */
public record HullHazards(String hull, Meteoroids meteoroids, Thrown thrown, Heat heat, Quake quake) {
    /**
     * Meteoroids.
     *
     * @param chance  chance that one perforates the hull in the stay (1)
     * @param byBare  share of it that comes through bare skin (1)
     * @param stopped greatest mass stopped where the cover is thinnest (kg)
     */
    public record Meteoroids(double chance, double byBare, double stopped) {
    }

    /**
     * Thrown soil.
     *
     * @param distance     from the middle of the hull to that of the nearest pad (m)
     * @param mass         soil that crosses an upright square metre there in the stay (kg/m2)
     * @param skinRequired skin that a coarse grain does not perforate (m)
     * @param skin         skin there is (m)
     */
    public record Thrown(double distance, double mass, double skinRequired, double skin) {
        /** No pad, or no landing. */
        static final Thrown NONE = new Thrown(Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }

    /**
     * Heat and cold.
     *
     * @param notFelt  depth at which the lunar day moves the temperature by less than 1 K either way (m)
     * @param swing    what it moves the skin by, either way, where the cover is thinnest (K)
     * @param unheated temperature of a skin under its cover that nothing heats (K)
     * @param loss     heat that the hull loses through its cover at the temperature of the cabin (W)
     * @param risePerKilowatt how much warmer than unheated the skin grows for each kilowatt that must leave through the
     *                 soil (K)
     */
    public record Heat(double notFelt, double swing, double unheated, double loss, double risePerKilowatt) {
    }

    /**
     * The mound while the ground shakes.
     *
     * @param height height of its crown over the bed (m)
     * @param atRest factor of safety at rest (1)
     * @param shaken factor of safety at the plan's acceleration (1)
     * @param yield  acceleration at which it begins to slide (m/s2)
     */
    public record Quake(double height, double atRest, double shaken, double yield) {
        /** No mound. */
        static final Quake NONE = new Quake(Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }
}
