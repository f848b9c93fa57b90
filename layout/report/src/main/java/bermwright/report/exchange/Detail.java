// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import java.util.Objects;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;

/**
 * How closely a net of triangles follows its surfaces: closely where something is built, less so elsewhere.
 *
 * @param tolerance how far the middle of a side may be off at a node (m), zero or more, by its number: row times
 *                  columns plus column
 * @param isBuilt   whether something is built at a node, by its number
 * @param builtOnly whether triangles that hold no node where something is built are left out
 */
public record Detail(IntToDoubleFunction tolerance, IntPredicate isBuilt, boolean builtOnly) {
    /** Refuses null. */
    public Detail {
        Objects.requireNonNull(tolerance, "tolerance");
        Objects.requireNonNull(isBuilt, "isBuilt");
    }
}
