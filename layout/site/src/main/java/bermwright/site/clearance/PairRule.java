// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.finding.Finding;
import bermwright.site.footprint.ShapeKind;
import java.util.Set;

/**
 * What must keep apart from what.
 *
 * @param rule    the rule's name
 * @param level   how bad it is where they do not keep apart
 * @param mine    kinds on the side the finding is about
 * @param theirs  kinds on the other side
 * @param kept    the distance to keep
 * @param source  where the limit is from
 * @param meaning what it means and what would help, in a sentence
 */
record PairRule(String rule, Finding.Level level, Set<ShapeKind> mine, Set<ShapeKind> theirs, Kept kept,
        String source, String meaning) {
    /** Distances that rules keep. */
    enum Kept {
        /** They may touch but not overlap. */
        NOTHING,
        /** The plan's least distance between hulls. */
        HULL_SPACING,
        /** The borrow ground's own distance. */
        BORROW_CLEAR
    }
}
