// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.foundation.Require;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.PointValuePair;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;

/**
 * The cheapest way to carry what sources have to where it is wanted: least sum of cost times amount, no source giving
 * more than it has, each want met. A true optimum, by the simplex method.
 *
 * <p>Where there is not enough, or no way, as much as possible is carried and the rest is short.
 *
 * @param supply what each source has, zero or more
 * @param demand what each sink wants, zero or more
 * @param cost   cost per amount, sources x sinks, zero or more; infinite where there is no way
 */
record TransportProblem(double[] supply, double[] demand, double[][] cost) {
    private static final int MOST_STEPS = 100_000;
    /** Amounts below this share of the whole are rounding of the solver. */
    private static final double DUST = 1e-9;
    /** Being short costs so many times the dearest way, so that nothing stays short that can be carried. */
    private static final double SHORT_FACTOR = 1000;

    TransportProblem {
        Require.that(cost.length == supply.length, "%s rows of cost for %s sources.", cost.length, supply.length);
        for (double[] row : cost) {
            Require.that(row.length == demand.length, "%s costs in a row for %s sinks.", row.length, demand.length);
            Arrays.stream(row).forEach(c -> Require.that(c >= 0, "a cost is %s; accepted: 0 or more.", c));
        }
        Arrays.stream(supply).forEach(s -> Require.notNegative("supply", s, "1"));
        Arrays.stream(demand).forEach(d -> Require.notNegative("demand", d, "1"));
    }

    /**
     * An allocation.
     *
     * @param amount   what is carried, sources x sinks
     * @param shortage what stays short at each sink
     * @param cost     cost of all that is carried
     */
    record Allocation(double[][] amount, double[] shortage, double cost) {
    }

    /** The cheapest allocation. */
    Allocation cheapest() {
        int sources = supply.length;
        int sinks = demand.length;
        double whole = Arrays.stream(demand).sum();
        if (sinks == 0 || !(whole > 0)) {
            return new Allocation(new double[sources][sinks], new double[sinks], 0);
        }
        double dearest = Arrays.stream(cost).flatMapToDouble(Arrays::stream).filter(Double::isFinite).max().orElse(0);
        double unit = dearest > 0 ? dearest : 1;
        int variables = sources * sinks + sinks;
        double[] objective = new double[variables];
        List<LinearConstraint> constraints = new ArrayList<>();
        for (int i = 0; i < sources; i++) {
            double[] row = new double[variables];
            for (int j = 0; j < sinks; j++) {
                boolean way = Double.isFinite(cost[i][j]);
                objective[i * sinks + j] = way ? cost[i][j] / unit : 0;
                row[i * sinks + j] = 1;
                if (!way) {
                    double[] none = new double[variables];
                    none[i * sinks + j] = 1;
                    constraints.add(new LinearConstraint(none, Relationship.LEQ, 0));
                }
            }
            constraints.add(new LinearConstraint(row, Relationship.LEQ, supply[i] / whole));
        }
        for (int j = 0; j < sinks; j++) {
            double[] column = new double[variables];
            for (int i = 0; i < sources; i++) {
                column[i * sinks + j] = 1;
            }
            column[sources * sinks + j] = 1;
            objective[sources * sinks + j] = SHORT_FACTOR;
            constraints.add(new LinearConstraint(column, Relationship.EQ, demand[j] / whole));
        }
        PointValuePair best = new SimplexSolver().optimize(new MaxIter(MOST_STEPS),
                new LinearObjectiveFunction(objective, 0), new LinearConstraintSet(constraints), GoalType.MINIMIZE,
                new NonNegativeConstraint(true));
        return allocation(best.getPointRef(), whole);
    }

    private Allocation allocation(double[] point, double whole) {
        int sinks = demand.length;
        double[][] amount = new double[supply.length][sinks];
        double[] shortage = new double[sinks];
        double total = 0;
        for (int i = 0; i < supply.length; i++) {
            for (int j = 0; j < sinks; j++) {
                double share = point[i * sinks + j];
                amount[i][j] = share > DUST ? share * whole : 0;
                total += amount[i][j] > 0 ? amount[i][j] * cost[i][j] : 0;
            }
        }
        for (int j = 0; j < sinks; j++) {
            double share = point[supply.length * sinks + j];
            shortage[j] = share > DUST ? share * whole : 0;
        }
        return new Allocation(amount, shortage, total);
    }
}
