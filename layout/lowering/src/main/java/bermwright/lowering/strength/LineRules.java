// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.strength;

import bermwright.foundation.Require;

/** Stretch, bends and friction of lines over sheaves and drums. */
public final class LineRules {
    private static final double[] BEND_RATIO = {1, 2, 4, 6, 8, 10, 15, 20, 30, 40};
    private static final double[] BEND_SHARE = {0.50, 0.65, 0.75, 0.79, 0.83, 0.86, 0.89, 0.91, 0.93, 0.95};

    private LineRules() {
    }

    /**
     * Stretch under tension, T L / EA.
     *
     * @param tension   tension T (N), zero or more
     * @param length    length L (m), positive
     * @param stiffness EA (N), positive
     * @return the stretch (m)
     */
    public static double stretch(double tension, double length, double stiffness) {
        return tension * length / Require.positive("line stiffness", stiffness, "N");
    }

    /**
     * The share of its strength a rope keeps bent over a pin or sheave.
     *
     * @param ratio pin or sheave diameter over rope diameter (1), at least 1; beyond 40 as at 40
     * @return the share (1)
     * @see "rope and sheave table in rigging handbooks: 40 95 %, 30 93, 20 91, 15 89, 10 86, 8 83, 6 79, 4 75, 2 65, 1 50"
     */
    public static double bendShare(double ratio) {
        Require.atLeast("sheave over rope", ratio, 1, "1");
        for (int i = 1; i < BEND_RATIO.length; i++) {
            if (ratio <= BEND_RATIO[i]) {
                double share = (ratio - BEND_RATIO[i - 1]) / (BEND_RATIO[i] - BEND_RATIO[i - 1]);
                return BEND_SHARE[i - 1] + share * (BEND_SHARE[i] - BEND_SHARE[i - 1]);
            }
        }
        return BEND_SHARE[BEND_SHARE.length - 1];
    }

    /**
     * What a sheave is pressed with, 2 T cos(half the angle between both parts), for equal tensions.
     *
     * @param tension tension T (N), zero or more
     * @param between angle between both parts of the line (rad), 0 to pi
     * @return the load (N)
     */
    public static double sheaveLoad(double tension, double between) {
        return 2 * tension * Math.cos(between / 2);
    }
}
