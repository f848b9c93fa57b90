// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.finding.Finding;
import bermwright.foundation.ModelNote;
import bermwright.lowering.rest.RestPose;
import bermwright.lowering.review.Review;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.thrust.LyingLanding;
import bermwright.lowering.thrust.ThrusterResult;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How one hull comes to lie, and what is wrong with it.
 *
 * @param hull      id of the hull
 * @param plane     the plane it is laid down in; absent where there is no ground under it, or it stays upright
 * @param lowering  lowering by lines; absent where no lines are given or nothing can be worked out
 * @param review    lines in space, pivot edge, motion and losses; absent where {@code lowering} is
 * @param thrusters laying down by side thrusters; absent where none are given
 * @param landing   landing on the side; absent for hulls that do not
 * @param rest      how it lies on the ground as it is; absent where there is no ground or it stays upright
 * @param disc      what becomes of it for landings all over the dispersion; absent without lines or dispersion
 * @param findings  what is wrong or worth knowing
 * @param notes     models, ranges and spreads behind the figures
 */
public record Laydown(String hull, Optional<LayPlane> plane, Optional<LoweringResult> lowering,
        Optional<Review> review, Optional<ThrusterResult> thrusters, Optional<LyingLanding> landing,
        Optional<RestPose> rest, Optional<LandingDisc> disc, List<Finding> findings, List<ModelNote> notes) {
    /** Copies the lists. */
    public Laydown {
        Objects.requireNonNull(hull, "hull");
        Objects.requireNonNull(plane, "plane");
        Objects.requireNonNull(lowering, "lowering");
        Objects.requireNonNull(review, "review");
        Objects.requireNonNull(thrusters, "thrusters");
        Objects.requireNonNull(landing, "landing");
        Objects.requireNonNull(rest, "rest");
        Objects.requireNonNull(disc, "disc");
        findings = List.copyOf(findings);
        notes = List.copyOf(notes);
    }
}
