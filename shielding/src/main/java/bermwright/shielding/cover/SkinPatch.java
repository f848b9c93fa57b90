// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.foundation.Vec3;
import java.util.Arrays;
import java.util.function.BiFunction;
import java.util.function.DoubleUnaryOperator;

/**
 * A patch of skin as a lattice of points, each with the cone of soil it needs above it.
 *
 * <p>Over a convex patch the height of the highest cone has one summit, so the search climbs from the last answer.
 */
final class SkinPatch {
    private static final int FARTHER = 4;
    private final double[] x;
    private final double[] y;
    private final double[] z;
    private final int rows;
    private final int columns;
    private final double[] thickness;
    private final double thickest;
    private final Repose repose;
    private final double middleX;
    private final double middleY;
    private final double spread;
    private final double top;

    SkinPatch(int[] size, DoubleUnaryOperator thicknessOfRow, Repose repose, BiFunction<Double, Double, Vec3> at) {
        rows = size[0];
        columns = size[1];
        this.repose = repose;
        x = new double[rows * columns];
        y = new double[x.length];
        z = new double[x.length];
        thickness = new double[x.length];
        double sumX = 0;
        double sumY = 0;
        double highest = Double.NEGATIVE_INFINITY;
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                Vec3 p = at.apply(rows == 1 ? 0.5 : r / (rows - 1.0), columns == 1 ? 0.5 : c / (columns - 1.0));
                int i = r * columns + c;
                x[i] = p.x();
                y[i] = p.y();
                z[i] = p.z();
                thickness[i] = thicknessOfRow.applyAsDouble(rows == 1 ? 0.5 : r / (rows - 1.0));
                sumX += p.x();
                sumY += p.y();
                highest = Math.max(highest, p.z());
            }
        }
        middleX = sumX / x.length;
        middleY = sumY / x.length;
        double far = 0;
        for (int i = 0; i < x.length; i++) {
            far = Math.max(far, Math.hypot(x[i] - middleX, y[i] - middleY));
        }
        spread = far;
        top = highest;
        thickest = Arrays.stream(thickness).max().orElse(0);
    }

    int points() {
        return x.length;
    }

    /** No cone of this patch is higher than this. */
    double bound(double east, double north) {
        double away = Math.max(0, Math.hypot(east - middleX, north - middleY) - spread);
        return top + repose.rise(away, thickest);
    }

    /**
     * The point whose cone is highest, climbing from another; where no neighbour is higher it looks a few points
     * farther before it stops, since a ridge may run askew to the lattice.
     */
    int climb(double east, double north, int from) {
        int best = from;
        int next = look(east, north, best, 1);
        while (next != best) {
            best = next;
            next = look(east, north, best, 1);
            next = next == best ? look(east, north, best, FARTHER) : next;
        }
        return best;
    }

    private int look(double east, double north, int from, int reach) {
        int row = from / columns;
        int column = from % columns;
        // All columns of a tip are one point, from which the next row can be entered anywhere.
        int aside = rows > 1 && row == 0 ? columns : reach;
        int best = from;
        double height = at(from, east, north);
        for (int r = Math.max(0, row - reach); r <= Math.min(rows - 1, row + reach); r++) {
            for (int c = Math.max(0, column - aside); c <= Math.min(columns - 1, column + aside); c++) {
                double h = at(r * columns + c, east, north);
                if (h > height) {
                    height = h;
                    best = r * columns + c;
                }
            }
        }
        return best;
    }

    double at(int point, double east, double north) {
        double dx = east - x[point];
        double dy = north - y[point];
        return z[point] + repose.rise(Math.sqrt(dx * dx + dy * dy), thickness[point]);
    }
}
