// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.shielding.material.Material;

/**
 * How far from the line of what came in the hadrons go that it makes, by the mean cosine that the transport carries
 * them with: directions fall off evenly around that line, exp(k cos), with that mean.
 */
public final class MadeDirections {
    private static final int NEWTON_STEPS = 50;
    private static final double STRAIGHT = 0.9995;

    private final Medium medium;
    private final int hadron;

    /** Directions of protons made in a material, on the standard grid. */
    public static MadeDirections ofProtons(Material material) {
        return new MadeDirections(new Medium(material, new EnergyGrid(
                Penetration.Resolution.STANDARD.pointsInDecade())), 1);
    }

    private MadeDirections(Medium medium, int hadron) {
        this.medium = medium;
        this.hadron = hadron;
    }

    /** Share for each steradian (1/sr) at a cosine from the line, for energy i of the grid. */
    public double share(int i, double cosine) {
        double k = concentration(Math.min(STRAIGHT, medium.cosine(hadron, i)));
        return k / (2 * Math.PI * -Math.expm1(-2 * k)) * Math.exp(k * (cosine - 1));
    }

    /** The k whose mean, coth k - 1/k, is a given cosine. */
    static double concentration(double cosine) {
        double k = 1 / (1 - cosine);
        for (int i = 0; i < NEWTON_STEPS; i++) {
            double sine = Math.sinh(Math.min(k, 300));
            k -= (1 / Math.tanh(k) - 1 / k - cosine) / (1 / (k * k) - 1 / (sine * sine));
        }
        return k;
    }
}
