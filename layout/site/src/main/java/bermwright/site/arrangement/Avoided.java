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
    /** How far off is gone of what a distance lacks. */
    private static final double FARTHER = 1.5;
    private static final double MOST = 15;

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
            String id = plan.hulls().get(hull).id();
            double radius = Math.max(RADIUS, FARTHER * refusals.stream().filter(f -> QuickSite.names(f, id))
                    .mapToDouble(Avoided::lacking).max().orElse(0));
            for (Spot spot : spots) {
                if (spot.hull == hull && spot.away(poses.get(hull)) < 2 * spot.radius) {
                    radius = Math.max(radius, spot.radius * WIDER);
                }
            }
            spots.add(new Spot(hull, poses.get(hull), radius));
        }
    }

    /** Metres that a distance lacks, or the side of what overlaps; nothing where a finding measures neither. */
    private static double lacking(Finding finding) {
        if (finding.figures().measured().isEmpty() || finding.figures().limit().isEmpty()) {
            return 0;
        }
        double measured = finding.figures().measured().getAsDouble();
        double limit = finding.figures().limit().getAsDouble();
        return finding.figures().unit().equals("m") ? Math.min(MOST, Math.abs(limit - measured))
                : finding.figures().unit().equals("m2") ? Math.min(MOST, Math.sqrt(Math.abs(measured))) : 0;
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
