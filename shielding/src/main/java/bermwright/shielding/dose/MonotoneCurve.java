// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.shielding.transport.Intervals;

/**
 * A curve through points that never overshoots: cubic pieces whose slopes are the weighted harmonic means of the
 * neighbouring chords, none where the chords change sign; outside the points the outermost value holds.
 *
 * @see "Fritsch and Butland (1984), SIAM J. Sci. Stat. Comput. 5, 300"
 */
final class MonotoneCurve {
    private final double[] x;
    private final double[] y;
    private final double[] slope;
    private final Intervals intervals;

    MonotoneCurve(double[] x, double[] y) {
        this.x = x.clone();
        this.y = y.clone();
        intervals = new Intervals(x);
        int last = x.length - 1;
        slope = new double[x.length];
        for (int i = 1; i < last; i++) {
            double left = chord(i - 1);
            double right = chord(i);
            if (left * right > 0) {
                double wide = 2 * (x[i + 1] - x[i]) + (x[i] - x[i - 1]);
                double narrow = (x[i + 1] - x[i]) + 2 * (x[i] - x[i - 1]);
                slope[i] = (wide + narrow) / (wide / left + narrow / right);
            }
        }
        slope[0] = chord(0);
        slope[last] = chord(last - 1);
    }

    /** The curve at an argument. */
    double at(double argument) {
        int last = x.length - 1;
        if (argument <= x[0] || argument >= x[last]) {
            return argument <= x[0] ? y[0] : y[last];
        }
        int low = intervals.at(argument);
        int high = low + 1;
        double h = x[high] - x[low];
        double t = (argument - x[low]) / h;
        double u = 1 - t;
        return u * u * (1 + 2 * t) * y[low] + t * t * (3 - 2 * t) * y[high]
                + h * t * u * (u * slope[low] - t * slope[high]);
    }

    /** The slope at each of its points. */
    double[] slopes() {
        return slope.clone();
    }

    private double chord(int i) {
        return (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
    }
}
