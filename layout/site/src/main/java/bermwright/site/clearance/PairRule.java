// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.finding.Finding;
import bermwright.finding.PairingRule;
import bermwright.site.footprint.ShapeKind;
import java.util.Set;

/**
 * What must keep apart from what.
 *
 * @param rule   the rule of the catalogue, which has level, source and remedy
 * @param mine   kinds on the side the finding is about
 * @param theirs kinds on the other side
 * @param kept   the distance to keep
 */
record PairRule(PairingRule rule, Set<ShapeKind> mine, Set<ShapeKind> theirs, Kept kept) {
    /** How bad it is where they do not keep apart. */
    Finding.Level level() {
        return rule.entry().worst();
    }

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
