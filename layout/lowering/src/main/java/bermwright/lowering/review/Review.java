// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import bermwright.foundation.ModelNote;
import bermwright.lowering.chain.EdgeState;
import bermwright.lowering.strength.HullBeam;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A lowering under review.
 *
 * @param lines  the lines in space
 * @param edge   the pivot on the ground by tilt
 * @param motion what motion does
 * @param cross  what the cross slope does; absent where nothing could be balanced
 * @param liquid what liquid does that stays level; absent without liquid
 * @param beam   the nearly lying hull as a beam; absent where its centre of mass is beyond the middle third
 * @param losses one thing lost at a time, by tilt
 * @param notes  models, ranges and spreads behind the figures
 */
public record Review(LineReview lines, List<EdgeState> edge, MotionReview motion, Optional<CrossSlope> cross,
        Optional<LiquidReview> liquid, Optional<HullBeam> beam, List<Loss> losses, List<ModelNote> notes) {
    /** Copies the lists. */
    public Review {
        Objects.requireNonNull(lines, "lines");
        Objects.requireNonNull(motion, "motion");
        Objects.requireNonNull(cross, "cross");
        Objects.requireNonNull(liquid, "liquid");
        Objects.requireNonNull(beam, "beam");
        edge = List.copyOf(edge);
        losses = List.copyOf(losses);
        notes = List.copyOf(notes);
    }

    /**
     * Each thing that may be lost, at the tilt at which its loss is worst: by what then comes, then by the speed of the
     * far end, then by the demand on what is left.
     *
     * @return one loss for each thing, in the order in which they were looked at
     */
    public List<Loss> worstLosses() {
        Comparator<Loss> worse = Comparator.comparing(Loss::outcome).thenComparingDouble(Loss::speed)
                .thenComparingDouble(Loss::demand);
        Map<String, Loss> worst = new LinkedHashMap<>();
        losses.forEach(loss -> worst.merge(loss.lost(), loss, (a, b) -> worse.compare(b, a) > 0 ? b : a));
        return List.copyOf(worst.values());
    }
}
