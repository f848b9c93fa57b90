// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import java.util.Arrays;

/**
 * The planes of all beds for a strip of cells beside each other, and what slopes and the ground under the gear leave of
 * each heading's score: sums along the rows of the ground, for all cells of the strip at once.
 */
final class StripBounds {
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
    private final double[] total = new double[CELLS];
    private final double[] byColumn = new double[CELLS];
    private final double[] byRow = new double[CELLS];
    private final int[] missing = new int[CELLS];

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

    /** No score of a heading lies above this; not a number where a plane is not known. */
    double bound(int heading, int c) {
        return bound[heading][c];
    }

    /** The heading with the highest bound. */
    int highest(int c) {
        int highest = 0;
        for (int k = 1; k < headings; k++) {
            highest = bound[k][c] > bound[highest][c] ? k : highest;
        }
        return highest;
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
            for (int i = 0; i < k.runRow.length; i++) {
                int line = (row + ground.margin + k.runRow[i]) * (ground.stride + 1) + from + ground.margin;
                addRun(line + k.runFrom[i], line + k.runTo[i] + 1, k.runRow[i], count);
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

    /** The margin of the steepest ground under winches, poles and anchors. */
    private void gear(int[] spots, int at, double[] least, int count) {
        double[] steepest = total;
        Arrays.fill(steepest, 0, count, 0);
        for (int offset : spots) {
            double[] grade = ground.grade;
            int first = at + offset;
            for (int c = 0; c < count; c++) {
                steepest[c] = Math.max(steepest[c], grade[first + c]);
            }
        }
        for (int c = 0; c < count; c++) {
            least[c] = Math.min(least[c], 1 - steepest[c] / LaidGroup.GEAR_GRADE);
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
