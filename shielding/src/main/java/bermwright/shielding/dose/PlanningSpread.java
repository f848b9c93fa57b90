// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

/**
 * Spread of planning doses by depth, read from the distance between published calculations: cosmic rays 25 % open,
 * 35 % at 100 g/cm2, 50 % at 300, a factor two from 500; of the stand-in that there was before transport.
 */
final class PlanningSpread {
    private static final double[] COSMIC_DEPTH = {0, 500, 1000, 2000, 3000, 4000, 5000};
    private static final double[] COSMIC_SHARE = {0.25, 0.30, 0.35, 0.43, 0.5, 0.75, 1.0};

    private static final MonotoneCurve COSMIC = new MonotoneCurve(COSMIC_DEPTH, COSMIC_SHARE);

    private PlanningSpread() {
    }

    static Band cosmic(double arealDensity) {
        return band(COSMIC, arealDensity);
    }

    private static Band band(MonotoneCurve curve, double depth) {
        double share = curve.at(depth);
        return new Band(1 / (1 + share), 1 + share);
    }
}
