// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import bermwright.foundation.Vec3;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * A force and its moment about the middle of the pivot line.
 *
 * @param force  the force (N), or of length one for an unknown
 * @param moment the moment (N m), or per newton for an unknown
 */
record Wrench(Vec3 force, Vec3 moment) {
    private static final double SINGULAR = 1e-9;

    /** A force at a point. */
    static Wrench at(Vec3 point, Vec3 force) {
        return new Wrench(force, point.cross(force));
    }

    /** A moment alone. */
    static Wrench couple(Vec3 moment) {
        return new Wrench(Vec3.ZERO, moment);
    }

    Wrench plus(Wrench other) {
        return new Wrench(force.plus(other.force), moment.plus(other.moment));
    }

    Wrench times(double factor) {
        return new Wrench(force.times(factor), moment.times(factor));
    }

    /**
     * How much of each of six unknowns brings a load into balance.
     *
     * @param unknowns six of them
     * @param load     what they must balance
     * @return six factors; all {@code NaN} where the six cannot balance every load
     */
    static double[] balance(List<Wrench> unknowns, Wrench load) {
        double[][] columns = new double[6][];
        for (int i = 0; i < 6; i++) {
            columns[i] = unknowns.get(i).six();
        }
        LUDecomposition split = new LUDecomposition(new Array2DRowRealMatrix(columns, false).transpose(), SINGULAR);
        DecompositionSolver solver = split.getSolver();
        if (!solver.isNonSingular()) {
            return new double[] {Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN};
        }
        return solver.solve(new ArrayRealVector(load.times(-1).six(), false)).toArray();
    }

    private double[] six() {
        return new double[] {force.x(), force.y(), force.z(), moment.x(), moment.y(), moment.z()};
    }
}
