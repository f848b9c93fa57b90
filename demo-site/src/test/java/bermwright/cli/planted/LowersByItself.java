// SPDX-License-Identifier: Apache-2.0
package bermwright.cli.planted;

import bermwright.lowering.sequence.Lowered;
import bermwright.lowering.sequence.Lowering;
import bermwright.lowering.statics.LoweringCase;

/** Planted: a front end that computes instead of asking for an assessment. */
final class LowersByItself {
    private LowersByItself() {
    }

    static Lowered lowered(LoweringCase asked) {
        return Lowering.of(asked);
    }
}
