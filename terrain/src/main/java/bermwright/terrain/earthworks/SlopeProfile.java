// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.Require;

/**
 * The surface of a slope in section, rising to the right: places along and heights, straight in between, level beyond.
 */
public final class SlopeProfile {
    private final double[] along;
    private final double[] heights;

    private SlopeProfile(double[] along, double[] heights) {
        this.along = along;
        this.heights = heights;
    }

    /**
     * A surface through points.
     *
     * @param along   places along the section (m), rising, at least two
     * @param heights heights there (m), as many
     * @return the profile
     */
    public static SlopeProfile through(double[] along, double[] heights) {
        Require.that(along.length == heights.length && along.length > 1, "%s places with %s heights make no profile.",
                along.length, heights.length);
        for (int i = 1; i < along.length; i++) {
            Require.that(along[i] > along[i - 1], "places of a profile do not rise at %s m.", along[i]);
        }
        return new SlopeProfile(along.clone(), heights.clone());
    }

    /**
     * A straight slope with its toe at the origin.
     *
     * @param height height (m), positive
     * @param slope  angle to the level (rad), above 0 and below pi/2
     * @return the profile
     */
    public static SlopeProfile simple(double height, double slope) {
        Require.that(slope > 0 && slope < Math.PI / 2, "slope is %s rad; accepted: above 0 to below pi/2.", slope);
        return through(new double[] {0, height / Math.tan(slope)}, new double[] {0, height});
    }

    /**
     * The height of the surface.
     *
     * @param x place along (m)
     * @return the height (m)
     */
    public double height(double x) {
        int last = along.length - 1;
        if (x <= along[0]) {
            return heights[0];
        }
        if (x >= along[last]) {
            return heights[last];
        }
        int i = 1;
        while (x > along[i]) {
            i++;
        }
        return heights[i - 1] + (heights[i] - heights[i - 1]) * (x - along[i - 1]) / (along[i] - along[i - 1]);
    }
}
