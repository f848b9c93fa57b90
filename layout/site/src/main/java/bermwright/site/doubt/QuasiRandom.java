// SPDX-License-Identifier: Apache-2.0
package bermwright.site.doubt;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.apache.commons.math3.random.Well19937c;

/** Samples that fill the space of the inputs evenly: the sequence of Sobol, shifted as a whole by the seed. */
final class QuasiRandom {
    /** Standard deviations beyond which nothing is drawn. */
    static final double FARTHEST = 3.5;
    private static final double EDGE = 1e-9;

    private QuasiRandom() {
    }

    /** Points of the unit cube. */
    static double[][] even(int inputs, int samples, long seed) {
        SobolSequenceGenerator sequence = new SobolSequenceGenerator(Math.max(1, inputs));
        Well19937c chance = new Well19937c(seed);
        double[] shift = new double[inputs];
        for (int i = 0; i < inputs; i++) {
            shift[i] = chance.nextDouble();
        }
        double[][] points = new double[samples][inputs];
        for (int n = 0; n < samples; n++) {
            double[] next = sequence.nextVector();
            for (int i = 0; i < inputs; i++) {
                double at = next[i] + shift[i];
                points[n][i] = at - Math.floor(at);
            }
        }
        return points;
    }

    /** The same as standard normal numbers. */
    static double[][] normal(int inputs, int samples, long seed) {
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        double[][] points = even(inputs, samples, seed);
        for (double[] point : points) {
            for (int i = 0; i < inputs; i++) {
                double z = normal.inverseCumulativeProbability(Math.min(1 - EDGE, Math.max(EDGE, point[i])));
                point[i] = Math.max(-FARTHEST, Math.min(FARTHEST, z));
            }
        }
        return points;
    }
}
