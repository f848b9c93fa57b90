// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import java.util.Arrays;

/**
 * The planes of all beds for a strip of cells beside each other, and what slopes and the ground under the gear leave of
 * each heading's score: sums along the rows of the ground, for all cells of the strip at once.
 */
final class StripBounds {
    /** Rounding never takes a heading out: a bound lies this much higher (1). */
    private static final double SURE = 1e-9;
    /** Cells of a strip at most (1). */
    static final int CELLS = 256;

    private final SurveyGround ground;
    private final Kernel[] kernels;
    private final int headings;
    private final int hulls;
    private final int beds;
    private final double spacing;
    private final double[][] riseEast;
    private final double[][] riseNorth;
    private final double[][] height;
    /** By heading, the least margin of slopes and gear. */
    private final double[][] bound;
    private final double[] base = new double[CELLS];
    private final double[] over = new double[CELLS];
    private final double[] overBed = new double[CELLS];
    private final double[] total = new double[CELLS];
    private final double[] byColumn = new double[CELLS];
    private final double[] byRow = new double[CELLS];
    private final int[] missing = new int[CELLS];
    private final int[] gear = new int[CELLS];
    private int cells;

    /**
     * Bounds for strips of a ground.
     *
     * @param ground    the ground
     * @param kernels   by heading, one for each hull
     * @param headings  how many headings (1)
     * @param symmetric whether half a turn gives the same beds
     */
    StripBounds(SurveyGround ground, Kernel[] kernels, int headings, boolean symmetric) {
        this.ground = ground;
        this.kernels = kernels;
        this.headings = headings;
        hulls = kernels.length / headings;
        spacing = ground.spacing();
        beds = symmetric && headings % 2 == 0 ? headings / 2 : kernels.length;
        riseEast = new double[beds][CELLS];
        riseNorth = new double[beds][CELLS];
        height = new double[beds][CELLS];
        bound = new double[headings][CELLS];
    }

    /** Works out a strip of cells of the block that the ground was filled with. */
    void fill(int row, int from, int count) {
        planes(row, from, count);
        for (int k = 0; k < headings; k++) {
            double[] least = bound[k];
            Arrays.fill(least, 0, count, 1);
            for (int i = k * hulls; i < (k + 1) * hulls; i++) {
                slopes(kernels[i], riseEast[i % beds], riseNorth[i % beds], least, count);
                gear(kernels[i].spots, ground.place(row, from), least, count);
            }
        }
    }

    /** Lowers the bounds to what the foremost nodes of beds and sweeps leave. */
    void lower(int row, int from, int count) {
        cells = count;
        int at = ground.place(row, from);
        for (int b = 0; b < beds; b++) {
            Kernel k = kernels[b];
            for (int c = 0; c < count; c++) {
                base[c] = height[b][c] - riseEast[b][c] * k.meanColumn * spacing - riseNorth[b][c] * k.meanRow
                        * spacing;
            }
            Arrays.fill(overBed, 0, count, 0);
            stands(k.bed, overBed, at, b);
            for (int i = b; i < kernels.length; i += beds) {
                System.arraycopy(overBed, 0, over, 0, count);
                stands(kernels[i].sweep, over, at, b);
                double[] least = bound[i / hulls];
                double limit = k.hull.allowance();
                for (int c = 0; c < count; c++) {
                    double margin = 1 - over[c] / limit + SURE;
                    least[c] = margin >= least[c] ? least[c] : margin;
                }
            }
        }
    }

    /** What stands at the foremost nodes over the skin, but for rounding; not a number where it is not known. */
    private void stands(Kernel.Nodes nodes, double[] highest, int at, int bed) {
        for (int n = 0; n < nodes.foremost; n += 2) {
            stand(nodes, n, highest, at, bed);
        }
    }

    private void stand(Kernel.Nodes nodes, int i, double[] highest, int at, int bed) {
        int count = cells;
        int j = Math.min(i + 1, nodes.foremost - 1);
        double[] z = ground.z;
        double[] east = riseEast[bed];
        double[] north = riseNorth[bed];
        double[] planes = base;
        int p = at + nodes.offset[i];
        int q = at + nodes.offset[j];
        double xi = nodes.x[i];
        double yi = nodes.y[i];
        double si = nodes.skin[i];
        double xj = nodes.x[j];
        double yj = nodes.y[j];
        double sj = nodes.skin[j];
        // The greater of two as their mean and half their difference: several times as fast as the function for it.
        for (int c = 0; c < count; c++) {
            double one = z[p + c] - (planes[c] + east[c] * xi + north[c] * yi) - si - highest[c];
            double more = (one + Math.abs(one)) * 0.5;
            double two = z[q + c] - (planes[c] + east[c] * xj + north[c] * yj) - sj - highest[c] - more;
            highest[c] = highest[c] + more + (two + Math.abs(two)) * 0.5;
        }
    }

    /**
     * By cell, what no score of a heading lies above; not a number where a plane is not known. The array is the strip's
     * own, to be lowered by what else bounds the score.
     */
    double[] bounds(int heading) {
        return bound[heading];
    }

    double riseEast(int kernel, int c) {
        return riseEast[kernel % beds][c];
    }

    double riseNorth(int kernel, int c) {
        return riseNorth[kernel % beds][c];
    }

    /** Mean height of a bed (m). */
    double height(int kernel, int c) {
        return height[kernel % beds][c];
    }

    /** Height of a bed's plane at the group's middle (m). */
    double base(int kernel, int c) {
        int b = kernel % beds;
        Kernel k = kernels[kernel];
        return height[b][c] - riseEast[b][c] * k.meanColumn * spacing - riseNorth[b][c] * k.meanRow * spacing;
    }

    /** The planes of all beds for a strip of cells. */
    private void planes(int row, int from, int count) {
        boolean hasGaps = ground.hasGaps && ground.gapsNear(row, from, count);
        for (int b = 0; b < beds; b++) {
            Kernel k = kernels[b];
            Arrays.fill(total, 0);
            Arrays.fill(byColumn, 0);
            Arrays.fill(byRow, 0);
            int origin = (row + ground.margin) * (ground.stride + 1) + from + ground.margin;
            int runs = k.runRow.length;
            for (int i = 0; i + 1 < runs; i += 2) {
                addRuns(origin, k, i, count);
            }
            if (runs % 2 == 1) {
                int line = origin + k.runRow[runs - 1] * (ground.stride + 1);
                addRun(line + k.runFrom[runs - 1], line + k.runTo[runs - 1] + 1, k.runRow[runs - 1], count);
            }
            double n = k.bed.offset.length;
            double step = spacing / SurveyGround.STEPS;
            for (int c = 0; c < count; c++) {
                double s = total[c];
                double x = (byColumn[c] - (from + c + ground.margin) * s - k.meanColumn * s) * step;
                double y = (byRow[c] - k.meanRow * s) * step;
                riseEast[b][c] = k.xx * x + k.xy * y;
                riseNorth[b][c] = k.xy * x + k.yy * y;
                height[b][c] = s / (n * SurveyGround.STEPS);
            }
            if (hasGaps) {
                gaps(k, row, from, count);
                for (int c = 0; c < count; c++) {
                    riseEast[b][c] = missing[c] > 0 ? Double.NaN : riseEast[b][c];
                }
            }
        }
    }

    /** Two runs at once. */
    private void addRuns(int origin, Kernel k, int i, int count) {
        double[] sum = ground.sum;
        double[] times = ground.sumByColumn;
        double[] all = total;
        double[] rows = byRow;
        double[] columns = byColumn;
        int one = origin + k.runRow[i] * (ground.stride + 1);
        int two = origin + k.runRow[i + 1] * (ground.stride + 1);
        int low = one + k.runFrom[i];
        int high = one + k.runTo[i] + 1;
        int nextLow = two + k.runFrom[i + 1];
        int nextHigh = two + k.runTo[i + 1] + 1;
        double step = k.runRow[i];
        double nextStep = k.runRow[i + 1];
        for (int c = 0; c < count; c++) {
            double s = sum[high + c] - sum[low + c];
            double next = sum[nextHigh + c] - sum[nextLow + c];
            all[c] += s + next;
            rows[c] += step * s + nextStep * next;
            columns[c] += times[high + c] - times[low + c] + (times[nextHigh + c] - times[nextLow + c]);
        }
    }

    private void addRun(int low, int high, double rowStep, int count) {
        double[] sum = ground.sum;
        double[] times = ground.sumByColumn;
        for (int c = 0; c < count; c++) {
            double s = sum[high + c] - sum[low + c];
            total[c] += s;
            byRow[c] += rowStep * s;
            byColumn[c] += times[high + c] - times[low + c];
        }
    }

    private void gaps(Kernel k, int row, int from, int count) {
        Arrays.fill(missing, 0);
        for (int i = 0; i < k.knownRow.length; i++) {
            int line = (row + ground.margin + k.knownRow[i]) * (ground.stride + 1) + from + ground.margin;
            for (int c = 0; c < count; c++) {
                missing[c] += ground.gaps[line + k.knownTo[i] + 1 + c] - ground.gaps[line + k.knownFrom[i] + c];
            }
        }
    }

    private static void slopes(Kernel k, double[] toEast, double[] toNorth, double[] least, int count) {
        double fall = -k.hull.fallLimit();
        double limit = k.hull.riseLimit();
        double east = k.east;
        double north = k.north;
        for (int c = 0; c < count; c++) {
            double rise = toEast[c] * east + toNorth[c] * north;
            double across = Math.abs(toNorth[c] * east - toEast[c] * north);
            least[c] = Math.min(least[c], 1 - Math.max(Math.max(rise / fall, rise / limit), across / limit));
        }
    }

    /** The margin of the steepest ground under winches, poles and anchors, rounded up. */
    private void gear(int[] spots, int at, double[] least, int count) {
        if (spots.length == 0) {
            return;
        }
        int[] margin = ground.gear;
        int[] lowest = gear;
        System.arraycopy(margin, at + spots[0], lowest, 0, count);
        for (int n = 1; n < spots.length; n += 2) {
            int one = at + spots[n];
            int two = at + spots[Math.min(n + 1, spots.length - 1)];
            for (int c = 0; c < count; c++) {
                lowest[c] = Math.min(lowest[c], Math.min(margin[one + c], margin[two + c]));
            }
        }
        for (int c = 0; c < count; c++) {
            double most = lowest[c] * SurveyGround.GEAR_STEP;
            least[c] = most >= least[c] ? least[c] : most;
        }
    }

    /** The steepest rise under winches, poles and anchors (1). */
    double gearGrade(Kernel k, int at) {
        double steepest = 0;
        for (int offset : k.spots) {
            steepest = Math.max(steepest, ground.grade[at + offset]);
        }
        return steepest;
    }
}
