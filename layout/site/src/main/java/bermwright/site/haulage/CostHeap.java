// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import java.util.Arrays;

/** Lattice points in order of cost; the same point may be in it more than once. */
final class CostHeap {
    private double[] costs;
    private int[] nodes;
    private int size;

    CostHeap(int room) {
        costs = new double[room];
        nodes = new int[room];
    }

    boolean isEmpty() {
        return size == 0;
    }

    void add(double cost, int node) {
        if (size == costs.length) {
            costs = Arrays.copyOf(costs, 2 * size);
            nodes = Arrays.copyOf(nodes, 2 * size);
        }
        int at = size++;
        while (at > 0) {
            int parent = (at - 1) >> 1;
            if (costs[parent] <= cost) {
                break;
            }
            costs[at] = costs[parent];
            nodes[at] = nodes[parent];
            at = parent;
        }
        costs[at] = cost;
        nodes[at] = node;
    }

    /** Takes the cheapest point out. */
    int takeNode() {
        int taken = nodes[0];
        double cost = costs[--size];
        int node = nodes[size];
        int at = 0;
        while (true) {
            int child = 2 * at + 1;
            if (child >= size) {
                break;
            }
            if (child + 1 < size && costs[child + 1] < costs[child]) {
                child++;
            }
            if (costs[child] >= cost) {
                break;
            }
            costs[at] = costs[child];
            nodes[at] = nodes[child];
            at = child;
        }
        costs[at] = cost;
        nodes[at] = node;
        return taken;
    }
}
