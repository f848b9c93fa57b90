// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.grid;

import bermwright.foundation.Point;
import bermwright.foundation.Require;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The ground as two triangles a cell, and straight cuts through it. */
final class TriangleCut {
    private TriangleCut() {
    }

    static double height(ElevationGrid grid, double east, double north) {
        GridFrame frame = grid.frame();
        double x = (east - frame.west()) / frame.spacing();
        double y = (north - frame.south()) / frame.spacing();
        if (!(x >= 0 && y >= 0 && x <= frame.columns() - 1 && y <= frame.rows() - 1)) {
            return Double.NaN;
        }
        int column = Math.min((int) x, frame.columns() - 2);
        int row = Math.min((int) y, frame.rows() - 2);
        double u = x - column;
        double v = y - row;
        double southwest = grid.nodeHeight(row, column);
        double northeast = grid.nodeHeight(row + 1, column + 1);
        return u >= v
                ? (1 - u) * southwest + (u - v) * grid.nodeHeight(row, column + 1) + v * northeast
                : (1 - v) * southwest + (v - u) * grid.nodeHeight(row + 1, column) + u * northeast;
    }

    static List<ProfilePoint> of(ElevationGrid grid, Point from, Point to) {
        double length = Require.positive("length of a cut", from.distance(to) * grid.metreScale(), "m");
        GridFrame frame = grid.frame();
        double x0 = (from.east() - frame.west()) / frame.spacing();
        double y0 = (from.north() - frame.south()) / frame.spacing();
        double x1 = (to.east() - frame.west()) / frame.spacing();
        double y1 = (to.north() - frame.south()) / frame.spacing();
        double[] columns = wholes(x0, x1, 0, frame.columns() - 1);
        double[] rows = wholes(y0, y1, 0, frame.rows() - 1);
        double[] diagonals = wholes(x0 - y0, x1 - y1, 1 - frame.rows(), frame.columns() - 1);
        double[] shares = new double[columns.length + rows.length + diagonals.length + 2];
        System.arraycopy(columns, 0, shares, 0, columns.length);
        System.arraycopy(rows, 0, shares, columns.length, rows.length);
        System.arraycopy(diagonals, 0, shares, columns.length + rows.length, diagonals.length);
        shares[shares.length - 1] = 1;
        Arrays.sort(shares);
        List<ProfilePoint> points = new ArrayList<>(shares.length);
        double before = -1;
        for (double t : shares) {
            if (t > before) {
                double east = t == 1 ? to.east() : from.east() + t * (to.east() - from.east());
                double north = t == 1 ? to.north() : from.north() + t * (to.north() - from.north());
                points.add(new ProfilePoint(t * length, new Point(east, north), height(grid, east, north)));
                before = t;
            }
        }
        return points;
    }

    /** The shares of the way from a to b at which the value is a whole number within bounds; ends left out. */
    private static double[] wholes(double a, double b, double least, double greatest) {
        double first = Math.max(least, Math.ceil(Math.min(a, b)));
        double last = Math.min(greatest, Math.floor(Math.max(a, b)));
        if (a == b || last < first) {
            return new double[0];
        }
        double[] shares = new double[(int) (last - first) + 1];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = Math.max(0, Math.min(1, (first + i - a) / (b - a)));
        }
        return shares;
    }
}
