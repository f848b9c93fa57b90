// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import java.util.Arrays;
import java.util.List;

/** Halves the two triangles of a square grid as often as its heights ask for; see {@link Tin}. */
final class RightTriangles {
    private final int size;
    private final List<double[]> surfaces;
    private final float[] off;
    private int[] found = new int[3 << 10];
    private int length;

    RightTriangles(int size, List<double[]> surfaces) {
        this.size = size;
        this.surfaces = List.copyOf(surfaces);
        this.off = new float[size * size];
        int side = size - 1;
        // Triangles are numbered as the nodes of two binary trees, so that halves come before what they are halves of.
        long all = 2L * side * side - 2;
        long withHalves = all - (long) side * side;
        for (long i = all - 1; i >= 0; i--) {
            measure(i + 2, i < withHalves);
        }
    }

    private void measure(long number, boolean hasHalves) {
        int side = size - 1;
        boolean odd = (number & 1) == 1;
        int ax = odd ? 0 : side;
        int ay = odd ? 0 : side;
        int bx = odd ? side : 0;
        int by = odd ? side : 0;
        int cx = odd ? side : 0;
        int cy = odd ? 0 : side;
        for (long way = number >> 1; way > 1; way >>= 1) {
            int mx = ax + bx >> 1;
            int my = ay + by >> 1;
            if ((way & 1) == 1) {
                bx = ax;
                by = ay;
                ax = cx;
                ay = cy;
            } else {
                ax = bx;
                ay = by;
                bx = cx;
                by = cy;
            }
            cx = mx;
            cy = my;
        }
        int mx = ax + bx >> 1;
        int my = ay + by >> 1;
        int middle = my * size + mx;
        double most = off[middle];
        for (double[] heights : surfaces) {
            double miss = Math.abs((heights[ay * size + ax] + heights[by * size + bx]) / 2 - heights[middle]);
            // Beside missing heights triangles get as small as they can.
            most = Double.isNaN(miss) || Double.isNaN(heights[cy * size + cx]) ? Double.POSITIVE_INFINITY
                    : Math.max(most, miss);
        }
        if (hasHalves) {
            most = Math.max(most, Math.max(off[(ay + cy >> 1) * size + (ax + cx >> 1)],
                    off[(by + cy >> 1) * size + (bx + cx >> 1)]));
        }
        off[middle] = Math.nextUp((float) most);
    }

    /** Nodes of the corners, three for each triangle, anticlockwise seen from above. */
    int[] corners(double tolerance) {
        length = 0;
        int side = size - 1;
        halve(new int[] {0, 0, side, side, side, 0}, tolerance);
        halve(new int[] {side, side, 0, 0, 0, side}, tolerance);
        return Arrays.copyOf(found, length);
    }

    private void halve(int[] t, double tolerance) {
        int mx = t[0] + t[2] >> 1;
        int my = t[1] + t[3] >> 1;
        if (Math.abs(t[0] - t[4]) + Math.abs(t[1] - t[5]) > 1 && off[my * size + mx] > tolerance) {
            halve(new int[] {t[4], t[5], t[0], t[1], mx, my}, tolerance);
            halve(new int[] {t[2], t[3], t[4], t[5], mx, my}, tolerance);
            return;
        }
        int[] nodes = {t[1] * size + t[0], t[5] * size + t[4], t[3] * size + t[2]};
        for (double[] heights : surfaces) {
            for (int node : nodes) {
                if (Double.isNaN(heights[node])) {
                    return;
                }
            }
        }
        if (length + 3 > found.length) {
            found = Arrays.copyOf(found, 2 * found.length);
        }
        long turn = (long) (t[4] - t[0]) * (t[3] - t[1]) - (long) (t[5] - t[1]) * (t[2] - t[0]);
        found[length++] = nodes[0];
        found[length++] = turn > 0 ? nodes[1] : nodes[2];
        found[length++] = turn > 0 ? nodes[2] : nodes[1];
    }

    /** How far nodes lie from the triangles over them at most. */
    double greatestMiss(int[] corners) {
        double most = 0;
        for (int i = 0; i < corners.length; i += 3) {
            int[] x = {corners[i] % size, corners[i + 1] % size, corners[i + 2] % size};
            int[] y = {corners[i] / size, corners[i + 1] / size, corners[i + 2] / size};
            double area = (double) (x[1] - x[0]) * (y[2] - y[0]) - (double) (x[2] - x[0]) * (y[1] - y[0]);
            for (int r = Arrays.stream(y).min().getAsInt(); r <= Arrays.stream(y).max().getAsInt(); r++) {
                for (int c = Arrays.stream(x).min().getAsInt(); c <= Arrays.stream(x).max().getAsInt(); c++) {
                    double u = ((double) (c - x[0]) * (y[2] - y[0]) - (double) (x[2] - x[0]) * (r - y[0])) / area;
                    double v = ((double) (x[1] - x[0]) * (r - y[0]) - (double) (c - x[0]) * (y[1] - y[0])) / area;
                    if (u >= 0 && v >= 0 && u + v <= 1) {
                        for (double[] h : surfaces) {
                            double plane = h[corners[i]] + u * (h[corners[i + 1]] - h[corners[i]])
                                    + v * (h[corners[i + 2]] - h[corners[i]]);
                            most = Math.max(most, Math.abs(plane - h[r * size + c]));
                        }
                    }
                }
            }
        }
        return most;
    }
}
