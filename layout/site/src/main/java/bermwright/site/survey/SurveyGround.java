// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.HeightSource;
import bermwright.terrain.grid.NodeRange;

/**
 * The heights of a block and of a margin around it, with sums along its rows.
 *
 * <p>For sums heights are rounded to 1/4096 m: whole numbers below 2^53 add up without any rounding, so that no sum
 * hangs on where a block begins. What is missing or may not be built on stands infinitely high.
 */
final class SurveyGround {
    /** Steps of the rounded heights in a metre (1). */
    static final double STEPS = 4096;
    /** Winch frames and anchors stand on at least this much ground to either side of their middle (m). */
    private static final double GEAR_HALF = 1.5;

    /** How far about a node its peak is looked for (cells). */
    static final int NEAR = 3;

    final int margin;
    final int rows;
    final int stride;
    /** Heights (m); infinite where missing or not to be built on. */
    final double[] z;
    /** Sums of rounded heights, and of those times the column, west of each node; one more in each row than nodes. */
    final double[] sum;
    final double[] sumByColumn;
    /** Missing nodes west of each node. */
    final int[] gaps;
    boolean hasGaps;
    /** Rise of the ground about each node over its run (1); infinite where not known or not to be built on. */
    final double[] grade;
    /** Steps of a margin kept as a whole number (1). */
    static final double GEAR_STEP = 1.0 / (1 << 24);

    /** What the grade about each node leaves of gear's margin, in steps and rounded up; below zero where nothing. */
    final int[] gear;
    /** The highest ground within {@link #NEAR} rows and columns of each node (m); not within that of the edge. */
    final double[] peak;
    NodeRange block;

    private final HeightSource ground;
    private final SiteBounds bounds;
    private final int half;
    private final double perMoment;
    private double[] read = new double[0];

    /**
     * Room for blocks.
     *
     * @param ground the ground
     * @param bounds where nothing may be built
     * @param side   nodes of a block along each side (1)
     * @param margin nodes around it (1)
     */
    SurveyGround(HeightSource ground, SiteBounds bounds, int side, int margin) {
        this.ground = ground;
        this.bounds = bounds;
        this.margin = margin;
        this.rows = side + 2 * margin;
        this.stride = rows;
        int size = Math.multiplyExact(rows, stride);
        z = new double[size];
        grade = new double[size];
        gear = new int[size];
        peak = new double[size];
        sum = new double[rows * (stride + 1)];
        sumByColumn = new double[rows * (stride + 1)];
        gaps = new int[rows * (stride + 1)];
        half = gearCells(ground.trueSpacing());
        double moment = 0;
        for (int i = -half; i <= half; i++) {
            moment += (double) i * i * (2 * half + 1);
        }
        perMoment = 1 / (moment * ground.trueSpacing());
    }

    /** How many cells about a node its grade is taken from (1). */
    static int gearCells(double spacing) {
        return Math.max(1, (int) Math.round(GEAR_HALF / spacing));
    }

    /** True distance between nodes (m). */
    double spacing() {
        return ground.trueSpacing();
    }

    void fill(NodeRange nodes) {
        block = nodes;
        GridFrame frame = ground.frame();
        NodeRange there = nodes.widened(margin, frame);
        if (read.length < there.nodes()) {
            read = new double[(int) there.nodes()];
        }
        ground.read(there, read);
        int south = nodes.firstRow() - margin;
        int west = nodes.firstColumn() - margin;
        hasGaps = false;
        for (int r = 0; r < rows; r++) {
            int from = (south + r - there.firstRow()) * there.columns() + west - there.firstColumn();
            boolean inside = south + r >= there.firstRow() && south + r < there.firstRow() + there.rows();
            row(r, inside, from, there.firstColumn() - west, there.firstColumn() + there.columns() - west);
        }
        bounds.close(frame, this, south, west);
        peaks();
        grades();
    }

    /** Whether anything within the margin about a strip of cells is not known. */
    boolean gapsNear(int row, int column, int count) {
        boolean near = false;
        for (int r = row; r <= row + 2 * margin; r++) {
            int line = r * (stride + 1) + column;
            near |= gaps[line + count + 2 * margin] > gaps[line];
        }
        return near;
    }

    /** Takes over a row; the columns from first to end are in the file. */
    private void row(int r, boolean inside, int from, int first, int end) {
        double total = 0;
        double byColumn = 0;
        int missing = 0;
        int at = r * (stride + 1);
        for (int c = 0; c < stride; c++) {
            double h = inside && c >= first && c < end ? read[from + c] : Double.NaN;
            sum[at + c] = total;
            sumByColumn[at + c] = byColumn;
            gaps[at + c] = missing;
            if (Double.isNaN(h)) {
                z[r * stride + c] = Double.POSITIVE_INFINITY;
                missing++;
            } else {
                z[r * stride + c] = h;
                double steps = Math.rint(h * STEPS);
                total += steps;
                byColumn += c * steps;
            }
        }
        sum[at + stride] = total;
        sumByColumn[at + stride] = byColumn;
        gaps[at + stride] = missing;
        hasGaps |= missing > 0;
    }

    private void grades() {
        java.util.Arrays.fill(grade, Double.POSITIVE_INFINITY);
        java.util.Arrays.fill(gear, -1);
        for (int r = half; r < rows - half; r++) {
            for (int c = half; c < stride - half; c++) {
                int at = r * stride + c;
                grade[at] = grade(at);
                double margin = gearMargin(at);
                gear[at] = margin < 0 ? -1 : (int) Math.ceil(margin / GEAR_STEP);
            }
        }
    }

    /** What the grade about a node leaves of gear's margin (1). */
    double gearMargin(int at) {
        return 1 - grade[at] / LaidGroup.GEAR_GRADE;
    }

    /**
     * Rise over run of the plane through the nodes about a node that is not at the edge (1); infinite where not known
     * or not to be built on.
     */
    private double grade(int at) {
        double e = 0;
        double n = 0;
        for (int i = 1; i <= half; i++) {
            for (int j = -half; j <= half; j++) {
                e += i * (z[at + j * stride + i] - z[at + j * stride - i]);
                n += i * (z[at + i * stride + j] - z[at - i * stride + j]);
            }
        }
        e *= perMoment;
        n *= perMoment;
        double rise = Math.sqrt(e * e + n * n) + (z[at] - z[at]);
        return Double.isNaN(rise) ? Double.POSITIVE_INFINITY : rise;
    }

    private void peaks() {
        double[] lines = grade;
        for (int i = NEAR; i < z.length - NEAR; i++) {
            double beside = Math.max(Math.max(z[i - 1], z[i + 1]), Math.max(z[i - 2], z[i + 2]));
            lines[i] = Math.max(Math.max(beside, z[i]), Math.max(z[i - NEAR], z[i + NEAR]));
        }
        int one = stride;
        int two = 2 * stride;
        int three = NEAR * stride;
        for (int i = three; i < z.length - three; i++) {
            double beside = Math.max(Math.max(lines[i - one], lines[i + one]), Math.max(lines[i - two],
                    lines[i + two]));
            peak[i] = Math.max(Math.max(beside, lines[i]), Math.max(lines[i - three], lines[i + three]));
        }
    }

    /** Where a node of the block stands in the arrays. */
    int place(int row, int column) {
        return (row + margin) * stride + column + margin;
    }
}
