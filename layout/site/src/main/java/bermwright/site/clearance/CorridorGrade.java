// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.finding.Finding;
import bermwright.finding.SiteRule;
import bermwright.foundation.Point;
import bermwright.site.plan.Corridor;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.ProfilePoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The grade along the middle of corridors, over their own width or two cells, whichever is longer. */
public final class CorridorGrade {
    private CorridorGrade() {
    }

    /**
     * The steepest grade along a corridor's middle line.
     *
     * @param grade   steepest grade (rad), zero where none is known
     * @param place   where it is
     * @param unknown a place where the ground is missing, empty where all of it is known
     */
    public record Steepest(double grade, Point place, Optional<Point> unknown) {
    }

    /**
     * The steepest grade along a corridor, over steps as long as it is wide.
     *
     * @param corridor the corridor
     * @param ground   the ground
     * @return the steepest grade and where it is
     */
    public static Steepest steepest(Corridor corridor, ElevationGrid ground) {
        double step = Math.max(corridor.width(), 2 * ground.trueSpacing());
        Steepest found = new Steepest(0, corridor.line().get(0), Optional.empty());
        for (int i = 0; i + 1 < corridor.line().size(); i++) {
            if (corridor.line().get(i).equals(corridor.line().get(i + 1))) {
                continue;
            }
            List<ProfilePoint> profile = ground.profile(corridor.line().get(i), corridor.line().get(i + 1), step);
            for (int j = 0; j + 1 < profile.size(); j++) {
                ProfilePoint a = profile.get(j);
                ProfilePoint b = profile.get(j + 1);
                double grade = Math.atan(Math.abs(b.height() - a.height()) / (b.distance() - a.distance()));
                if (Double.isNaN(grade)) {
                    found = new Steepest(found.grade, found.place, Optional.of(a.place()));
                } else if (grade > found.grade) {
                    found = new Steepest(grade, a.place(), found.unknown);
                }
            }
        }
        return found;
    }

    static List<Finding> check(Plan plan, ElevationGrid ground) {
        List<Finding> findings = new ArrayList<>();
        for (Corridor corridor : plan.corridors()) {
            Steepest steepest = steepest(corridor, ground);
            report(findings, corridor, steepest.grade, steepest.place);
            steepest.unknown.ifPresent(place -> findings.add(Finding.of(SiteRule.CORRIDOR_GROUND_UNKNOWN,
                    Finding.Level.WARN,
                    corridor.id(), Finding.Figures.NONE,
                    "Part of corridor %s lies where the elevation file has no data.".formatted(corridor.id()))
                    .at(place)));
        }
        return findings;
    }

    private static void report(List<Finding> findings, Corridor corridor, double steepest, Point at) {
        if (steepest > corridor.greatestGrade()) {
            String measured = SitePairs.number(Math.toDegrees(steepest));
            String limit = SitePairs.number(Math.toDegrees(corridor.greatestGrade()));
            findings.add(Finding.of(SiteRule.CORRIDOR_GRADE, Finding.Level.WARN, corridor.id(),
                    Finding.Figures.of(Math.toDegrees(steepest), Math.toDegrees(corridor.greatestGrade()), "deg"),
                    ("Corridor %s is as steep as %s deg; %s deg is allowed.").formatted(corridor.id(), measured,
                    limit)).at(at));
        }
    }
}
