// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.finding.CoverRule;
import bermwright.finding.DoseRule;
import bermwright.finding.Finding;
import bermwright.finding.StayRule;
import bermwright.finding.WorkRule;
import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Station;
import bermwright.site.pose.LyingPose;
import bermwright.terrain.grid.ElevationGrid;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Puts findings where their fault is: what is wrong with a cover, a dose or a stay lies at the station or at the middle
 * of the lying hull, not where the hull stands.
 */
final class FindingPlaces {
    private FindingPlaces() {
    }

    static List<Finding> moved(List<Finding> findings, Plan plan, ElevationGrid bed) {
        Map<String, LyingPose> poses = new HashMap<>();
        plan.hulls().forEach(h -> LyingPose.of(h, bed).ifPresent(p -> poses.put(h.id(), p)));
        return findings.stream().map(f -> moved(f, plan, poses)).toList();
    }

    private static Finding moved(Finding finding, Plan plan, Map<String, LyingPose> poses) {
        String[] names = finding.subject().split("/", 2);
        Optional<Hull> hull = plan.hull(names[0]);
        Optional<LyingPose> pose = Optional.ofNullable(poses.get(names[0]));
        if (hull.isEmpty() || pose.isEmpty() || !isOfTheLying(finding)
                || finding.place().isPresent() && !finding.place().get().equals(hull.get().baseCentre())) {
            return finding;
        }
        Optional<Station> station = names.length < 2 ? Optional.empty() : hull.get().stations().stream()
                .filter(s -> s.id().equals(names[1])).findFirst();
        return finding.at(station.map(s -> pose.get().place(s.along(), s.across(), s.up()).plan())
                .orElseGet(() -> middle(pose.get())));
    }

    private static Point middle(LyingPose pose) {
        Vec3 both = pose.axisStart().plus(pose.axisEnd());
        return both.times(0.5).plan();
    }

    private static boolean isOfTheLying(Finding finding) {
        return finding.rule() instanceof CoverRule || finding.rule() instanceof DoseRule
                || finding.rule() instanceof StayRule || finding.rule() instanceof WorkRule
                || finding.rule().id().startsWith("ways-out") || finding.rule().id().startsWith("shelter");
    }
}
