// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import java.util.Arrays;
import java.util.BitSet;
import java.util.stream.IntStream;

/**
 * The Delaunay triangles of some nodes of a square grid, its four corners among them, to which nodes are added one by
 * one: the triangles whose circle holds the new node go, and the room they leave is filled from it.
 *
 * <p>Columns and rows are whole numbers; up to 2^14 of them no test overflows. For one thread.
 *
 * @see "Bowyer (1981), Computing Dirichlet tessellations, The Computer Journal 24, 162-166"
 * @see "Watson (1981), Computing the n-dimensional Delaunay tessellation, The Computer Journal 24, 167-172"
 */
final class Triangulation {
    private static final int NONE = -1;

    private final int size;
    /** Nodes of the corners, anticlockwise, three for each triangle; the first is {@code NONE} where there is none. */
    private int[] corners = new int[3 << 10];
    /** What lies across the side from each corner to the next one: a triangle, or {@code NONE} at the edge. */
    private int[] beyond = new int[3 << 10];
    private int used;
    private int count;
    private final BitSet taken = new BitSet();
    /** Triangles that go, and the sides around them: from node, to node, what lies beyond. */
    private int[] going = new int[64];
    private int gone;
    private int[] sides = new int[192];
    private int around;

    Triangulation(int size) {
        this.size = size;
        int last = size - 1;
        int[] square = {0, last, last * size + last, last * size};
        for (int node : square) {
            taken.set(node);
        }
        put(0, square[0], square[1], square[2]);
        put(1, square[0], square[2], square[3]);
        beyond[2] = 1;
        beyond[3] = 0;
        used = 2;
        count = 2;
    }

    /** Numbers of the triangles there are. */
    IntStream triangles() {
        return IntStream.range(0, used).filter(this::isThere);
    }

    int count() {
        return count;
    }

    boolean isThere(int triangle) {
        return triangle < used && corners[3 * triangle] != NONE;
    }

    boolean isCorner(int node) {
        return taken.get(node);
    }

    int corner(int triangle, int which) {
        return corners[3 * triangle + which];
    }

    /**
     * Adds a node.
     *
     * @param node the node; not a corner yet
     * @param in   a triangle that holds it, on its sides too
     * @return numbers of all triangles that went, came or both
     */
    int[] insert(int node, int in) {
        taken.set(node);
        clear(node, in);
        int[] changed = Arrays.copyOf(going, Math.max(gone, around));
        int made = 0;
        int free = 0;
        int[] fan = new int[around];
        for (int i = 0; i < around; i++) {
            int from = sides[3 * i];
            int to = sides[3 * i + 1];
            // The side of the whole square that the node lies on is left out: it is cut in two.
            if (turn(node, from, to) > 0) {
                int number = free < gone ? going[free++] : used++;
                put(number, node, from, to);
                join(number, 1, sides[3 * i + 2], to);
                fan[made] = number;
                changed[made++] = number;
            }
        }
        for (int i = 0; i < made; i++) {
            for (int k = 0; k < made; k++) {
                if (corners[3 * fan[k] + 1] == corners[3 * fan[i] + 2]) {
                    beyond[3 * fan[i] + 2] = fan[k];
                    beyond[3 * fan[k]] = fan[i];
                }
            }
        }
        for (int i = free; i < gone; i++) {
            corners[3 * going[i]] = NONE;
            changed[made + i - free] = going[i];
        }
        count += made - gone;
        return Arrays.copyOf(changed, made + gone - free);
    }

    /** Finds the triangles whose circles hold a node, and the sides around them. */
    private void clear(int node, int in) {
        gone = 0;
        around = 0;
        going[gone++] = in;
        for (int i = 0; i < gone; i++) {
            for (int k = 0; k < 3; k++) {
                int other = beyond[3 * going[i] + k];
                if (other == NONE || !isGoing(other) && !circleHolds(other, node)) {
                    if (3 * around + 3 > sides.length) {
                        sides = Arrays.copyOf(sides, 2 * sides.length);
                    }
                    sides[3 * around] = corners[3 * going[i] + k];
                    sides[3 * around + 1] = corners[3 * going[i] + (k + 1) % 3];
                    sides[3 * around++ + 2] = other;
                } else if (!isGoing(other)) {
                    going = gone < going.length ? going : Arrays.copyOf(going, 2 * gone);
                    going[gone++] = other;
                }
            }
        }
    }

    private boolean isGoing(int triangle) {
        for (int i = 0; i < gone; i++) {
            if (going[i] == triangle) {
                return true;
            }
        }
        return false;
    }

    private void put(int triangle, int a, int b, int c) {
        if (3 * triangle + 3 > corners.length) {
            corners = Arrays.copyOf(corners, 2 * corners.length);
            beyond = Arrays.copyOf(beyond, corners.length);
        }
        corners[3 * triangle] = a;
        corners[3 * triangle + 1] = b;
        corners[3 * triangle + 2] = c;
        Arrays.fill(beyond, 3 * triangle, 3 * triangle + 3, NONE);
    }

    /** Makes two triangles neighbours across a side of the first, which begins at a corner of the second. */
    private void join(int triangle, int side, int other, int begins) {
        beyond[3 * triangle + side] = other;
        for (int k = 0; other != NONE && k < 3; k++) {
            if (corners[3 * other + k] == begins) {
                beyond[3 * other + k] = triangle;
            }
        }
    }

    /** Above zero where three nodes run anticlockwise: twice the area between them. */
    private long turn(int a, int b, int c) {
        long x = b % size - a % size;
        long y = b / size - a / size;
        return x * (c / size - a / size) - y * (c % size - a % size);
    }

    /** Whether the circle through a triangle's corners holds a node inside it. */
    private boolean circleHolds(int triangle, int node) {
        long[] x = new long[3];
        long[] y = new long[3];
        long[] far = new long[3];
        for (int k = 0; k < 3; k++) {
            x[k] = corners[3 * triangle + k] % size - node % size;
            y[k] = corners[3 * triangle + k] / size - node / size;
            far[k] = x[k] * x[k] + y[k] * y[k];
        }
        return far[0] * (x[1] * y[2] - x[2] * y[1]) - far[1] * (x[0] * y[2] - x[2] * y[0])
                + far[2] * (x[0] * y[1] - x[1] * y[0]) > 0;
    }
}
