// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

import bermwright.finding.Finding;
import bermwright.site.clearance.QuickClearance.Pose;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/** Poses that the full assessment refused though the quick engines saw nothing: the search keeps off them. */
final class Avoided {
    private static final double RADIUS = 3;
    private static final double WIDER = 1.6;
    private static final double WEIGHT = 5;

    private final List<Spot> spots = new ArrayList<>();

    private record Spot(int hull, Pose pose, double radius) {
        double away(Pose other) {
            return Math.hypot(Math.hypot(other.east() - pose.east(), other.north() - pose.north()),
                    Groups.ARC * Groups.turn(other.azimuth() - pose.azimuth()));
        }
    }

    /** Learns from a refusal: the hulls it names, or all that move where it names none of them. */
    void learn(Plan plan, List<Finding> refusals, List<Integer> movable, List<Pose> poses) {
        List<Integer> named = movable.stream().filter(h -> {
            String id = plan.hulls().get(h).id();
            return refusals.stream().anyMatch(f -> QuickSite.names(f, id));
        }).toList();
        for (int hull : named.isEmpty() ? movable : named) {
            double radius = RADIUS;
            for (Spot spot : spots) {
                if (spot.hull == hull && spot.away(poses.get(hull)) < 2 * spot.radius) {
                    radius = Math.max(radius, spot.radius * WIDER);
                }
            }
            spots.add(new Spot(hull, poses.get(hull), radius));
        }
    }

    /** By how much an arrangement is too near to what was refused (m). */
    double shortfall(List<Pose> poses) {
        double sum = 0;
        for (Spot spot : spots) {
            double away = spot.away(poses.get(spot.hull));
            sum += away < spot.radius ? WEIGHT * (1 - away / spot.radius) : 0;
        }
        return sum;
    }
}
