// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.site.burial.HullBurial;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.StationDose;
import bermwright.site.laydown.Laydown;
import bermwright.site.plan.Hull;
import bermwright.site.pose.LyingPose;
import java.util.List;
import java.util.Optional;

/**
 * Everything worked out for one hull.
 *
 * @param hull     the hull
 * @param lying    how its axis lies; empty for a hull that stays upright, and where its ground is missing
 * @param laydown  how it comes to lie; empty only where there is no ground at all
 * @param cover    what covers it; empty where it has no cover or its ground is missing
 * @param stations dose at its stations, in the plan's order; a station outside its hull is left out and found
 * @param burial   what soil and pressure do to its shell; empty where it has no cover or no shell is stated
 */
public record HullAssessment(Hull hull, Optional<LyingPose> lying, Optional<Laydown> laydown,
        Optional<HullCover> cover, List<StationDose> stations, Optional<HullBurial> burial) {
    /** Copies the list. */
    public HullAssessment {
        stations = List.copyOf(stations);
    }
}
