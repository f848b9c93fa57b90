// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.foundation.ModelNote;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.site.finding.Finding;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How one hull comes to lie, and what is wrong with it.
 *
 * @param hull     id of the hull
 * @param plane    the plane it is laid down in; absent where there is no ground under it, or it stays upright
 * @param lowering lowering by lines; absent where no lines are given or nothing can be worked out
 * @param findings what is wrong or worth knowing
 * @param notes    models, ranges and spreads behind the figures
 */
public record Laydown(String hull, Optional<LayPlane> plane, Optional<LoweringResult> lowering,
        List<Finding> findings, List<ModelNote> notes) {
    /** Copies the lists. */
    public Laydown {
        Objects.requireNonNull(hull, "hull");
        Objects.requireNonNull(plane, "plane");
        Objects.requireNonNull(lowering, "lowering");
        findings = List.copyOf(findings);
        notes = List.copyOf(notes);
    }
}
