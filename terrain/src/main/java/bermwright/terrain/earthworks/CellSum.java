// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.terrain.grid.ElevationGrid;

/**
 * Adds up the prisms between two surfaces, in units of cells; four triangles a cell, see the package.
 */
final class CellSum implements RingCells.Visitor {
    private final ElevationGrid before;
    private final ElevationGrid after;
    private double cut;
    private double fill;
    private double cutArea;
    private double fillArea;
    private double area;
    private double unknownArea;

    CellSum(ElevationGrid before, ElevationGrid after) {
        this.before = before;
        this.after = after;
    }

    private double difference(int row, int column) {
        return after.nodeHeight(row, column) - before.nodeHeight(row, column);
    }

    @Override
    public void whole(int row, int first, int last) {
        double southwest = difference(row, first);
        double northwest = difference(row + 1, first);
        double raised = 0;
        double lowered = 0;
        int raisedCells = 0;
        int loweredCells = 0;
        for (int column = first; column <= last; column++) {
            double southeast = difference(row, column + 1);
            double northeast = difference(row + 1, column + 1);
            double sum = southwest + southeast + northwest + northeast;
            if (southwest >= 0 && southeast >= 0 && northwest >= 0 && northeast >= 0) {
                raised += sum;
                raisedCells += sum > 0 ? 1 : 0;
                area++;
            } else if (southwest <= 0 && southeast <= 0 && northwest <= 0 && northeast <= 0) {
                lowered -= sum;
                loweredCells++;
                area++;
            } else if (Double.isNaN(sum)) {
                unknownArea++;
            } else {
                mixed(new double[] {southwest, southeast, northeast, northwest});
                area++;
            }
            southwest = southeast;
            northwest = northeast;
        }
        fill += raised / 4;
        cut += lowered / 4;
        fillArea += raisedCells;
        cutArea += loweredCells;
    }

    /** A whole cell with corners of both signs, anticlockwise from south-west. */
    private void mixed(double[] corners) {
        double middle = (corners[0] + corners[1] + corners[2] + corners[3]) / 4;
        for (int i = 0; i < 4; i++) {
            double a = corners[i];
            double b = corners[(i + 1) % 4];
            if (a == 0 && b == 0 && middle == 0) {
                continue;
            }
            double all = 0.25 * (a + b + middle) / 3;
            double[] positive = positiveOfTriangle(a, b, middle);
            fill += positive[0];
            cut += positive[0] - all;
            fillArea += positive[1];
            cutArea += 0.25 - positive[1];
        }
    }

    /** Volume above zero and area above zero of a triangle of area 1/4 with these heights at its corners. */
    private static double[] positiveOfTriangle(double a, double b, double c) {
        int above = (a > 0 ? 1 : 0) + (b > 0 ? 1 : 0) + (c > 0 ? 1 : 0);
        double all = 0.25 * (a + b + c) / 3;
        if (above == 3) {
            return new double[] {all, 0.25};
        }
        if (above == 0) {
            return new double[] {0, 0};
        }
        if (above == 1) {
            return a > 0 ? tip(a, b, c) : b > 0 ? tip(b, c, a) : tip(c, a, b);
        }
        double[] below = a <= 0 ? tip(-a, -b, -c) : b <= 0 ? tip(-b, -c, -a) : tip(-c, -a, -b);
        return new double[] {all + below[0], 0.25 - below[1]};
    }

    /** The part above zero where only the first corner is. */
    private static double[] tip(double top, double b, double c) {
        if (top == 0) {
            return new double[] {0, 0};
        }
        double area = 0.25 * top / (top - b) * (top / (top - c));
        return new double[] {area * top / 3, area};
    }

    @Override
    public void part(int row, int column, ClipShape shape) {
        double[] corners = {difference(row, column), difference(row, column + 1), difference(row + 1, column + 1),
            difference(row + 1, column)};
        double middle = (corners[0] + corners[1] + corners[2] + corners[3]) / 4;
        if (Double.isNaN(middle)) {
            unknownArea += shape.area();
            return;
        }
        area += shape.area();
        double south = 2 * middle - corners[0] - corners[1];
        double east = 2 * middle - corners[1] - corners[2];
        double north = 2 * middle - corners[2] - corners[3];
        double west = 2 * middle - corners[3] - corners[0];
        int sign = oneSign(corners);
        ClipShape right = shape.clipped(0, 1, -1);
        triangle(right.clipped(1, -1, -1), sign, corners[0], corners[1] - corners[0], south);
        triangle(right.clipped(-1, 1, 1), sign, corners[1] + east, -east, corners[2] - corners[1]);
        ClipShape left = shape.clipped(0, -1, 1);
        triangle(left.clipped(-1, 1, 1), sign, corners[3] + north, corners[2] - corners[3], -north);
        triangle(left.clipped(1, -1, -1), sign, corners[0], west, corners[3] - corners[0]);
    }

    /** Plus or minus one where all corners are on one side of zero or on it, else zero. */
    private static int oneSign(double[] corners) {
        boolean above = true;
        boolean below = true;
        for (double corner : corners) {
            above &= corner >= 0;
            below &= corner <= 0;
        }
        return above ? 1 : below ? -1 : 0;
    }

    /** A part of one triangle of a cell, the difference of heights being c + a u + b v there, of one sign if known. */
    private void triangle(ClipShape inside, int sign, double c, double a, double b) {
        if (inside.isEmpty() || c == 0 && a == 0 && b == 0) {
            return;
        }
        double total = inside.integral(c, a, b);
        if (sign > 0) {
            fill += total;
            fillArea += inside.area();
        } else if (sign < 0) {
            cut -= total;
            cutArea += inside.area();
        } else {
            ClipShape above = inside.clipped(c, a, b);
            double raised = above.integral(c, a, b);
            fill += raised;
            cut += raised - total;
            double aboveArea = above.area();
            fillArea += aboveArea;
            cutArea += inside.area() - aboveArea;
        }
    }

    void add(CellSum other) {
        cut += other.cut;
        fill += other.fill;
        cutArea += other.cutArea;
        fillArea += other.fillArea;
        area += other.area;
        unknownArea += other.unknownArea;
    }

    CutAndFill result(ElevationGrid grid) {
        double cell = grid.trueSpacing() * grid.trueSpacing();
        return new CutAndFill(Math.max(0, cut) * cell, Math.max(0, fill) * cell, cutArea * cell, fillArea * cell,
                area * cell, unknownArea * cell);
    }
}
