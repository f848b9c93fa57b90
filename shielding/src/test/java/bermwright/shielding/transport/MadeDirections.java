// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.shielding.material.Material;

/**
 * How far from the line of what came in the protons go that it makes, by the mean cosine that the transport carries
 * them with: directions fall off evenly around that line, exp(k cos), with that mean.
 */
public final class MadeDirections {
    private static final int NEWTON_STEPS = 50;
    private static final double STRAIGHT = 0.9995;

    private static final int PROTON = 1;

    private final Medium medium;

    /** Directions of protons made in a material, on the standard grid. */
    public MadeDirections(Material material) {
        medium = new Medium(material, new EnergyGrid(Penetration.Resolution.STANDARD.pointsInDecade()));
    }

    /** Share for each steradian (1/sr) at a cosine from the line, for energy i of the grid. */
    public double share(int i, double cosine) {
        double k = concentration(Math.min(STRAIGHT, medium.cosine(PROTON, i)));
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
