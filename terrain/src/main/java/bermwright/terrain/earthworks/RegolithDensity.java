// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.Require;

/**
 * Bank density of lunar regolith by depth, between craters: {@code 1920 (z + 0.122) / (z + 0.18)} kg/m3, z in metres.
 *
 * <p>Fits returned cores to 3 m; single places scatter by some 10 %.
 *
 * @see "Carrier, Olhoeft and Mendell (1991), Lunar Sourcebook, chapter 9"
 */
public final class RegolithDensity {
    private static final double DEEP = 1920;
    private static final double ABOVE = 0.122;
    private static final double BELOW = 0.18;
    private static final double DEEPEST = 3;

    private RegolithDensity() {
    }

    /**
     * The density at a depth.
     *
     * @param depth depth (m), 0 to 3
     * @return bank density (kg/m3)
     */
    public static double at(double depth) {
        Require.within("depth", depth, 0, DEEPEST, "m");
        return DEEP * (depth + ABOVE) / (depth + BELOW);
    }

    /**
     * The mean density between two depths.
     *
     * @param top    upper depth (m), 0 or more
     * @param bottom lower depth (m), above {@code top}, to 3
     * @return mean bank density (kg/m3)
     */
    public static double mean(double top, double bottom) {
        Require.within("upper depth", top, 0, DEEPEST, "m");
        Require.within("lower depth", bottom, top, DEEPEST, "m");
        if (bottom - top < 1e-9) {
            return at(top);
        }
        return DEEP * (1 - (BELOW - ABOVE) * Math.log((bottom + BELOW) / (top + BELOW)) / (bottom - top));
    }
}
