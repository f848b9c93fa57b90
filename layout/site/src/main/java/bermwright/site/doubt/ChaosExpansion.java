// SPDX-License-Identifier: Apache-2.0
package bermwright.site.doubt;

import bermwright.foundation.Require;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;

/**
 * A surrogate of a figure: a sum of products of orthonormal polynomials of its inputs, the terms chosen one by one by
 * what is left (orthogonal matching) as long as the left-out error falls. Shares of the variance follow from its
 * coefficients.
 *
 * <p>The error is that of leaving one sample out, as a share of the variance, in closed form.
 *
 * @see "Sudret (2008), Reliability Engineering and System Safety 93, 964; Blatman and Sudret (2011), J. Comput. Phys.
 *     230, 2345"
 */
final class ChaosExpansion {
    /** Terms tried without gain before the search stops. */
    private static final int PATIENCE = 12;
    private static final int MOST_TERMS = 150;
    /** Samples wanted for each term. */
    private static final int SAMPLES_A_TERM = 3;
    private static final int GROUPS = 10;
    private static final double TINY = 1e-12;

    private final Family family;
    private final List<int[]> terms;
    private final double[] factors;
    private final double[][] leftOut;
    private final double error;

    private ChaosExpansion(Family family, List<int[]> terms, Solved solved, double error) {
        this.family = family;
        this.terms = terms;
        this.factors = solved.factors;
        this.leftOut = solved.leftOut;
        this.error = error;
    }

    /** Polynomials that are orthonormal under the inputs' distribution. */
    enum Family {
        /** Standard normal inputs. */
        HERMITE,
        /** Inputs even on -1 to 1. */
        LEGENDRE;

        double[] upTo(int degree, double x) {
            double[] p = new double[degree + 1];
            p[0] = 1;
            if (degree > 0) {
                p[1] = x;
            }
            for (int k = 1; k < degree; k++) {
                p[k + 1] = this == HERMITE ? x * p[k] - k * p[k - 1]
                        : ((2 * k + 1) * x * p[k] - k * p[k - 1]) / (k + 1);
            }
            double norm = 1;
            for (int k = 1; k <= degree; k++) {
                norm *= k;
                p[k] *= this == HERMITE ? 1 / Math.sqrt(norm) : Math.sqrt(2 * k + 1);
            }
            return p;
        }
    }

    /**
     * Which products are tried.
     *
     * @param family   the polynomials
     * @param degree   greatest total degree
     * @param together most inputs in one product
     */
    record Shape(Family family, int degree, int together) {
    }

    private record Solved(double[] factors, double[][] leftOut) {
    }

    /**
     * Fits samples.
     *
     * @param x     inputs, one row a sample, in the family's own scale
     * @param y     figures
     * @param shape what is tried
     * @return the surrogate
     */
    static ChaosExpansion fit(double[][] x, double[] y, Shape shape) {
        Require.that(x.length == y.length && x.length > 2, "%s samples of inputs and %s of the figure do not fit",
                x.length, y.length);
        List<int[]> tried = products(x[0].length, shape);
        double[][] columns = columns(x, tried, shape);
        Choice choice = new Choice(columns, y);
        List<int[]> chosen = choice.terms.stream().map(tried::get).toList();
        double[][] used = choice.terms.stream().map(c -> columns[c]).toArray(double[][]::new);
        return new ChaosExpansion(shape.family, chosen, solved(used, y), choice.error);
    }

    /** Products as pairs of input and degree, one after the other; the constant first. */
    private static List<int[]> products(int inputs, Shape shape) {
        List<int[]> all = new ArrayList<>();
        all.add(new int[0]);
        grow(all, new int[0], new int[] {0, inputs}, shape.degree, shape.together);
        return all;
    }

    private static void grow(List<int[]> all, int[] sofar, int[] range, int left, int together) {
        if (together == 0) {
            return;
        }
        for (int i = range[0]; i < range[1]; i++) {
            for (int degree = 1; degree <= left; degree++) {
                int[] next = java.util.Arrays.copyOf(sofar, sofar.length + 2);
                next[sofar.length] = i;
                next[sofar.length + 1] = degree;
                all.add(next);
                grow(all, next, new int[] {i + 1, range[1]}, left - degree, together - 1);
            }
        }
    }

    private static double[][] columns(double[][] x, List<int[]> products, Shape shape) {
        double[][] columns = new double[products.size()][x.length];
        for (int n = 0; n < x.length; n++) {
            double[][] powers = new double[x[n].length][];
            for (int i = 0; i < powers.length; i++) {
                powers[i] = shape.family.upTo(shape.degree, x[n][i]);
            }
            for (int c = 0; c < columns.length; c++) {
                columns[c][n] = product(products.get(c), powers);
            }
        }
        return columns;
    }

    private static double product(int[] term, double[][] powers) {
        double value = 1;
        for (int i = 0; i < term.length; i += 2) {
            value *= powers[term[i]][term[i + 1]];
        }
        return value;
    }

    /** Chooses terms by what they explain of the rest, and stops where the left-out error is least. */
    private static final class Choice {
        private final List<Integer> terms = new ArrayList<>();
        private double error = Double.POSITIVE_INFINITY;

        Choice(double[][] columns, double[] y) {
            double[] rest = y.clone();
            double[] leverage = new double[y.length];
            double spread = variance(y);
            List<double[]> square = new ArrayList<>();
            List<Integer> order = new ArrayList<>();
            int best = 0;
            int most = Math.min(Math.min(MOST_TERMS, columns.length), Math.max(2, y.length / SAMPLES_A_TERM));
            while (order.size() < most && order.size() - best < PATIENCE) {
                int next = order.isEmpty() ? 0 : strongest(columns, rest, order);
                double[] unit = next < 0 ? new double[0] : squared(columns[next], square);
                if (unit.length == 0) {
                    break;
                }
                square.add(unit);
                order.add(next);
                double part = dot(unit, rest);
                double out = 0;
                for (int n = 0; n < y.length; n++) {
                    rest[n] -= part * unit[n];
                    leverage[n] += unit[n] * unit[n];
                    double one = rest[n] / Math.max(TINY, 1 - leverage[n]);
                    out += one * one / y.length;
                }
                double now = spread > 0 ? out / spread : 0;
                if (now < error * (1 - 1e-6)) {
                    error = now;
                    best = order.size();
                }
                if (now < TINY) {
                    break;
                }
            }
            terms.addAll(order.subList(0, Math.max(1, best)));
        }

        private static int strongest(double[][] columns, double[] rest, List<Integer> taken) {
            int best = -1;
            double most = 0;
            for (int c = 0; c < columns.length; c++) {
                double size = dot(columns[c], columns[c]);
                double here = size > 0 ? Math.abs(dot(columns[c], rest)) / Math.sqrt(size) : 0;
                if (here > most && !taken.contains(c)) {
                    most = here;
                    best = c;
                }
            }
            return best;
        }

        /** The column made square to those before and of length one; empty where nothing of it is left. */
        private static double[] squared(double[] column, List<double[]> before) {
            double[] unit = column.clone();
            for (int pass = 0; pass < 2; pass++) {
                for (double[] other : before) {
                    double part = dot(other, unit);
                    for (int n = 0; n < unit.length; n++) {
                        unit[n] -= part * other[n];
                    }
                }
            }
            double size = Math.sqrt(dot(unit, unit));
            if (!(size > 1e-8 * Math.sqrt(dot(column, column)))) {
                return new double[0];
            }
            for (int n = 0; n < unit.length; n++) {
                unit[n] /= size;
            }
            return unit;
        }
    }

    private static Solved solved(double[][] used, double[] y) {
        double[][] leftOut = new double[GROUPS][];
        for (int g = 0; g < GROUPS; g++) {
            leftOut[g] = solved(used, y, g);
        }
        return new Solved(solved(used, y, -1), leftOut);
    }

    private static double[] solved(double[][] used, double[] y, int without) {
        List<double[]> rows = new ArrayList<>();
        List<Double> right = new ArrayList<>();
        for (int n = 0; n < y.length; n++) {
            if (n % GROUPS != without) {
                double[] row = new double[used.length];
                for (int c = 0; c < row.length; c++) {
                    row[c] = used[c][n];
                }
                rows.add(row);
                right.add(y[n]);
            }
        }
        QRDecomposition qr = new QRDecomposition(new Array2DRowRealMatrix(rows.toArray(double[][]::new), false), TINY);
        return qr.getSolver().isNonSingular() ? qr.getSolver().solve(new ArrayRealVector(right.stream()
                .mapToDouble(d -> d).toArray(), false)).toArray() : new double[used.length];
    }

    /** The left-out error as a share of the variance (1); 0 where the figure does not vary. */
    double error() {
        return Double.isFinite(error) ? error : 0;
    }

    /** The figure at some inputs. */
    double at(double[] x) {
        double sum = 0;
        int degree = terms.stream().mapToInt(ChaosExpansion::highest).max().orElse(0);
        double[][] powers = new double[x.length][];
        for (int i = 0; i < x.length; i++) {
            powers[i] = family.upTo(degree, x[i]);
        }
        for (int t = 0; t < factors.length; t++) {
            sum += factors[t] * product(terms.get(t), powers);
        }
        return sum;
    }

    private static int highest(int[] term) {
        int most = 0;
        for (int i = 1; i < term.length; i += 2) {
            most = Math.max(most, term[i]);
        }
        return most;
    }

    /**
     * The share that one group of inputs has in the variance.
     *
     * @param first what it makes by itself (1)
     * @param total what is left of it together with others too (1)
     * @param error what both may be off by: scatter over tenths of the samples left out, and what the surrogate does
     *              not explain (1)
     */
    record Share(double first, double total, double error) {
    }

    /** The share of a group of inputs. */
    Share share(boolean[] group) {
        double[] all = part(factors, group);
        double squares = 0;
        for (double[] out : leftOut) {
            double[] one = part(out, group);
            squares += Math.max(Math.pow(one[0] - all[0], 2), Math.pow(one[1] - all[1], 2));
        }
        return new Share(all[0], all[1], Math.sqrt((GROUPS - 1.0) / GROUPS * squares) + Math.min(1, error()));
    }

    private double[] part(double[] coefficients, boolean[] group) {
        double first = 0;
        double total = 0;
        double sum = 0;
        for (int t = 0; t < coefficients.length; t++) {
            int[] term = terms.get(t);
            int in = 0;
            for (int i = 0; i < term.length; i += 2) {
                in += group[term[i]] ? 1 : 0;
            }
            double square = term.length == 0 ? 0 : coefficients[t] * coefficients[t];
            sum += square;
            first += in > 0 && 2 * in == term.length ? square : 0;
            total += in > 0 ? square : 0;
        }
        return sum > 0 ? new double[] {first / sum, total / sum} : new double[2];
    }

    static double variance(double[] y) {
        double mean = 0;
        for (double one : y) {
            mean += one / y.length;
        }
        double sum = 0;
        for (double one : y) {
            sum += (one - mean) * (one - mean) / y.length;
        }
        return sum;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int n = 0; n < a.length; n++) {
            sum += a[n] * b[n];
        }
        return sum;
    }
}
