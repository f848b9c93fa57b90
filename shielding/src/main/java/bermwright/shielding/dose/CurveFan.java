// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.shielding.transport.Intervals;

/** Several monotone curves over the same arguments, so that the place of an argument is looked for once. */
final class CurveFan {
    private final double[] x;
    private final Intervals intervals;
    private final int curves;
    /** By argument and curve, its value and its slope there. */
    private final double[] knots;

    /**
     * Curves through points, each a {@link MonotoneCurve}.
     *
     * @param x      arguments, rising, at least two
     * @param values for each curve its values at them
     */
    CurveFan(double[] x, double[]... values) {
        this.x = x.clone();
        intervals = new Intervals(x);
        curves = values.length;
        knots = new double[2 * x.length * curves];
        for (int c = 0; c < curves; c++) {
            double[] slopes = new MonotoneCurve(x, values[c]).slopes();
            for (int i = 0; i < x.length; i++) {
                knots[2 * (i * curves + c)] = values[c][i];
                knots[2 * (i * curves + c) + 1] = slopes[i];
            }
        }
    }

    /** Where an argument lies: the interval, what its two ends weigh, and how their slopes do. */
    record Spot(int low, double fromLow, double fromHigh, double bend, double back, double on) {
    }

    /** The place of an argument; outside the points that of the outermost. */
    Spot at(double argument) {
        int last = x.length - 1;
        boolean inside = argument > x[0] && argument < x[last];
        int low = inside ? intervals.at(argument) : argument <= x[0] ? 0 : last - 1;
        double h = x[low + 1] - x[low];
        double t = inside ? (argument - x[low]) / h : argument <= x[0] ? 0 : 1;
        double u = 1 - t;
        return new Spot(low, u * u * (1 + 2 * t), t * t * (3 - 2 * t), h * t * u, u, t);
    }

    /** A curve at a place. */
    double value(int curve, Spot spot) {
        int one = 2 * (spot.low * curves + curve);
        int other = one + 2 * curves;
        return spot.fromLow * knots[one] + spot.fromHigh * knots[other]
                + spot.bend * (spot.back * knots[one + 1] - spot.on * knots[other + 1]);
    }
}
