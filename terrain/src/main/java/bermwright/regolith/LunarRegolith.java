// SPDX-License-Identifier: Apache-2.0
package bermwright.regolith;

import bermwright.foundation.Require;

/**
 * Bulk density of mean lunar regolith between craters: {@code 1920 (z + 0.122) / (z + 0.18)} kg/m3, z in metres.
 *
 * <p>Fits returned cores to 3 m; single places scatter by some 10 %.
 *
 * @see "Carrier, Olhoeft and Mendell (1991), Lunar Sourcebook, chapter 9"
 */
public final class LunarRegolith {
    private static final double DEEP = 1920;
    private static final double ABOVE = 0.122;
    private static final double BELOW = 0.18;

    private LunarRegolith() {
    }

    /**
     * The mean density between two depths, by integration.
     *
     * @param top    upper depth (m), zero or more
     * @param bottom lower depth (m), more than the upper; fitted to 3 m
     * @return mean bank density (kg/m3)
     */
    public static double meanDensity(double top, double bottom) {
        Require.that(top >= 0 && bottom > top, "depths are %s m to %s m; accepted: rising from 0.", top, bottom);
        return DEEP * (1 - (BELOW - ABOVE) * Math.log((bottom + BELOW) / (top + BELOW)) / (bottom - top));
    }
}
