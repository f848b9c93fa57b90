// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * All gear that pulls the hull over and holds it back.
 *
 * @param lines     the lowering lines
 * @param poles     the poles; absent where the lines run straight to their winches
 * @param stays     the sets of back stays
 * @param pullOver  the pull-over line; absent where there is none
 * @param pivotHold what holds the pivot along the ground; absent where friction alone does
 * @param factors   the design factors asked
 */
public record Rig(LoweringLines lines, Optional<Poles> poles, List<Stay> stays, Optional<PullOver> pullOver,
        Optional<Anchor> pivotHold, DesignFactors factors) {
    /** Copies the stays. */
    public Rig {
        Objects.requireNonNull(lines, "lines");
        Objects.requireNonNull(poles, "poles");
        stays = List.copyOf(stays);
        Objects.requireNonNull(pullOver, "pullOver");
        Objects.requireNonNull(pivotHold, "pivotHold");
        Objects.requireNonNull(factors, "factors");
    }

    /**
     * Which line runs over which pole.
     *
     * @return the reeving
     */
    public Reeving reeving() {
        return new Reeving(lines.count(), poles.map(Poles::count).orElse(0), lines.halfSpread(),
                poles.map(Poles::halfSpread).orElse(0.0), lines.winch().spacing());
    }
}
