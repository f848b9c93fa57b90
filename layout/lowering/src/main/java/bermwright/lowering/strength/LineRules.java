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
     * The ratio of tensions of a line around a drum or bollard about to slip, e^(mu b).
     *
     * @param friction friction factor mu (1), zero or more; of metal on metal in vacuum anything from 0.05 to 0.6
     * @param wrap     angle of wrap b (rad), zero or more
     * @return the ratio (1)
     * @see "Euler (1769), Eytelwein (1808)"
     */
    public static double capstan(double friction, double wrap) {
        return Math.exp(Require.notNegative("friction", friction, "1") * Require.notNegative("wrap", wrap, "rad"));
    }

    /**
     * The lead-line pull of a tackle over its load, K^N (K - 1)/(K^N - 1).
     *
     * @param parts parts of line N (1), at least 1
     * @param k     friction factor of a sheave K (1), above 1: 1.09 plain, 1.04 roller bearing
     * @return the ratio (1)
     * @see "Wire Rope Users Manual, 4th edition, page 88"
     */
    public static double leadLine(int parts, double k) {
        Require.atLeast("parts of line", parts, 1, "1");
        Require.that(k > 1, "sheave factor is %s; accepted: above 1.", k);
        double power = Math.pow(k, parts);
        return power * (k - 1) / (power - 1);
    }

    /**
     * The working load of a wire-rope sling leg, Fmin KT KL / (Z g), Fmin = 0.356 d2 R.
     *
     * @param diameter  rope diameter d (m), positive
     * @param grade     rope grade R (Pa), positive, at most 1770 MPa counts
     * @param ferrule   loss at the ferrule KT (1)
     * @param legs      leg factor KL (1)
     * @param factor    design factor Z (1)
     * @return the working load as a force (N); tables print it divided by 9.81 in tonnes
     * @see "EN 13414-1, working load of slings"
     */
    public static double slingForce(double diameter, double grade, double ferrule, double legs, double factor) {
        double counted = Math.min(grade, 1.77e9);
        return 0.356 * diameter * diameter * counted * ferrule * legs / Require.positive("factor", factor, "1");
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

    /**
     * Warming of a brake that keeps all its heat, E / (m c).
     *
     * @param heat         heat E (J), zero or more
     * @param mass         mass of the brake m (kg), positive
     * @param heatCapacity heat capacity c (J/(kg K)), positive; steel 490
     * @return the warming (K)
     */
    public static double warming(double heat, double mass, double heatCapacity) {
        return heat / (Require.positive("brake mass", mass, "kg")
                * Require.positive("heat capacity", heatCapacity, "J/(kg K)"));
    }
}
