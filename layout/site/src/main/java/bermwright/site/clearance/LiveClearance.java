// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.finding.Finding;
import bermwright.finding.PairingRule;
import bermwright.finding.Rule;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.SiteShapes;
import java.util.List;
import java.util.Set;

/** Compares what moves or is rigged at one moment with what stands there at that moment. */
public final class LiveClearance {
    /** Notes that are more than that once the soil stands. */
    private static final Set<Rule> COVERS = Set.of(PairingRule.COVERS_RUN_TOGETHER, PairingRule.COVER_OVER_GEAR);

    private LiveClearance() {
    }

    /**
     * Compares outlines by the same rules as the whole site.
     *
     * @param site  the site they belong to
     * @param live  what moves or is rigged
     * @param there what stands there
     * @return what was found between the two, not within either
     */
    public static List<Finding> check(SiteShapes site, List<Shape> live, List<Shape> there) {
        // What stands there now is there now, whatever order the plan states.
        return new SitePairs(site.plan().withOrderOfWork(List.of()), site.metreScale())
                .compare(new OutlinedGroup(live), new OutlinedGroup(there)).stream()
                .filter(f -> f.level() != Finding.Level.NOTE || COVERS.contains(f.rule())).toList();
    }
}
