// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import java.util.BitSet;
import java.util.Objects;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;

/**
 * How closely a net of triangles follows its surfaces: closely where something is built, less so elsewhere.
 *
 * @param tolerance how far a left-out node may be off its triangle, upright (m), zero or more, by its number: row
 *                  times columns plus column
 * @param isBuilt   whether something is built at a node, by its number
 * @param builtOnly whether triangles that hold no node where something is built are left out
 */
public record Detail(IntToDoubleFunction tolerance, IntPredicate isBuilt, boolean builtOnly) {
    /**
     * Nodes of a square grid at which something holds, with those beside them.
     *
     * @param size   rows and columns of the grid (1)
     * @param holds  whether it holds at a node, by its number
     * @param beside how far beside counts (1), in rows and columns
     * @return the nodes, by their numbers
     */
    public static BitSet with(int size, IntPredicate holds, int beside) {
        BitSet wide = new BitSet(size * size);
        for (int node = 0; node < size * size; node++) {
            if (holds.test(node)) {
                int column = node % size;
                wide.set(node - Math.min(beside, column), node + Math.min(beside, size - 1 - column) + 1);
            }
        }
        BitSet all = new BitSet(size * size);
        for (int row = 0; row < size; row++) {
            for (int from = Math.max(0, row - beside); from <= Math.min(size - 1, row + beside); from++) {
                for (int at = wide.nextSetBit(from * size); at >= 0 && at < (from + 1) * size;
                        at = wide.nextSetBit(at + 1)) {
                    all.set(row * size + at % size);
                }
            }
        }
        return all;
    }

    /** Refuses null. */
    public Detail {
        Objects.requireNonNull(tolerance, "tolerance");
        Objects.requireNonNull(isBuilt, "isBuilt");
    }
}
