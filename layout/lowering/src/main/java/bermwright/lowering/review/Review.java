// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import bermwright.foundation.ModelNote;
import java.util.List;
import java.util.Objects;

/**
 * A lowering under review.
 *
 * @param lines  the lines in space
 * @param edge   the pivot on the ground by tilt
 * @param motion what motion does
 * @param losses one thing lost at a time, by tilt
 * @param notes  models, ranges and spreads behind the figures
 */
public record Review(LineReview lines, List<EdgeState> edge, MotionReview motion, List<Loss> losses,
        List<ModelNote> notes) {
    /** Copies the lists. */
    public Review {
        Objects.requireNonNull(lines, "lines");
        Objects.requireNonNull(motion, "motion");
        edge = List.copyOf(edge);
        losses = List.copyOf(losses);
        notes = List.copyOf(notes);
    }
}
