// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.numeric.Bracket;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Directions in a slab: Gauss points in the cosine, as many down as up, and how particles made at a mean angle spread
 * over them.
 *
 * <p>A made particle's cosine c to its parent is spread as exp(a c), the most even spread that has the wanted mean; the
 * kernel is averaged over the cells that the points stand for, so that none is lost and none is negative. Mean cosines
 * between two of the table share both.
 *
 * @see "Lewis and Miller (1984), Computational Methods of Neutron Transport, ch. 3: discrete ordinates"
 */
final class Ordinates {
    /** Directions down; as many go up. */
    static final int DOWN = 8;
    static final int COUNT = 2 * DOWN;
    /** Mean cosines that kernels stand ready for; the last is straight ahead. */
    static final double[] MEAN = {-1, -0.7, -0.35, 0, 0.25, 0.45, 0.6, 0.72, 0.81, 0.88, 0.93, 0.965, 1};
    private static final int PARTS = 6;

    private static final double[] COSINE = new double[COUNT];
    private static final double[] WEIGHT = new double[COUNT];
    private static final double[][][] KERNEL = new double[MEAN.length][][];

    static {
        GaussIntegrator gauss = new GaussIntegratorFactory().legendre(DOWN, 0, 1);
        for (int m = 0; m < DOWN; m++) {
            COSINE[m] = gauss.getPoint(m);
            WEIGHT[m] = gauss.getWeight(m);
            COSINE[m + DOWN] = -COSINE[m];
            WEIGHT[m + DOWN] = WEIGHT[m];
        }
        for (int c = 0; c < MEAN.length; c++) {
            KERNEL[c] = kernel(MEAN[c]);
        }
    }

    private Ordinates() {
    }

    /** Cosine to the way down, positive for the first half. */
    static double cosine(int m) {
        return COSINE[m];
    }

    /** Share of its half space that a direction stands for; each half adds up to one. */
    static double weight(int m) {
        return WEIGHT[m];
    }

    /**
     * Weights of the directions down that join their values by straight lines in the cosine, and go on beyond the
     * outermost ones.
     */
    static double[] line(double cosine) {
        int k = below(cosine);
        double[] weights = new double[DOWN];
        double w = (cosine - COSINE[k]) / (COSINE[k + 1] - COSINE[k]);
        weights[k] = 1 - w;
        weights[k + 1] = w;
        return weights;
    }

    /** The direction down from which on a cosine is joined: that below it, or the outermost pair's. */
    static int below(double cosine) {
        int k = 0;
        while (k < DOWN - 2 && COSINE[k + 1] < cosine) {
            k++;
        }
        return k;
    }

    /** The value at a cosine between, or beyond, those of the directions down, from the direction below it on. */
    static double between(double[] values, int k, double cosine) {
        double w = (cosine - COSINE[k]) / (COSINE[k + 1] - COSINE[k]);
        return (1 - w) * values[k] + w * values[k + 1];
    }

    /** Fluence per solid angle, in units of an even one, that one particle of a direction gives to another. */
    static double[][] kernel(int meanClass) {
        return KERNEL[meanClass];
    }

    /** The class at or below a mean cosine; the next one takes the share {@link #upper} tells. */
    static int lower(double mean) {
        int c = 0;
        while (c < MEAN.length - 2 && MEAN[c + 1] <= mean) {
            c++;
        }
        return c;
    }

    /** Share of the class above. */
    static double upper(int lower, double mean) {
        return Math.max(0, Math.min(1, (mean - MEAN[lower]) / (MEAN[lower + 1] - MEAN[lower])));
    }

    /** Factors by which what flies in one direction feeds another: the sum over from of kernel[to][from] psi[from]. */
    private static double[][] kernel(double mean) {
        double[][] kernel = new double[COUNT][COUNT];
        if (Math.abs(mean) == 1) {
            for (int m = 0; m < COUNT; m++) {
                kernel[mean > 0 ? m : (m + DOWN) % COUNT][m] = 1;
            }
            return kernel;
        }
        double a = steepness(mean);
        double[] edge = new double[DOWN + 1];
        for (int m = 0; m < DOWN; m++) {
            edge[m + 1] = edge[m] + WEIGHT[m];
        }
        for (int from = 0; from < COUNT; from++) {
            double all = 0;
            for (int to = 0; to < COUNT; to++) {
                for (int p = 0; p < PARTS * PARTS; p++) {
                    double u = place(edge, from, (p % PARTS + 0.5) / PARTS);
                    double v = place(edge, to, (p / PARTS + 0.5) / PARTS);
                    kernel[to][from] += even(a, u, v) * WEIGHT[to];
                }
                all += kernel[to][from];
            }
            for (int to = 0; to < COUNT; to++) {
                kernel[to][from] *= WEIGHT[from] / (all * WEIGHT[to]);
            }
        }
        return kernel;
    }

    private static double place(double[] edge, int m, double share) {
        int k = m % DOWN;
        double u = edge[k] + share * (edge[k + 1] - edge[k]);
        return m < DOWN ? u : -u;
    }

    /** Mean of exp(a c) over the azimuth between two cosines, less what all have in common. */
    private static double even(double a, double u, double v) {
        double across = a * Math.sqrt((1 - u * u) * (1 - v * v));
        double sum = 0;
        int turns = 32;
        for (int t = 0; t < turns; t++) {
            sum += Math.exp(a * u * v + across * Math.cos(Math.PI * (t + 0.5) / turns) - Math.abs(a));
        }
        return sum / turns;
    }

    /** The a whose exp(a c) has a mean cosine: coth a - 1/a. */
    static double steepness(double mean) {
        double size = Math.abs(mean);
        return Math.copySign(Bracket.halved(0, 1e4, 200,
                a -> (a < 1e-4 ? a / 3 : 1 / Math.tanh(a) - 1 / a) < size).low(), mean);
    }
}
