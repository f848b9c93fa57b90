// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * Halves the two triangles of a square grid as often as its heights ask for; see {@link Tin}.
 *
 * <p>A triangle is its two corners on the long side and the one at the right angle, as numbers of nodes; the middle of
 * two such corners is the middle of their numbers.
 */
final class RightTriangles {
    private final int size;
    private final List<double[]> surfaces;
    private final Detail detail;
    private final int[] roots;
    /** By the node in the middle of the long side: how far it is off at most, as a share of what is allowed. */
    private final float[] off;
    private int[] found = new int[3 << 10];
    private int length;

    RightTriangles(int size, List<double[]> surfaces, Detail detail) {
        this.size = size;
        this.surfaces = List.copyOf(surfaces);
        this.detail = detail;
        this.off = new float[size * size];
        int side = size - 1;
        this.roots = new int[] {0, side * size + side, side};
        // Halves come before what they are halves of, on both sides of each long side.
        for (int depth = 2 * Integer.numberOfTrailingZeros(side) - 1; depth >= 0; depth--) {
            measure(depth, roots[0], roots[1], roots[2]);
            measure(depth, roots[1], roots[0], side * size);
        }
    }

    private void measure(int depth, int a, int b, int c) {
        int middle = a + b >>> 1;
        if (depth > 0) {
            measure(depth - 1, c, a, middle);
            measure(depth - 1, b, c, middle);
            return;
        }
        double miss = 0;
        for (double[] heights : surfaces) {
            double here = Math.abs((heights[a] + heights[b]) / 2 - heights[middle]);
            // Beside missing heights triangles get as small as they can.
            miss = Double.isNaN(here) || Double.isNaN(heights[c]) ? Double.POSITIVE_INFINITY : Math.max(miss, here);
        }
        double most = Math.max(off[middle], miss > 0 ? miss / detail.tolerance().applyAsDouble(middle) : 0);
        if (!isUnit(a, middle) || !isUnit(middle, c)) {
            most = Math.max(most, Math.max(off[a + c >>> 1], off[b + c >>> 1]));
        }
        off[middle] = Math.nextUp((float) most);
    }

    /** Whether two nodes are next to each other, so that there is none in their middle. */
    private boolean isUnit(int a, int b) {
        int apart = Math.abs(a - b);
        return apart == 1 || apart == size;
    }

    /** Nodes of the corners, three for each triangle, anticlockwise seen from above. */
    int[] corners() {
        length = 0;
        halve(roots[0], roots[1], roots[2]);
        halve(roots[1], roots[0], roots[1] - size + 1);
        return Arrays.copyOf(found, length);
    }

    private void halve(int a, int b, int c) {
        int middle = a + b >>> 1;
        if (!isUnit(a, c) && off[middle] > 1) {
            halve(c, a, middle);
            halve(b, c, middle);
            return;
        }
        for (double[] heights : surfaces) {
            if (Double.isNaN(heights[a]) || Double.isNaN(heights[b]) || Double.isNaN(heights[c])) {
                return;
            }
        }
        if (detail.builtOnly() && !any(new int[] {a, b, c}, detail.isBuilt())) {
            return;
        }
        if (length + 3 > found.length) {
            found = Arrays.copyOf(found, 2 * found.length);
        }
        boolean turnsLeft = (long) (c % size - a % size) * (b / size - a / size)
                - (long) (b % size - a % size) * (c / size - a / size) > 0;
        found[length++] = a;
        found[length++] = turnsLeft ? c : b;
        found[length++] = turnsLeft ? b : c;
    }

    /** Whether something holds for any node of a triangle, its sides included. */
    private boolean any(int[] corners, IntPredicate what) {
        int[] x = {corners[0] % size, corners[1] % size, corners[2] % size};
        int[] y = {corners[0] / size, corners[1] / size, corners[2] / size};
        int area = (x[1] - x[0]) * (y[2] - y[0]) - (x[2] - x[0]) * (y[1] - y[0]);
        int sign = Integer.signum(area);
        int east = Math.max(x[0], Math.max(x[1], x[2]));
        int west = Math.min(x[0], Math.min(x[1], x[2]));
        for (int r = Math.min(y[0], Math.min(y[1], y[2])); r <= Math.max(y[0], Math.max(y[1], y[2])); r++) {
            for (int c = west; c <= east; c++) {
                int u = sign * ((c - x[0]) * (y[2] - y[0]) - (x[2] - x[0]) * (r - y[0]));
                int v = sign * ((x[1] - x[0]) * (r - y[0]) - (c - x[0]) * (y[1] - y[0]));
                if (u >= 0 && v >= 0 && u + v <= sign * area && what.test(r * size + c)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** How far nodes lie from the triangles over them at most: where something is built, and elsewhere. */
    double[] greatestMisses(int[] corners) {
        double[] most = new double[2];
        for (int i = 0; i < corners.length; i += 3) {
            int[] nodes = {corners[i], corners[i + 1], corners[i + 2]};
            for (double[] heights : surfaces) {
                double[] plane = plane(nodes, heights);
                any(nodes, node -> {
                    int at = detail.isBuilt().test(node) ? 0 : 1;
                    most[at] = Math.max(most[at], Math.abs(plane[0] + plane[1] * (node % size)
                            + plane[2] * (node / size) - heights[node]));
                    return false;
                });
            }
        }
        return most;
    }

    /** The plane of a triangle: its height at column and row 0, rise a column, rise a row. */
    private double[] plane(int[] nodes, double[] h) {
        int x = nodes[0] % size;
        int y = nodes[0] / size;
        double x1 = nodes[1] % size - x;
        double y1 = nodes[1] / size - y;
        double x2 = nodes[2] % size - x;
        double y2 = nodes[2] / size - y;
        double z1 = h[nodes[1]] - h[nodes[0]];
        double z2 = h[nodes[2]] - h[nodes[0]];
        double area = x1 * y2 - x2 * y1;
        double east = (z1 * y2 - z2 * y1) / area;
        double north = (x1 * z2 - x2 * z1) / area;
        return new double[] {h[nodes[0]] - east * x - north * y, east, north};
    }
}
