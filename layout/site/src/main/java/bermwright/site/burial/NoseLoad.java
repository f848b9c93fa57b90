// SPDX-License-Identifier: Apache-2.0
package bermwright.site.burial;

import bermwright.foundation.Require;

/**
 * What a rigid cylinder that leans on its nose presses into ground that yields in proportion to depth.
 *
 * @param sinking  how far its tip sinks in (m)
 * @param reach    length of hull in touch with the ground (m)
 * @param mean     mean pressure over the contact (Pa)
 * @param width    mean width of the contact (m)
 */
public record NoseLoad(double sinking, double reach, double mean, double width) {
    /**
     * A leaning cylinder: {@link SeatLoad} summed along a depth that grows evenly to the tip,
     * {@code N = (8/15) k (2R)^0.5 z^2.5 / lean}.
     *
     * @param load      what the nose bears (N), positive
     * @param radius    radius (m), positive
     * @param lean      angle between axis and ground (rad), positive
     * @param stiffness pressure per sinking (N/m3), positive
     * @return the nose's load
     * @see "common practice, no source: a flat parabola of contact under a rigid cylinder on Winkler ground"
     */
    public static NoseLoad on(double load, double radius, double lean, double stiffness) {
        Require.positive("load on the nose", load, "N");
        Require.positive("hull radius", radius, "m");
        Require.positive("lean of the hull", lean, "rad");
        Require.positive("stiffness of the ground", stiffness, "N/m3");
        double root = Math.sqrt(2 * radius);
        double sinking = Math.pow(15 * load * lean / (8 * stiffness * root), 0.4);
        double reach = sinking / lean;
        double width = 4.0 / 3 * root * Math.sqrt(sinking);
        return new NoseLoad(sinking, reach, load / (width * reach), width);
    }
}
