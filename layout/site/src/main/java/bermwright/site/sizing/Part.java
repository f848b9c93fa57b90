// SPDX-License-Identifier: Apache-2.0
package bermwright.site.sizing;

import bermwright.shielding.cover.CoverThickness;

/** A part of a cover whose thickness is looked for. */
enum Part {
    CROWN, FLANK, BASE, FAR;

    double of(CoverThickness t) {
        return this == CROWN ? t.crown() : this == FLANK ? t.flank() : this == BASE ? t.baseEnd() : t.farEnd();
    }

    CoverThickness with(CoverThickness t, double v) {
        return new CoverThickness(this == CROWN ? v : t.crown(), this == FLANK ? v : t.flank(),
                this == BASE ? v : t.baseEnd(), this == FAR ? v : t.farEnd());
    }
}
