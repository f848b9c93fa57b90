// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.foundation.Require;

/** A positive function given by points, joined by power laws and continued at both ends by the last one or flat. */
public final class LogTable {
    private final double[] logX;
    private final double[] logY;
    private final Ends ends;

    /** What a table gives outside its points. */
    public enum Ends {
        /** The value of the outermost point. */
        FLAT,
        /** The power law of the outermost interval. */
        CONTINUED
    }

    /**
     * A table from points.
     *
     * @param x    arguments, positive and rising, at least two
     * @param y    values, positive, as many
     * @param ends what holds outside the points
     * @throws IllegalArgumentException if arguments do not rise or a value is not positive
     */
    public LogTable(double[] x, double[] y, Ends ends) {
        Require.that(x.length == y.length && x.length >= 2, "%s arguments and %s values; accepted: two or more of each",
                x.length, y.length);
        this.ends = ends;
        logX = new double[x.length];
        logY = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            Require.positive("argument", x[i], "1");
            Require.positive("value", y[i], "1");
            logX[i] = Math.log(x[i]);
            logY[i] = Math.log(y[i]);
            Require.that(i == 0 || logX[i] > logX[i - 1], "argument %s does not rise", x[i]);
        }
    }

    /**
     * The value at an argument.
     *
     * @param x argument, positive
     * @return the value, positive
     */
    public double at(double x) {
        double log = Math.log(x);
        if (ends == Ends.FLAT && (log <= logX[0] || log >= logX[logX.length - 1])) {
            return Math.exp(log <= logX[0] ? logY[0] : logY[logY.length - 1]);
        }
        int low = 0;
        int high = logX.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (logX[middle] <= log) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.exp(logY[low] + (logY[high] - logY[low]) * (log - logX[low]) / (logX[high] - logX[low]));
    }
}
