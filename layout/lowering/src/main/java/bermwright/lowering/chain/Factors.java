// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.chain;

import java.util.OptionalDouble;

/**
 * The ratio of what a kind of part bears to what it is asked, in the load case that governs it; absent where a rating
 * was not given or the part is not there.
 *
 * @param line      a lowering line with its termination and its bend over the head sheave (1)
 * @param winch     winch rating over the tension of its line, or what its brake holds over it (1)
 * @param pole      pole capacity over its thrust (1)
 * @param anchor    capacity of the hardest worked anchor of winches, stays and pull-over over its pull (1)
 * @param pivotHold friction and anchor at the pivot over the pull along the ground (1)
 */
public record Factors(OptionalDouble line, OptionalDouble winch, OptionalDouble pole, OptionalDouble anchor,
        OptionalDouble pivotHold) {
    /** Nothing is known. */
    public static final Factors NONE = new Factors(OptionalDouble.empty(), OptionalDouble.empty(),
            OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
}
