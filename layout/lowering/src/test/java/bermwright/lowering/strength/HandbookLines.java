// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.strength;

import bermwright.foundation.Require;

/** Formulas of handbooks that our lines are held against. */
final class HandbookLines {
    private HandbookLines() {
    }

    /**
     * The sag of a level line, (H/w)(cosh(w l / 2H) - 1).
     *
     * @param weight weight per length w (N/m), positive
     * @param span   span l (m), positive
     * @param pull   level pull H (N), positive
     * @return the sag (m)
     */
    public static double levelSag(double weight, double span, double pull) {
        double a = parameter(weight, pull);
        return a * (Math.cosh(span / (2 * a)) - 1);
    }

    /**
     * The length of a level line, (2H/w) sinh(w l / 2H).
     *
     * @param weight weight per length w (N/m), positive
     * @param span   span l (m), positive
     * @param pull   level pull H (N), positive
     * @return the length (m)
     */
    public static double levelLength(double weight, double span, double pull) {
        double a = parameter(weight, pull);
        return 2 * a * Math.sinh(span / (2 * a));
    }

    /**
     * The greatest tension of a level line, H cosh(w l / 2H), at its ends.
     *
     * @param weight weight per length w (N/m), positive
     * @param span   span l (m), positive
     * @param pull   level pull H (N), positive
     * @return the tension (N)
     */
    public static double levelTension(double weight, double span, double pull) {
        return pull * Math.cosh(span / (2 * parameter(weight, pull)));
    }

    private static double parameter(double weight, double pull) {
        return Require.positive("level pull", pull, "N") / Require.positive("weight of line", weight, "N/m");
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
