// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Triangles over a square grid: begins with its four corners and takes in the node that is farthest off, measured by
 * what is allowed there, until none is off by more; the triangles stay those of Delaunay. See {@link Tin}.
 *
 * <p>Places are whole numbers of columns and rows, so that every test of sides and circles is exact.
 */
final class GreedyTriangles {
    /** Where only work is asked for, nodes so far apart are always taken, so that no triangle reaches far beyond it. */
    private static final int LATTICE = 16;
    private static final int NONE = -1;

    private final int size;
    private final List<double[]> surfaces;
    private final Detail detail;
    private final float[] allowed;
    private final BitSet missing = new BitSet();
    private final BitSet standing = new BitSet();
    private final Triangulation net;
    private int[] stamps = new int[1 << 10];
    private final PriorityQueue<Candidate> waiting = new PriorityQueue<>(Comparator.comparingDouble(
            (Candidate c) -> -c.off).thenComparingInt(c -> c.node).thenComparingInt(c -> c.triangle));

    /** A node that may be taken in: how far it is off as a share of what is allowed, and the triangle over it. */
    private record Candidate(double off, int node, int triangle, int stamp) {
    }

    /** What is done at the nodes of a triangle. */
    @FunctionalInterface
    private interface Visit {
        /** Looks at a node; false ends the walk. */
        boolean goesOn(int node);
    }

    GreedyTriangles(int size, List<double[]> surfaces, Detail detail) {
        this.size = size;
        this.surfaces = List.copyOf(surfaces);
        this.detail = detail;
        this.net = new Triangulation(size);
        this.allowed = new float[size * size];
        for (int i = 0; i < allowed.length; i++) {
            allowed[i] = (float) detail.tolerance().applyAsDouble(i);
            for (double[] heights : surfaces) {
                if (Double.isNaN(heights[i])) {
                    missing.set(i);
                }
            }
        }
        for (int i = 0; i < allowed.length; i++) {
            standing.set(i, mustStand(i));
        }
        net.triangles().forEach(this::measure);
        for (Candidate next = waiting.poll(); next != null; next = waiting.poll()) {
            if (next.stamp == stamps[next.triangle]) {
                int[] changed = net.insert(next.node, next.triangle);
                // Those that went and those that came share their numbers.
                for (int triangle : changed) {
                    measure(triangle);
                }
            }
        }
    }

    /** Finds the node of a triangle that is farthest off, if one is off by more than is allowed. */
    private void measure(int triangle) {
        if (triangle >= stamps.length) {
            stamps = Arrays.copyOf(stamps, 2 * stamps.length);
        }
        int stamp = ++stamps[triangle];
        if (!net.isThere(triangle)) {
            return;
        }
        Farthest farthest = new Farthest(triangle);
        walk(triangle, farthest);
        if (farthest.node != NONE) {
            waiting.add(new Candidate(farthest.off, farthest.node, triangle, stamp));
        }
    }

    /**
     * The node that is taken in next: of those that must stand the one nearest to the triangle's middle, so that each
     * cuts it in parts of like size; where there is none, the one farthest off.
     */
    private final class Farthest implements Visit {
        private final double[][] planes;
        private final long middleColumn;
        private final long middleRow;
        private double off = 1;
        private long fromMiddle = Long.MAX_VALUE;
        private int node = NONE;

        Farthest(int triangle) {
            this.planes = planes(triangle);
            long columns = 0;
            long rows = 0;
            for (int k = 0; k < 3; k++) {
                columns += net.corner(triangle, k) % size;
                rows += net.corner(triangle, k) / size;
            }
            middleColumn = columns;
            middleRow = rows;
        }

        @Override
        public boolean goesOn(int at) {
            if (standing.get(at)) {
                long across = 3L * (at % size) - middleColumn;
                long along = 3L * (at / size) - middleRow;
                long distance = across * across + along * along;
                if (distance < fromMiddle && !net.isCorner(at)) {
                    fromMiddle = distance;
                    off = Double.POSITIVE_INFINITY;
                    node = at;
                }
                return true;
            }
            double here = off(planes, at);
            here = here > allowed[at] ? here / allowed[at] : 0;
            if (here > off && !net.isCorner(at)) {
                off = here;
                node = at;
            }
            return true;
        }
    }

    /** How far a node is off the triangle over it (m); zero where either is not known. */
    private double off(double[][] planes, int node) {
        double most = 0;
        int column = node % size;
        int row = node / size;
        for (int s = 0; s < planes.length; s++) {
            double[] plane = planes[s];
            double off = Math.abs(plane[0] + plane[1] * column + plane[2] * row - surfaces.get(s)[node]);
            if (off > most) {
                most = off;
            }
        }
        return most;
    }

    /** Nodes on both sides of the edge of what is known, and those of a wide lattice. */
    private boolean mustStand(int node) {
        int column = node % size;
        int row = node / size;
        if (detail.builtOnly() && column % LATTICE == 0 && row % LATTICE == 0) {
            return true;
        }
        if (missing.isEmpty()) {
            return false;
        }
        boolean here = missing.get(node);
        for (int r = Math.max(0, row - 1); r <= Math.min(size - 1, row + 1); r++) {
            for (int c = Math.max(0, column - 1); c <= Math.min(size - 1, column + 1); c++) {
                if (missing.get(r * size + c) != here) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Nodes of the corners, three for each triangle, anticlockwise seen from above. */
    int[] corners() {
        int[] found = new int[3 * net.count()];
        int[] length = new int[1];
        net.triangles().filter(this::isAskedFor).forEach(t -> {
            for (int k = 0; k < 3; k++) {
                found[length[0]++] = net.corner(t, k);
            }
        });
        return Arrays.copyOf(found, length[0]);
    }

    private boolean isAskedFor(int triangle) {
        for (int k = 0; k < 3; k++) {
            if (missing.get(net.corner(triangle, k))) {
                return false;
            }
        }
        return !detail.builtOnly() || !walk(triangle, node -> !detail.isBuilt().test(node));
    }

    /** How far nodes lie from the triangles over them at most (m): where something is built, and elsewhere. */
    double[] greatestMisses() {
        double[] most = new double[2];
        net.triangles().filter(this::isAskedFor).forEach(triangle -> {
            double[][] planes = planes(triangle);
            walk(triangle, node -> {
                int at = detail.isBuilt().test(node) ? 0 : 1;
                most[at] = Math.max(most[at], off(planes, node));
                return true;
            });
        });
        return most;
    }

    /** Goes over the nodes of a triangle, its sides included; whether it came to the end. */
    private boolean walk(int triangle, Visit visit) {
        int[] x = new int[3];
        int[] y = new int[3];
        for (int k = 0; k < 3; k++) {
            x[k] = net.corner(triangle, k) % size;
            y[k] = net.corner(triangle, k) / size;
        }
        int last = Math.max(y[0], Math.max(y[1], y[2]));
        for (int row = Math.min(y[0], Math.min(y[1], y[2])); row <= last; row++) {
            int from = 0;
            int to = size - 1;
            for (int k = 0; k < 3; k++) {
                int next = (k + 1) % 3;
                int rise = y[next] - y[k];
                int run = (x[next] - x[k]) * (row - y[k]);
                if (rise > 0) {
                    to = Math.min(to, x[k] + Math.floorDiv(run, rise));
                } else if (rise < 0) {
                    from = Math.max(from, x[k] - Math.floorDiv(run, -rise));
                }
            }
            for (int column = from; column <= to; column++) {
                if (!visit.goesOn(row * size + column)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The plane of a triangle in each surface: its height at column and row 0, rise a column, rise a row. */
    private double[][] planes(int triangle) {
        int[] nodes = {net.corner(triangle, 0), net.corner(triangle, 1), net.corner(triangle, 2)};
        int x = nodes[0] % size;
        int y = nodes[0] / size;
        double x1 = nodes[1] % size - x;
        double y1 = nodes[1] / size - y;
        double x2 = nodes[2] % size - x;
        double y2 = nodes[2] / size - y;
        double area = x1 * y2 - x2 * y1;
        double[][] planes = new double[surfaces.size()][];
        for (int s = 0; s < planes.length; s++) {
            double[] h = surfaces.get(s);
            double z1 = h[nodes[1]] - h[nodes[0]];
            double z2 = h[nodes[2]] - h[nodes[0]];
            double east = (z1 * y2 - z2 * y1) / area;
            double north = (x1 * z2 - x2 * z1) / area;
            planes[s] = new double[] {h[nodes[0]] - east * x - north * y, east, north};
        }
        return planes;
    }
}
