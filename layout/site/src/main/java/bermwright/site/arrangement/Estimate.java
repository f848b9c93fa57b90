// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

/**
 * What the quick engines say of an arrangement.
 *
 * @param shortfall by how much it fails to be allowed, in metres or what counts as much; none where nothing is seen
 *                  that refuses it
 * @param hours     machine hours (h)
 * @param soil      soil placed (m3)
 * @param tunnels   length of tunnels (m)
 * @param cut       soil cut for benches (m3)
 * @param warnings  warnings seen (1)
 */
record Estimate(double shortfall, double hours, double soil, double tunnels, double cut, int warnings) {
    /** What an arrangement that is not allowed counts more than any that is. */
    private static final double REFUSED = 10;
    private static final double A_METRE = 0.05;

    boolean isAllowed() {
        return shortfall <= 0;
    }

    /** One number to lessen: shares of a reference's figures, weighed. */
    double cost(Weights weights, Estimate reference) {
        double cost = weights.hours() * share(hours, reference.hours) + weights.soil() * share(soil, reference.soil)
                + weights.tunnels() * share(tunnels, reference.tunnels) + weights.cut() * share(cut, reference.cut)
                + weights.warnings() * warnings;
        return isAllowed() ? cost : cost + REFUSED + A_METRE * shortfall;
    }

    private static double share(double value, double reference) {
        return reference > 0 ? value / reference : 0;
    }
}
