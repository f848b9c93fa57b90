// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.shielding.material.Table;

/**
 * Tissues by how deep their parts lie in a person of published simple solids: skin, lens of the eye, red bone marrow
 * as the blood-forming organs, and all others of the effective dose, from stomach and lung to gonads and brain, in one.
 *
 * <p>A person is so much water in each direction around each point of the tissue, seen from all sides alike. Weights
 * add up to one: 0.12 each of red bone marrow, colon, lung, stomach, breast and remainder, 0.08 of gonads, 0.04 each
 * of bladder, oesophagus, liver and thyroid, 0.01 each of bone surface, brain, salivary glands and skin; the lens has
 * none.
 *
 * @see "weights: ICRP Publication 103 (2007), table 3, from memory; depths: the head of body-depths.csv"
 */
enum Tissue {
    /** Skin. */
    SKIN(0.01),
    /** Lens of the eye. */
    EYE(0),
    /** Red bone marrow. */
    MARROW(0.12),
    /** All others. */
    OTHER(0.87);

    /** How far the depths may be off: men are larger, ribs lie deeper (1, of the logarithm of the dose). */
    static final double DEPTH_SPREAD = 0.35;
    private static final double[][] ROWS = Table.numbers(Tissue.class, "body-depths.csv");

    private final double weight;

    Tissue(double weight) {
        this.weight = weight;
    }

    /** Tissue weight (1); all of them add up to 1. */
    double weight() {
        return weight;
    }

    /** How many depths of water there are, from the least. */
    static int depths() {
        return ROWS.length;
    }

    /** A depth of water (g/cm2), rising from 0. */
    static double depthGCm2(int node) {
        return ROWS[node][0];
    }

    /** Share of the tissue's points and directions behind a depth (1); they add up to 1. */
    double share(int node) {
        return ROWS[node][1 + ordinal()];
    }

    /**
     * Share of the whole body's dose, by weight, at some of the depths (1): what lies between two of them is shared so
     * that its mean stays.
     *
     * @param depths depths of water (g/cm2), rising
     */
    static double[] bodyShares(double[] depths) {
        double[] shares = new double[depths.length];
        for (int node = 0; node < depths(); node++) {
            double sum = 0;
            for (Tissue tissue : values()) {
                sum += tissue.weight * tissue.share(node);
            }
            double depth = Math.min(Math.max(depthGCm2(node), depths[0]), depths[depths.length - 1]);
            int k = 0;
            while (k < depths.length - 2 && depths[k + 1] < depth) {
                k++;
            }
            double part = (depth - depths[k]) / (depths[k + 1] - depths[k]);
            shares[k] += sum * (1 - part);
            shares[k + 1] += sum * part;
        }
        return shares;
    }
}
